package org.deckplanreview.submission;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;

/** Documents that are nearly right, and bytes of any kind: reading always ends in one of its three results. */
class AnyDocumentTest {

    private static final List<String> ODD_VALUES = List.of(
            "null",
            "true",
            "0",
            "-0.0",
            "-1",
            "0.04",
            "1",
            "2.0",
            "3600",
            "4800",
            "10000",
            "1000000",
            "-1000000",
            "1e20",
            "1e-20",
            "12345678901234567890123456789012",
            "\"\"",
            "\"P1\"",
            "\"J\"",
            "\"level\"",
            "\"1:80\"",
            "\"2.5 kN/m2\"",
            "\"010 kN/m2\"",
            "\"0 kN\"",
            "\"00.5 kN\"",
            "\"0.50 kN\"",
            "\"007 km\"",
            "\"00 %\"",
            "\"0400 N/mm2\"",
            "\"2026-02-30\"",
            "\"\\u0000\"",
            "\"\\ud83c\\udf33\"",
            "[]",
            "[0, 0]",
            "[[0, 0], [1, 1], [0, 1]]",
            "[null]",
            "{}",
            "{\"from\": [0, 0], \"to\": [0, 0]}",
            "{\"\": {}}");

    private final SubmissionReader reader = new SubmissionReader();

    /** One change of a document: which of its values, in the order of the text, and what becomes of it. */
    record Change(int place, int kind, int value) {}

    @Property(tries = 3000)
    void a_document_changed_anywhere_is_read_or_told_what_is_wrong(
            @ForAll("changes") @Size(min = 1, max = 6) List<Change> changes) {
        ObjectNode document = SampleDeck.everyMember().node();
        changes.forEach(change -> apply(change, document));

        ReadResult result = reader.read(document.toString().getBytes(StandardCharsets.UTF_8));

        if (result instanceof ReadResult.Invalid invalid) {
            assertThat(invalid.faults()).isNotEmpty().doesNotHaveDuplicates().isSorted();
            invalid.faults().forEach(fault -> {
                assertThat(fault.detail()).isNotBlank();
                assertThat(fault.accepted()).isNotBlank();
                assertThat(fault.pointer().value()).matches("(/[^/]*)*");
            });
        } else {
            assertThat(result).isInstanceOf(ReadResult.Read.class);
        }
    }

    @Property(tries = 1000)
    void a_text_cut_or_broken_anywhere_is_one_of_three_results(
            @ForAll("bytePlaces") int place, @ForAll byte value, @ForAll boolean cut) {
        byte[] bytes = SampleDeck.everyMember().bytes();
        int at = place % bytes.length;
        bytes[at] = value;

        ReadResult result = reader.read(cut ? Arrays.copyOf(bytes, at) : bytes);

        if (cut) {
            assertThat(result).isInstanceOf(ReadResult.NotJson.class);
        } else {
            assertThat(result).isNotNull();
        }
        if (result instanceof ReadResult.NotJson refused) {
            assertThat(refused.detail()).isNotBlank();
            assertThat(refused.line()).isBetween(1, 2);
            assertThat(refused.column()).isBetween(1, bytes.length + 2);
        }
    }

    @Property(tries = 1000)
    void bytes_of_any_kind_are_no_submission(@ForAll byte[] bytes) {
        assertThat(reader.read(bytes)).isNotInstanceOf(ReadResult.Read.class);
    }

    @Property(tries = 200)
    void reading_twice_gives_the_same(@ForAll("changes") @Size(min = 1, max = 6) List<Change> changes) {
        ObjectNode document = SampleDeck.everyMember().node();
        changes.forEach(change -> apply(change, document));
        byte[] bytes = document.toString().getBytes(StandardCharsets.UTF_8);

        assertThat(new SubmissionReader().read(bytes)).isEqualTo(reader.read(bytes));
    }

    @Provide
    Arbitrary<List<Change>> changes() {
        return Combinators.combine(
                        Arbitraries.integers().between(0, 9999),
                        Arbitraries.integers().between(0, 3),
                        Arbitraries.integers().between(0, ODD_VALUES.size() - 1))
                .as(Change::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(6);
    }

    @Provide
    Arbitrary<Integer> bytePlaces() {
        return Arbitraries.integers().between(0, 99_999);
    }

    private static void apply(Change change, ObjectNode document) {
        List<Runnable> places = new ArrayList<>();
        collect(document, change, places);
        if (!places.isEmpty()) {
            places.get(change.place() % places.size()).run();
        }
    }

    private static void collect(JsonNode node, Change change, List<Runnable> places) {
        JsonNode odd = SampleDeck.parse(ODD_VALUES.get(change.value()));
        if (node instanceof ObjectNode object) {
            for (Map.Entry<String, JsonNode> member : object.properties()) {
                String name = member.getKey();
                places.add(
                        switch (change.kind()) {
                            case 0 -> () -> object.remove(name);
                            case 1 -> () -> object.set(name + "x", object.get(name));
                            default -> () -> object.set(name, odd);
                        });
                collect(member.getValue(), change, places);
            }
        } else if (node instanceof ArrayNode list) {
            for (int i = 0; i < list.size(); i++) {
                int index = i;
                places.add(
                        switch (change.kind()) {
                            case 0 -> () -> list.remove(index);
                            case 1 -> () -> list.add(list.get(index).deepCopy());
                            default -> () -> list.set(index, odd);
                        });
                collect(list.get(i), change, places);
            }
        }
    }
}
