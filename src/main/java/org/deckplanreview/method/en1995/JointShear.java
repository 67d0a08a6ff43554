package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
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
    private static final ParameterDescription ROOT_RATIO = ParameterDescription.number(
            "screwRootRatio", RATIO, "diameter of a screw's core over that of its thread, the least that may be met");
    private static final ParameterDescription LEAST_SCREW = ParameterDescription.number(
            "screwBoltRulesOver", MILLIMETRE, "effective diameter over which screws follow the rules of bolts");

    /** d of the equations for screws with a thread along the whole shank. */
    private static final Formula SCREW_DIAMETER = Formula.of("d = 1.1 * k_r * d_s", MILLIMETRE, "8.7.1(3)");

    private static final ConnectionResistance RESISTANCE = ConnectionResistance.of("F_v,Rd", "N_ef * F_v,Rk");
    private static final Utilisation UTILISATION = Utilisation.atMost("F_v,Ed", "F_v,Rd", NEWTON_, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.jointShear",
            En1995.SOURCE,
            "force on the fasteners",
            NEWTON_,
            List.of(SubjectKind.BEAMS),
            MemberBasis.parameters(
                    ConnectionResistance.PARAMETERS,
                    RopeEffect.PARAMETERS,
                    StrengthClass.TABLE,
                    Combination.COMBINATIONS,
                    Combination.Psi.TABLE,
                    EmbedmentStrength.LARGEST_DIAMETER,
                    ROOT_RATIO,
                    LEAST_SCREW),
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
        double effective = diameter(joint, p).value("d");
        if (joint.screwed() && !Sense.OVER.holds(effective, over)) {
            return new Evaluation.OutOfScope(
                    "The effective diameter of the screws, "
                            + joint.context().written(Measure.mm(effective))
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
        List<Fastened> posts = new ArrayList<>();
        for (int i = 0; i < joint.line().supports().size(); i++) {
            posts.add(Fastened.of(joint, basis, i));
        }
        List<Case> cases = new ArrayList<>();
        for (Combination combination : basis.combinations(State.ULTIMATE)) {
            Effects effects = basis.analysis().effects(combination.factors());
            for (int i = 0; i < effects.supports().size(); i++) {
                cases.add(posts.get(i).under(combination, effects.supports().get(i)));
            }
        }
        return Case.worst(cases);
    }

    /** A sheet with the diameter d. */
    private static Sheet diameter(BeamJoint joint, Parameters p) {
        Sheet sheet = Sheet.blank();
        sheet.given(
                joint.screwed() ? "d_s" : "d",
                joint.diameterMm(),
                MILLIMETRE,
                joint.screwed() ? "diameter of the screws over the thread" : "diameter of the bolts",
                "",
                joint.pointer().child("diameter"));
        if (joint.screwed()) {
            p.enter(sheet, "k_r", ROOT_RATIO);
            sheet.calculate(SCREW_DIAMETER);
        }
        return sheet;
    }

    /** What the fasteners at one post can carry, before it depends on load duration. */
    private record Fastened(BeamJoint joint, MemberBasis basis, int support, Sheet sheet, YieldMode mode) {

        static Fastened of(BeamJoint joint, MemberBasis basis, int support) {
            Parameters p = basis.parameters();
            Material post = post(joint, p, support);
            Sheet sheet = Sheet.on(diameter(joint, p));
            enterThicknesses(sheet, joint, basis, support);
            EmbedmentStrength.calculateAcross(sheet, basis.material());
            EmbedmentStrength.calculateAlong(sheet, post);
            sheet.given(
                    "f_u,k",
                    joint.joint().tensileStrength().orElseThrow().in(NEWTON_PER_SQUARE_MILLIMETRE),
                    NEWTON_PER_SQUARE_MILLIMETRE,
                    () -> "tensile strength of the " + joint.fasteners(),
                    "",
                    joint.pointer().child("tensileStrength"));
            Johansen.calculateYieldMoment(sheet);
            Johansen shear = joint.doubleShear() ? Johansen.DOUBLE_SHEAR : Johansen.SINGLE_SHEAR;
            YieldMode mode = shear.calculate(sheet, isRoped(sheet, joint, basis, post.strengthClass()));
            enterSpacing(sheet, joint);
            FastenerRow.calculate(sheet, joint);
            return new Fastened(joint, basis, support, sheet, mode);
        }

        private static Material post(BeamJoint joint, Parameters p, int support) {
            return new Material(
                    joint.postClass(support)
                            .flatMap(c -> StrengthClass.find(p, c))
                            .orElseThrow(),
                    joint.postTimberPointer(support).child("strengthClass"),
                    p);
        }

        private static void enterThicknesses(Sheet sheet, BeamJoint joint, MemberBasis basis, int support) {
            sheet.given(
                    "t_1",
                    joint.sideThicknessMm(),
                    MILLIMETRE,
                    "thickness of the beam at one side of the post",
                    "",
                    basis.timberPointer().child("breadth"),
                    joint.line().pointer().child("plies"));
            double postMm = joint.post(support).timber().depth().mm();
            Optional<Length> penetration = joint.joint().penetration().filter(l -> joint.screwed());
            Pointer depth = joint.postTimberPointer(support).child("depth");
            sheet.given(
                    "t_2",
                    penetration.map(l -> Math.min(postMm, l.mm())).orElse(postMm),
                    MILLIMETRE,
                    joint.screwed() ? "length of the screw inside the post" : "thickness of the post",
                    "",
                    joint.screwed() ? joint.pointer().child("penetration") : depth);
        }

        /** Enters the rope effect of bolts with washers. Returns whether there is any. */
        private static boolean isRoped(Sheet sheet, BeamJoint joint, MemberBasis basis, StrengthClass post) {
            double beam = basis.strengthClass().fc90k();
            double fc90k = joint.sides() == 2 ? beam : Math.min(beam, post.fc90k());
            return washers(joint)
                    .filter(w -> RopeEffect.calculate(sheet, basis.parameters(), w.mm(), fc90k, joint.pointer()) > 0)
                    .isPresent();
        }

        private static Optional<Length> washers(BeamJoint joint) {
            return joint.joint().washerDiameter().filter(w -> !joint.screwed());
        }

        private static void enterSpacing(Sheet sheet, BeamJoint joint) {
            if (joint.longestRow() > 1) {
                sheet.given(
                        "a_1",
                        joint.joint().spacing().orElseThrow().mm(),
                        MILLIMETRE,
                        "spacing in a row",
                        "",
                        joint.pointer().child("spacing"));
            }
        }

        Case under(Combination combination, Effects.SupportEffects effects) {
            Sheet resisted = Sheet.on(sheet);
            RESISTANCE.calculate(resisted, combination, basis.parameters());
            double force = Math.max(0, effects.largestReactionN());
            basis.enterForce(resisted, "F_v,Ed", force, "design reaction at ", support, combination);
            return UTILISATION.of(
                    resisted,
                    () -> "at " + basis.supportName(support) + ", combination " + combination.id() + ", mode "
                            + mode.letter() + ": " + mode.meaning(),
                    this::assumptions);
        }

        private List<String> assumptions() {
            List<String> all = new ArrayList<>();
            all.add("The fasteners of a joint share its load equally, in drilled holes that fit them.");
            if (joint.screwed()) {
                all.add("Screws are taken as threaded along the whole shank, without rope effect.");
            } else if (washers(joint).isEmpty()) {
                all.add("Bolts whose washers are not given are taken without rope effect.");
            }
            if (joint.sides() == 2 && joint.screwed()) {
                all.add("Screws from both sides of a post are set so that they do not meet.");
            }
            return basis.assumptions(all);
        }
    }
}
