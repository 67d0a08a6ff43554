package org.deckplanreview.ruleset;

import java.util.List;
import java.util.Map;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;

/** Tells places in texts of provisions that no figure can fill. */
final class WordingCheck {

    static final List<String> TEXTS = List.of("advice", "caution", "referral");

    /** Texts round. */
    private static final double NEARLY = 0.002;

    private final Figures figures;

    WordingCheck(Figures figures) {
        this.figures = figures;
    }

    void check(Stated stated, Provision provision) {
        TEXTS.stream().flatMap(name -> stated.optional(name).stream()).forEach(text -> check(text, provision));
    }

    private void check(Entry text, Provision provision) {
        Wording wording = Wording.of(text.text());
        Map<String, Figure> own = figures.own(provision);
        for (Wording.Place place : wording.places()) {
            if (figures.find(provision, place.name()).isEmpty()) {
                text.unknown(place.name(), "figure of this provision", List.copyOf(own.keySet()));
            } else if (place.isRatio()
                    && !isRatio(figures.find(provision, place.name()).get())) {
                text.fault(
                        "'" + place.name() + "' is no ratio, which could be written as 1 in a number",
                        "{" + place.name() + "}");
            }
        }
        wording.words().stream()
                .flatMap(words -> LiteralFigures.in(words).stream())
                .forEach(literal -> own.forEach((name, figure) -> refuseRepeated(text, literal, name, figure)));
        if (wording.words().stream().anyMatch(words -> words.contains("{") || words.contains("}"))) {
            text.fault("A brace has no partner", "a figure's name between two braces, such as {limit}");
        }
    }

    /** An amendment that sets the figure otherwise would leave the text behind. */
    private static void refuseRepeated(Entry text, LiteralFigures.Literal literal, String name, Figure figure) {
        boolean isRepeated =
                figure.values().stream().anyMatch(value -> value instanceof Measure m && isSame(m, literal.value()));
        if (isRepeated) {
            text.file()
                    .fault(
                            text.line(),
                            "'" + Shortened.of(literal.text()) + "'",
                            "The text repeats a figure of its provision, '" + name + "'",
                            (literal.text().startsWith("1 in ") ? "{1 in " : "{") + name + "} in its place");
        }
    }

    private static boolean isSame(Measure figure, Measure literal) {
        double value = figure.unit().sameDimension(literal.unit()) ? literal.in(figure.unit()) : Double.NaN;
        return Math.abs(value - figure.value()) <= NEARLY * Math.abs(figure.value());
    }

    private static boolean isRatio(Figure figure) {
        return figure.values().stream()
                .allMatch(value -> value instanceof Measure m && m.unit().sameDimension(MeasureUnit.RATIO));
    }
}
