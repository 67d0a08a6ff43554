package org.deckplanreview.assessment;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.LoadResult;
import org.deckplanreview.ruleset.Provision;
import org.deckplanreview.ruleset.RulesetFiles;
import org.deckplanreview.ruleset.RulesetLoader;
import org.deckplanreview.ruleset.TableVocabulary;
import org.deckplanreview.submission.SampleDeck;
import org.deckplanreview.vocabulary.QuantityDescription;

/** Quantities of a deck as a test says that they are found, assessed under the edition with look-up tables. */
final class FoundOnDeck {

    private static final Edition EDITION = edition();
    private static final Layout LAYOUT = Layout.derive(SampleDeck.complete().submission());

    private final Map<String, Observation> seen;

    private FoundOnDeck(Map<String, Observation> seen) {
        this.seen = seen;
    }

    /** Joists of group A, 1.5 in by 5.5 in at 16 in, over 9 ft, and a beam of one ply over 9 ft. */
    static FoundOnDeck usual() {
        return new FoundOnDeck(new TreeMap<>())
                .with("species", new Word("oak"))
                .with("section breadth", "1.5 in")
                .with("section depth", "5.5 in")
                .with("joist spacing", "16 in")
                .with("joist span", "108 in")
                .with("plies", "1")
                .with("overhang ratio", "0")
                .with("beam span", "108 in")
                .with("frost", new Flag(false))
                .with("bearing resistance", "2000 psf")
                .with("footing side", "16 in");
    }

    private static Edition edition() {
        RulesetFiles files = RulesetFiles.ofDirectory(Path.of("src/test/resources/tables-for-tests"));
        if (RulesetLoader.load(files, TableVocabulary.SMALL) instanceof LoadResult.Loaded loaded) {
            return loaded.rulesets().edition("testland", "2024").orElseThrow();
        }
        throw new AssertionError("The tables for tests have faults");
    }

    FoundOnDeck with(String quantity, String token) {
        return with(quantity, Measure.parse(token));
    }

    /** Numbers are observed in the quantity's own unit. */
    FoundOnDeck with(String quantity, Value value) {
        Value own = value instanceof Measure m ? in(quantity, m) : value;
        return seeing(quantity, new Observation.Found(own, "", List.of()));
    }

    private static Measure in(String quantity, Measure m) {
        QuantityDescription d = TableVocabulary.SMALL.quantity(quantity).orElseThrow();
        return Measure.of(m.in(d.unit().orElseThrow()), d.unit().orElseThrow());
    }

    FoundOnDeck without(String quantity) {
        return seeing(
                quantity,
                new Observation.Missing(List.of(new Need(Pointer.of("/" + quantity.replace(' ', '-')), quantity))));
    }

    FoundOnDeck seeing(String quantity, Observation observation) {
        Map<String, Observation> changed = new TreeMap<>(seen);
        changed.put(quantity, observation);
        return new FoundOnDeck(changed);
    }

    Result assess(String provision) {
        Provision asked = EDITION.provisions().stream()
                .filter(p -> p.id().equals(provision))
                .findFirst()
                .orElseThrow();
        List<Quantity> quantities = TableVocabulary.SMALL.quantities().stream()
                .<Quantity>map(d -> new Given(d, seen.get(d.name())))
                .toList();
        ReviewContext context = new ReviewContext(LAYOUT, NoLoadPath.INSTANCE, List.of());
        return new ProvisionAssessor(new Catalogue(quantities, List.of()), context, EDITION)
                .assess(asked, LAYOUT.deck());
    }

    private record Given(QuantityDescription description, Observation observation) implements Quantity {
        @Override
        public Observation observe(Subject subject, ReviewContext context) {
            return observation;
        }
    }
}
