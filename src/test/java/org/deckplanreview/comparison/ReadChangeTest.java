package org.deckplanreview.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.NotReviewed;
import org.junit.jupiter.api.Test;

class ReadChangeTest {

    private static final Pointer FIRST = Pointer.of("/timbers/0/gradedFor");
    private static final Pointer SECOND = Pointer.of("/timbers/1/gradedFor");
    private static final NotReviewed BOTH = new NotReviewed("The grade", FIRST, List.of(SECOND));
    private static final NotReviewed ONE = new NotReviewed("The grade", SECOND, List.of());

    @Test
    void what_only_the_first_edition_reads_is_no_longer_reviewed() {
        ReadChange change = ReadChange.of(List.of(), List.of(BOTH));
        assertThat(change.noLongerReviewed())
                .containsExactly(new ReadChange.Member("The grade", FIRST), new ReadChange.Member("The grade", SECOND));
        assertThat(change.newlyReviewed()).isEmpty();
    }

    @Test
    void what_only_the_second_edition_reads_is_newly_reviewed() {
        ReadChange change = ReadChange.of(List.of(BOTH), List.of(ONE));
        assertThat(change.newlyReviewed()).containsExactly(new ReadChange.Member("The grade", FIRST));
        assertThat(change.noLongerReviewed()).isEmpty();
    }

    @Test
    void what_neither_reads_has_not_changed() {
        assertThat(ReadChange.of(List.of(BOTH), List.of(BOTH))).isEqualTo(new ReadChange(List.of(), List.of()));
    }
}
