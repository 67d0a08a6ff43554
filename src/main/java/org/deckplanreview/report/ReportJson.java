package org.deckplanreview.report;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;
import org.deckplanreview.formula.Expression;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.kernel.Worded;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.provenance.Digest;
import org.deckplanreview.vocabulary.Sense;

/**
 * The report as JSON, format 1: members in the records' order, absent, missing and empty ones left out, numbers rounded to
 * plain decimals. Its digest is taken over the bytes that are written: anyone who takes the last member, provenance, out of the
 * line comes to the same.
 */
public final class ReportJson {
    private static final ObjectMapper MAPPER = JsonMapper.builder()
            .addModule(new Jdk8Module())
            .addModule(new JavaTimeModule())
            .addModule(new SimpleModule()
                    .addSerializer(as(Worded.class, Worded::word))
                    .addSerializer(as(Expression.class, Expression::text))
                    .addSerializer(as(Pointer.class, Pointer::value))
                    .addSerializer(as(Sense.class, Sense::word))
                    .addSerializer(as(MeasureUnit.class, MeasureUnit::symbol))
                    .addSerializer(new Rounded(double.class))
                    .addSerializer(new Rounded(Double.class))
                    .addSerializer(new IfKnown()))
            .withConfigOverride(
                    Derived.class,
                    derived -> derived.setInclude(
                            JsonInclude.Value.construct(JsonInclude.Include.NON_EMPTY, JsonInclude.Include.ALWAYS)))
            .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .serializationInclusion(JsonInclude.Include.NON_ABSENT)
            .build();

    /** Empty lists are left out of reports. Numbers end in no noughts, so that any tool writes them as they are here. */
    private static final ObjectMapper REPORTS =
            MAPPER.copy().registerModule(new SimpleModule("reports").addSerializer(new WithoutNoughts()));

    static {
        REPORTS.configOverride(List.class)
                .setInclude(JsonInclude.Value.construct(JsonInclude.Include.NON_EMPTY, JsonInclude.Include.ALWAYS));
    }

    private static final byte[] LAST_MEMBER = ",\"provenance\":".getBytes(StandardCharsets.UTF_8);

    /** Line ends that do not depend on the machine. */
    private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");

    private static final Separators SEPARATORS = Separators.createDefaultInstance()
            .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
            .withObjectEmptySeparator("")
            .withArrayEmptySeparator("");

    private ReportJson() {}

    /** On one line, UTF-8, without a line end after it. */
    public static byte[] line(Report report, Detail detail) {
        byte[] content = content(report, detail);
        byte[] provenance = bytes(REPORTS.writer(), Proof.of(report, Digest.sha256(content)));
        ByteArrayOutputStream line = new ByteArrayOutputStream(content.length + LAST_MEMBER.length + provenance.length);
        line.write(content, 0, content.length - 1);
        line.writeBytes(LAST_MEMBER);
        line.writeBytes(provenance);
        line.write('}');
        return line.toByteArray();
    }

    /** The digest that the report in full tells of itself. */
    static String digest(Report report) {
        return Digest.sha256(content(report, Detail.FULL));
    }

    /** What the report's own digest is taken over: all but the last member. */
    private static byte[] content(Report report, Detail detail) {
        return bytes(
                REPORTS.writer(),
                switch (detail) {
                    case FULL -> ReportDocument.of(report);
                    case SUMMARY -> ReportSummary.of(report);
                });
    }

    /**
     * The member provenance.
     *
     * @param report digest of the document without this member
     */
    private record Proof(String service, String received, String submission, String edition, String report) {
        static Proof of(Report report, String digest) {
            Provenance from = report.provenance();
            return new Proof(from.service(), from.received(), from.submission(), from.edition(), digest);
        }
    }

    /** Records that are built of what reports are built of, in the same form; indented, without a line end after it. */
    public static String indented(Object records) {
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter(SEPARATORS).withObjectIndenter(INDENT).withArrayIndenter(INDENT);
        return written(MAPPER.writer(printer), records);
    }

    /** Likewise on one line, without a line end after it. */
    public static String line(Object records) {
        return written(MAPPER.writer(), records);
    }

    private static String written(ObjectWriter writer, Object records) {
        try {
            return writer.writeValueAsString(records);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("Records of reports are always JSON", e);
        }
    }

    private static byte[] bytes(ObjectWriter writer, Object records) {
        try {
            return writer.writeValueAsBytes(records);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("Records of reports are always JSON", e);
        }
    }

    private static final class WithoutNoughts extends StdSerializer<BigDecimal> {
        WithoutNoughts() {
            super(BigDecimal.class);
        }

        @Override
        public void serialize(BigDecimal value, JsonGenerator json, SerializerProvider provider) throws IOException {
            json.writeNumber(value.stripTrailingZeros());
        }
    }

    /** Numbers that are shown as they follow from the layout. */
    private static final class Rounded extends StdSerializer<Double> {
        Rounded(Class<Double> type) {
            super(type);
        }

        @Override
        public void serialize(Double value, JsonGenerator json, SerializerProvider provider) throws IOException {
            json.writeNumber(Numbers.rounded(value));
        }
    }

    /** What is missing counts as empty and so is left out. */
    private static final class IfKnown extends StdSerializer<Derived<?>> {
        IfKnown() {
            super(Derived.class, false);
        }

        @Override
        public boolean isEmpty(SerializerProvider provider, Derived<?> derived) {
            return !derived.isKnown();
        }

        @Override
        public void serialize(Derived<?> derived, JsonGenerator json, SerializerProvider provider) throws IOException {
            provider.defaultSerializeValue(derived.get(), json);
        }
    }

    private static <T> StdSerializer<T> as(Class<T> type, Function<T, String> text) {
        return new StdSerializer<>(type) {
            @Override
            public void serialize(T value, JsonGenerator json, SerializerProvider provider) throws IOException {
                json.writeString(text.apply(value));
            }
        };
    }
}
