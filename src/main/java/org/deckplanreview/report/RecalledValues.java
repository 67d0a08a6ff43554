package org.deckplanreview.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.deckplanreview.assessment.Assessment;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.assessment.Finding;
import org.deckplanreview.ruleset.Confirmation;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.Provision;
import org.deckplanreview.ruleset.Reach;
import org.deckplanreview.ruleset.Rule;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Vocabulary;

/** Gathers what an assessment took that was recalled from memory, each once, in the edition's order. */
final class RecalledValues {

    private record Key(String value, String source) {}

    private final Map<Key, Set<String>> provisions = new LinkedHashMap<>();
    private final Vocabulary vocabulary;

    private RecalledValues(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    static List<RecalledValue> of(Assessment assessment, Vocabulary vocabulary) {
        RecalledValues all = new RecalledValues(vocabulary);
        assessment.findings().stream().filter(RecalledValues::looked).forEach(all::finding);
        all.loadsAndSchedule(assessment.edition());
        List<RecalledValue> values = new ArrayList<>();
        all.provisions.forEach(
                (key, ids) -> values.add(new RecalledValue(key.value(), key.source(), List.copyOf(ids))));
        return values;
    }

    /** A provision whose subjects the deck lacks decides nothing. One that a condition rules out was read. */
    private static boolean looked(Finding finding) {
        return finding.determination() != Determination.NOT_APPLICABLE
                || finding.subject().kind() == finding.provision().subjects()
                || finding.provision().subjects() == SubjectKind.DECK;
    }

    private void finding(Finding finding) {
        Provision provision = finding.provision();
        if (provision.citation().recalled()) {
            add(provision.title(), provision.citation().text(), provision.id());
        }
        if (finding.determination() == Determination.NOT_APPLICABLE) {
            return;
        }
        provision.scope().stream()
                .filter(reach -> reach.citation().recalled())
                .forEach(reach -> add(
                        "Limit of what they cover: " + reasons(reach),
                        reach.citation().text(),
                        provision.id()));
        if (provision.rule() instanceof Rule.Calculation calculation) {
            List<ParameterDescription> described = vocabulary
                    .method(calculation.method())
                    .map(MethodDescription::parameters)
                    .orElse(List.of());
            recalled(calculation.parameters(), described)
                    .forEach((meaning, source) -> add(meaning, source, provision.id()));
        }
        finding.rows().stream()
                .filter(row -> row.confirmedBy() == Confirmation.MEMORY)
                .forEach(row -> add("Row of " + row.row(), row.source(), provision.id()));
    }

    private static String reasons(Reach reach) {
        return reach.beyond().stream().map(Reach.Beyond::reason).collect(Collectors.joining("; "));
    }

    private void loadsAndSchedule(Edition edition) {
        edition.loads().imposed().stream()
                .filter(row -> row.citation().recalled())
                .forEach(row ->
                        add("Imposed load. " + row.reason(), row.citation().text()));
        recalled(edition.loads().parameters(), vocabulary.loadParameters()).forEach(this::add);
        edition.schedule()
                .ifPresent(practice ->
                        recalled(practice, vocabulary.scheduleParameters()).forEach(this::add));
    }

    /** Sources by what the parameters mean. */
    private static Map<String, String> recalled(Parameters parameters, List<ParameterDescription> described) {
        Map<String, String> sources = new LinkedHashMap<>();
        described.stream()
                .filter(p -> parameters.recalled().contains(p.name()))
                .forEach(p -> sources.put(capital(p.meaning()), parameters.source(p.name())));
        return sources;
    }

    private void add(String value, String source, String... ids) {
        provisions
                .computeIfAbsent(new Key(value, source), key -> new LinkedHashSet<>())
                .addAll(List.of(ids));
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
