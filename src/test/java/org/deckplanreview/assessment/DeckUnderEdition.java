package org.deckplanreview.assessment;

import java.util.List;
import java.util.Map;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.measure.Value;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.Provision;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.vocabulary.QuantityDescription;

/** A deck under an edition, derived once, of which some quantities are then given instead of observed. */
public final class DeckUnderEdition {
    private final List<Quantity> quantities;
    private final List<Method> methods;
    private final Edition edition;
    private final ReviewContext context;

    public DeckUnderEdition(Submission deck, Edition edition, List<Quantity> quantities, List<Method> methods) {
        this.quantities = quantities;
        this.methods = methods;
        this.edition = edition;
        Layout layout = Layout.derive(deck);
        ReviewContext geometryOnly = new ReviewContext(layout, NoLoadPath.INSTANCE, List.of());
        Loads loads = Loads.of(edition, layout, new Conditions(new Catalogue(quantities, methods), geometryOnly));
        this.context = new ReviewContext(layout, LoadPath.derive(layout, loads.model()), loads.categories());
    }

    /** What each subject of the provision comes to where all have these values alike. */
    public List<Determination> determinations(String provision, Map<String, Value> given) {
        Provision asked = edition.provisions().stream()
                .filter(p -> p.id().equals(provision))
                .findFirst()
                .orElseThrow();
        ProvisionAssessor one = new ProvisionAssessor(catalogue(given), context, edition);
        return context.layout().subjects(asked.subjects()).stream()
                .map(subject -> one.assess(asked, subject).determination())
                .toList();
    }

    private Catalogue catalogue(Map<String, Value> given) {
        return new Catalogue(
                quantities.stream().map(quantity -> given(quantity, given)).toList(), methods);
    }

    private static Quantity given(Quantity quantity, Map<String, Value> given) {
        Value value = given.get(quantity.description().name());
        return value == null ? quantity : new Given(quantity.description(), value);
    }

    private record Given(QuantityDescription description, Value value) implements Quantity {
        @Override
        public Observation observe(Subject subject, ReviewContext context) {
            return new Observation.Found(value, "", List.of());
        }
    }
}
