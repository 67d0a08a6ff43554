package org.deckplanreview.vocabulary;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.measure.MeasureUnit;

/** The values that a provision gives to its method: all those that the method's description names, checked at load. */
public interface Parameters {

    /** Whether there is this value; for those that a ruleset may leave out. */
    boolean has(String name);

    double number(String name, MeasureUnit unit);

    /** Enters a number on a sheet, with what it means and where it comes from. Returns it. */
    default double enter(Sheet sheet, String symbol, ParameterDescription number) {
        MeasureUnit unit = number.unit().orElseThrow();
        return sheet.given(symbol, number(number.name(), unit), unit, number.meaning(), source(number.name()));
    }

    String word(String name);

    boolean flag(String name);

    Table table(String name);

    /** Where the value comes from, for example {@code EN 1995-1-1:2004, Table 2.3; set by UK NA, Table NA.3}. */
    String source(String name);

    /** How the value was confirmed, as rulesets write it, for example {@code page}; by memory if any part of it was. */
    String confirmedBy(String name);

    /** Names of the values that were recalled from memory and must be checked against the document, in rising order. */
    List<String> recalled();
}
