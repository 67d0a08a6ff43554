package org.deckplanreview.comparison;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.NotReviewed;

/**
 * Members that the submission gives and that only one of two editions reads.
 *
 * @param noLongerReviewed read under the first edition alone
 * @param newlyReviewed read under the second edition alone
 */
public record ReadChange(List<Member> noLongerReviewed, List<Member> newlyReviewed) {
    public ReadChange {
        noLongerReviewed = List.copyOf(noLongerReviewed);
        newlyReviewed = List.copyOf(newlyReviewed);
    }

    /** @param meaning what it is, in the words of the schema */
    public record Member(String meaning, Pointer pointer) {}

    /** @param before what was not read under the first edition, {@code after} under the second */
    static ReadChange of(List<NotReviewed> before, List<NotReviewed> after) {
        return new ReadChange(without(after, before), without(before, after));
    }

    private static List<Member> without(List<NotReviewed> these, List<NotReviewed> others) {
        Set<Pointer> known = others.stream().flatMap(ReadChange::pointers).collect(Collectors.toSet());
        return these.stream()
                .flatMap(member -> pointers(member)
                        .filter(pointer -> !known.contains(pointer))
                        .map(pointer -> new Member(member.meaning(), pointer)))
                .toList();
    }

    private static Stream<Pointer> pointers(NotReviewed member) {
        return Stream.concat(Stream.of(member.pointer()), member.also().stream());
    }
}
