package org.deckplanreview.method.nds2018;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.layout.Span;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.en1995.Arithmetic;
import org.deckplanreview.method.en1995.DeckPiece;
import org.deckplanreview.method.en1995.LinearAnalysis.Share;
import org.deckplanreview.method.en1995.PostPiece;
import org.deckplanreview.method.en1995.StandardParameters;
import org.deckplanreview.submission.Grade;
import org.deckplanreview.submission.NotchSide;
import org.deckplanreview.submission.Species;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.junit.jupiter.api.Test;

/** What a working shows is what was calculated: every line, computed again from the text alone, gives its value. */
class ShownWorkingsTest {

    private static final List<Evaluation.Measured> EVERYTHING = everything();

    private static StandardParameters parameters(String restraint, String load) {
        return Values.onFile()
                .with("sideRestraint", restraint)
                .with("deflectionLoad", load)
                .with("spanRatio", 360)
                .with("cantileverRatio", 180)
                .with("tipLoad", 220, MeasureUnit.POUND_FORCE)
                .with("tipRatio", 180);
    }

    private static List<Evaluation.Measured> everything() {
        List<Evaluation.Measured> all = new ArrayList<>();
        for (StandardParameters p :
                List.of(parameters("boards", "live"), parameters("joists", "total"), parameters("none", "total"))) {
            for (Method method : Nds2018.methods()) {
                if (method.description().subjects().contains(SubjectKind.JOISTS)) {
                    members().forEach(m -> add(all, m.evaluate(method, p)));
                } else if (method.description().subjects().contains(SubjectKind.POSTS)) {
                    posts().forEach(post -> add(all, post.evaluate(method, p)));
                }
            }
        }
        return all;
    }

    private static void add(List<Evaluation.Measured> all, Evaluation evaluation) {
        if (evaluation instanceof Evaluation.Measured m) {
            all.add(m);
        }
    }

    private static List<DeckPiece> members() {
        List<DeckPiece> all = new ArrayList<>();
        for (Species species : Species.values()) {
            for (double depth : new double[] {139.7, 184.15, 234.95, 285.75}) {
                all.add(loaded(DeckPiece.joist().section(38.1, depth).of(species, Grade.NO_2)));
                all.add(single(DeckPiece.joist().section(38.1, depth).of(species, Grade.NO_2))
                        .notched(depth / 5, 60, 0, NotchSide.SUPPORT));
                all.add(single(DeckPiece.joist().section(38.1, depth).of(species, Grade.NO_2))
                        .notched(depth / 5, 600, 0, NotchSide.OPPOSITE));
                all.add(loaded(DeckPiece.beam(2).section(38.1, depth).of(species, Grade.NO_2))
                        .joistsEvery(406.4)
                        .postDepth(88.9)
                        .postsOff(10));
                all.add(loaded(DeckPiece.beam(1).section(38.1, depth).of(species, Grade.NO_2))
                        .joistsEvery(406.4));
            }
        }
        return all;
    }

    private static DeckPiece loaded(DeckPiece piece) {
        return piece.length(4225)
                .support(125, 50)
                .support(3525, 50)
                .stretch(Span.Kind.BETWEEN_SUPPORTS, 125, 3525)
                .stretch(Span.Kind.CANTILEVER_AT_END, 3525, 4225)
                .under(a -> a.with(Action.PERMANENT, share(0.2))
                        .with(Action.IMPOSED, share(1))
                        .with(Action.SNOW, share(0.6)));
    }

    private static DeckPiece single(DeckPiece piece) {
        double[] support = {1700, 1700, 130};
        Share share = new Share(List.of(new double[] {9e5, 0, 7.123, 0}), List.of(support, support), 5000);
        return piece.span(3400, 50).under(a -> a.with(Action.IMPOSED, share));
    }

    private static Share share(double f) {
        return new Share(
                List.of(new double[] {9e5 * f, 8e5 * f, 7.123 * f, f}, new double[] {0, 8e5 * f, 3.3 * f, 2 * f}),
                List.of(new double[] {1700 * f, 1700 * f, 130 * f}, new double[] {2100 * f, 3900 * f, 900 * f}),
                5000 * f);
    }

    private static List<PostPiece> posts() {
        List<PostPiece> all = new ArrayList<>();
        for (Species species : Species.values()) {
            for (double height : new double[] {300, 1200, 2400, 4500}) {
                all.add(PostPiece.post(88.9, 88.9)
                        .of(species, Grade.NO_2)
                        .height(height)
                        .loads(2000, 9000)
                        .weight(150));
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
                            .isCloseTo(step.value(), within(1e-4 * Math.max(1e-6, Math.abs(step.value()))));
                }
            }
        }
        assertThat(equations)
                .contains(
                        "(3.3-1)",
                        "(3.3-5)",
                        "(3.3-6)",
                        "(3.4-2)",
                        "(3.4-3)",
                        "(3.4-5)",
                        "(3.5-1)",
                        "(3.7-1)",
                        "(3.10-2)",
                        "3.5.1",
                        "3.7.1.4",
                        "3.7.1.5",
                        "3.10.2",
                        "4.3.1",
                        "Table 3.3.3");
    }

    @Test
    void the_last_line_is_the_utilisation_and_found_over_allowed_is_too() {
        assertThat(EVERYTHING).isNotEmpty().allSatisfy(m -> {
            WorkingStep last = m.working().get(m.working().size() - 1);
            assertThat(last.symbol()).isEqualTo("utilisation");
            assertThat(last.value()).isEqualTo(m.utilisation());
            assertThat(((Measure) m.found()).value() / ((Measure) m.allowed()).value())
                    .isCloseTo(m.utilisation(), within(1e-12));
        });
    }

    @Test
    void methods_have_different_names_and_their_parameters_too() {
        List<MethodDescription> descriptions =
                Nds2018.methods().stream().map(Method::description).toList();
        assertThat(descriptions)
                .extracting(MethodDescription::name)
                .containsExactly(
                        "nds2018.bending",
                        "nds2018.shear",
                        "nds2018.bearing",
                        "nds2018.deflection",
                        "nds2018.tipDeflection",
                        "nds2018.column",
                        "nds2018.guardPost");
        assertThat(descriptions)
                .allSatisfy(d -> assertThat(d.parameters())
                        .as(d.name())
                        .extracting(ParameterDescription::name)
                        .doesNotHaveDuplicates());
    }
}
