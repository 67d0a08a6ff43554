package org.deckplanreview.generator;

import java.util.List;

/**
 * What builders of a part of the world work with. Lengths in mm, whatever the submission's unit. The figures are invented
 * rules of thumb for plausible decks and no advice.
 *
 * @param rulesets regions with the years in which their decks are reviewed
 * @param joists lightest first
 * @param joistSpacingsMm usual ones first
 * @param posts lightest first
 * @param woods strength classes or species that the yards sell, usual ones more often
 * @param footingForSquareMetreMm side of a square footing that carries one square metre of deck; others follow by area
 */
record Practice(
        List<Place> rulesets,
        String units,
        List<Piece> boards,
        List<Piece> joists,
        List<Double> joistSpacingsMm,
        List<Piece> beams,
        List<Piece> posts,
        List<String> woods,
        Piece brace,
        Piece string,
        Piece tread,
        double footingForSquareMetreMm,
        double guardFromDropMm,
        double guardHeightMm,
        double guardOpeningMm,
        double leastRiseMm,
        double largestRiseMm,
        double goingMm,
        double handrailMm,
        double guardTriangleMm,
        double footingDepthMm,
        double footingTopMm) {

    /** @param edition empty where the day of the review picks it */
    record Place(String region, String edition, int firstYear) {}

    /** A section with the span that it is usually trusted with. */
    record Piece(double breadthMm, double depthMm, double spanMm) {}

    static final Practice BRITISH = new Practice(
            List.of(
                    new Place("uk-england", "", 2015),
                    new Place("uk-scotland", "", 2025),
                    new Place("uk-wales", "", 2025),
                    new Place("uk-northern-ireland", "", 2025)),
            "mm",
            List.of(new Piece(145, 32, 500), new Piece(120, 35, 500), new Piece(145, 38, 600)),
            List.of(
                    new Piece(47, 97, 1500),
                    new Piece(47, 147, 2400),
                    new Piece(47, 170, 2800),
                    new Piece(47, 195, 3300),
                    new Piece(47, 220, 3700)),
            List.of(400.0, 300.0, 450.0, 600.0),
            List.of(new Piece(47, 147, 1200), new Piece(47, 195, 1700), new Piece(47, 220, 2000)),
            List.of(new Piece(100, 100, 0), new Piece(125, 125, 0), new Piece(150, 150, 0)),
            List.of("C16", "C24", "C24", "C24", "C24"),
            new Piece(47, 97, 0),
            new Piece(47, 245, 0),
            new Piece(145, 45, 0),
            380,
            380,
            1100,
            95,
            152,
            170,
            255,
            950,
            95,
            900,
            50);

    static final Practice AMERICAN = new Practice(
            List.of(
                    new Place("us-irc", "2015", 2015),
                    new Place("us-irc", "2018", 2018),
                    new Place("us-irc", "2021", 2021)),
            "in",
            List.of(new Piece(139.7, 25.4, 406.4), new Piece(139.7, 38.1, 609.6)),
            List.of(
                    new Piece(38.1, 139.7, 2600),
                    new Piece(38.1, 184.15, 3300),
                    new Piece(38.1, 234.95, 4100),
                    new Piece(38.1, 285.75, 4800)),
            List.of(406.4, 304.8, 609.6),
            List.of(new Piece(38.1, 184.15, 1900), new Piece(38.1, 234.95, 2300), new Piece(38.1, 285.75, 2700)),
            List.of(new Piece(88.9, 88.9, 0), new Piece(139.7, 139.7, 0)),
            List.of("southern-pine", "southern-pine", "douglas-fir-larch", "hem-fir", "western-cedars"),
            new Piece(38.1, 88.9, 0),
            new Piece(38.1, 285.75, 0),
            new Piece(139.7, 38.1, 0),
            300,
            550,
            914.4,
            95.25,
            110,
            190.5,
            254,
            914.4,
            140,
            914.4,
            50.8);

    /** As deep as the joists that it carries, and at least the second smallest of them. */
    Piece ledgerFor(Piece joist) {
        Piece least = joists.get(1);
        return joist.depthMm() < least.depthMm() ? least : joist;
    }

    boolean isAmerican() {
        return units.equals("in");
    }
}
