package org.deckplanreview.layout;

import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.Fall;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.Level;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Submission;

/**
 * The layers of a platform, one under the other: boards, joists, and beams below the joists or flush with their tops.
 * Layers are stacked by their depths as if the platform were level; its fall turns them all alike.
 */
record DeckLevels(Derived<Plane> boardsTop, Derived<Plane> boardsUnderside, Derived<Plane> joistsUnderside) {

    static DeckLevels of(Submission submission, Platform platform, Pointer pointer) {
        Derived<Plane> top = Derived.of(
                        platform.level(),
                        pointer.child("level"),
                        "the finished level of " + platform.displayLabel() + " at a point, "
                                + submission.units().word())
                .flatMap(level -> surface(level, platform.fall(), pointer.child("fall")));
        Derived<Double> boardsDepth = Derived.of(
                platform.boards().map(b -> submission.timber(b.timber()).depth().mm()),
                pointer.child("boards"),
                "the boards of " + platform.displayLabel());
        Derived<Double> joistsDepth = Derived.of(
                platform.joists().map(j -> submission.timber(j.timber()).depth().mm()),
                pointer.child("joists"),
                "the joists of " + platform.displayLabel());
        Derived<Plane> boardsUnderside = top.with(boardsDepth, Plane::loweredBy);
        return new DeckLevels(top, boardsUnderside, boardsUnderside.with(joistsDepth, Plane::loweredBy));
    }

    private static Derived<Plane> surface(Level level, Optional<Fall> fall, Pointer fallPointer) {
        double drop = fall.map(f -> 1 / f.oneIn()).orElse(0.0);
        if (drop == 0) {
            return Derived.known(Plane.level(level.at(), level.z().mm()));
        }
        return Derived.of(
                        fall.flatMap(Fall::direction),
                        fallPointer.child("direction"),
                        "the direction of the fall, downhill")
                .map(d -> new Plane(level.at(), level.z().mm(), Axis.of(d), drop));
    }

    /** The upper face of what carries the joists: under them, or flush with their tops. */
    Derived<Plane> carrierTop(JoistSeating joists) {
        return switch (joists) {
            case ON_TOP -> joistsUnderside;
            case HANGERS -> boardsUnderside;
        };
    }

    Derived<Plane> carrierUnderside(JoistSeating joists, double depthMm) {
        return carrierTop(joists).map(p -> p.loweredBy(depthMm));
    }
}
