package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** Corrosion protection of a fixing, or the metal it is made of. */
public enum FixingFinish implements Worded {
    NONE("none"),
    FE_ZN_12C("Fe/Zn-12c"),
    FE_ZN_25C("Fe/Zn-25c"),
    Z350("Z350"),
    HOT_DIP("hot-dip"),
    STAINLESS_A2("stainless-A2"),
    STAINLESS_A4("stainless-A4");

    private final String word;

    FixingFinish(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
