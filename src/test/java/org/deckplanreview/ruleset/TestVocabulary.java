package org.deckplanreview.ruleset;

import static org.deckplanreview.vocabulary.ParameterDescription.flag;
import static org.deckplanreview.vocabulary.ParameterDescription.number;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.table;
import static org.deckplanreview.vocabulary.ParameterDescription.word;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.QuantityDescription;
import org.deckplanreview.vocabulary.ValueType;
import org.deckplanreview.vocabulary.Vocabulary;

/** A small vocabulary with one of each kind. */
public final class TestVocabulary {

    public static final Vocabulary SMALL = new Vocabulary(
            List.of(
                    length("drop", SubjectKind.EDGES),
                    length("guard height", SubjectKind.EDGES),
                    length("largest drop", SubjectKind.PLATFORMS),
                    words(
                            "occupancy",
                            List.of("single-dwelling", "public"),
                            SubjectKind.EDGES,
                            SubjectKind.PLATFORMS,
                            SubjectKind.JOISTS),
                    words("use class", List.of("1", "2", "3.1", "3.2", "4"), SubjectKind.POSTS)
                            .rising(),
                    words("preservative", List.of("copper", "creosote", "none"), SubjectKind.POSTS),
                    new QuantityDescription(
                            "cut ends treated",
                            ValueType.FLAG,
                            Optional.empty(),
                            List.of(),
                            List.of(SubjectKind.POSTS),
                            "Whether cut ends are treated.")),
            List.of(new MethodDescription(
                    "test.bending",
                    "a document",
                    "bending stress",
                    MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE,
                    List.of(SubjectKind.JOISTS, SubjectKind.BEAMS),
                    List.of(
                            number("gammaM", MeasureUnit.RATIO, "partial factor"),
                            number("ksys", MeasureUnit.RATIO, "system factor"),
                            table(
                                    "strengthClasses",
                                    "strength classes",
                                    wordColumn("class"),
                                    numberColumn("fmk", MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE)),
                            table("kmod", "kmod", wordColumn("duration"), numberColumn("kmod", MeasureUnit.RATIO)),
                            number("contactLength", MeasureUnit.MILLIMETRE, "added to the contact length"),
                            word("serviceClass", "service class").rising("1", "2", "3")),
                    "Bending.")),
            List.of(
                    number("concentratedShare", MeasureUnit.RATIO, "share of one joist"),
                    flag("shear", "whether shear deforms"),
                    number("leastDead", MeasureUnit.KILONEWTON_PER_SQUARE_METRE, "least permanent load")
                            .orNone()),
            List.of(number("sawKerf", MeasureUnit.MILLIMETRE, "what a saw takes")));

    private TestVocabulary() {}

    private static QuantityDescription length(String name, SubjectKind... subjects) {
        return new QuantityDescription(
                name, ValueType.NUMBER, Optional.of(MeasureUnit.MILLIMETRE), List.of(), List.of(subjects), name);
    }

    private static QuantityDescription words(String name, List<String> words, SubjectKind... subjects) {
        return new QuantityDescription(name, ValueType.WORD, Optional.empty(), words, List.of(subjects), name);
    }
}
