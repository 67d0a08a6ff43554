package org.deckplanreview.rendering.drawing;

import org.deckplanreview.assessment.Assessment;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.report.Report;

/**
 * What drawings are made of.
 *
 * @param loadPath under the loads that the report was made with
 * @param report of the same deck
 */
public record DrawnDeck(Layout layout, LoadPath loadPath, Report report) {

    public static DrawnDeck of(Assessment assessment, Report report) {
        return new DrawnDeck(assessment.layout(), assessment.loadPath(), report);
    }
}
