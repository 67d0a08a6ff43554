package org.deckplanreview.submission;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Numbers;
import org.locationtech.jts.geom.Coordinate;

/** Collects faults in their order, and writes lengths in the unit of the document that has them. */
final class FaultList {

    private static final int MOST_NAMES = 20;

    private final SortedSet<Fault> faults = new TreeSet<>();
    private final MeasureUnit unit;

    FaultList(LengthUnit unit) {
        this.unit = MeasureUnit.ofSymbol(unit.word()).orElseThrow();
    }

    void add(Pointer pointer, String detail, String accepted) {
        faults.add(new Fault(pointer, detail, accepted));
    }

    /** Adds the fault of a name that nothing of a kind has. */
    void unknown(String kind, String id, List<String> known, Pointer pointer) {
        String nearest = NearestName.of(id, known)
                .map(n -> "; the nearest is " + Found.quoted(n))
                .orElse("");
        String accepted = known.isEmpty()
                ? "the id of a " + kind + ", of which the document has none here"
                : "the id of a " + kind + ": " + names(known);
        add(pointer, "There is no " + kind + " " + Found.quoted(id) + nearest, accepted);
    }

    SortedSet<Fault> sorted() {
        return faults;
    }

    /** A length in the document's unit, for example {@code 98 mm}. */
    String length(double mm) {
        return number(mm) + " " + unit.symbol();
    }

    /** A point in the document's unit, for example {@code [1200, 0] mm}. */
    String point(Coordinate mm) {
        return "[" + number(mm.x) + ", " + number(mm.y) + "] " + unit.symbol();
    }

    private String number(double mm) {
        return Numbers.plain(MeasureUnit.MILLIMETRE.convert(mm, unit));
    }

    /** A number of things, for example {@code 1 row} or {@code 3 rows}. */
    static String counted(int number, String one) {
        return number + " " + one + (number == 1 ? "" : "s");
    }

    /** Names in their order, the first of many. */
    static String names(List<String> names) {
        return names.size() <= MOST_NAMES
                ? String.join(", ", names)
                : String.join(", ", names.subList(0, MOST_NAMES)) + " and " + (names.size() - MOST_NAMES) + " more";
    }
}
