package org.deckplanreview.cli;

import org.deckplanreview.report.Detail;

/** Reads the words of {@code --detail}. */
class DetailWord extends WordConverter<Detail> {
    DetailWord() {
        super(Detail.values());
    }
}
