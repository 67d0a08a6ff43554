package org.deckplanreview.ruleset;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.QuantityDescription;
import org.deckplanreview.vocabulary.ValueType;
import org.deckplanreview.vocabulary.Vocabulary;

/** What the tables for tests are entered with: quantities of the whole deck. */
public final class TableVocabulary {

    public static final Vocabulary SMALL = new Vocabulary(
            List.of(
                    number("joist span", MeasureUnit.MILLIMETRE),
                    number("joist spacing", MeasureUnit.MILLIMETRE),
                    number("beam span", MeasureUnit.MILLIMETRE),
                    number("section breadth", MeasureUnit.MILLIMETRE),
                    number("section depth", MeasureUnit.MILLIMETRE),
                    number("plies", MeasureUnit.RATIO),
                    number("overhang ratio", MeasureUnit.RATIO),
                    number("bearing resistance", MeasureUnit.KILONEWTON_PER_SQUARE_METRE),
                    number("footing side", MeasureUnit.MILLIMETRE),
                    quantity("species", ValueType.WORD, Optional.empty(), List.of("oak", "larch", "willow", "elm")),
                    quantity("frost", ValueType.FLAG, Optional.empty(), List.of())),
            List.of(),
            List.of(),
            List.of());

    private TableVocabulary() {}

    private static QuantityDescription number(String name, MeasureUnit unit) {
        return quantity(name, ValueType.NUMBER, Optional.of(unit), List.of());
    }

    private static QuantityDescription quantity(
            String name, ValueType type, Optional<MeasureUnit> unit, List<String> words) {
        return new QuantityDescription(name, type, unit, words, List.of(SubjectKind.DECK), name);
    }
}
