package org.deckplanreview.assessment;

import java.util.List;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.ruleset.Edition;

/**
 * All findings of one edition on one layout.
 *
 * @param loadPath under the edition's loads
 * @param findings in the edition's order
 * @param assumptions of the layout, the loads and the methods, without repetition
 * @param outcome the worst determination of the shall provisions; COMPLIES if none is worse
 */
public record Assessment(
        Layout layout,
        LoadPath loadPath,
        Edition edition,
        List<Finding> findings,
        List<String> assumptions,
        Determination outcome) {}
