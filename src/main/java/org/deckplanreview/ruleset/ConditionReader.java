package org.deckplanreview.ruleset;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.Word;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.QuantityDescription;
import org.deckplanreview.vocabulary.Sense;
import org.deckplanreview.vocabulary.ValueType;
import org.deckplanreview.vocabulary.Vocabulary;

/** Reads the quantities, conditions and limits that an edition names, and checks them against the vocabulary. */
final class ConditionReader {

    private final Vocabulary vocabulary;

    ConditionReader(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /** A quantity that this kind of subject has; empty if not, which is then told at the entry. */
    Optional<QuantityDescription> quantity(String name, Entry at, SubjectKind subjects) {
        Optional<QuantityDescription> quantity = vocabulary.quantity(name);
        if (quantity.isEmpty()) {
            at.unknown(name, "quantity", namesOn(subjects));
            return quantity;
        }
        if (!quantity.get().subjects().contains(subjects)) {
            at.file()
                    .fault(
                            at.line(),
                            "'" + name + "'",
                            "Subjects of the kind '" + subjects.word() + "' have no such quantity",
                            KnownNames.accepted(name, namesOn(subjects)));
            return Optional.empty();
        }
        return quantity;
    }

    private List<String> namesOn(SubjectKind subjects) {
        return vocabulary.quantities().stream()
                .filter(q -> q.subjects().contains(subjects))
                .map(QuantityDescription::name)
                .sorted()
                .toList();
    }

    /** The condition in an entry's {@code when}, always true where it has none; empty if it has faults. */
    Optional<Condition> when(Entry entry, SubjectKind subjects) {
        Optional<Entry> when = entry.optional("when");
        if (when.isEmpty()) {
            return Optional.of(Condition.ALWAYS);
        }
        List<Condition> conditions = new ArrayList<>();
        boolean sound = true;
        for (var member : when.get().members().entrySet()) {
            Optional<List<Condition>> read = quantity(member.getKey(), member.getValue(), subjects)
                    .flatMap(quantity -> conditions(quantity, member.getValue()));
            sound &= read.isPresent();
            read.ifPresent(conditions::addAll);
        }
        return sound ? Optional.of(new Condition.All(conditions)) : Optional.empty();
    }

    private static Optional<List<Condition>> conditions(QuantityDescription quantity, Entry entry) {
        if (entry.isMap() && quantity.type() == ValueType.NUMBER) {
            return all(entry.members().entrySet().stream()
                    .map(m -> TokenReader.number(m.getValue(), quantity.unit().orElseThrow())
                            .<Condition>map(value -> new Condition.Compare(quantity.name(), sense(m.getKey()), value)))
                    .toList());
        }
        if (entry.isList() && quantity.type() == ValueType.WORD) {
            return all(entry.items().stream()
                            .map(i -> TokenReader.word(i, quantity.words()))
                            .toList())
                    .map(words -> List.of(new Condition.OneOf(
                            quantity.name(), words.stream().map(Word::word).toList())));
        }
        if (!entry.isMap() && !entry.isList() && quantity.type() == ValueType.FLAG) {
            return TokenReader.flag(entry).map(flag -> List.of(new Condition.Is(quantity.name(), flag.yes())));
        }
        entry.fault(
                "'" + quantity.name() + "' cannot be asked for like this",
                switch (quantity.type()) {
                    case NUMBER ->
                        "{atLeast, atMost, over, under: a number in "
                                + quantity.unit().orElseThrow().symbol() + "}";
                    case WORD ->
                        "a list of its words"
                                + (quantity.words().isEmpty() ? "" : ": " + String.join(", ", quantity.words()));
                    default -> "true or false";
                });
        return Optional.empty();
    }

    /** A sound {@code limit}; empty if it has faults, which are then told. */
    Optional<Rule> limit(Entry limit, SubjectKind subjects) {
        Entry name = limit.member("quantity");
        Optional<QuantityDescription> quantity = quantity(name.text(), name, subjects);
        if (quantity.isEmpty()) {
            return Optional.empty();
        }
        var stated = limit.members().entrySet().stream()
                .filter(m -> !m.getKey().equals("quantity"))
                .findFirst()
                .orElseThrow();
        Sense sense = sense(stated.getKey());
        List<Sense> possible = senses(quantity.get());
        if (!possible.contains(sense)) {
            stated.getValue()
                    .fault(
                            "'" + name.text() + "' cannot be limited by '" + sense.word() + "'",
                            String.join(", ", possible.stream().map(Sense::word).toList()));
            return Optional.empty();
        }
        return rows(stated.getValue(), quantity.get(), subjects).map(rows -> new Rule.Limit(name.text(), sense, rows));
    }

    private static List<Sense> senses(QuantityDescription quantity) {
        return switch (quantity.type()) {
            case NUMBER -> List.of(Sense.AT_LEAST, Sense.AT_MOST, Sense.OVER, Sense.UNDER);
            case WORD ->
                quantity.ordered()
                        ? List.of(Sense.AT_LEAST, Sense.AT_MOST, Sense.EQUAL, Sense.ONE_OF)
                        : List.of(Sense.EQUAL, Sense.ONE_OF);
            case FLAG, TABLE -> List.of(Sense.EQUAL);
        };
    }

    private Optional<List<Rule.Row>> rows(Entry stated, QuantityDescription quantity, SubjectKind subjects) {
        if (!stated.isList()) {
            return TokenReader.read(stated, quantity)
                    .map(value -> List.of(new Rule.Row(Condition.ALWAYS, List.of(value))));
        }
        refuseUnreachable(stated);
        return all(
                stated.items().stream().map(row -> row(row, quantity, subjects)).toList());
    }

    private Optional<Rule.Row> row(Entry row, QuantityDescription quantity, SubjectKind subjects) {
        Optional<Condition> when = when(row, subjects);
        List<Entry> tokens = row.optional("values").map(Entry::items).orElseGet(() -> List.of(row.member("value")));
        return all(tokens.stream()
                        .map(token -> TokenReader.read(token, quantity))
                        .toList())
                .flatMap(values -> when.map(condition -> new Rule.Row(condition, List.copyOf(values))));
    }

    /** Tells rows that stand below one that always holds. */
    static void refuseUnreachable(Entry rows) {
        List<Entry> items = rows.items();
        for (int i = 0; i < items.size() - 1; i++) {
            if (items.get(i).optional("when").isEmpty()) {
                items.get(i + 1).fault("This row is never reached, the one above always holds", "a 'when' above");
                return;
            }
        }
    }

    private static Sense sense(String word) {
        return Arrays.stream(Sense.values())
                .filter(s -> s.word().equals(word))
                .findFirst()
                .orElseThrow();
    }

    private static <T> Optional<List<T>> all(List<? extends Optional<? extends T>> parts) {
        List<T> all = new ArrayList<>();
        parts.forEach(part -> part.ifPresent(all::add));
        return all.size() == parts.size() ? Optional.of(all) : Optional.empty();
    }
}
