package org.deckplanreview.assessment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.Provision;
import org.deckplanreview.ruleset.Reach;
import org.deckplanreview.ruleset.Rule;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.QuantityDescription;
import org.deckplanreview.vocabulary.Sense;

/** One provision on one subject: the only place where a determination is made. */
final class ProvisionAssessor {

    private final Catalogue catalogue;
    private final ReviewContext context;
    private final Conditions conditions;
    private final UnitSystem units;
    private final Map<String, Provision> provisions;

    /** @param edition whose provisions are assessed */
    ProvisionAssessor(Catalogue catalogue, ReviewContext context, Edition edition) {
        this.catalogue = catalogue;
        this.context = context;
        this.conditions = new Conditions(catalogue, context);
        this.units = context.units();
        this.provisions = new LinkedHashMap<>();
        edition.provisions().forEach(p -> provisions.put(p.id(), p));
    }

    Result assess(Provision provision, Subject subject) {
        Derived<Boolean> applies = conditions.holds(provision.when(), subject);
        if (applies.isKnown() && !applies.get()) {
            return Result.notApplicable(subject, "", "The provision's conditions are not met.");
        }
        Result reached = withinReach(provision, subject);
        Result result = reached.isBeyond()
                ? calculated(provision, subject).map(reached::with).orElse(reached)
                : reached;
        boolean decidedAnyway = result.determination() == Determination.COMPLIES
                || result.determination() == Determination.NOT_APPLICABLE;
        return applies.isKnown() || decidedAnyway ? result : result.becauseOf(applies.needs());
    }

    private Optional<Calculated> calculated(Provision provision, Subject subject) {
        return Calculated.governing(provision.calculated().stream()
                .map(provisions::get)
                .map(by -> new Calculated.By(by, assess(by, subject)))
                .toList());
    }

    private Result result(Rule rule, Subject subject) {
        if (rule instanceof Rule.Limit limit) {
            return limit(limit, subject);
        }
        return rule instanceof Rule.LookUp lookUp
                ? lookUp(lookUp, subject)
                : calculation((Rule.Calculation) rule, subject);
    }

    private Result lookUp(Rule.LookUp rule, Subject subject) {
        QuantityDescription d = catalogue.quantity(rule.quantity()).description();
        Observation seen = catalogue.quantity(rule.quantity()).observe(subject, context);
        if (seen instanceof Observation.NotApplicable n) {
            return Result.notApplicable(subject, d.name(), capital(n.reason()) + ".");
        }
        TableEntry entry =
                TableEntry.of(rule, quantity -> catalogue.quantity(quantity).observe(subject, context), units);
        if (entry instanceof TableEntry.Allowed allowed && seen instanceof Observation.Found found) {
            return compared(d, found, rule.sense(), List.of(allowed.value()), subject)
                    .from(allowed.way(), " " + allowed.reason());
        }
        if (entry instanceof TableEntry.NotHeld beside && seen instanceof Observation.Found found) {
            Optional<Result> decided = decided(beside, rule, d, found, subject);
            if (decided.isPresent()) {
                return decided.get();
            }
        }
        List<Need> needs = new ArrayList<>();
        if (entry instanceof TableEntry.Missing missing) {
            needs.addAll(missing.needs());
        }
        if (seen instanceof Observation.Missing missing && !(entry instanceof TableEntry.NoRow)) {
            needs.addAll(missing.needs());
        }
        boolean isRefused = entry instanceof TableEntry.NotPermitted;
        boolean isBeyond = entry instanceof TableEntry.NoRow || entry instanceof TableEntry.NotHeld;
        String asked =
                entry instanceof TableEntry.Allowed allowed ? " " + asked(rule.sense(), List.of(allowed.value())) : "";
        Result result = new Result(
                        subject,
                        isRefused ? Determination.DOES_NOT_COMPLY : Determination.UNDETERMINED,
                        d.name(),
                        seen instanceof Observation.Found found ? Optional.of(found.value()) : Optional.empty(),
                        Optional.empty(),
                        List.of(),
                        OptionalDouble.empty(),
                        told(d, seen) + asked,
                        seen instanceof Observation.Found found ? found.working() : List.of(),
                        isRefused
                                ? List.of()
                                : needs.stream().distinct().sorted().toList(),
                        List.of(),
                        List.of())
                .among(entry instanceof TableEntry.Allowed allowed ? List.of(allowed.value()) : List.of())
                .from(entry.way(), entry.reason());
        return isBeyond ? result.beyond() : result;
    }

    private String told(QuantityDescription d, Observation seen) {
        return seen instanceof Observation.Found found
                ? sentence(d.name(), Phrases.of(found.value(), units), found.remark())
                : capital(d.name()) + ": cannot be told from the submission. ";
    }

    /** Where a design is beyond what a provision covers, it is neither said to comply nor not to. */
    private Result withinReach(Provision provision, Subject subject) {
        Result result = result(provision.rule(), subject);
        List<Need> needs = new ArrayList<>();
        for (Reach reach : provision.scope()) {
            for (Reach.Beyond beyond : reach.beyond()) {
                Derived<Boolean> isBeyond = conditions.holds(beyond.when(), subject);
                if (isBeyond.isKnown() && isBeyond.get()) {
                    return Result.undetermined(
                                    subject,
                                    result.quantity(),
                                    "Beyond what this provision covers: " + beyond.reason() + " ("
                                            + reach.citation().text() + ").",
                                    List.of())
                            .among(result.mayCount())
                            .beyond();
                }
                needs.addAll(isBeyond.needs());
            }
        }
        return needs.isEmpty() || result.determination() == Determination.NOT_APPLICABLE
                ? result
                : result.uncovered(needs);
    }

    /** What rows beside the one that counts decide already. */
    private Optional<Result> decided(
            TableEntry.NotHeld beside,
            Rule.LookUp rule,
            QuantityDescription d,
            Observation.Found found,
            Subject subject) {
        Optional<Result> complies = beside.safe()
                .map(bound -> compared(d, found, rule.sense(), List.of(bound.value()), subject)
                        .from(bound.way(), " " + beside.reason() + " " + bound.reason()))
                .filter(result -> result.determination() == Determination.COMPLIES);
        return complies.or(() -> beside.favourable()
                .map(bound -> compared(d, found, rule.sense(), List.of(bound.value()), subject)
                        .from(bound.way(), " " + beside.reason() + " " + bound.reason()))
                .filter(result -> result.determination() == Determination.DOES_NOT_COMPLY));
    }

    private Result calculation(Rule.Calculation rule, Subject subject) {
        MethodDescription d = catalogue.method(rule.method()).description();
        Evaluation e = catalogue.method(rule.method()).evaluate(subject, rule.parameters(), context);
        if (e instanceof Evaluation.Measured m) {
            Sense ofUtilisation = m.sense() == Sense.UNDER ? Sense.UNDER : Sense.AT_MOST;
            Determination determination =
                    ofUtilisation.holds(m.utilisation(), 1) ? Determination.COMPLIES : Determination.DOES_NOT_COMPLY;
            ShownComparison shown =
                    ShownComparison.of(m.found(), m.sense(), List.of(m.allowed()), determination, units);
            return new Result(
                    subject,
                    determination,
                    d.quantity(),
                    Optional.of(m.found()),
                    Optional.of(m.sense()),
                    List.of(m.allowed()),
                    m.found() instanceof Measure ? OptionalDouble.of(m.utilisation()) : OptionalDouble.empty(),
                    sentence(d.quantity(), shown.found(), m.remark()) + asked(m.sense(), shown.allowed()),
                    m.working(),
                    List.of(),
                    m.assumptions(),
                    List.of());
        }
        if (e instanceof Evaluation.Missing m) {
            return Result.undetermined(
                    subject, d.quantity(), capital(d.quantity()) + ": cannot be told from the submission.", m.needs());
        }
        if (e instanceof Evaluation.OutOfScope o) {
            return Result.undetermined(
                    subject,
                    d.quantity(),
                    capital(o.reason()) + (o.clause().isEmpty() ? "" : " (" + o.clause() + ")") + ".",
                    List.of());
        }
        return Result.notApplicable(subject, d.quantity(), capital(((Evaluation.NotApplicable) e).reason()) + ".");
    }

    private Result limit(Rule.Limit limit, Subject subject) {
        QuantityDescription d = catalogue.quantity(limit.quantity()).description();
        Observation seen = catalogue.quantity(limit.quantity()).observe(subject, context);
        if (seen instanceof Observation.NotApplicable n) {
            return Result.notApplicable(subject, d.name(), capital(n.reason()) + ".");
        }
        Candidates candidates = candidates(limit, subject);
        if (seen instanceof Observation.Missing m) {
            Result r = Result.undetermined(
                            subject,
                            d.name(),
                            capital(d.name()) + ": cannot be told from the submission."
                                    + candidates
                                            .onlyRow()
                                            .map(row -> " " + asked(limit.sense(), row.values()))
                                            .orElse(""),
                            m.needs())
                    .among(candidates.values());
            return candidates.needs().isEmpty() ? r : r.becauseOf(candidates.needs());
        }
        Observation.Found found = (Observation.Found) seen;
        if (candidates.rows().isEmpty()) {
            return Result.undetermined(
                            subject,
                            d.name(),
                            capital(d.name()) + ": " + Phrases.of(found.value(), units)
                                    + ". The edition gives no value for this case.",
                            List.of())
                    .beyond();
        }
        List<Result> results = candidates.rows().stream()
                .map(row -> compared(d, found, limit.sense(), row.values(), subject))
                .toList();
        boolean allAgree =
                results.stream().map(Result::determination).distinct().count() == 1;
        Result result = results.get(0).among(candidates.values());
        return allAgree ? result : result.becauseOf(candidates.needs());
    }

    /** Rows that may count: up to the first whose condition holds, those whose condition is not known among them. */
    private Candidates candidates(Rule.Limit limit, Subject subject) {
        List<Rule.Row> rows = new ArrayList<>();
        List<Need> needs = new ArrayList<>();
        for (Rule.Row row : limit.rows()) {
            Derived<Boolean> holds = conditions.holds(row.when(), subject);
            needs.addAll(holds.needs());
            if (!holds.isKnown() || holds.get()) {
                rows.add(row);
            }
            if (holds.isKnown() && holds.get()) {
                break;
            }
        }
        return new Candidates(rows, needs);
    }

    private record Candidates(List<Rule.Row> rows, List<Need> needs) {
        Optional<Rule.Row> onlyRow() {
            return rows.size() == 1 ? Optional.of(rows.get(0)) : Optional.empty();
        }

        List<Value> values() {
            return rows.stream()
                    .flatMap(row -> row.values().stream())
                    .distinct()
                    .toList();
        }
    }

    private Result compared(
            QuantityDescription d, Observation.Found found, Sense sense, List<Value> allowed, Subject subject) {
        Determination determination =
                complies(d, found.value(), sense, allowed) ? Determination.COMPLIES : Determination.DOES_NOT_COMPLY;
        ShownComparison shown = ShownComparison.of(found.value(), sense, allowed, determination, units);
        return new Result(
                subject,
                determination,
                d.name(),
                Optional.of(found.value()),
                Optional.of(sense),
                allowed,
                utilisation(found.value(), sense, allowed),
                sentence(d.name(), shown.found(), found.remark()) + asked(sense, shown.allowed() + written(allowed)),
                found.working(),
                List.of(),
                List.of(),
                List.of());
    }

    private static boolean complies(QuantityDescription d, Value found, Sense sense, List<Value> allowed) {
        if (found instanceof Measure m && sense != Sense.ONE_OF) {
            Measure limit = (Measure) allowed.get(0);
            return sense.holds(m.in(limit.unit()), limit.value());
        }
        if (found instanceof Word w && (sense == Sense.AT_LEAST || sense == Sense.AT_MOST)) {
            return sense.holds(d.words().indexOf(w.word()), d.words().indexOf(((Word) allowed.get(0)).word()));
        }
        return allowed.contains(found);
    }

    /** Only where it says the same as the comparison: for at least and at most, between positive numbers. */
    private static OptionalDouble utilisation(Value found, Sense sense, List<Value> allowed) {
        if (!(found instanceof Measure m) || !(allowed.get(0) instanceof Measure limit)) {
            return OptionalDouble.empty();
        }
        double f = m.in(limit.unit());
        double a = limit.value();
        if (f <= 0 || a <= 0) {
            return OptionalDouble.empty();
        }
        return switch (sense) {
            case AT_LEAST -> OptionalDouble.of(a / f);
            case AT_MOST -> OptionalDouble.of(f / a);
            default -> OptionalDouble.empty();
        };
    }

    private static String sentence(String quantity, String found, String remark) {
        return capital(quantity) + ": " + found + (remark.isEmpty() ? "" : " (" + remark + ")") + ". ";
    }

    private String asked(Sense sense, List<Value> allowed) {
        return asked(sense, ShownComparison.limit(sense, allowed, units) + written(allowed));
    }

    private static String asked(Sense sense, String allowed) {
        return "Needed: " + (sense == Sense.EQUAL || sense == Sense.ONE_OF ? "" : sense.phrase() + " ") + allowed + ".";
    }

    /** As the ruleset writes it, where the report shows it converted. */
    private String written(List<Value> allowed) {
        return ShownComparison.isConverted(allowed, units) ? " (" + Phrases.of(allowed) + ")" : "";
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
