package org.deckplanreview.method.nds2018;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE;

import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Percentage;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.Decks;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.measure.Length;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.TimberParameters;
import org.deckplanreview.submission.EdgeKind;
import org.deckplanreview.submission.Grade;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.GuardPosts;
import org.deckplanreview.submission.Species;
import org.deckplanreview.submission.Stating;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Posts 4x4 of southern pine No. 2 under 200 lb at the top (IRC 2021, Table R301.5): F_b 1100 psi (NDS Supplement 2018, Table
 * 4B), C_D 1.6, no C_M up to 1150 psi: 1760 psi on S = 3.5^3 / 6 = 7.1458 in3.
 */
class GuardPostsTest {

    private static Evaluation evaluate(double heightIn, boolean notched, boolean withPosts) {
        double side = INCH.convert(3.5, MILLIMETRE);
        Timber post = Stating.a(Timber.class)
                .with("id", "guard-post")
                .with("breadth", Length.ofMm(side))
                .with("depth", Length.ofMm(side))
                .with("species", Species.SOUTHERN_PINE)
                .with("grade", Grade.NO_2)
                .made();
        Guard guard = Stating.a(Guard.class)
                .with("id", "G1")
                .with("height", Length.ofMm(INCH.convert(heightIn, MILLIMETRE)))
                .with(
                        "posts",
                        withPosts
                                ? Optional.of(new GuardPosts(
                                        "guard-post", Length.ofMm(1500), Optional.empty(), Optional.empty()))
                                : Optional.empty())
                .with("postsNotched", notched)
                .made();
        Layout layout = Decks.rectangle(4000, 3000)
                .timber(post)
                .guard(guard)
                .edge(EdgeKind.OPEN, Decks.line(0, 0, 4000, 0), Optional.of("G1"))
                .layout();
        return new GuardPostBending()
                .evaluate(
                        layout.subjects(SubjectKind.GUARDS).get(0),
                        Values.onFile().with("guardPostLoad", 200, POUND_FORCE),
                        new ReviewContext(layout, TimberParameters.NO_LOADS, List.of(Derived.known("none"))));
    }

    /** 1760 * 7.1458 / 200 = 62.883 in. */
    @ParameterizedTest
    @CsvSource({"36, true", "62.8, true", "62.9, false"})
    void a_4x4_takes_200_lb_at_62_9_in(double height, boolean enough) {
        assertThat(evaluate(height, false, true)).isInstanceOfSatisfying(Evaluation.Measured.class, m -> {
            assertThat(m.utilisation()).isCloseTo(height / 62.883, Percentage.withPercentage(0.01));
            assertThat(m.utilisation() <= 1).isEqualTo(enough);
        });
    }

    @Test
    void notched_posts_are_out_of_scope() {
        assertThat(evaluate(36, true, true)).isInstanceOf(Evaluation.OutOfScope.class);
    }

    @Test
    void posts_that_are_not_described_are_asked_for() {
        assertThat(evaluate(36, false, false)).isInstanceOf(Evaluation.Missing.class);
    }
}
