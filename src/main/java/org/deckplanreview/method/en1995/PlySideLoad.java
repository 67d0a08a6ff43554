package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
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
    private static final String EFFECTIVE = "effective";
    private static final ParameterDescription FASTENERS = ParameterDescription.table(
            "plyFasteners",
            "the tensile strength that fixings of plies have at least, and the effective over the nominal diameter, by kind",
            wordColumn("kind"),
            numberColumn(FUK, NEWTON_PER_SQUARE_MILLIMETRE),
            numberColumn(EFFECTIVE, RATIO));

    private static final Formula EFFECTIVE_DIAMETER = Formula.of("d = k_e * d_f", MILLIMETRE, "");
    private static final Formula SAME_EMBEDMENT =
            Formula.of("f_h,2,k = f_h,1,k", NEWTON_PER_SQUARE_MILLIMETRE, "(8.31)");
    private static final Formula PASSED = Formula.of("F_n = R_d * (n - 1) / n", NEWTON_, "");
    private static final Formula FASTENERS_OF_JOIST = Formula.of("n_f = r * s_j / s_f", RATIO, "");
    private static final ConnectionResistance RESISTANCE = ConnectionResistance.of("F_Rd", "n_f * F_v,Rk");
    private static final Utilisation UTILISATION = Utilisation.atMost("F_n", "F_Rd", NEWTON_, "");

    private static final List<String> ASSUMED = List.of(
            "Fixings of plies pass through the full thickness of the plies on both sides of each plane.",
            "Fixings of plies bear on the timber as bolts in drilled holes do.",
            "The steel of fixings of plies has the least strength usual for their kind.");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.plySideLoad",
            En1995.SOURCE,
            "force between plies",
            NEWTON_,
            List.of(SubjectKind.BEAMS),
            MemberBasis.parameters(
                    ConnectionResistance.PARAMETERS,
                    List.of(),
                    StrengthClass.TABLE,
                    Combination.COMBINATIONS,
                    Combination.Psi.TABLE,
                    EmbedmentStrength.LARGEST_DIAMETER,
                    FASTENERS),
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
                        ? new Fixed(basis, fixing, kind.diameter().orElseThrow().mm(), row.get(), pointer)
                                .worst(hung.get())
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

    /** The first two plies and what fixes them to each other. */
    private record Fixed(MemberBasis basis, PlyFixing fixing, double diameterMm, Table.Row row, Pointer pointer) {

        Evaluation worst(List<Hung> hung) {
            if (hung.isEmpty()) {
                return new Evaluation.NotApplicable("No joist hangs on it");
            }
            Sheet fastener = diameter();
            double largest = basis.parameters().number(EmbedmentStrength.LARGEST_DIAMETER.name(), MILLIMETRE);
            if (!Sense.AT_MOST.holds(fastener.value("d"), largest)) {
                return new Evaluation.OutOfScope(
                        "The embedment strength is known for diameters up to "
                                + basis.context().written(Measure.mm(largest)),
                        basis.parameters().source(EmbedmentStrength.LARGEST_DIAMETER.name()));
            }
            calculateFastener(fastener);
            List<Case> cases = new ArrayList<>();
            for (Combination combination : basis.combinations(State.ULTIMATE)) {
                hung.forEach(h -> cases.add(at(h, combination, fastener)));
            }
            return Case.worst(cases);
        }

        private Sheet diameter() {
            Sheet sheet = Sheet.blank();
            String source = basis.parameters().source(FASTENERS.name());
            sheet.given("d_f", diameterMm, MILLIMETRE, "diameter of the fixings", "", pointer.child("fixing"));
            sheet.given("k_e", row.number(EFFECTIVE, RATIO), RATIO, "effective over nominal diameter", source);
            sheet.calculate(EFFECTIVE_DIAMETER);
            return sheet;
        }

        /** F_v,Rk of one fastener. */
        private void calculateFastener(Sheet sheet) {
            double plyMm = basis.member().timber().breadth().mm();
            Pointer breadth = basis.timberPointer().child("breadth");
            sheet.given("t_1", plyMm, MILLIMETRE, "thickness of a ply", "", breadth);
            sheet.given("t_2", plyMm, MILLIMETRE, "thickness of the next ply", "", breadth);
            EmbedmentStrength.calculateAcross(sheet, basis.material());
            sheet.calculate(SAME_EMBEDMENT);
            sheet.given(
                    "f_u,k",
                    row.number(FUK, NEWTON_PER_SQUARE_MILLIMETRE),
                    NEWTON_PER_SQUARE_MILLIMETRE,
                    "tensile strength of the fixings",
                    basis.parameters().source(FASTENERS.name()));
            Johansen.calculateYieldMoment(sheet);
            Johansen.SINGLE_SHEAR.calculate(sheet, false);
        }

        /** One joist under one combination. */
        private Case at(Hung hung, Combination combination, Sheet fastener) {
            Sheet passed = Sheet.blank();
            double reaction = hung.analysis()
                    .effects(combination.factors())
                    .supports()
                    .get(hung.support())
                    .largestReactionN();
            passed.given(
                    "R_d",
                    Math.max(0, reaction),
                    NEWTON_,
                    () -> "design reaction of " + hung.joist().label() + ", " + combination.id(),
                    basis.combinationSource(),
                    hung.joist().pointer());
            Pointer plies = basis.member().pointer().child("plies");
            passed.given("n", basis.member().plies(), RATIO, "plies", "", plies);
            passed.calculate(PASSED);
            Sheet sheet = Sheet.on(passed, fastener);
            sheet.given("r", fixing.rows(), RATIO, "rows of fixings", "", pointer.child("rows"));
            Pointer joist = hung.joist().pointer();
            sheet.given("s_j", hung.joist().spacingMm(), MILLIMETRE, "spacing of the joists", "", joist);
            Pointer spacing = pointer.child("spacing");
            sheet.given("s_f", fixing.spacing().mm(), MILLIMETRE, "spacing of the fixings in a row", "", spacing);
            sheet.calculate(FASTENERS_OF_JOIST);
            RESISTANCE.calculate(sheet, combination, basis.parameters());
            return UTILISATION.of(
                    sheet, () -> "at " + hung.joist().label() + ", combination " + combination.id(), () -> ASSUMED);
        }
    }
}
