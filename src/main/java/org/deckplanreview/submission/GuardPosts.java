package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;

/**
 * The posts of a guard.
 *
 * @param leverArm between the upper and the lower fixing to the frame
 * @param fixingResistance kN, design resistance of the upper or lower fixing in tension
 */
public record GuardPosts(
        String timber, Length spacing, Optional<Length> leverArm, Optional<Measure> fixingResistance) {}
