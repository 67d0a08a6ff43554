package org.deckplanreview.submission;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Length;
import org.junit.jupiter.api.Test;

/** What a review has not read is found by what it has read. */
class ReadLogTest {

    private static final SubmissionReader READER = new SubmissionReader();

    private final ReadResult.Read read = read(SampleDeck.everyMember());
    private final ReadLog log = READER.logOf(read);

    @Test
    void the_build_has_woven_the_records() {
        assertThat(Stream.of(Submission.class, Site.class, PlanPoint.class, Fall.class))
                .allMatch(type -> type.isAnnotationPresent(Woven.class));
    }

    @Test
    void what_nobody_reads_is_not_reviewed() {
        assertThat(notReviewed()).contains("/use/roofOver", "/site/soil/soilClass", "/platforms/0/fall/gradient");
    }

    @Test
    void what_is_read_is_reviewed() {
        log.during(() -> read.submission().use().roofOver());

        assertThat(notReviewed()).doesNotContain("/use/roofOver").contains("/use/occupancy");
    }

    @Test
    void what_is_read_outside_a_review_does_not_count() {
        log.during(() -> read.submission().use().occupancy());
        read.submission().use().roofOver();

        assertThat(notReviewed()).contains("/use/roofOver");
    }

    @Test
    void to_reach_into_a_part_is_not_to_read_what_is_in_it() {
        log.during(() -> read.submission().platforms().get(0).posts().get(0));

        assertThat(notReviewed()).contains("/platforms/0/posts/0/base");
    }

    @Test
    void equality_and_text_of_records_do_not_count() {
        log.during(() -> read.submission().toString() + read.submission().hashCode());

        assertThat(notReviewed()).contains("/use/roofOver", "/platforms/0/posts/0/base");
    }

    @Test
    void a_point_is_one_value() {
        log.during(
                () -> read.submission().platforms().get(0).posts().get(0).at().yMm());

        assertThat(notReviewed()).doesNotContain("/platforms/0/posts/0/at");
    }

    @Test
    void a_line_is_one_value() {
        log.during(() -> read.submission().site().walls().get(0).line().from());

        assertThat(notReviewed())
                .noneMatch(pointer -> pointer.startsWith("/site/walls/0/line"))
                .contains("/platforms/0/beams/0/line");
    }

    @Test
    void a_member_that_the_records_call_otherwise_keeps_the_name_that_it_was_written_with() {
        log.during(
                () -> read.submission().platforms().get(0).fall().orElseThrow().oneIn());

        assertThat(notReviewed()).doesNotContain("/platforms/0/fall/gradient").contains("/platforms/0/fall/direction");
    }

    @Test
    void what_only_names_something_is_no_value() {
        assertThat(pointers(log.notReviewed()))
                .noneMatch(pointer -> pointer.matches(".*/(id|label|title)|/reference"))
                .contains("/platforms/0/ledger/wall");
    }

    @Test
    void the_same_member_of_several_parts_is_told_once_with_all_its_places() {
        NotReviewed tops = log.notReviewed().stream()
                .filter(member -> member.pointer().equals(Pointer.of("/platforms/0/posts/0/top")))
                .findFirst()
                .orElseThrow();

        assertThat(tops.also())
                .containsExactly(Pointer.of("/platforms/0/posts/1/top"), Pointer.of("/platforms/0/posts/2/top"));
        assertThat(tops.meaning()).isEqualTo("How the upper end sheds water.");
    }

    @Test
    void the_part_that_is_read_of_several_is_left_out() {
        log.during(() -> read.submission().platforms().get(0).posts().get(1).top());

        assertThat(notReviewed()).contains("/platforms/0/posts/0/top", "/platforms/0/posts/2/top");
        assertThat(notReviewed()).doesNotContain("/platforms/0/posts/1/top");
    }

    @Test
    void a_corner_of_an_outline_has_the_meaning_of_the_outline() {
        assertThat(log.notReviewed())
                .filteredOn(member -> member.pointer().equals(Pointer.of("/platforms/0/outline/0")))
                .extracting(NotReviewed::meaning)
                .containsExactly("Outline of the platform in plan, corner by corner.");
    }

    @Test
    void what_is_read_of_a_copy_is_read_of_what_was_given() {
        log.during(() -> {
            Site site = read.submission().site();
            Submission copy = read.submission().with(site.withFrostDepth(Length.ofMm(900)));
            return Optional.of(copy.site().snowLoad());
        });

        assertThat(notReviewed()).doesNotContain("/site/snowLoad").contains("/site/frostDepth", "/site/windPressure");
    }

    @Test
    void every_value_of_the_document_is_followed() {
        assertThat(log.notReviewed()).allMatch(member -> !member.meaning().isBlank());
        assertThat(notReviewed()).hasSize(Values.count(read.tree()));
    }

    @Test
    void reviews_at_the_same_time_keep_their_reads_apart() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Future<List<String>>> all = IntStream.range(0, 200)
                    .mapToObj(i -> threads.submit(() -> {
                        ReadResult.Read own = read(SampleDeck.complete());
                        ReadLog ownLog = READER.logOf(own);
                        Object unused = i % 2 == 0
                                ? ownLog.during(() -> own.submission().use().youngChildren())
                                : ownLog.during(() -> own.submission().use().occupancy());
                        assertThat(unused).isNotNull();
                        return pointers(ownLog.notReviewed()).stream()
                                .filter(p -> p.startsWith("/use"))
                                .toList();
                    }))
                    .toList();
            for (int i = 0; i < all.size(); i++) {
                assertThat(all.get(i).get()).containsExactly(i % 2 == 0 ? "/use/occupancy" : "/use/youngChildren");
            }
        } finally {
            threads.shutdownNow();
        }
    }

    private List<String> notReviewed() {
        return pointers(log.notReviewed());
    }

    private static List<String> pointers(List<NotReviewed> members) {
        return members.stream()
                .flatMap(member -> Stream.concat(Stream.of(member.pointer()), member.also().stream()))
                .map(Pointer::value)
                .toList();
    }

    private static ReadResult.Read read(SampleDeck deck) {
        return (ReadResult.Read) READER.read(deck.bytes());
    }

    /** Counted in the document, by names that the sample uses. */
    private static final class Values {
        private static int count(JsonNode node) {
            if (node.isObject() && !isLine(node)) {
                return node.propertyStream()
                        .filter(member ->
                                !List.of("id", "label", "title", "reference").contains(member.getKey()))
                        .mapToInt(member -> count(member.getValue()))
                        .sum();
            }
            if (node.isArray() && node.path(0).isContainerNode()) {
                return node.valueStream().mapToInt(Values::count).sum();
            }
            return 1;
        }

        private static boolean isLine(JsonNode node) {
            return node.path("from").isArray();
        }
    }
}
