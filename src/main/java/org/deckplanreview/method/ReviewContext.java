package org.deckplanreview.method;

import java.util.List;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.submission.Derived;
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
}
