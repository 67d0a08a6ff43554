package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Length;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Stair;

/** Guards with the edges that name them, and stairs with the height they climb. */
final class StairsAndGuards {

    private StairsAndGuards() {}

    static List<GuardRun> guards(Platform platform, int platformIndex, Pointer pointer, List<EdgeRun> edges) {
        List<GuardRun> runs = new ArrayList<>();
        for (int i = 0; i < platform.guards().size(); i++) {
            Guard guard = platform.guards().get(i);
            List<EdgeRun> own = edges.stream()
                    .filter(e -> e.guard().map(g -> g.id().equals(guard.id())).orElse(false))
                    .toList();
            runs.add(new GuardRun(
                    platformIndex,
                    pointer.child("guards").child(i),
                    guard.displayLabel(),
                    guard,
                    own,
                    own.stream().mapToDouble(EdgeRun::lengthMm).sum()));
        }
        return runs;
    }

    static List<StairRun> stairs(
            Platform platform,
            int platformIndex,
            Pointer pointer,
            Derived<Plane> boardsTop,
            GroundSurface ground,
            Neighbours neighbours) {
        List<StairRun> runs = new ArrayList<>();
        for (int i = 0; i < platform.stairs().size(); i++) {
            Stair stair = platform.stairs().get(i);
            Pointer at = pointer.child("stairs").child(i);
            PlanPoint middle = middle(stair.line());
            PlanPoint footPlace = footPlace(stair, middle, platform);
            Derived<Double> foot = stair.footLevel()
                    .map(Length::mm)
                    .<Derived<Double>>map(Derived::known)
                    .orElseGet(() -> ground.levelMm(footPlace));
            runs.add(new StairRun(
                    platformIndex,
                    at,
                    stair.displayLabel(),
                    stair,
                    Axis.length(stair.line()),
                    boardsTop.with(foot, (top, f) -> top.levelMm(middle) - f),
                    foot.flatMap(
                            f -> offGround(f, ground.levelMm(footPlace), neighbours.levels(platformIndex, footPlace))),
                    StrictMath.toDegrees(
                            StrictMath.atan2(stair.rise().mm(), stair.going().mm())),
                    goingMm(stair),
                    guard(stair, platform)));
        }
        return runs;
    }

    /** Below the lowest nosing, away from the platform on the side that is not its own. */
    private static PlanPoint footPlace(Stair stair, PlanPoint middle, Platform platform) {
        double length = Axis.length(stair.line());
        double nx = -(stair.line().to().yMm() - stair.line().from().yMm()) / length;
        double ny = (stair.line().to().xMm() - stair.line().from().xMm()) / length;
        Outline outline = new Outline(platform.outline());
        PlanPoint oneSide = new PlanPoint(middle.xMm() + nx, middle.yMm() + ny);
        double outwards = outline.contains(oneSide) ? -1 : 1;
        double away = outwards * goingMm(stair);
        return new PlanPoint(middle.xMm() + nx * away, middle.yMm() + ny * away);
    }

    /** From the surface that lies nearest to the foot in height, of those that are known. */
    private static Derived<Double> offGround(double foot, Derived<Double> ground, List<Double> platforms) {
        Optional<Double> nearest = Stream.concat(ground.optional().stream(), platforms.stream())
                .map(z -> Math.abs(foot - z))
                .min(Comparator.naturalOrder());
        return nearest.<Derived<Double>>map(Derived::known).orElse(ground);
    }

    /** A flight of n risers has n - 1 treads between the floor below and the boards. */
    private static double goingMm(Stair stair) {
        return (stair.risers() - 1) * stair.going().mm();
    }

    private static Optional<Guard> guard(Stair stair, Platform platform) {
        return stair.guard()
                .flatMap(id -> platform.guards().stream()
                        .filter(g -> g.id().equals(id))
                        .findFirst());
    }

    private static PlanPoint middle(PlanLine line) {
        return new PlanPoint(
                (line.from().xMm() + line.to().xMm()) / 2,
                (line.from().yMm() + line.to().yMm()) / 2);
    }
}
