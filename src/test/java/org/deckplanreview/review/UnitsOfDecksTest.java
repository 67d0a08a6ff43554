package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.submission.InInches;
import org.deckplanreview.submission.Pointer;
import org.deckplanreview.submission.SampleDeck;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The same deck in mm and in inches (25.4 mm, the international yard and pound agreement of 1959) is decided alike, also
 * where a dimension lies exactly on its limit and an inch's decimals do not end.
 */
class UnitsOfDecksTest {

    /** What a finding decides, of what. */
    private record Decided(String provision, Pointer subject, Determination determination, List<Pointer> needs) {
        static Decided of(ReportedFinding f) {
            return new Decided(
                    f.provision(),
                    f.subject().pointer(),
                    f.determination(),
                    f.needs().stream().map(n -> n.pointer()).toList());
        }
    }

    static List<Path> samplesInMillimetres() {
        return BuiltIn.samples().stream()
                .filter(s -> BuiltIn.document(s).path("units").asText().equals("mm"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("samplesInMillimetres")
    void a_sample_is_decided_alike_in_both(Path sample) {
        JsonNode document = BuiltIn.document(sample);
        Report mm = BuiltIn.report(BuiltIn.bytes(document));
        Report inches = BuiltIn.report(BuiltIn.bytes(InInches.of(document)));

        assertThat(inches.outcome()).isEqualTo(mm.outcome());
        assertThat(inches.findings().stream().map(Decided::of))
                .containsExactlyInAnyOrderElementsOf(
                        mm.findings().stream().map(Decided::of).toList());
    }

    /** Limits of Approved Document K 2013, Diagram 3.1: guards of 1100 mm, and openings that a sphere of 100 mm does not pass. */
    @ParameterizedTest
    @CsvSource({
        "/platforms/0/guards/0/height, guard.dwelling.height, 1100, COMPLIES",
        "/platforms/0/guards/0/height, guard.dwelling.height, 1100.001, COMPLIES",
        "/platforms/0/guards/0/height, guard.dwelling.height, 1099.999, DOES_NOT_COMPLY",
    })
    void a_dimension_at_its_limit_is_decided_alike_in_both(
            String pointer, String provision, double mm, Determination determination) {
        SampleDeck deck = SampleDeck.complete().with(pointer, mm);

        assertThat(decided(deck.node(), provision)).containsOnly(determination);
        assertThat(decided(InInches.of(deck.node()), provision)).containsOnly(determination);
    }

    private static List<Determination> decided(JsonNode document, String provision) {
        return BuiltIn.report(BuiltIn.bytes(document)).findings().stream()
                .filter(f -> f.provision().equals(provision))
                .map(ReportedFinding::determination)
                .filter(d -> d != Determination.NOT_APPLICABLE)
                .toList();
    }
}
