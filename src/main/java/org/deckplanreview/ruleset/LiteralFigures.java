package org.deckplanreview.ruleset;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;

/**
 * Figures that people write in texts: {@code 1100 mm}, {@code 1-1/2 in}, {@code 6 ft 8 in}, {@code 34 to 38 in},
 * {@code 1,500 lb}, {@code 1 in 80}, {@code 1:48}, and numbers without a unit.
 */
final class LiteralFigures {

    /** A figure as it is written, and what it comes to. */
    record Literal(String text, Measure value) {}

    private static final int INCHES_IN_A_FOOT = 12;

    private static final Map<String, MeasureUnit> UNITS = Map.ofEntries(
            Map.entry("mm", MeasureUnit.MILLIMETRE),
            Map.entry("m", MeasureUnit.METRE_),
            Map.entry("metre", MeasureUnit.METRE_),
            Map.entry("metres", MeasureUnit.METRE_),
            Map.entry("km", MeasureUnit.KILOMETRE),
            Map.entry("in", MeasureUnit.INCH),
            Map.entry("inch", MeasureUnit.INCH),
            Map.entry("inches", MeasureUnit.INCH),
            Map.entry("ft", MeasureUnit.FOOT),
            Map.entry("feet", MeasureUnit.FOOT),
            Map.entry("m2", MeasureUnit.SQUARE_METRE_),
            Map.entry("mm2", MeasureUnit.SQUARE_MILLIMETRE),
            Map.entry("sq ft", MeasureUnit.SQUARE_FOOT),
            Map.entry("N", MeasureUnit.NEWTON_),
            Map.entry("kN", MeasureUnit.KILONEWTON),
            Map.entry("lb", MeasureUnit.POUND_FORCE),
            Map.entry("lbf", MeasureUnit.POUND_FORCE),
            Map.entry("kN/m", MeasureUnit.KILONEWTON_PER_METRE),
            Map.entry("kN/m2", MeasureUnit.KILONEWTON_PER_SQUARE_METRE),
            Map.entry("N/mm2", MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE),
            Map.entry("psi", MeasureUnit.POUND_FORCE_PER_SQUARE_INCH),
            Map.entry("psf", MeasureUnit.POUND_FORCE_PER_SQUARE_FOOT),
            Map.entry("degrees", MeasureUnit.DEGREE),
            Map.entry("years", MeasureUnit.YEAR_),
            Map.entry("%", MeasureUnit.PERCENT_));

    private static final String NUMBER = "(\\d+-\\d+/\\d+|\\d+/\\d+|\\d{1,3}(?:,\\d{3})+|\\d+(?:\\.\\d+)?)";
    private static final String UNIT =
            "(mm2|mm|metres|metre|m2|km|kN/m2|kN/m|kN|inches|inch|in|ft|feet|sq ft|lbf|lb|psi|psf"
                    + "|N/mm2|N|m|degrees|years|%)(?![A-Za-z0-9/])";
    private static final Pattern ANY = Pattern.compile("(?<![\\w.,/(:-])(?:"
            + "(?<ratio>1 ?(?:in |:) ?" + NUMBER + ")(?! ?" + UNIT + ")"
            + "|(?<feet>" + NUMBER + " ft " + NUMBER + " in)\\b"
            + "|(?<range>" + NUMBER + " (?:to|or|and) " + NUMBER + " " + UNIT + ")"
            + "|(?<measure>" + NUMBER + " ?" + UNIT + ")"
            + "|(?<plain>" + NUMBER + ")(?![\\w/:-])(?!\\.\\w))");
    private static final Pattern NUMBERS = Pattern.compile(NUMBER);
    private static final Pattern LAST_UNIT = Pattern.compile(UNIT + "$");

    private LiteralFigures() {}

    static List<Literal> in(String words) {
        List<Literal> all = new ArrayList<>();
        Matcher m = ANY.matcher(words);
        while (m.find()) {
            String text = m.group();
            List<Double> numbers = numbers(text);
            if (m.group("ratio") != null) {
                add(all, text, 1 / numbers.get(1), MeasureUnit.RATIO);
            } else if (m.group("feet") != null) {
                add(all, text, numbers.get(0) * INCHES_IN_A_FOOT + numbers.get(1), MeasureUnit.INCH);
            } else if (m.group("plain") != null) {
                add(all, text, numbers.get(0), MeasureUnit.RATIO);
            } else {
                Matcher unit = LAST_UNIT.matcher(text);
                if (unit.find()) {
                    numbers.forEach(number -> add(all, text, number, UNITS.get(unit.group(1))));
                }
            }
        }
        return all;
    }

    private static void add(List<Literal> all, String text, double number, MeasureUnit unit) {
        if (Double.isFinite(number)) {
            all.add(new Literal(text, Measure.of(number, unit)));
        }
    }

    private static List<Double> numbers(String text) {
        List<Double> numbers = new ArrayList<>();
        Matcher m = NUMBERS.matcher(LAST_UNIT.matcher(text).replaceFirst(""));
        while (m.find()) {
            numbers.add(number(m.group()));
        }
        return numbers;
    }

    private static double number(String text) {
        String[] mixed = text.split("-");
        String[] fraction = mixed[mixed.length - 1].split("/");
        double whole = mixed.length > 1 ? Double.parseDouble(mixed[0]) : 0;
        double rest = Double.parseDouble(fraction[0].replace(",", ""));
        return whole + (fraction.length > 1 ? rest / Double.parseDouble(fraction[1]) : rest);
    }
}
