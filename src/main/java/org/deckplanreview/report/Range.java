package org.deckplanreview.report;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.ArrayList;
import java.util.List;

/** Numbers of a list's entries that follow each other, from the first to the last. */
public record Range(int first, int last) {

    /** The numbers in their order, in as few ranges as that takes. */
    static List<Range> of(List<Integer> numbers) {
        List<Range> ranges = new ArrayList<>();
        for (int number : numbers) {
            int end = ranges.size() - 1;
            if (end >= 0 && ranges.get(end).last() + 1 == number) {
                ranges.set(end, new Range(ranges.get(end).first(), number));
            } else {
                ranges.add(new Range(number, number));
            }
        }
        return ranges;
    }

    @JsonValue
    int[] ends() {
        return new int[] {first, last};
    }
}
