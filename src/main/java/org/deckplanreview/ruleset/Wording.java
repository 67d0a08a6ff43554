package org.deckplanreview.ruleset;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A text of a provision with places for figures: {@code {limit}} for a figure with its unit, {@code {1 in limit}} for a
 * ratio as {@code 1 in 80}.
 */
public record Wording(List<Part> parts) {

    private static final Pattern PLACE = Pattern.compile("\\{(1 in )?([^{}]*)}");

    public Wording {
        parts = List.copyOf(parts);
    }

    /** Words or a place. */
    public sealed interface Part {}

    /** Words as they are. */
    public record Words(String text) implements Part {}

    /**
     * A place for a figure.
     *
     * @param name of the figure, as {@link Figures} knows it
     * @param isRatio whether it is written as {@code 1 in 80}
     */
    public record Place(String name, boolean isRatio) implements Part {}

    public static Wording of(String text) {
        List<Part> parts = new ArrayList<>();
        Matcher m = PLACE.matcher(text);
        int end = 0;
        while (m.find()) {
            parts.add(new Words(text.substring(end, m.start())));
            parts.add(new Place(m.group(2), m.group(1) != null));
            end = m.end();
        }
        parts.add(new Words(text.substring(end)));
        return new Wording(parts);
    }

    public List<Place> places() {
        return parts.stream()
                .filter(Place.class::isInstance)
                .map(Place.class::cast)
                .toList();
    }

    /** Its words alone, in order. */
    List<String> words() {
        return parts.stream()
                .filter(Words.class::isInstance)
                .map(part -> ((Words) part).text())
                .toList();
    }

    /** The text with each place filled. */
    public String filled(Function<Place, String> figures) {
        StringBuilder text = new StringBuilder();
        parts.forEach(part -> text.append(part instanceof Place place ? figures.apply(place) : ((Words) part).text()));
        return text.toString();
    }
}
