package org.deckplanreview.ruleset;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Function;

/** Files of one kind. Each is read when it is first asked for, and once. Thread-safe. */
final class Shelf<T> {

    private final SortedSet<String> paths;
    private final Function<String, Optional<T>> reading;
    private final Map<String, Optional<T>> read = new TreeMap<>();

    /** @param reading what stands in a file; empty if it cannot be read or has faults, which are then told */
    Shelf(Collection<String> paths, Function<String, Optional<T>> reading) {
        this.paths = new TreeSet<>(paths);
        this.reading = reading;
    }

    SortedSet<String> paths() {
        return paths;
    }

    boolean has(String path) {
        return paths.contains(path);
    }

    /** @param path of a file that is there */
    synchronized Optional<T> get(String path) {
        Optional<T> known = read.get(path);
        if (known == null) {
            known = reading.apply(path);
            read.put(path, known);
        }
        return known;
    }

    /** The same files, each changed when it is first asked for. */
    Shelf<T> each(BiFunction<String, T, T> change) {
        return new Shelf<>(paths, path -> get(path).map(content -> change.apply(path, content)));
    }
}
