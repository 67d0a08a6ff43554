package org.deckplanreview.api;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.QuantityDescription;
import org.deckplanreview.vocabulary.ValueType;
import org.deckplanreview.vocabulary.Vocabulary;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What rulesets may name. */
@Path("/vocabulary")
@Tag(name = "rulesets")
public class VocabularyResource {
    private final Published published;

    VocabularyResource(Vocabulary vocabulary) {
        this.published = Published.of(vocabulary);
    }

    @GET
    @Produces(MediaType.APPLICATION_JSON)
    @Operation(
            summary = "The quantities and methods that rulesets may name",
            description = "With their units, the subjects that have them, and the parameters that a ruleset must give.")
    public Published vocabulary() {
        return published;
    }

    @Schema(name = "Vocabulary")
    record Published(
            List<Quantity> quantities,
            List<Method> methods,
            List<Parameter> loadParameters,
            List<Parameter> scheduleParameters) {
        static Published of(Vocabulary vocabulary) {
            return new Published(
                    vocabulary.quantities().stream().map(Quantity::of).toList(),
                    vocabulary.methods().stream().map(Method::of).toList(),
                    vocabulary.loadParameters().stream().map(Parameter::of).toList(),
                    vocabulary.scheduleParameters().stream().map(Parameter::of).toList());
        }
    }

    record Quantity(
            String name,
            String type,
            @Schema(implementation = String.class) Optional<String> unit,
            List<String> words,
            List<String> subjects,
            String definition) {
        static Quantity of(QuantityDescription q) {
            return new Quantity(
                    q.name(), word(q.type()), symbol(q.unit()), q.words(), subjectWords(q.subjects()), q.definition());
        }
    }

    record Method(
            String name,
            String source,
            String quantity,
            String unit,
            List<String> subjects,
            List<Parameter> parameters,
            String definition) {
        static Method of(MethodDescription m) {
            return new Method(
                    m.name(),
                    m.source(),
                    m.quantity(),
                    m.unit().symbol(),
                    subjectWords(m.subjects()),
                    m.parameters().stream().map(Parameter::of).toList(),
                    m.definition());
        }
    }

    record Parameter(
            String name,
            String type,
            @Schema(implementation = String.class) Optional<String> unit,
            List<Column> columns,
            String meaning,
            List<String> words,
            boolean required) {
        static Parameter of(ParameterDescription p) {
            return new Parameter(
                    p.name(),
                    word(p.type()),
                    symbol(p.unit()),
                    p.columns().stream().map(Column::of).toList(),
                    p.meaning(),
                    p.words(),
                    p.required());
        }
    }

    record Column(
            String name,
            String type,
            @Schema(implementation = String.class) Optional<String> unit) {
        static Column of(ParameterDescription.Column c) {
            return new Column(c.name(), word(c.type()), symbol(c.unit()));
        }
    }

    private static String word(ValueType type) {
        return type.name().toLowerCase(Locale.ROOT);
    }

    private static Optional<String> symbol(Optional<MeasureUnit> unit) {
        return unit.map(MeasureUnit::symbol);
    }

    private static List<String> subjectWords(List<SubjectKind> subjects) {
        return subjects.stream().map(SubjectKind::word).toList();
    }
}
