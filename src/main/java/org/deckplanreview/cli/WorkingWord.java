package org.deckplanreview.cli;

import org.deckplanreview.rendering.text.WorkingShown;

/** Reads the words of {@code --working}. */
class WorkingWord extends WordConverter<WorkingShown> {
    WorkingWord() {
        super(WorkingShown.values());
    }
}
