package org.deckplanreview.submission;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.JsonNode;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.deckplanreview.kernel.Pointer;

/**
 * Which members of one submission a review has read. The build adds to every accessor of the submission's records a call
 * of {@link #read}; what runs in {@link #during} is what counts. A log serves one review in one thread.
 *
 * <p>What counts are values: texts, numbers, lists of them, points, directions and lines. An object or a list of objects is read
 * where a value in it is. What only names something is no value.
 */
public final class ReadLog {

    private static final ThreadLocal<ReadLog> OF_THIS_THREAD = new ThreadLocal<>();

    private static final Pattern INDEX = Pattern.compile("/\\d+");
    private static final Pattern UNIT_OF_LENGTHS = Pattern.compile("[,;] in the document's length unit\\.$");

    private static final ClassValue<Map<String, RecordComponent>> COMPONENTS_BY_MEMBER = new ClassValue<>() {
        @Override
        protected Map<String, RecordComponent> computeValue(Class<?> type) {
            Map<String, RecordComponent> components = new LinkedHashMap<>();
            for (RecordComponent component : type.getRecordComponents()) {
                JsonProperty written = component.getAccessor().getAnnotation(JsonProperty.class);
                components.put(written == null ? component.getName() : written.value(), component);
            }
            return components;
        }
    };

    private final Map<Object, Place> places = new IdentityHashMap<>();
    private final List<GivenValue> given = new ArrayList<>();

    /** A log for a submission that is read from its tree. */
    ReadLog(Submission submission, JsonNode tree, SchemaPlace schema) {
        walk(submission, tree, Pointer.ROOT, schema, schema);
    }

    private ReadLog() {}

    /** What a record of the submission has told of its components. */
    private static final class Place {
        private final Set<String> read = new TreeSet<>();

        Place copy() {
            Place copy = new Place();
            copy.read.addAll(read);
            return copy;
        }
    }

    /**
     * A value that the document gives.
     *
     * @param written the part of the schema that says what it means
     * @param component of the record at that place; empty where the whole record is one value
     */
    private record GivenValue(Pointer pointer, SchemaPlace written, Place place, Optional<String> component) {
        boolean isRead() {
            return component.map(place.read::contains).orElse(!place.read.isEmpty());
        }

        /** The same for the same member of other parts: the pointer without the indices of lists. */
        String path() {
            return INDEX.matcher(pointer.value()).replaceAll("/-");
        }

        /** The schema tells those who write submissions the unit of a length; here that would only be long. */
        String meaning() {
            return UNIT_OF_LENGTHS.matcher(written.meaning()).replaceFirst(".");
        }
    }

    /** A log that has counted what this one has, and counts on by itself. */
    public ReadLog copy() {
        ReadLog copy = new ReadLog();
        Map<Place, Place> copies = new IdentityHashMap<>();
        places.forEach((part, place) -> copy.places.put(part, copies.computeIfAbsent(place, Place::copy)));
        given.forEach(value -> copy.given.add(
                new GivenValue(value.pointer(), value.written(), copies.get(value.place()), value.component())));
        return copy;
    }

    /** Counts what is read while some work is done in this thread. */
    public <T> T during(Supplier<T> work) {
        ReadLog before = OF_THIS_THREAD.get();
        OF_THIS_THREAD.set(this);
        try {
            return work.get();
        } finally {
            OF_THIS_THREAD.set(before);
        }
    }

    /** {@link #during(Supplier)} of work that gives nothing. */
    public void during(Runnable work) {
        during(() -> {
            work.run();
            return work;
        });
    }

    /** Called by accessors as the build weaves them, and by nothing else. */
    public static void read(Object owner, String component) {
        ReadLog log = OF_THIS_THREAD.get();
        if (log != null) {
            Place place = log.places.get(owner);
            if (place != null) {
                place.read.add(component);
            }
        }
    }

    /** What is read of a copy is read of what it was made from. */
    static <T> T copied(T from, T copy) {
        ReadLog log = OF_THIS_THREAD.get();
        if (log != null && log.places.containsKey(from)) {
            log.places.put(copy, log.places.get(from));
        }
        return copy;
    }

    /** What was given and not read so far, in the order of pointers; the same member of several parts once. */
    public List<NotReviewed> notReviewed() {
        Map<String, List<GivenValue>> alike = new LinkedHashMap<>();
        given.stream()
                .filter(value -> !value.isRead())
                .sorted(Comparator.comparing(GivenValue::pointer))
                .forEach(value -> alike.computeIfAbsent(value.path(), p -> new ArrayList<>())
                        .add(value));
        return alike.values().stream()
                .map(group -> new NotReviewed(
                        group.get(0).meaning(),
                        group.get(0).pointer(),
                        group.stream().skip(1).map(GivenValue::pointer).toList()))
                .toList();
    }

    private void walk(Object part, JsonNode node, Pointer pointer, SchemaPlace schema, SchemaPlace written) {
        Place place = new Place();
        places.put(part, place);
        if (!node.isObject() || part instanceof PlanLine) {
            given.add(new GivenValue(pointer, written, place, Optional.empty()));
            return;
        }
        Map<String, RecordComponent> components = COMPONENTS_BY_MEMBER.get(part.getClass());
        node.properties().forEach(member -> {
            String name = member.getKey();
            SchemaPlace at = schema.member(name).orElseThrow();
            if (!at.isName(name)) {
                RecordComponent component = components.get(name);
                Object value = value(component, part);
                walkValue(value, member.getValue(), pointer.child(name), at, place, component.getName());
            }
        });
    }

    private void walkValue(
            Object value, JsonNode node, Pointer pointer, SchemaPlace schema, Place owner, String component) {
        if (isPart(value)) {
            walk(value, node, pointer, schema, schema);
        } else if (value instanceof List<?> list && list.stream().allMatch(ReadLog::isPart)) {
            SchemaPlace item = schema.item().orElseThrow();
            SchemaPlace entry = item.meaning().isEmpty() ? schema : item;
            for (int i = 0; i < list.size(); i++) {
                walk(list.get(i), node.get(i), pointer.child(i), item, entry);
            }
        } else {
            given.add(new GivenValue(pointer, schema, owner, Optional.of(component)));
        }
    }

    private static boolean isPart(Object value) {
        return value instanceof Record && value.getClass().getPackage() == Submission.class.getPackage();
    }

    private static Object value(RecordComponent component, Object part) {
        try {
            Object value = component.getAccessor().invoke(part);
            return value instanceof Optional<?> optional ? optional.orElseThrow() : value;
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("A record's accessor is public and throws nothing", e);
        }
    }
}
