package org.deckplanreview.kernel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/** A value that follows from the submission, or what the submission must give before it can. */
public sealed interface Derived<T> {

    /** The value follows. */
    record Known<T>(T value) implements Derived<T> {}

    /** The value does not follow; the needs are sorted and never empty. */
    record Missing<T>(List<Need> needs) implements Derived<T> {
        public Missing {
            if (needs.isEmpty()) {
                throw new IllegalArgumentException("What is missing must be named");
            }
            needs = needs.stream().distinct().sorted().toList();
        }
    }

    static <T> Derived<T> known(T value) {
        return new Known<>(value);
    }

    static <T> Derived<T> missing(Pointer pointer, String what) {
        return new Missing<>(List.of(new Need(pointer, what)));
    }

    static <T> Derived<T> missing(List<Need> needs) {
        return new Missing<>(needs);
    }

    static <T> Derived<T> of(Optional<T> value, Pointer pointer, String what) {
        return value.<Derived<T>>map(Known::new).orElseGet(() -> missing(pointer, what));
    }

    default boolean isKnown() {
        return this instanceof Known;
    }

    /** The needs; empty when the value is known. */
    default List<Need> needs() {
        return this instanceof Missing<T> m ? m.needs() : List.of();
    }

    default Optional<T> optional() {
        return this instanceof Known<T> k ? Optional.of(k.value()) : Optional.empty();
    }

    /**
     * The known value.
     *
     * @throws IllegalStateException if it is missing
     */
    default T get() {
        return optional().orElseThrow(() -> new IllegalStateException("Not known: " + needs()));
    }

    default <R> Derived<R> map(Function<? super T, ? extends R> f) {
        return flatMap(v -> known(f.apply(v)));
    }

    default <R> Derived<R> flatMap(Function<? super T, ? extends Derived<R>> f) {
        return this instanceof Known<T> k ? f.apply(k.value()) : missing(needs());
    }

    /** Both, or the needs of both. */
    default <U, R> Derived<R> with(Derived<U> other, BiFunction<? super T, ? super U, ? extends R> f) {
        if (this instanceof Known<T> a && other instanceof Known<U> b) {
            return known(f.apply(a.value(), b.value()));
        }
        List<Need> all = new ArrayList<>(needs());
        all.addAll(other.needs());
        return missing(all);
    }
}
