package org.deckplanreview.method.en1995;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.Span;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.en1995.LinearAnalysis.Share;
import org.deckplanreview.method.equilibrium.Equilibrium;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.BoardProfile;
import org.deckplanreview.submission.Joint;
import org.deckplanreview.submission.NotchSide;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Sense;
import org.junit.jupiter.api.Test;

/** What a working shows is what was calculated: every line, computed again from the text alone, gives its value. */
class ShownWorkingsTest {

    private static final List<String> LOADINGS = List.of("uniform", "concentrated");
    private static final List<String> RESTRAINTS = List.of("boards", "joists", "none");

    private static StandardParameters parameters(String loading, String restraint) {
        return StandardParameters.ofEurocodes()
                .with("loading", loading)
                .with("sideRestraint", restraint)
                .with("spanRatio", 250)
                .with("cantileverRatio", 125)
                .with("holdDown", 500, MeasureUnit.NEWTON_)
                .with("leastBendingStrength", 16, MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE);
    }

    /** Members over two supports with a cantilever, in many sizes, grades and states. */
    private static List<DeckPiece> members() {
        List<DeckPiece> all = new ArrayList<>();
        for (String grade : List.of("C14", "C16", "C24", "C30", "D30", "D40")) {
            for (double depth : new double[] {47, 97, 147, 195, 220}) {
                all.add(loaded(
                        DeckPiece.joist().of(grade).section(47, depth).notched(depth / 5, 60, 0.5, NotchSide.SUPPORT)));
                all.add(loaded(DeckPiece.joist().of(grade).section(38, depth).notched(10, 20, 0, NotchSide.OPPOSITE))
                        .wet(true));
                all.add(loaded(DeckPiece.beam(2).of(grade).section(47, depth)).joistsEvery(450));
                all.add(loaded(DeckPiece.beam(3).of(grade).section(63, depth))
                        .postDepth(100)
                        .category("C"));
            }
        }
        for (BeamSeating seating : List.of(BeamSeating.BOTH_SIDES, BeamSeating.ONE_SIDE)) {
            for (Joint joint : List.of(
                    Joints.bolts(12, 4, 2).steel(400).make(),
                    Joints.bolts(16, 5, 2).steel(800).washers(50).make(),
                    Joints.bolts(20, 1, 1).steel(400).washers(20).make(),
                    Joints.screws(12, 6, 2).steel(600).penetration(80).make())) {
                all.add(loaded(DeckPiece.beam(2).section(47, 220))
                        .postDepth(100)
                        .fixed(seating, joint));
            }
        }
        all.add(DeckPiece.joist()
                .length(3600)
                .hanger(0, MemberSupport.Kind.LEDGER)
                .hanger(3600, MemberSupport.Kind.BEAM)
                .stretch(Span.Kind.BETWEEN_SUPPORTS, 0, 3600)
                .hangersOf(Measure.of(6, MeasureUnit.KILONEWTON))
                .under(a -> a.with(Action.IMPOSED, LinearAnalysis.atMidSpan(1000, 3600))));
        return all;
    }

    private static DeckPiece loaded(DeckPiece piece) {
        return piece.length(4225)
                .support(25, 50)
                .support(3525, 50)
                .stretch(Span.Kind.BETWEEN_SUPPORTS, 25, 3525)
                .stretch(Span.Kind.CANTILEVER_AT_END, 3525, 4225)
                .under(a -> a.with(Action.PERMANENT, share(0.2))
                        .with(Action.IMPOSED, share(1))
                        .with(Action.CONCENTRATED, share(0.7))
                        .with(Action.SNOW, share(0.6)));
    }

    private static Share share(double f) {
        return new Share(
                List.of(new double[] {9e5 * f, 8e5 * f, 7.123 * f, 1 * f}, new double[] {0, 8e5 * f, 3.3 * f, 2 * f}),
                List.of(new double[] {1700 * f, 1700 * f, 130 * f - 150}, new double[] {2100 * f, 3900 * f, 900 * f}),
                5000 * f);
    }

    private static List<DeckPiece> boards() {
        List<DeckPiece> all = new ArrayList<>();
        for (String grade : List.of("C16", "C24", "D40")) {
            all.add(DeckPiece.joist().of(grade).section(145, 28).boardLoads(0.02, 0.37, 2000));
            all.add(DeckPiece.joist()
                    .of(grade)
                    .section(120, 33)
                    .overhang(150)
                    .profile(BoardProfile.GROOVED)
                    .wet(true)
                    .boardLoads(0.02, 0.37, 2000));
        }
        return all;
    }

    private static final List<Evaluation.Measured> EVERYTHING = everything();

    private static List<Method> methods() {
        return Stream.concat(En1995.methods().stream(), Equilibrium.methods().stream())
                .toList();
    }

    private static List<Evaluation.Measured> everything() {
        List<Evaluation.Measured> all = new ArrayList<>();
        for (Method method : methods()) {
            List<SubjectKind> subjects = method.description().subjects();
            boolean ofBoards = subjects.contains(SubjectKind.BOARDS);
            List<DeckPiece> pieces = ofBoards
                    ? boards()
                    : members().stream()
                            .filter(m -> subjects.contains(m.kind()))
                            .toList();
            for (DeckPiece piece : pieces) {
                for (String loading : LOADINGS) {
                    for (String restraint : RESTRAINTS) {
                        StandardParameters p = parameters(loading, restraint);
                        Evaluation e = ofBoards ? piece.evaluateBoards(method, p) : piece.evaluate(method, p);
                        if (e instanceof Evaluation.Measured m) {
                            all.add(m);
                        }
                    }
                }
            }
        }
        return all;
    }

    @Test
    void every_line_gives_its_value_when_computed_again() {
        TreeSet<String> equations = new TreeSet<>();
        for (Evaluation.Measured m : EVERYTHING) {
            for (WorkingStep step : m.working()) {
                if (step.substituted().isPresent()) {
                    equations.add(step.equation());
                    assertThat(Arithmetic.of(step))
                            .as(step.symbol() + " = " + step.substituted().get().text())
                            .isCloseTo(step.value(), within(1e-5 * Math.max(1e-6, Math.abs(step.value()))));
                }
            }
        }
        assertThat(equations)
                .contains(
                        "(2.3)",
                        "(2.4), (2.5)",
                        "(3.1)",
                        "(6.3)",
                        "(6.4)",
                        "(6.11)",
                        "(6.13)",
                        "(6.13a)",
                        "(6.30)",
                        "(6.31)",
                        "(6.32)",
                        "(6.33)",
                        "(6.34)",
                        "(6.60)",
                        "(6.61)",
                        "(6.62)",
                        "6.1.5(1)",
                        "3.2(4)",
                        "(2.17)",
                        "(8.2)",
                        "(8.4)",
                        "(8.6) a",
                        "(8.6) c",
                        "(8.6) d",
                        "(8.6) e",
                        "(8.6) f",
                        "(8.7) g",
                        "(8.7) h",
                        "(8.7) j",
                        "(8.7) k",
                        "(8.30)",
                        "(8.31)",
                        "(8.32)",
                        "(8.33)",
                        "(8.34)",
                        "8.2.2(2)",
                        "8.5.2(1)",
                        "8.7.1(3)");
    }

    @Test
    void the_last_line_is_the_utilisation() {
        assertThat(EVERYTHING).isNotEmpty().allSatisfy(m -> {
            WorkingStep last = m.working().get(m.working().size() - 1);
            assertThat(last.symbol()).isEqualTo("utilisation");
            assertThat(last.value()).isEqualTo(m.utilisation());
        });
    }

    @Test
    void found_over_allowed_is_the_utilisation_where_at_most_complies() {
        assertThat(EVERYTHING)
                .filteredOn(m -> m.sense() == Sense.AT_MOST)
                .isNotEmpty()
                .allSatisfy(m -> assertThat(((Measure) m.found()).value() / ((Measure) m.allowed()).value())
                        .isCloseTo(m.utilisation(), within(1e-12)));
    }

    @Test
    void methods_have_different_names_and_their_parameters_too() {
        List<MethodDescription> descriptions =
                En1995.methods().stream().map(Method::description).toList();
        assertThat(descriptions)
                .extracting(MethodDescription::name)
                .doesNotHaveDuplicates()
                .hasSize(26);
        assertThat(descriptions)
                .allSatisfy(d -> assertThat(d.parameters())
                        .as(d.name())
                        .extracting(ParameterDescription::name)
                        .doesNotHaveDuplicates());
    }
}
