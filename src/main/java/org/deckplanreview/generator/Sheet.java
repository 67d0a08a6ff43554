package org.deckplanreview.generator;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes JSON in a submission's length unit: whole millimetres, or inches and their sixteenths. */
final class Sheet {

    private static final BigDecimal MM_IN_AN_INCH = new BigDecimal("25.4");
    private static final BigDecimal SIXTEEN = new BigDecimal(16);

    private final boolean inches;

    Sheet(String units) {
        this.inches = units.equals("in");
    }

    ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    ArrayNode array() {
        return JsonNodeFactory.instance.arrayNode();
    }

    DecimalNode length(double mm) {
        return DecimalNode.valueOf(plain(shown(mm)));
    }

    /** The length that is written for another, in mm. */
    double writtenMm(double mm) {
        return (inches ? shown(mm).multiply(MM_IN_AN_INCH) : shown(mm)).doubleValue();
    }

    private BigDecimal shown(double mm) {
        BigDecimal exact = BigDecimal.valueOf(mm);
        return inches
                ? exact.multiply(SIXTEEN)
                        .divide(MM_IN_AN_INCH, 0, RoundingMode.HALF_EVEN)
                        .divide(SIXTEEN)
                : exact.setScale(0, RoundingMode.HALF_EVEN);
    }

    private static BigDecimal plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    ArrayNode point(double xMm, double yMm) {
        return array().add(length(xMm)).add(length(yMm));
    }

    ArrayNode direction(int dx, int dy) {
        return array().add(dx).add(dy);
    }

    ObjectNode line(double x1, double y1, double x2, double y2) {
        ObjectNode line = object();
        line.set("from", point(x1, y1));
        line.set("to", point(x2, y2));
        return line;
    }
}
