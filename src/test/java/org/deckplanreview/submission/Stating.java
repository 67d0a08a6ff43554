package org.deckplanreview.submission;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Builds records of a submission that state only what a test is about, as a designer leaves out what need not be said. */
public final class Stating<R extends Record> {
    private final Class<R> type;
    private final Map<String, Object> stated = new TreeMap<>();

    private Stating(Class<R> type) {
        this.type = type;
    }

    public static <R extends Record> Stating<R> a(Class<R> type) {
        return new Stating<>(type);
    }

    /** @param value of an optional member as it is or wrapped */
    public Stating<R> with(String member, Object value) {
        stated.put(member, value);
        return this;
    }

    /**
     * The record; optional members and lists that were not stated are empty.
     *
     * @throws IllegalArgumentException if the record has no such member, or needs one that was not stated
     */
    public R made() {
        RecordComponent[] members = type.getRecordComponents();
        Object[] values = Arrays.stream(members).map(this::value).toArray();
        if (!stated.isEmpty()) {
            throw new IllegalArgumentException(type.getSimpleName() + " has no " + stated.keySet());
        }
        Class<?>[] types = Arrays.stream(members).map(RecordComponent::getType).toArray(Class[]::new);
        try {
            return type.getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException(type.getSimpleName() + " of " + Arrays.toString(values), e);
        }
    }

    private Object value(RecordComponent member) {
        Object given = stated.remove(member.getName());
        if (member.getType() == Optional.class) {
            return given instanceof Optional<?> ? given : Optional.ofNullable(given);
        }
        if (given == null && member.getType() == List.class) {
            return List.of();
        }
        if (given == null) {
            throw new IllegalArgumentException(type.getSimpleName() + " needs " + member.getName());
        }
        return given;
    }
}
