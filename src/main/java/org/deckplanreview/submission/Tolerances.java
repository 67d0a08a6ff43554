package org.deckplanreview.submission;

/**
 * How exactly a drawing must fit together before this service calls it a fault. These are the service's own and come
 * from no standard: wide enough for coordinates that a designer rounds to whole millimetres or quarter inches, narrow
 * enough that what passes can be laid out without guessing what was meant. And how large a deck it reviews.
 */
public final class Tolerances {

    /** Points closer than this are one point. */
    static final double SAME_PLACE_MM = 1;

    /** What a drawing's rounding may leave between a bolted beam and its post, or add to distances within one depth. */
    public static final double SEATING_MM = 1;

    /** A joist that ends this far in front of a beam, or less, was meant to rest on it. */
    public static final double MEANT_MM = 100;

    /** How far what lies along or within an outline may lie off it. */
    public static final double OUTLINE_MM = 10;

    /**
     * How far a ledger or an edge may lie from the face of its wall, and a ledger from the outline, and so from the
     * joists, that it carries: room for the thickness of the ledger or of the wall's cladding, and less than lets a
     * small child through between deck and wall.
     */
    public static final double LEDGER_MM = 60;

    /** How far a beam may lie outside the outline, such as under overhanging joists that the outline leaves out. */
    static final double BEAM_OUTSIDE_MM = 500;

    /** Platforms that lie over each other are as far apart in height as one can stand between them; less is a slip of the pen. */
    static final double STACKED_MM = 1500;

    /**
     * By how much levels that leave out the fall of two platforms may be wrong: more than decks fall from one end to the
     * other.
     */
    static final double FALL_MM = 150;

    /** How far a flight may lap what stands beside it: the ends of treads and strings are not drawn. */
    static final double FLIGHT_MM = 60;

    /** Platforms whose boards are no farther apart in height are one floor to walk on. */
    static final double STEP_MM = 20;

    /** How far the end of a beam may reach past the face of a wall, as into a pocket. */
    static final double INTO_WALL_MM = 150;

    /** The smallest area that an outline may enclose; less is a slip of the pen. */
    static final double SMALLEST_AREA_MM2 = 10_000;

    /**
     * More joists than any platform or deck has: a deck of 200 m² with joists at 400 mm has about 70. These and the
     * schema's longest lists bound the work of one review.
     */
    static final int MOST_JOISTS_OF_A_PLATFORM = 400;

    static final int MOST_JOISTS = 1000;

    /** Joists of each platform times its beams, all platforms together. */
    static final int MOST_JOISTS_TIMES_BEAMS = 5000;

    /** Beyond this a count is told as more than it. */
    static final int COUNTED = 1_000_000;

    private Tolerances() {}
}
