package org.deckplanreview;

import java.util.Random;
import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyAttributes;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * How much is tried. The build tries the same values each time, so that it passes or fails by what has changed; the long form,
 * {@code mvn verify -Dlong=true}, tries ten times as many, and others each time. A property test is found by the service file
 * of its library and needs nothing; other tests ask here.
 */
public final class LongForm implements AroundPropertyHook {
    private static final boolean ASKED_FOR = Boolean.getBoolean("long");
    private static final int TIMES = 10;
    private static final int DEFAULT_TRIES = 1000;
    private static final String SEED = "1";

    /** How many to try, from how many the build tries. */
    public static int tries(int inTheBuild) {
        return ASKED_FOR ? TIMES * inTheBuild : inTheBuild;
    }

    /** A seed for the generator of decks; a failure should name it. */
    public static long seed(long inTheBuild) {
        return ASKED_FOR ? new Random().nextInt(Integer.MAX_VALUE) : inTheBuild;
    }

    @Override
    public PropertyExecutionResult aroundProperty(PropertyLifecycleContext context, PropertyExecutor property) {
        PropertyAttributes attributes = context.attributes();
        if (ASKED_FOR) {
            attributes.setTries(tries(attributes.tries().orElse(DEFAULT_TRIES)));
        } else if (attributes.seed().isEmpty()) {
            attributes.setSeed(SEED);
        }
        return property.execute();
    }

    @Override
    public PropagationMode propagateTo() {
        return PropagationMode.ALL_DESCENDANTS;
    }
}
