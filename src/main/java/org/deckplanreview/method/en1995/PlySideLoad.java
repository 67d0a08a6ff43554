package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.JoistBearing;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.MemberAnalysis;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.Fixing;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.PlyFixing;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;
import org.deckplanreview.vocabulary.Table;

/**
 * What fixes the plies of a beam to each other, where joists hang on its face: the first plane between plies passes on what all
 * plies but the first carry, (n - 1) / n of each joist. Yielding in single shear between two plies, 8.2.2 (8.6), both loaded
 * across the grain.
 */
final class PlySideLoad implements Method {
    private static final String FUK = "fuk";
    private static final ParameterDescription FASTENERS = ParameterDescription.table(
            "plyFasteners",
            "the tensile strength that fixings of plies have at least, and the effective over the nominal diameter, by kind",
            wordColumn("kind"),
            numberColumn(FUK, NEWTON_PER_SQUARE_MILLIMETRE),
            numberColumn("effective", RATIO));

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.plySideLoad",
            En1995.SOURCE,
            "force between plies",
            NEWTON_,
            List.of(SubjectKind.BEAMS),
            Stream.of(
                            MemberBasis.parameters(
                                    List.of(Modification.SERVICE_CLASS, Modification.KMOD, Modification.DURATIONS),
                                    List.of(),
                                    StrengthClass.TABLE,
                                    Combination.COMBINATIONS,
                                    Combination.Psi.TABLE),
                            List.of(BeamJoint.GAMMA_M, JointShear.MOMENT_FACTOR, JointShear.MOMENT_EXPONENT, FASTENERS),
                            EmbedmentStrength.PARAMETERS,
                            Johansen.PARAMETERS)
                    .flatMap(List::stream)
                    .toList(),
            "The part of the largest joist's design reaction that passes between the first two plies of a beam on whose face joists"
                    + " hang, against the design resistance of the fasteners over one joist's spacing: (8.6) with (8.30) to (8.33),"
                    + " rope effect left out.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        BeamLine line = (BeamLine) subject;
        Beam beam = context.submission().platforms().get(line.platformIndex()).beams().stream()
                .filter(b -> b.id().equals(line.id()))
                .findFirst()
                .orElseThrow();
        if (beam.plies() < 2 || beam.joists() == JoistSeating.ON_TOP) {
            return new Evaluation.NotApplicable("No joists hang on the face of several plies");
        }
        if (beam.seating() == BeamSeating.BOTH_SIDES) {
            return new Evaluation.OutOfScope(
                    "Plies on either side of their posts do not touch, and joists hang on those of one side alone",
                    "8.2.2");
        }
        Pointer pointer = line.pointer().child("plyFixing");
        if (beam.plyFixing().isEmpty()) {
            return new Evaluation.Missing(List.of(new Need(
                    pointer,
                    "what fixes the plies of " + line.label()
                            + " to each other: the fixings, their spacing and rows")));
        }
        PlyFixing fixing = beam.plyFixing().get();
        Fixing kind = context.submission().protection().fixings().stream()
                .filter(f -> f.id().equals(fixing.fixing()))
                .findFirst()
                .orElseThrow();
        Optional<Table.Row> row =
                parameters.table(FASTENERS.name()).find("kind", kind.kind().word());
        if (row.isEmpty()) {
            return new Evaluation.OutOfScope(
                    "Plies are not fixed to each other by a " + kind.kind().word(),
                    parameters.source(FASTENERS.name()));
        }
        List<Need> needs = new ArrayList<>();
        if (kind.diameter().isEmpty()) {
            needs.add(new Need(
                    Pointer.of("/protection/fixings")
                            .child(context.submission().protection().fixings().indexOf(kind))
                            .child("diameter"),
                    "the diameter of " + kind.displayLabel() + ", a length"));
        }
        Derived<List<Hung>> hung = hung(line, context);
        needs.addAll(hung.needs());
        return MemberBasis.evaluate(
                subject,
                parameters,
                context,
                basis -> needs.isEmpty()
                        ? worst(
                                basis,
                                hung.get(),
                                fixing,
                                kind.diameter().orElseThrow().mm(),
                                row.get(),
                                pointer)
                        : new Evaluation.Missing(
                                needs.stream().distinct().sorted().toList()));
    }

    /** A joist that hangs on the beam. */
    private record Hung(JoistLine joist, int support, MemberAnalysis analysis) {}

    private static Derived<List<Hung>> hung(BeamLine line, ReviewContext context) {
        PlatformLayout platform = context.layout().platformOf(line);
        Derived<List<Hung>> all = Derived.known(List.of());
        for (JoistBearing bearing : line.joists()) {
            JoistLine joist = platform.joists().get(bearing.joist());
            Derived<Hung> one = context.loadPath().member(joist).map(a -> new Hung(joist, bearing.joistSupport(), a));
            all = all.with(
                    one,
                    (some, more) ->
                            Stream.concat(some.stream(), Stream.of(more)).toList());
        }
        return all;
    }

    private static Evaluation worst(
            MemberBasis basis, List<Hung> hung, PlyFixing fixing, double diameterMm, Table.Row row, Pointer pointer) {
        if (hung.isEmpty()) {
            return new Evaluation.NotApplicable("No joist hangs on it");
        }
        double d = row.number("effective", RATIO) * diameterMm;
        double largest = basis.parameters().number(EmbedmentStrength.LARGEST_DIAMETER.name(), MILLIMETRE);
        if (!Sense.AT_MOST.holds(d, largest)) {
            return new Evaluation.OutOfScope(
                    "The embedment strength is known for diameters up to "
                            + basis.context().written(Measure.mm(largest)),
                    basis.parameters().source(EmbedmentStrength.LARGEST_DIAMETER.name()));
        }
        List<Place> places = new ArrayList<>();
        for (Combination combination : basis.combinations(State.ULTIMATE)) {
            for (Hung h : hung) {
                double reaction = h.analysis()
                        .effects(combination.factors())
                        .supports()
                        .get(h.support())
                        .largestReactionN();
                places.add(new Place(
                        basis,
                        h,
                        fixing,
                        d,
                        row.number(FUK, NEWTON_PER_SQUARE_MILLIMETRE),
                        combination,
                        reaction,
                        pointer));
            }
        }
        return Case.worst(places);
    }

    /** One joist under one combination. */
    private record Place(
            MemberBasis basis,
            Hung hung,
            PlyFixing fixing,
            double dMm,
            double fuk,
            Combination combination,
            double reactionN,
            Pointer pointer)
            implements Case {

        private double passedN() {
            int n = basis.member().plies();
            return Math.max(0, reactionN) * (n - 1) / n;
        }

        private double yieldMomentNmm() {
            Parameters p = basis.parameters();
            return p.number(JointShear.MOMENT_FACTOR.name(), RATIO)
                    * fuk
                    * StrictMath.pow(dMm, p.number(JointShear.MOMENT_EXPONENT.name(), RATIO));
        }

        private Johansen johansen() {
            double fh = EmbedmentStrength.of(basis.parameters()).across(basis.strengthClass(), dMm);
            double ply = basis.ply().breadthMm();
            return Johansen.of(basis.parameters(), fh, ply, fh, ply, dMm, yieldMomentNmm());
        }

        private YieldMode mode() {
            return johansen().singleShear().stream()
                    .min(Comparator.comparingDouble(YieldMode::johansenN))
                    .orElseThrow();
        }

        private double fasteners() {
            return fixing.rows() * hung.joist().spacingMm() / fixing.spacing().mm();
        }

        private ConnectionResistance resistance() {
            return ConnectionResistance.of(fasteners() * mode().johansenN(), combination, basis.parameters());
        }

        @Override
        public double utilisation() {
            return passedN() / resistance().designN();
        }

        @Override
        public Evaluation.Measured measured() {
            return new Evaluation.Measured(
                    Measure.of(passedN(), NEWTON_),
                    Sense.AT_MOST,
                    Measure.of(resistance().designN(), NEWTON_),
                    utilisation(),
                    "at " + hung.joist().label() + ", combination " + combination.id(),
                    working(),
                    List.of(
                            "Fixings of plies pass through the full thickness of the plies on both sides of each plane.",
                            "Fixings of plies bear on the timber as bolts in drilled holes do.",
                            "The steel of fixings of plies has the least strength usual for their kind."));
        }

        private List<WorkingStep> working() {
            Parameters p = basis.parameters();
            Sheet w = Sheet.blank();
            w.given(
                    "F_d",
                    Math.max(0, reactionN),
                    NEWTON_,
                    "design reaction of " + hung.joist().label() + ", " + combination.id(),
                    p.source(Combination.COMBINATIONS.name()),
                    hung.joist().pointer());
            w.given(
                    "n",
                    basis.member().plies(),
                    RATIO,
                    "plies",
                    "",
                    basis.member().pointer().child("plies"));
            w.step("F_n", "F_d * (n - 1) / n", passedN(), NEWTON_, "");
            w.given(
                    "d",
                    dMm,
                    MILLIMETRE,
                    "effective diameter of the fixings",
                    p.source(FASTENERS.name()),
                    pointer.child("fixing"));
            w.given(
                    "t_1",
                    basis.ply().breadthMm(),
                    MILLIMETRE,
                    "thickness of a ply",
                    "",
                    basis.timberPointer().child("breadth"));
            w.given(
                    "t_2",
                    basis.ply().breadthMm(),
                    MILLIMETRE,
                    "thickness of the next ply",
                    "",
                    basis.timberPointer().child("breadth"));
            EmbedmentStrength.of(p).writeAcross(w, p, basis.strengthClass(), dMm, basis.strengthClassPointer());
            w.given("β", 1, RATIO, "embedment strengths of the two plies over each other", "(8.8)");
            w.given(
                    "f_u,k",
                    fuk,
                    NEWTON_PER_SQUARE_MILLIMETRE,
                    "tensile strength of the fixings",
                    p.source(FASTENERS.name()));
            w.step(
                    "M_y,Rk",
                    Numbers.plain(p.number(JointShear.MOMENT_FACTOR.name(), RATIO)) + " * f_u,k * d^"
                            + Numbers.plain(p.number(JointShear.MOMENT_EXPONENT.name(), RATIO)),
                    yieldMomentNmm(),
                    NEWTON_MILLIMETRE,
                    "(8.30)");
            w.step("F_v,Rk", mode().expression(), mode().johansenN(), NEWTON_, "(8.6) " + mode().letter());
            w.given("r", fixing.rows(), RATIO, "rows of fixings", "", pointer.child("rows"));
            w.given(
                    "s_j",
                    hung.joist().spacingMm(),
                    MILLIMETRE,
                    "spacing of the joists",
                    "",
                    hung.joist().pointer());
            w.given(
                    "s_f",
                    fixing.spacing().mm(),
                    MILLIMETRE,
                    "spacing of the fixings in a row",
                    "",
                    pointer.child("spacing"));
            w.step("n_f", "r * s_j / s_f", fasteners(), RATIO, "");
            resistance().write(w, "F_Rd", "n_f * F_v,Rk");
            w.step("utilisation", "F_n / F_Rd", utilisation(), RATIO, "");
            return w.steps();
        }
    }
}
