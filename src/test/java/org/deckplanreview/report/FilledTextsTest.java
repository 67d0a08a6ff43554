package org.deckplanreview.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.report.FindingBuilder.finding;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.ruleset.Condition;
import org.deckplanreview.ruleset.Rule;
import org.deckplanreview.vocabulary.Sense;
import org.junit.jupiter.api.Test;

/** Advice, cautions and referrals show the figures that count for the finding. The conversions are 25.4 mm to the inch. */
class FilledTextsTest {

    private static final Measure A_YARD = Measure.of(36, MeasureUnit.INCH);
    private static final Need GUARD = new Need(Pointer.of("/platforms/0/edges/0/guard"), "the guard");

    private static Rule limit(Sense sense, Measure... values) {
        return new Rule.Limit(
                "guard height",
                sense,
                java.util.Arrays.stream(values)
                        .map(v -> new Rule.Row(Condition.ALWAYS, List.of(v)))
                        .toList());
    }

    private static FindingBuilder low(Measure least) {
        return finding("guard.height")
                .rule(limit(Sense.AT_LEAST, least))
                .doesNotComply()
                .compares(Measure.mm(900), Sense.AT_LEAST, least);
    }

    private static Optional<String> advice(Report report) {
        return report.findings().get(0).advice();
    }

    @Test
    void advice_shows_the_limit_as_the_ruleset_writes_it() {
        assertThat(advice(ReportBuilder.report(low(Measure.mm(1100)).advice("Make it {limit} high."))))
                .hasValue("Make it 1100 mm high.");
    }

    @Test
    void cautions_and_referrals_show_it_too() {
        Report report = ReportBuilder.report(
                low(Measure.mm(1100)).caution("Below {limit} people tip over.").referral("Show all below {limit}."));
        assertThat(report.cautions()).contains("Below 1100 mm people tip over.");
        assertThat(report.referrals()).contains("Show all below 1100 mm.");
    }

    @Test
    void in_other_units_whoever_keeps_to_the_figure_complies() {
        assertThat(advice(ReportBuilder.report(low(A_YARD).advice("At least {limit}."))))
                .as("914.4 mm")
                .hasValue("At least 915 mm.");
        FindingBuilder most = finding("guard.height")
                .rule(limit(Sense.AT_MOST, A_YARD))
                .doesNotComply()
                .compares(Measure.mm(950), Sense.AT_MOST, A_YARD)
                .advice("At most {limit}.");
        assertThat(advice(ReportBuilder.report(most))).hasValue("At most 914 mm.");
        assertThat(advice(ReportBuilder.reportInInches(low(Measure.mm(1100)).advice("At least {limit}."))))
                .as("43.307 in, over 43 4/16 in")
                .hasValue("At least 3'-7 5/16\".");
    }

    @Test
    void a_limit_in_inches_stays_whole_in_inches() {
        assertThat(advice(ReportBuilder.reportInInches(low(A_YARD).advice("At least {limit}."))))
                .hasValue("At least 3'-0\".");
    }

    @Test
    void a_diameter_that_no_rule_shows_stays_decimal() {
        Measure nail = Measure.of(0.128, MeasureUnit.INCH);
        assertThat(advice(ReportBuilder.reportInInches(low(nail).advice("At least {limit}."))))
                .hasValue("At least 0.128 in.");
        assertThat(advice(ReportBuilder.report(low(nail).advice("At least {limit}."))))
                .as("3.2512 mm")
                .hasValue("At least 3.26 mm.");
    }

    @Test
    void where_it_is_not_known_which_limit_counts_all_that_may_are_shown() {
        FindingBuilder open = finding("guard.height")
                .rule(limit(Sense.AT_LEAST, Measure.mm(900), Measure.mm(1100), Measure.mm(1200)))
                .undetermined(GUARD)
                .mayCount(Measure.mm(1100), Measure.mm(1200))
                .advice("Make it {limit} high.");
        assertThat(advice(ReportBuilder.report(open))).hasValue("Make it 1100 mm or 1200 mm high.");
    }

    @Test
    void a_finding_on_a_part_that_is_not_there_shows_what_the_provision_states() {
        FindingBuilder absent = finding("guard.height")
                .rule(limit(Sense.AT_LEAST, Measure.mm(1100), Measure.mm(1200)))
                .undetermined(GUARD)
                .advice("Make it {limit} high.");
        assertThat(advice(ReportBuilder.report(absent))).hasValue("Make it 1100 mm or 1200 mm high.");
    }

    @Test
    void a_ratio_is_shown_as_one_in_a_number() {
        Measure fall = Measure.of(0.0125, MeasureUnit.RATIO);
        FindingBuilder flat = finding("fall.gradient")
                .rule(limit(Sense.AT_LEAST, fall))
                .doesNotComply()
                .compares(Measure.of(0.01, MeasureUnit.RATIO), Sense.AT_LEAST, fall)
                .advice("Let it fall {1 in limit}, a gradient of {limit}.");
        assertThat(advice(ReportBuilder.report(flat))).hasValue("Let it fall 1 in 80, a gradient of 0.0125.");
    }
}
