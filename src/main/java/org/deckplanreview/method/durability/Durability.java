package org.deckplanreview.method.durability;

import java.util.List;
import org.deckplanreview.method.Method;

/** Methods for the durability of timber. */
public final class Durability {

    private Durability() {}

    public static List<Method> methods() {
        return List.of(new UseClassReached());
    }
}
