package org.deckplanreview.schedule;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Word;
import org.deckplanreview.method.GivenParameters;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Table;

/** Values of site practice for tests: frame 2400 to 6000, posts 2400 and 3000, boards 3600 and 4800, a kerf of 3 mm. */
public final class GivenPractice {

    private GivenPractice() {}

    public static Parameters parameters() {
        return new GivenParameters()
                .table(
                        "stockLengths",
                        Stream.of(
                                        Stream.of(2400, 3000, 3600, 4200, 4800, 5400, 6000)
                                                .map(l -> stock("frame", l)),
                                        Stream.of(3000, 2400).map(l -> stock("posts", l)),
                                        Stream.of(3600, 4800).map(l -> stock("boards", l)))
                                .flatMap(s -> s)
                                .toList())
                .with("sawKerf", "3 mm")
                .with("triangleStep", "100 mm")
                .with("rectangleTolerance", "1 mm")
                .with("fixingsPerCrossing", "2")
                .table(
                        "orderOfWork",
                        List.of(
                                step("Set out the posts.", false),
                                step("Measure the diagonals before the posts are concreted.", true)));
    }

    static SitePractice practice() {
        return SitePractice.of(parameters());
    }

    private static Table.Row stock(String use, double mm) {
        return new Table.Row(Map.of("use", new Word(use), "length", Measure.of(mm, MeasureUnit.MILLIMETRE)));
    }

    private static Table.Row step(String step, boolean hold) {
        return new Table.Row(Map.of("step", new Word(step), "hold", new Flag(hold)));
    }
}
