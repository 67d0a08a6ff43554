package org.deckplanreview.method.nds2018;

/** A reference design value of lumber, psi. */
enum Property {
    BENDING("Fb", "F_b", "", "bending design value"),
    SHEAR("Fv", "F_v", "", "shear design value"),
    BEARING("FcPerp", "F_c,perp", "", "design value in compression perpendicular to grain"),
    COMPRESSION("Fc", "F_c", "", "design value in compression parallel to grain"),
    ELASTICITY("E", "E", ",E", "modulus of elasticity"),
    STABILITY("Emin", "E_min", ",E", "modulus of elasticity for stability");

    private final String word;
    private final String symbol;
    private final String factorSuffix;
    private final String meaning;

    Property(String word, String symbol, String factorSuffix, String meaning) {
        this.word = word;
        this.symbol = symbol;
        this.factorSuffix = factorSuffix;
        this.meaning = meaning;
    }

    /** As tables name it. */
    String word() {
        return word;
    }

    String symbol() {
        return symbol;
    }

    /** What tells a factor of a modulus from that of a strength in one working. */
    String factorSuffix() {
        return factorSuffix;
    }

    String meaning() {
        return meaning;
    }
}
