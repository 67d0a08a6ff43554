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

/**
 * Which members of one submission a review has read. The build adds to every accessor of the submission's records a call
 * of {@link #read}; what runs in {@link #during} is what counts. A log serves one review in one thread.
 *
 * <p>What counts are values: texts, numbers, lists of them, points and directions. An object or a list of objects is read
 * where a value in it is. What only names something is no value.
 */
public final class ReadLog {

    private static final ThreadLocal<ReadLog> OF_THIS_THREAD = new ThreadLocal<>();

    private static final Pattern UNIT_OF_LENGTHS = Pattern.compile("[,;] in the document's length unit\\.$");

    private final Map<Object, Place> places = new IdentityHashMap<>();
    private final List<GivenValue> given = new ArrayList<>();

    /** A log for a submission that is read from its tree. */
    ReadLog(Submission submission, JsonNode tree, SchemaPlace schema) {
        walk(submission, tree, Pointer.ROOT, schema, "");
        given.sort(Comparator.comparing(GivenValue::pointer));
    }

    /** What a record of the submission has told of its components. */
    private static final class Place {
        private final Set<String> read = new TreeSet<>();
    }

    /**
     * A value that the document gives.
     *
     * @param component of the record at that place; empty where the whole record is one value
     * @param path the pointer without the indices of lists, the same for the same member of other parts
     */
    private record GivenValue(Pointer pointer, String path, String meaning, Place place, Optional<String> component) {
        boolean isRead() {
            return component.map(place.read::contains).orElse(!place.read.isEmpty());
        }
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
        for (GivenValue value : given) {
            if (!value.isRead()) {
                alike.computeIfAbsent(value.path(), p -> new ArrayList<>()).add(value);
            }
        }
        return alike.values().stream()
                .map(group -> new NotReviewed(
                        group.get(0).meaning(),
                        group.get(0).pointer(),
                        group.stream().skip(1).map(GivenValue::pointer).toList()))
                .toList();
    }

    private void walk(Object part, JsonNode node, Pointer pointer, SchemaPlace schema, String meaning) {
        Place place = new Place();
        places.put(part, place);
        if (!node.isObject()) {
            given.add(new GivenValue(pointer, path(pointer), meaning, place, Optional.empty()));
            return;
        }
        Map<String, RecordComponent> components = componentsByMember(part.getClass());
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
            walk(value, node, pointer, schema, meaning(schema));
        } else if (value instanceof List<?> list && list.stream().allMatch(ReadLog::isPart)) {
            SchemaPlace item = schema.item().orElseThrow();
            String entry = item.meaning().isEmpty() ? meaning(schema) : meaning(item);
            for (int i = 0; i < list.size(); i++) {
                walk(list.get(i), node.get(i), pointer.child(i), item, entry);
            }
        } else {
            given.add(new GivenValue(pointer, path(pointer), meaning(schema), owner, Optional.of(component)));
        }
    }

    private static boolean isPart(Object value) {
        return value instanceof Record && value.getClass().getPackage() == Submission.class.getPackage();
    }

    /** The schema says for those who write submissions in which unit a length is written; here it only would be long. */
    private static String meaning(SchemaPlace schema) {
        return UNIT_OF_LENGTHS.matcher(schema.meaning()).replaceFirst(".");
    }

    private static String path(Pointer pointer) {
        return pointer.value().replaceAll("/\\d+", "/-");
    }

    private static Map<String, RecordComponent> componentsByMember(Class<?> type) {
        Map<String, RecordComponent> components = new LinkedHashMap<>();
        for (RecordComponent component : type.getRecordComponents()) {
            JsonProperty written = component.getAccessor().getAnnotation(JsonProperty.class);
            components.put(written == null ? component.getName() : written.value(), component);
        }
        return components;
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
