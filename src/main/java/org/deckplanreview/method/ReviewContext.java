package org.deckplanreview.method;

import java.math.RoundingMode;
import java.util.List;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.measure.FeetInches;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.submission.Submission;

/**
 * What methods and quantities can see.
 *
 * @param loadCategories category of the imposed load of each platform, in the submission's order
 */
public record ReviewContext(Layout layout, LoadPath loadPath, List<Derived<String>> loadCategories) {
    public Submission submission() {
        return layout.submission();
    }

    /** The units in which the review is written. */
    public UnitSystem units() {
        return submission().units().system();
    }

    /** A measure for a remark, a need or an assumption. */
    public String written(Measure measure) {
        return Phrases.of(measure, units());
    }

    /** A measure that something must have at least, rounded up to what can be measured on site. */
    public String writtenAtLeast(Measure measure) {
        Measure shown = units().measure(measure);
        return shown.unit() == MeasureUnit.INCH
                ? FeetInches.of(shown.value(), RoundingMode.CEILING)
                : Phrases.of(Numbers.workable(shown.value(), RoundingMode.CEILING), shown.unit());
    }
}
