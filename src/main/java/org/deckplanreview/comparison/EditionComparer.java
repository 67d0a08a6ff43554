package org.deckplanreview.comparison;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.Figures;
import org.deckplanreview.ruleset.LimitChange;
import org.deckplanreview.ruleset.Provision;
import org.deckplanreview.ruleset.Rule;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Vocabulary;

/** Finds what changed from one edition to another. Provisions of the same id are held against each other. */
final class EditionComparer {

    private final Vocabulary vocabulary;

    EditionComparer(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    EditionDifferences compare(Edition from, Edition to) {
        List<ProvisionDifference> provisions = provisions(from, to);
        return new EditionDifferences(
                ComparedEdition.of(from),
                ComparedEdition.of(to),
                counts(provisions, common(from, to)),
                provisions,
                changes(LimitChange.between(from.loads(), to.loads(), vocabulary)),
                schedule(from, to),
                texts(from, to));
    }

    private List<ProvisionDifference> provisions(Edition from, Edition to) {
        Map<String, Provision> before = byId(from);
        Map<String, Provision> after = byId(to);
        Texts texts = new Texts(new Figures(from.provisions(), vocabulary), new Figures(to.provisions(), vocabulary));
        List<ProvisionDifference> differences = new ArrayList<>();
        before.values().stream()
                .filter(p -> !after.containsKey(p.id()))
                .map(p -> difference(p, Effect.WITHDRAWN, changes(LimitChange.withdrawn(p))))
                .forEach(differences::add);
        after.values()
                .forEach(p -> Optional.ofNullable(before.get(p.id()))
                        .map(old -> between(old, p, texts))
                        .orElseGet(() -> Optional.of(difference(p, Effect.ADDED, changes(LimitChange.added(p)))))
                        .ifPresent(differences::add));
        differences.sort(
                Comparator.comparing(ProvisionDifference::concern).thenComparing(ProvisionDifference::provision));
        return differences;
    }

    private Optional<ProvisionDifference> between(Provision before, Provision after, Texts texts) {
        LimitChange asked = LimitChange.between(before, after, vocabulary);
        List<Change> all = Stream.concat(changes(asked).stream(), wording(before, after, texts).stream())
                .toList();
        return all.isEmpty() ? Optional.empty() : Optional.of(difference(after, Effect.of(asked.strictness()), all));
    }

    private static ProvisionDifference difference(Provision provision, Effect effect, List<Change> changes) {
        return new ProvisionDifference(
                provision.id(), effect, provision.title(), provision.concern(), provision.obligation(), changes);
    }

    private static List<Change> changes(LimitChange asked) {
        return asked.values().stream().map(Change::of).toList();
    }

    private List<Change> wording(Provision before, Provision after, Texts texts) {
        List<Change> changes = new ArrayList<>();
        reworded("title", before, after, p -> Optional.of(p.title())).ifPresent(changes::add);
        reworded("concern", before, after, p -> Optional.of(p.concern().word())).ifPresent(changes::add);
        if (!before.citation().equals(after.citation())) {
            changes.add(new Change(
                    "citation",
                    Effect.REWORDED,
                    Optional.of(Statement.cited(before.citation())),
                    Optional.of(Statement.cited(after.citation()))));
        }
        texts.reworded("advice", before, after, p -> Optional.of(p.advice()).filter(text -> !text.isBlank()))
                .ifPresent(changes::add);
        reworded(
                        "calculated by",
                        before,
                        after,
                        p -> Optional.of(String.join(", ", p.calculated())).filter(ids -> !ids.isEmpty()))
                .ifPresent(changes::add);
        texts.reworded("caution", before, after, Provision::caution).ifPresent(changes::add);
        texts.reworded("referral", before, after, Provision::referral).ifPresent(changes::add);
        changes.addAll(sources(before, after));
        return changes;
    }

    private static <T> Optional<Change> reworded(String what, T before, T after, Function<T, Optional<String>> text) {
        Optional<String> old = text.apply(before);
        Optional<String> now = text.apply(after);
        return old.equals(now)
                ? Optional.empty()
                : Optional.of(
                        new Change(what, Effect.REWORDED, old.map(Statement::ownWords), now.map(Statement::ownWords)));
    }

    /** Empty for a parameter that the edition does without. */
    private static Optional<String> source(Rule.Calculation rule, String parameter) {
        return Optional.of(rule.parameters()).filter(p -> p.has(parameter)).map(p -> p.source(parameter));
    }

    /** Where the values of the same method come from, but for those that the provision itself gives. */
    private List<Change> sources(Provision before, Provision after) {
        if (!(before.rule() instanceof Rule.Calculation old)
                || !(after.rule() instanceof Rule.Calculation now)
                || !old.method().equals(now.method())) {
            return List.of();
        }
        return vocabulary.method(now.method()).map(MethodDescription::parameters).stream()
                .flatMap(List::stream)
                .map(ParameterDescription::name)
                .filter(name ->
                        !source(old, name).equals(Optional.of(before.citation().text()))
                                || !source(now, name)
                                        .equals(Optional.of(after.citation().text())))
                .flatMap(name -> reworded("source of " + name, old, now, rule -> source(rule, name)).stream())
                .toList();
    }

    private List<Change> schedule(Edition from, Edition to) {
        if (from.schedule().isPresent() && to.schedule().isPresent()) {
            return changes(
                    LimitChange.between(from.schedule().get(), to.schedule().get(), vocabulary));
        }
        return reworded("site practice", from, to, e -> e.schedule().map(practice -> "stated")).stream()
                .toList();
    }

    private static List<Change> texts(Edition from, Edition to) {
        List<Change> changes = new ArrayList<>();
        reworded("title", from, to, e -> Optional.of(e.title())).ifPresent(changes::add);
        changes.addAll(oneSided("caution", from.cautions(), to.cautions()));
        changes.addAll(oneSided("referral", from.referrals(), to.referrals()));
        changes.addAll(oneSided("note", from.notes(), to.notes()));
        return changes;
    }

    private static List<Change> oneSided(String what, List<String> before, List<String> after) {
        Stream<Change> gone = before.stream()
                .filter(text -> !after.contains(text))
                .map(text ->
                        new Change(what, Effect.WITHDRAWN, Optional.of(Statement.ownWords(text)), Optional.empty()));
        Stream<Change> fresh = after.stream()
                .filter(text -> !before.contains(text))
                .map(text -> new Change(what, Effect.ADDED, Optional.empty(), Optional.of(Statement.ownWords(text))));
        return Stream.concat(gone, fresh).toList();
    }

    private static Map<String, Provision> byId(Edition edition) {
        return edition.provisions().stream()
                .collect(Collectors.toMap(Provision::id, p -> p, (a, b) -> a, LinkedHashMap::new));
    }

    private static int common(Edition from, Edition to) {
        Map<String, Provision> after = byId(to);
        return (int) from.provisions().stream()
                .filter(p -> after.containsKey(p.id()))
                .count();
    }

    private static EditionDifferences.Counts counts(List<ProvisionDifference> differences, int common) {
        int added = count(differences, Effect.ADDED);
        int withdrawn = count(differences, Effect.WITHDRAWN);
        return new EditionDifferences.Counts(
                added,
                withdrawn,
                count(differences, Effect.TIGHTENED),
                count(differences, Effect.RELAXED),
                count(differences, Effect.CHANGED),
                count(differences, Effect.REWORDED),
                common - (differences.size() - added - withdrawn));
    }

    private static int count(List<ProvisionDifference> differences, Effect effect) {
        return (int) differences.stream().filter(d -> d.effect() == effect).count();
    }

    /** Texts of provisions in both editions, with the figures of each. */
    private record Texts(Figures before, Figures after) {

        /** A text whose words changed. Figures that it only shows are told where they are stated. */
        Optional<Change> reworded(
                String what, Provision old, Provision now, Function<Provision, Optional<String>> text) {
            return text.apply(old).equals(text.apply(now))
                    ? Optional.empty()
                    : EditionComparer.reworded(
                            what,
                            text.apply(old).map(t -> before.written(old, t)),
                            text.apply(now).map(t -> after.written(now, t)),
                            t -> t);
        }
    }
}
