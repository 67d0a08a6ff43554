package org.deckplanreview.ruleset;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.provenance.CanonicalJson;
import org.deckplanreview.provenance.Digest;
import org.deckplanreview.ruleset.ResolvedParameters.Origin;
import org.deckplanreview.ruleset.ResolvedParameters.Parameter;

/**
 * A resolved edition as canonical JSON. Holds what the edition says and what it uses of its standards, so that its
 * digest changes with any value, citation or word, and stays with comments, blank lines and the order of members.
 */
final class CanonicalEdition {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final SortedMap<String, SortedMap<String, Object>> used = new TreeMap<>();

    private CanonicalEdition() {}

    /** The edition with its canonical form and digest. */
    static Edition complete(Edition e) {
        String canonical = canonical(new CanonicalEdition().edition(e));
        return new Edition(
                e.region(),
                e.regionTitle(),
                e.name(),
                e.title(),
                e.binding(),
                e.bases(),
                e.basedOn(),
                e.sources(),
                e.site(),
                e.loads(),
                e.schedule(),
                e.provisions(),
                e.cautions(),
                e.referrals(),
                e.notes(),
                e.amendments(),
                canonical,
                Digest.sha256(canonical));
    }

    /** @param plain maps, lists, text, numbers and flags */
    static String digestOf(Object plain) {
        return Digest.sha256(canonical(plain));
    }

    private static String canonical(Object plain) {
        try {
            return CanonicalJson.of(JSON.writeValueAsString(plain));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("Maps, lists and scalars can be written", e);
        }
    }

    private Map<String, Object> edition(Edition e) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("region", e.region());
        json.put("regionTitle", e.regionTitle());
        json.put("edition", e.name());
        json.put("title", e.title());
        bind(e.binding(), json);
        json.put("cautions", e.cautions());
        json.put("referrals", e.referrals());
        json.put("notes", e.notes());
        Map<String, Object> sources = new LinkedHashMap<>();
        e.sources().forEach(source -> sources.put(source.key(), source(source)));
        json.put("sources", sources);
        Map<String, Object> loads = new LinkedHashMap<>();
        loads.put("imposed", e.loads().imposed().stream().map(this::imposed).toList());
        loads.put("parameters", parameters((ResolvedParameters) e.loads().parameters()));
        json.put("loads", loads);
        e.schedule().ifPresent(practice -> json.put("schedule", parameters((ResolvedParameters) practice)));
        if (!e.site().values().isEmpty()) {
            json.put("site", site(e.site()));
        }
        if (!e.amendments().isEmpty()) {
            json.put(
                    "amendments",
                    e.amendments().stream().map(a -> amendment(a.amendment())).toList());
        }
        ConfirmationCounts counts = ConfirmationCounts.of(e);
        json.put(
                "confirmed",
                two(
                        "values",
                        ConfirmationCounts.byWord(counts.values()),
                        "tableRows",
                        ConfirmationCounts.byWord(counts.tableRows())));
        json.put("provisions", e.provisions().stream().map(this::provision).toList());
        json.put("standards", used);
        return json;
    }

    private static void bind(Binding binding, Map<String, Object> edition) {
        if (binding instanceof Binding.ByDate date) {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("from", date.from().toString());
            date.until().ifPresent(day -> json.put("until", day.toString()));
            edition.put("inForce", json);
        } else {
            edition.put("published", binding.day().toString());
        }
    }

    private static Map<String, Object> site(SiteValues site) {
        Map<String, Object> json = new LinkedHashMap<>();
        site.values()
                .forEach(local -> json.put(
                        local.member().word(), two("value", value(local.value()), "cite", cite(local.citation()))));
        return json;
    }

    private static Map<String, Object> amendment(Amendment amendment) {
        Map<String, Object> json = two("amendment", amendment.name(), "title", amendment.title());
        amendment.adopts().ifPresent(edition -> json.put("adopts", edition));
        return json;
    }

    private static Map<String, Object> source(Source s) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("title", s.title());
        json.put("edition", s.edition());
        json.put("publisher", s.publisher());
        json.put("standing", s.standing().word());
        return json;
    }

    private static Map<String, Object> cite(Citation c) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("source", c.source().key());
        json.put("clause", c.clause());
        json.put("confirmed", two("by", c.confirmedBy().word(), "on", c.on().toString()));
        return json;
    }

    private Map<String, Object> imposed(LoadRules.ImposedRow row) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("when", condition(row.when()));
        json.put("uniform", value(row.uniform()));
        row.concentrated().ifPresent(load -> json.put("concentrated", value(load)));
        row.category().ifPresent(category -> json.put("category", category));
        json.put("reason", row.reason());
        json.put("cite", cite(row.citation()));
        return json;
    }

    private Map<String, Object> provision(Provision p) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", p.id());
        json.put("setBy", p.setBy());
        json.put("title", p.title());
        json.put("concern", p.concern().word());
        json.put("obligation", p.obligation().word());
        json.put("cite", cite(p.citation()));
        json.put("subjects", p.subjects().word());
        json.put("when", condition(p.when()));
        if (!p.scope().isEmpty()) {
            json.put("scope", p.scope().stream().map(CanonicalEdition::reach).toList());
        }
        if (!p.calculated().isEmpty()) {
            json.put("calculated", p.calculated());
        }
        json.put("advice", p.advice());
        p.caution().ifPresent(text -> json.put("caution", text));
        p.referral().ifPresent(text -> json.put("referral", text));
        if (p.rule() instanceof Rule.Limit limit) {
            json.put("limit", limit(limit));
        } else if (p.rule() instanceof Rule.Calculation calculation) {
            json.put("calculate", calculation(calculation));
        } else if (p.rule() instanceof Rule.LookUp lookUp) {
            json.put("lookUp", lookUp(lookUp));
        }
        return json;
    }

    private static Map<String, Object> reach(Reach reach) {
        Map<String, Object> json = two("name", reach.name(), "cite", cite(reach.citation()));
        json.put(
                "beyond",
                reach.beyond().stream()
                        .map(beyond -> two("when", condition(beyond.when()), "reason", beyond.reason()))
                        .toList());
        return json;
    }

    private static Map<String, Object> limit(Rule.Limit limit) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("quantity", limit.quantity());
        json.put(
                limit.sense().word(),
                limit.rows().stream()
                        .map(row -> two(
                                "when",
                                condition(row.when()),
                                "values",
                                row.values().stream()
                                        .map(CanonicalEdition::value)
                                        .toList()))
                        .toList());
        return json;
    }

    private Map<String, Object> calculation(Rule.Calculation calculation) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("method", calculation.method());
        json.put("parameters", parameters((ResolvedParameters) calculation.parameters()));
        return json;
    }

    private Map<String, Object> lookUp(Rule.LookUp lookUp) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("table", named(lookUp.table()));
        json.put("quantity", lookUp.quantity());
        json.put(lookUp.sense().word(), lookUp.column());
        Map<String, Object> keys = new LinkedHashMap<>();
        lookUp.keys().forEach(key -> keys.put(key.column(), key(key)));
        json.put("keys", keys);
        lookUp.interpolation().ifPresent(between -> {
            json.put("interpolate", two("key", between.column(), "clause", between.clause()));
            between.roundedTo().ifPresent(step -> json.put("round", value(step)));
        });
        lookUp.share().ifPresent(share -> json.put("share", value(share)));
        return json;
    }

    private Map<String, Object> key(TableKey key) {
        if (key instanceof TableKey.Translated translated) {
            Map<String, Object> by = new LinkedHashMap<>();
            translated
                    .by()
                    .forEach(one ->
                            by.put(one.column(), one.match() == TableKey.Match.NONE ? one.quantity() : key(one)));
            Map<String, Object> json = two("from", named(translated.table()), "by", by);
            if (!translated.largest().isEmpty()) {
                Map<String, Object> largest = new LinkedHashMap<>();
                translated.largest().forEach((column, end) -> largest.put(column, value(end)));
                json.put("smallerUpTo", largest);
            }
            return json;
        }
        TableKey.Direct direct = (TableKey.Direct) key;
        Map<String, Object> json = two(
                "quantity", direct.quantity(), "conservative", direct.match().word());
        direct.least().ifPresent(least -> json.put("least", value(least)));
        direct.unstated().ifPresent(taken -> json.put("unstated", value(taken)));
        direct.times().ifPresent(factor -> json.put("times", factor(factor)));
        direct.raised().ifPresent(raise -> json.put("raised", raise(raise)));
        return json;
    }

    private Map<String, Object> factor(TableKey.Factor factor) {
        Map<String, Object> json = two("from", named(factor.table()), "column", factor.column());
        json.put("keys", Map.of(factor.key().column(), key(factor.key())));
        factor.interpolation().ifPresent(clause -> json.put("interpolation", clause));
        return json;
    }

    private Map<String, Object> raise(TableKey.Raise raise) {
        Map<String, Object> json = two("quantity", raise.quantity(), "over", named(raise.assumed()));
        json.put("column", raise.column());
        json.put("keys", Map.of(raise.key().column(), key(raise.key())));
        json.put("from", value(raise.from()));
        return json;
    }

    /** A table stands once, among the standards; those who use it name it. */
    private String named(LookUpTable table) {
        used(table.standard(), table.name(), table(table));
        return table.reference();
    }

    private void used(String standard, String name, Object stated) {
        used.computeIfAbsent(standard, key -> new TreeMap<>()).put(name, stated);
    }

    private Map<String, Object> parameters(ResolvedParameters parameters) {
        Map<String, Object> json = new LinkedHashMap<>();
        parameters.all().forEach((name, parameter) -> json.put(name, parameter(parameter)));
        return json;
    }

    /** A standard's value stands once, among the standards; those who use it name the standard. */
    private Map<String, Object> parameter(Parameter parameter) {
        Map<String, Object> json = new LinkedHashMap<>();
        if (parameter.origin() instanceof Origin.FromStandard standard) {
            Layered layered = standard.layered();
            used(
                    layered.standard(),
                    layered.name(),
                    layered.table().map(CanonicalEdition::table).orElseGet(() -> single(layered)));
            json.put("from", layered.standard());
            return json;
        }
        if (parameter instanceof Parameter.Single single) {
            json.put("value", value(single.value()));
        }
        json.put("cite", cite(parameter.origin().citation()));
        return json;
    }

    private static Map<String, Object> single(Layered layered) {
        Map<String, Object> json = single(layered.content(), layered.citation());
        layered.replaced().ifPresent(old -> json.put("replaces", single(old.content(), old.citation())));
        return json;
    }

    private static Map<String, Object> single(StandardFile.Content content, Citation citation) {
        Value value = TokenReader.unread(((StandardFile.Content.Single) content).token());
        return two("value", value(value), "cite", cite(citation));
    }

    private static Map<String, Object> table(LookUpTable table) {
        Map<String, Object> json = new LinkedHashMap<>();
        Map<String, Object> columns = new LinkedHashMap<>();
        table.columns().forEach((name, column) -> columns.put(name, column.word()));
        json.put("columns", columns);
        json.put("rows", table.rows().stream().map(CanonicalEdition::cells).toList());
        if (!table.labels().texts().isEmpty()) {
            json.put("labels", table.labels().texts());
        }
        json.put("cite", cite(table.citation()));
        table.replaced().ifPresent(old -> json.put("replaces", table(old)));
        return json;
    }

    private static Map<String, Object> cells(LookUpTable.Row row) {
        Map<String, Object> json = new LinkedHashMap<>();
        row.cells().forEach((name, cell) -> json.put(name, cell instanceof Measure m ? m.value() : value(cell)));
        row.confirmedBy().ifPresent(by -> json.put(CsvTable.CONFIRMED, by.word()));
        return json;
    }

    private static Object value(Value value) {
        if (value instanceof Measure m) {
            return two("value", m.value(), "unit", m.unit().symbol());
        }
        return value instanceof Word w ? w.word() : ((Flag) value).yes();
    }

    private static Map<String, Object> condition(Condition condition) {
        SortedMap<String, Object> json = new TreeMap<>();
        for (Condition part : condition instanceof Condition.All all ? all.conditions() : List.of(condition)) {
            if (part instanceof Condition.Compare compare) {
                json.put(compare.quantity(), compared(compare, json.get(compare.quantity())));
            } else if (part instanceof Condition.OneOf oneOf) {
                json.put(oneOf.quantity(), oneOf.words());
            } else if (part instanceof Condition.Is is) {
                json.put(is.quantity(), is.yes());
            }
        }
        return json;
    }

    private static Map<String, Object> compared(Condition.Compare compare, Object others) {
        Map<String, Object> json = new LinkedHashMap<>();
        Optional.ofNullable((Map<?, ?>) others)
                .ifPresent(map -> map.forEach((sense, value) -> json.put((String) sense, value)));
        json.put(compare.sense().word(), value(compare.value()));
        return json;
    }

    private static Map<String, Object> two(String name, Object value, String otherName, Object otherValue) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put(name, value);
        json.put(otherName, otherValue);
        return json;
    }
}
