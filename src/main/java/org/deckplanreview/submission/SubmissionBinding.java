package org.deckplanreview.submission;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.DeserializationConfig;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.deser.BeanDeserializerModifier;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Worded;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;

/** Makes the records of a tree that the schema accepts. Lengths become mm here. */
final class SubmissionBinding {

    private static final String MM_PER_UNIT = "mm per unit";
    private static final String LEVEL = "level";

    /** A 31 April becomes 30 April, so that reading goes on; that the date is none of the calendar is a fault elsewhere. */
    private static final DateTimeFormatter DATES =
            DateTimeFormatter.ISO_LOCAL_DATE.withResolverStyle(ResolverStyle.SMART);

    private final ObjectMapper mapper = new ObjectMapper();

    SubmissionBinding() {
        mapper.registerModule(new Jdk8Module());
        mapper.registerModule(new SimpleModule()
                .addDeserializer(Length.class, reading(Length.class, (p, c) -> Length.ofMm(mm(p, c))))
                .addDeserializer(PlanPoint.class, reading(PlanPoint.class, SubmissionBinding::point))
                .addDeserializer(Direction.class, reading(Direction.class, SubmissionBinding::direction))
                .addDeserializer(Measure.class, reading(Measure.class, (p, c) -> Measure.parse(p.getText())))
                .addDeserializer(Fall.class, reading(Fall.class, SubmissionBinding::fall))
                .addDeserializer(
                        LocalDate.class, reading(LocalDate.class, (p, c) -> LocalDate.parse(p.getText(), DATES)))
                .setDeserializerModifier(new WordedModifier()));
        mapper.configOverride(List.class).setSetterInfo(JsonSetter.Value.forValueNulls(Nulls.AS_EMPTY));
    }

    /**
     * The submission of a tree.
     *
     * @throws IllegalStateException if the schema accepts what the records cannot hold
     */
    Submission bind(JsonNode tree) {
        ObjectNode whole = mapper.createObjectNode();
        whole.putObject("site");
        whole.putObject("protection");
        whole.setAll((ObjectNode) tree);
        try {
            return mapper.readerFor(Submission.class)
                    .withAttribute(MM_PER_UNIT, mmPerUnit(tree.path("units").asText()))
                    .readValue(whole);
        } catch (IOException e) {
            throw new IllegalStateException("The schema accepts what the records cannot hold", e);
        }
    }

    private static BigDecimal mmPerUnit(String symbol) {
        MeasureUnit unit = MeasureUnit.ofSymbol(symbol).orElseThrow();
        return BigDecimal.valueOf(unit.convert(1, MeasureUnit.MILLIMETRE));
    }

    /** Converts the decimal number as it was written, so that 36 in are 914.4 mm and not the next double beside it. */
    private static double mm(JsonParser p, DeserializationContext c) throws IOException {
        return p.getDecimalValue()
                .multiply((BigDecimal) c.getAttribute(MM_PER_UNIT))
                .doubleValue();
    }

    private static PlanPoint point(JsonParser p, DeserializationContext c) throws IOException {
        p.nextToken();
        double x = mm(p, c);
        p.nextToken();
        double y = mm(p, c);
        p.nextToken();
        return new PlanPoint(x, y);
    }

    private static Direction direction(JsonParser p, DeserializationContext c) throws IOException {
        p.nextToken();
        double dx = p.getDecimalValue().doubleValue();
        p.nextToken();
        double dy = p.getDecimalValue().doubleValue();
        p.nextToken();
        return new Direction(dx, dy);
    }

    private static Fall fall(JsonParser p, DeserializationContext c) throws IOException {
        WrittenFall written = c.readValue(p, WrittenFall.class);
        double oneIn = written.gradient().equals(LEVEL)
                ? Double.POSITIVE_INFINITY
                : Double.parseDouble(written.gradient().substring("1:".length()));
        return new Fall(oneIn, written.direction());
    }

    private record WrittenFall(String gradient, Optional<Direction> direction) {}

    private interface Reading<T> {
        T read(JsonParser p, DeserializationContext c) throws IOException;
    }

    private static <T> JsonDeserializer<T> reading(Class<T> type, Reading<T> reading) {
        return new ReadingDeserializer<>(type, reading);
    }

    private static final class ReadingDeserializer<T> extends StdDeserializer<T> {

        private final transient Reading<T> reading;

        ReadingDeserializer(Class<T> type, Reading<T> reading) {
            super(type);
            this.reading = reading;
        }

        @Override
        public T deserialize(JsonParser p, DeserializationContext c) throws IOException {
            return reading.read(p, c);
        }
    }

    /** Closed lists are read by their words. */
    private static final class WordedModifier extends BeanDeserializerModifier {
        @Override
        public JsonDeserializer<?> modifyEnumDeserializer(
                DeserializationConfig config, JavaType type, BeanDescription description, JsonDeserializer<?> given) {
            return Worded.class.isAssignableFrom(type.getRawClass()) ? worded(type.getRawClass()) : given;
        }

        private static <T> JsonDeserializer<T> worded(Class<T> type) {
            return reading(type, (p, c) -> {
                String word = p.getText();
                return Arrays.stream(type.getEnumConstants())
                        .filter(w -> ((Worded) w).word().equals(word))
                        .findFirst()
                        .orElseThrow(() -> new IOException(type.getSimpleName() + " has no word " + word));
            });
        }
    }
}
