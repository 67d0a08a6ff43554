package org.deckplanreview.review;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.flipkart.zjsonpatch.JsonPatch;
import com.flipkart.zjsonpatch.JsonPatchApplicationException;
import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.deckplanreview.assessment.Assessor;
import org.deckplanreview.assessment.Catalogue;
import org.deckplanreview.assessment.Derivation;
import org.deckplanreview.assessment.Finding;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.measure.Value;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.Provision;
import org.deckplanreview.ruleset.RulesetCase;
import org.deckplanreview.submission.ReadResult;
import org.deckplanreview.submission.SubmissionReader;

/** Runs cases: a sample, changed, under an edition, and what the provision comes to. */
final class CaseRun {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final SubmissionReader reader = new SubmissionReader();
    private final Assessor assessor;
    private final Samples samples;

    CaseRun(Catalogue catalogue, Samples samples) {
        this.assessor = new Assessor(catalogue);
        this.samples = samples;
    }

    /** A sample with a case's patch. Cases of one sample and patch share it, under whatever editions they are run. */
    sealed interface Deck {

        record Readable(Derivation derivation) implements Deck {}

        /** @param why for people */
        record Unreadable(String why) implements Deck {}
    }

    Deck deck(String base, String patch) {
        Optional<byte[]> sample = samples.read(base);
        if (sample.isEmpty()) {
            return new Deck.Unreadable("there is no sample '" + base + "'");
        }
        byte[] changed;
        try {
            JsonNode tree = JsonPatch.apply(JSON.readTree(patch), JSON.readTree(sample.get()));
            changed = JSON.writeValueAsBytes(tree);
        } catch (IOException | JsonPatchApplicationException e) {
            return new Deck.Unreadable("the patch cannot be applied: " + e.getMessage());
        }
        ReadResult read = reader.read(changed);
        return read instanceof ReadResult.Read whole
                ? new Deck.Readable(new Derivation(whole.submission()))
                : new Deck.Unreadable("the changed sample is not a valid submission: " + read);
    }

    /** What differs from the expectation; empty if nothing does. */
    Optional<String> fault(RulesetCase one, Deck deck, Edition edition) {
        if (deck instanceof Deck.Unreadable unreadable) {
            return Optional.of(unreadable.why());
        }
        Provision provision = edition.provisions().stream()
                .filter(p -> p.id().equals(one.provision()))
                .findFirst()
                .orElseThrow();
        return compare(one.expect(), assessor.assess(((Deck.Readable) deck).derivation(), edition, provision));
    }

    private static Optional<String> compare(RulesetCase.Expectation expected, List<Finding> findings) {
        Optional<Finding> worst = findings.stream()
                .filter(f -> Stream.concat(Stream.of(f.subject()), f.also().stream())
                        .anyMatch(s -> s.pointer().equals(expected.subject())))
                .min(Comparator.comparing(Finding::determination));
        if (worst.isEmpty()) {
            return Optional.of("the provision has no finding at '" + expected.subject() + "'");
        }
        Finding f = worst.get();
        if (!f.determination().word().equals(expected.determination())) {
            return Optional.of("expected '" + expected.determination() + "', found '"
                    + f.determination().word() + "': " + f.sentence() + " Needs: " + f.needs());
        }
        return Stream.of(
                        differs("found", expected.found(), f.found().stream().toList()),
                        differs("allowed", expected.allowed(), f.allowed()),
                        expected.needs()
                                .filter(n ->
                                        f.needs().stream().map(Need::pointer).noneMatch(n::equals))
                                .map(n -> "expected to need '" + n + "', needs " + f.needs()))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<String> differs(String what, Optional<String> token, List<Value> values) {
        return token.filter(t -> values.stream().noneMatch(v -> same(t, v)))
                .map(t -> "expected " + what + " '" + t + "', got '" + Phrases.of(values) + "'");
    }

    /** Numbers agree if they are written alike with six digits. */
    private static boolean same(String token, Value value) {
        if (value instanceof Measure m) {
            Measure expected = Measure.parse(token);
            return expected.unit().sameDimension(m.unit())
                    && Numbers.plain(expected.value()).equals(Numbers.plain(m.in(expected.unit())));
        }
        return Phrases.of(value).equals(token);
    }
}
