package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;

/**
 * A face of an existing building, in plan.
 *
 * @param topLevel of its upper end
 * @param dampProofCourseLevel of its damp-proof course
 * @param foundationDepth from the ground to the underside of its foundation
 */
public record Wall(
        String id,
        Optional<String> label,
        PlanLine line,
        Optional<Length> topLevel,
        Optional<Length> dampProofCourseLevel,
        Optional<Length> foundationDepth) {}
