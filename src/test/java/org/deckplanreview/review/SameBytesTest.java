package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.deckplanreview.assessment.Catalogue;
import org.deckplanreview.rendering.json.JsonRendering;
import org.deckplanreview.rendering.text.TextRendering;
import org.deckplanreview.rendering.text.WorkingShown;
import org.deckplanreview.report.Detail;
import org.deckplanreview.report.Report;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The same submission gets the same bytes, wherever and however often it is reviewed. */
class SameBytesTest {

    private static final int THREADS = 4;

    private Locale locale;
    private TimeZone zone;

    @BeforeEach
    void keepDefaults() {
        locale = Locale.getDefault();
        zone = TimeZone.getDefault();
    }

    @AfterEach
    void restoreDefaults() {
        Locale.setDefault(locale);
        TimeZone.setDefault(zone);
    }

    /** Other digits, decimal commas, another calendar, a small i without a dot, and days that begin early and late. */
    @ParameterizedTest
    @CsvSource({
        "ar-EG-u-nu-arab, Africa/Cairo",
        "de-DE, Europe/Berlin",
        "th-TH-u-ca-buddhist-nu-thai, Asia/Bangkok",
        "tr-TR, Pacific/Kiritimati",
        "fa-IR-u-nu-arabext, Pacific/Pago_Pago"
    })
    void under_another_locale_and_time_zone(String language, String timeZone) {
        List<String> here = all(BuiltIn.REVIEWER);
        Locale.setDefault(Locale.forLanguageTag(language));
        TimeZone.setDefault(TimeZone.getTimeZone(timeZone));
        assertThat(String.format("%.1f", 1.5))
                .as("what the locale does to a number")
                .isNotEqualTo("1.5");
        Catalogue catalogue = ReviewServices.catalogue();
        Reviewer there = ReviewServices.reviewerOf(catalogue, ReviewServices.builtIn(catalogue.vocabulary()), "test");
        assertThat(all(there)).isEqualTo(here);
    }

    @Test
    void on_several_threads_at_once() throws Exception {
        List<String> alone = all(BuiltIn.REVIEWER);
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        try {
            List<Future<List<String>>> together = new ArrayList<>();
            for (int i = 0; i < 2 * THREADS; i++) {
                together.add(threads.submit(() -> all(BuiltIn.REVIEWER)));
            }
            for (Future<List<String>> one : together) {
                assertThat(one.get()).isEqualTo(alone);
            }
        } finally {
            threads.shutdownNow();
        }
    }

    /** Both forms of the report on each sample. */
    private static List<String> all(Reviewer reviewer) {
        List<String> forms = new ArrayList<>();
        BuiltIn.samples().forEach(sample -> {
            Report report = ((ReviewResult.Reviewed) reviewer.review(BuiltIn.read(sample))).report();
            forms.add(new String(JsonRendering.line(report, Detail.FULL), StandardCharsets.UTF_8));
            forms.add(TextRendering.render(report, WorkingShown.ALL));
        });
        return forms;
    }
}
