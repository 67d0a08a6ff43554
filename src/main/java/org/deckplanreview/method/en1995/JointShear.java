package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Bolts and screws that carry a beam at the sides of its posts, 8.2.2, 8.5.1 and 8.7.1. */
final class JointShear implements Method {
    static final ParameterDescription MOMENT_FACTOR =
            ParameterDescription.number("yieldMomentFactor", RATIO, "factor of M_y,Rk, with N and mm");
    static final ParameterDescription MOMENT_EXPONENT =
            ParameterDescription.number("yieldMomentExponent", RATIO, "exponent of the diameter in M_y,Rk");
    private static final ParameterDescription ROOT_RATIO = ParameterDescription.number(
            "screwRootRatio", RATIO, "diameter of a screw's core over that of its thread, the least that may be met");
    private static final ParameterDescription ROOT_FACTOR = ParameterDescription.number(
            "screwEffectiveDiameterFactor", RATIO, "effective diameter of a screw over that of its core");
    private static final ParameterDescription LEAST_SCREW = ParameterDescription.number(
            "screwBoltRulesOver", MILLIMETRE, "effective diameter over which screws follow the rules of bolts");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.jointShear",
            En1995.SOURCE,
            "force on the fasteners",
            NEWTON_,
            List.of(SubjectKind.BEAMS),
            Stream.of(
                            List.of(
                                    StrengthClass.TABLE,
                                    Combination.COMBINATIONS,
                                    Combination.Psi.TABLE,
                                    Modification.SERVICE_CLASS,
                                    Modification.KMOD,
                                    Modification.DURATIONS,
                                    BeamJoint.GAMMA_M,
                                    MOMENT_FACTOR,
                                    MOMENT_EXPONENT,
                                    ROOT_RATIO,
                                    ROOT_FACTOR,
                                    LEAST_SCREW),
                            EmbedmentStrength.PARAMETERS,
                            Johansen.PARAMETERS,
                            FastenerRow.PARAMETERS,
                            RopeEffect.PARAMETERS)
                    .flatMap(List::stream)
                    .toList(),
            "Largest design reaction of the beam at a post against the weakest of the yield modes of its fasteners: (8.6) in single"
                    + " shear, (8.7) in double shear, with (8.30) to (8.34), 8.5.2 and 8.7.1. The beam is loaded across its grain,"
                    + " the post along it.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return BeamJoint.evaluate(subject, context, joint -> evaluate(joint, parameters));
    }

    private static Evaluation evaluate(BeamJoint joint, Parameters p) {
        double largest = p.number(EmbedmentStrength.LARGEST_DIAMETER.name(), MILLIMETRE);
        if (!Sense.AT_MOST.holds(joint.diameterMm(), largest)) {
            return new Evaluation.OutOfScope(
                    "The embedment strength is known for diameters up to "
                            + joint.context().written(Measure.mm(largest)),
                    p.source(EmbedmentStrength.LARGEST_DIAMETER.name()));
        }
        double over = p.number(LEAST_SCREW.name(), MILLIMETRE);
        if (joint.screwed() && !Sense.OVER.holds(effectiveDiameterMm(joint, p), over)) {
            return new Evaluation.OutOfScope(
                    "The effective diameter of the screws, "
                            + joint.context().written(Measure.mm(effectiveDiameterMm(joint, p)))
                            + ", is not over "
                            + joint.context().written(Measure.mm(over))
                            + ", so that the rules of bolts do not hold for them",
                    p.source(LEAST_SCREW.name()));
        }
        for (int i = 0; i < joint.line().supports().size(); i++) {
            Optional<String> unknown =
                    joint.postClass(i).filter(c -> StrengthClass.find(p, c).isEmpty());
            if (unknown.isPresent()) {
                return new Evaluation.OutOfScope(
                        "Strength class " + unknown.get() + " is not in the table",
                        p.source(StrengthClass.TABLE.name()));
            }
        }
        return joint.underLoad(p, needs(joint), basis -> worst(joint, basis));
    }

    /** d of the equations: the shank's of bolts, 8.7.1(3) of screws with a thread along the whole shank. */
    private static double effectiveDiameterMm(BeamJoint joint, Parameters p) {
        return joint.screwed()
                ? p.number(ROOT_FACTOR.name(), RATIO) * p.number(ROOT_RATIO.name(), RATIO) * joint.diameterMm()
                : joint.diameterMm();
    }

    private static List<Need> needs(BeamJoint joint) {
        List<Need> needs = new ArrayList<>(joint.spacingNeeds());
        if (joint.joint().tensileStrength().isEmpty()) {
            needs.add(new Need(
                    joint.pointer().child("tensileStrength"),
                    "the characteristic tensile strength of the steel of the " + joint.fasteners()
                            + ", for example 400 N/mm2 for bolts of grade 4.6"));
        }
        if (joint.screwed() && joint.joint().penetration().isEmpty()) {
            needs.add(new Need(
                    joint.pointer().child("penetration"),
                    "the length of each screw that is inside the post, a length"));
        }
        for (int i = 0; i < joint.line().supports().size(); i++) {
            if (joint.postClass(i).isEmpty()) {
                needs.add(new Need(
                        joint.postTimberPointer(i).child("strengthClass"),
                        "the strength class of " + joint.post(i).timber().displayLabel() + ", for example C24"));
            }
        }
        return needs;
    }

    private static Evaluation worst(BeamJoint joint, MemberBasis basis) {
        List<Place> places = new ArrayList<>();
        for (Combination combination : basis.combinations(State.ULTIMATE)) {
            Effects effects = basis.analysis().effects(combination.factors());
            for (int i = 0; i < effects.supports().size(); i++) {
                places.add(new Place(
                        joint,
                        basis,
                        combination,
                        i,
                        effects.supports().get(i).largestReactionN(),
                        Dowels.of(joint, basis, i)));
            }
        }
        return Case.worst(places);
    }

    /** What the fasteners at one post can carry, before it depends on load duration. */
    private record Dowels(
            EmbedmentStrength embedment,
            StrengthClass post,
            double dMm,
            double fuk,
            double momentNmm,
            Johansen johansen,
            List<YieldMode> modes,
            Optional<RopeEffect> rope,
            FastenerRow row) {

        static Dowels of(BeamJoint joint, MemberBasis basis, int support) {
            Parameters p = basis.parameters();
            EmbedmentStrength embedment = EmbedmentStrength.of(p);
            StrengthClass beam = basis.strengthClass();
            StrengthClass post = StrengthClass.find(p, joint.postClass(support).orElseThrow())
                    .orElseThrow();
            double d = effectiveDiameterMm(joint, p);
            double fuk = joint.joint().tensileStrength().orElseThrow().in(NEWTON_PER_SQUARE_MILLIMETRE);
            double moment = p.number(MOMENT_FACTOR.name(), RATIO)
                    * fuk
                    * StrictMath.pow(d, p.number(MOMENT_EXPONENT.name(), RATIO));
            Johansen johansen = Johansen.of(
                    p,
                    embedment.across(beam, d),
                    joint.sideThicknessMm(),
                    embedment.along(post, d),
                    inPostMm(joint, support),
                    d,
                    moment);
            double fc90k = joint.sides() == 2 ? beam.fc90k() : Math.min(beam.fc90k(), post.fc90k());
            Optional<RopeEffect> rope = joint.joint()
                    .washerDiameter()
                    .filter(w -> !joint.screwed())
                    .map(w -> RopeEffect.of(p, w.mm(), d, fc90k, fuk));
            return new Dowels(
                    embedment,
                    post,
                    d,
                    fuk,
                    moment,
                    johansen,
                    joint.doubleShear() ? johansen.doubleShear() : johansen.singleShear(),
                    rope,
                    FastenerRow.of(p));
        }

        /** t_2: the post's thickness, or how far a screw reaches into it. */
        private static double inPostMm(BeamJoint joint, int support) {
            double post = joint.post(support).timber().depth().mm();
            return joint.screwed()
                    ? Math.min(post, joint.joint().penetration().orElseThrow().mm())
                    : post;
        }
    }

    /** The joint at one post under one combination. */
    private record Place(
            BeamJoint joint, MemberBasis basis, Combination combination, int support, double reactionN, Dowels dowels)
            implements Case {

        private double forceN() {
            return Math.max(0, reactionN);
        }

        private double axialN() {
            return dowels.rope().map(RopeEffect::axialN).orElse(0.0);
        }

        private double largestShare() {
            return basis.parameters().number(RopeEffect.LARGEST_SHARE.name(), RATIO);
        }

        private YieldMode mode() {
            return YieldMode.weakest(dowels.modes(), axialN(), largestShare());
        }

        private double effective(int n) {
            double spacing = joint.joint().spacing().map(s -> s.mm()).orElse(0.0);
            return dowels.row().effective(n, spacing, joint.diameterMm());
        }

        private double effectiveOnSide() {
            int shorter = joint.rows() - joint.longestRows();
            return joint.longestRows() * effective(joint.longestRow())
                    + (shorter == 0 ? 0 : shorter * effective(joint.longestRow() - 1));
        }

        /** Shear planes of all fasteners, for each that is seen on one side. */
        private int planes() {
            return joint.sides();
        }

        private double characteristicN() {
            return planes() * effectiveOnSide() * mode().resistanceN(axialN(), largestShare());
        }

        private ConnectionResistance resistance() {
            return ConnectionResistance.of(characteristicN(), combination, basis.parameters());
        }

        private double allowedN() {
            return resistance().designN();
        }

        @Override
        public double utilisation() {
            return forceN() / allowedN();
        }

        @Override
        public Evaluation.Measured measured() {
            return new Evaluation.Measured(
                    Measure.of(forceN(), NEWTON_),
                    Sense.AT_MOST,
                    Measure.of(allowedN(), NEWTON_),
                    utilisation(),
                    "at " + basis.supportName(support) + ", combination " + combination.id() + ", mode "
                            + mode().letter() + ": " + mode().meaning(),
                    working(),
                    assumptions());
        }

        private List<String> assumptions() {
            List<String> all = new ArrayList<>();
            all.add("The fasteners of a joint share its load equally, in drilled holes that fit them.");
            if (joint.screwed()) {
                all.add("Screws are taken as threaded along the whole shank, without rope effect.");
            } else if (dowels.rope().isEmpty()) {
                all.add("Bolts whose washers are not given are taken without rope effect.");
            }
            if (joint.sides() == 2 && joint.screwed()) {
                all.add("Screws from both sides of a post are set so that they do not meet.");
            }
            return basis.assumptions(all);
        }

        private List<WorkingStep> working() {
            Parameters p = basis.parameters();
            Sheet w = Sheet.blank();
            writeSizes(w, p);
            dowels.embedment().writeAcross(w, p, basis.strengthClass(), dowels.dMm(), basis.strengthClassPointer());
            dowels.embedment()
                    .writeAlong(
                            w,
                            p,
                            dowels.post(),
                            dowels.dMm(),
                            joint.postTimberPointer(support).child("strengthClass"));
            w.step("β", "f_h,2,k / f_h,1,k", dowels.johansen().beta(), RATIO, "(8.8)");
            w.given(
                    "f_u,k",
                    dowels.fuk(),
                    NEWTON_PER_SQUARE_MILLIMETRE,
                    "tensile strength of the " + joint.fasteners(),
                    "",
                    joint.pointer().child("tensileStrength"));
            w.step(
                    "M_y,Rk",
                    Numbers.plain(p.number(MOMENT_FACTOR.name(), RATIO)) + " * f_u,k * d^"
                            + Numbers.plain(p.number(MOMENT_EXPONENT.name(), RATIO)),
                    dowels.momentNmm(),
                    NEWTON_MILLIMETRE,
                    "(8.30)");
            dowels.rope().ifPresent(r -> r.write(w, p, joint.pointer()));
            writeModes(w);
            writeNumber(w);
            writeDesign(w, p);
            return w.steps();
        }

        private void writeSizes(Sheet w, Parameters p) {
            if (joint.screwed()) {
                w.given(
                        "d_s",
                        joint.diameterMm(),
                        MILLIMETRE,
                        "diameter of the screws over the thread",
                        "",
                        joint.pointer().child("diameter"));
                w.step(
                        "d",
                        Numbers.plain(p.number(ROOT_FACTOR.name(), RATIO)) + " * "
                                + Numbers.plain(p.number(ROOT_RATIO.name(), RATIO)) + " * d_s",
                        dowels.dMm(),
                        MILLIMETRE,
                        "8.7.1(3)");
            } else {
                w.given(
                        "d",
                        dowels.dMm(),
                        MILLIMETRE,
                        "diameter of the bolts",
                        "",
                        joint.pointer().child("diameter"));
            }
            w.given(
                    "t_1",
                    joint.sideThicknessMm(),
                    MILLIMETRE,
                    "thickness of the beam at one side of the post",
                    "",
                    basis.timberPointer().child("breadth"),
                    joint.line().pointer().child("plies"));
            w.given(
                    "t_2",
                    dowels.johansen().t2Mm(),
                    MILLIMETRE,
                    joint.screwed() ? "length of the screw inside the post" : "thickness of the post",
                    "",
                    joint.screwed()
                            ? joint.pointer().child("penetration")
                            : joint.postTimberPointer(support).child("depth"));
        }

        private void writeModes(Sheet w) {
            String equation = joint.doubleShear() ? "(8.7) " : "(8.6) ";
            String share = Numbers.plain(largestShare());
            for (YieldMode m : dowels.modes()) {
                String symbol = "F_" + m.letter();
                if (m.rope() && axialN() > 0) {
                    w.step(symbol + ",J", m.expression(), m.johansenN(), NEWTON_, equation + m.letter());
                    w.step(
                            symbol,
                            symbol + ",J + min(F_ax,Rk / 4, " + share + " * " + symbol + ",J)",
                            m.resistanceN(axialN(), largestShare()),
                            NEWTON_,
                            "8.2.2(2)");
                } else {
                    w.step(symbol, m.expression(), m.johansenN(), NEWTON_, equation + m.letter());
                }
            }
            w.step(
                    "F_v,Rk",
                    dowels.modes().stream().map(m -> "F_" + m.letter()).collect(Collectors.joining(", ", "min(", ")")),
                    mode().resistanceN(axialN(), largestShare()),
                    NEWTON_,
                    equation + "mode " + mode().letter());
        }

        private void writeNumber(Sheet w) {
            int longest = joint.longestRow();
            int shorter = joint.rows() - joint.longestRows();
            if (longest > 1) {
                w.given(
                        "a_1",
                        joint.joint().spacing().orElseThrow().mm(),
                        MILLIMETRE,
                        "spacing in a row",
                        "",
                        joint.pointer().child("spacing"));
            }
            writeRow(w, "1", joint.longestRows(), longest);
            if (shorter > 0) {
                writeRow(w, "2", shorter, longest - 1);
            }
            w.given(
                    "s",
                    planes(),
                    RATIO,
                    "sides of the post at which the beam stands",
                    "",
                    joint.line().pointer());
            w.step(
                    "N_ef",
                    "s * (m_1 * n_ef,1" + (shorter > 0 ? " + m_2 * n_ef,2" : "") + ")",
                    planes() * effectiveOnSide(),
                    RATIO,
                    "8.1.2");
        }

        private void writeRow(Sheet w, String index, int rows, int n) {
            w.given(
                    "m_" + index,
                    rows,
                    RATIO,
                    "rows of " + n,
                    "",
                    joint.pointer().child("rows"));
            w.given(
                    "n_" + index,
                    n,
                    RATIO,
                    "fasteners in each of them",
                    "",
                    joint.pointer().child("count"));
            w.step(
                    "n_ef," + index,
                    n == 1 ? "n_" + index : dowels.row().expression("n_" + index, joint.screwed() ? "d_s" : "d"),
                    effective(n),
                    RATIO,
                    n == 1 ? "8.5.1.1(4)" : "(8.34)");
        }

        private void writeDesign(Sheet w, Parameters p) {
            resistance().write(w, "F_v,Rd", "N_ef * F_v,Rk");
            w.given(
                    "F_v,Ed",
                    forceN(),
                    NEWTON_,
                    "design reaction at " + basis.supportName(support) + ", " + combination.id(),
                    p.source(Combination.COMBINATIONS.name()),
                    basis.member().pointer());
            w.step("utilisation", "F_v,Ed / F_v,Rd", utilisation(), RATIO, "");
        }
    }
}
