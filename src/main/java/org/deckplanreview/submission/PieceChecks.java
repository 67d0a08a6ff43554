package org.deckplanreview.submission;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.deckplanreview.kernel.Pointer;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;

/**
 * Pieces that are drawn where another piece is: posts in posts, beams, lower platforms and walls, beams through each other
 * and through walls, pads under walls, walls across platforms, and braces that end on nothing. Where a level decides and
 * is not given, nothing is compared; the rules ask for the level.
 */
final class PieceChecks {

    private final Submission submission;
    private final Map<Integer, Polygon> areas;
    private final Pieces pieces;
    private final FaultList faults;

    /** @param areas of the platforms, by index; a platform whose outline is at fault has none */
    PieceChecks(Submission submission, Map<Integer, Polygon> areas, FaultList faults) {
        this.submission = submission;
        this.areas = areas;
        this.pieces = new Pieces(submission);
        this.faults = faults;
    }

    void check() {
        for (int i = 0; i < submission.platforms().size(); i++) {
            walls(i);
            blocks(i);
            for (int k = 0; k < i; k++) {
                posts(i, k);
            }
            posts(i, i);
            for (int k = 0; k < submission.platforms().size(); k++) {
                postsInBeams(i, k);
                if (k != i) {
                    postsInPlatform(i, k);
                }
                if (k <= i) {
                    beams(i, k);
                }
            }
            braces(i);
        }
    }

    private static Pointer pointer(int platform) {
        return Pointer.of("/platforms").child(platform);
    }

    private static Pointer post(int platform, int index) {
        return pointer(platform).child("posts").child(index).child("at");
    }

    /** Two posts in one place would share a load that one of them carries; a post given twice is told by its id. */
    private void posts(int platform, int earlierPlatform) {
        List<Post> posts = pieces.platform(platform).posts();
        List<Post> earlier = pieces.platform(earlierPlatform).posts();
        for (int i = 0; i < posts.size(); i++) {
            int before = platform == earlierPlatform ? i : earlier.size();
            for (int k = 0; k < before; k++) {
                Post one = earlier.get(k);
                Post other = posts.get(i);
                double least = pieces.halfSideMm(one) + pieces.halfSideMm(other);
                double apart = Plan.coordinate(one.at()).distance(Plan.coordinate(other.at()));
                boolean sameId = platform == earlierPlatform && one.id().equals(other.id());
                if (apart < least - Tolerances.SEATING_MM && !sameId) {
                    faults.add(
                            post(platform, i),
                            "The post stands " + faults.length(apart) + " from " + one.displayLabel()
                                    + ", and so inside it",
                            "a place at least " + faults.length(least) + " from every other post");
                }
            }
        }
    }

    private void postsInBeams(int platform, int beamsPlatform) {
        Platform own = pieces.platform(platform);
        Platform other = pieces.platform(beamsPlatform);
        for (int i = 0; i < own.posts().size(); i++) {
            Post post = own.posts().get(i);
            double half = pieces.halfSideMm(post) - Tolerances.OUTLINE_MM;
            for (Beam beam : other.beams()) {
                boolean carries = platform == beamsPlatform && beam.posts().contains(post.id());
                if (!carries
                        && Pieces.strip(beam.line(), pieces.widthMm(beam, other) / 2, 0)
                                .filter(s -> s.distance(point(post.at())) < half)
                                .isPresent()
                        && reachesInto(post, own, beam, other, platform == beamsPlatform)) {
                    faults.add(
                            post(platform, i),
                            "The post stands in beam " + Found.quoted(beam.id()) + " of /platforms/" + beamsPlatform
                                    + ", which it does not carry",
                            "a place beside the beam, or the post among those under it");
                }
            }
        }
    }

    private boolean reachesInto(Post post, Platform own, Beam beam, Platform other, boolean samePlatform) {
        Optional<Double> top = pieces.topBelowBoardsMm(post, own);
        Optional<Double> underside = pieces.undersideBelowBoardsMm(beam, other);
        double allowed = samePlatform ? Tolerances.SEATING_MM : Tolerances.FALL_MM;
        return above(own, other, samePlatform)
                .flatMap(up -> top.flatMap(t -> underside.map(u -> up - t > -u + allowed)))
                .orElse(false);
    }

    /** How far the boards of one platform lie above those of another, mm. */
    private Optional<Double> above(Platform own, Platform other, boolean same) {
        return same
                ? Optional.of(0.0)
                : pieces.levelMm(own).flatMap(z -> pieces.levelMm(other).map(below -> z - below));
    }

    /** A post that stands on the boards of a lower platform, or is cut through them. */
    private void postsInPlatform(int platform, int lower) {
        Platform own = pieces.platform(platform);
        Platform other = pieces.platform(lower);
        Optional<Double> up = above(own, other, false);
        if (up.isEmpty() || !areas.containsKey(lower)) {
            return;
        }
        for (int i = 0; i < own.posts().size(); i++) {
            Post post = own.posts().get(i);
            boolean higher = pieces.topBelowBoardsMm(post, own)
                    .filter(t -> up.get() - t > Tolerances.FALL_MM)
                    .isPresent();
            if (higher && areas.get(lower).buffer(-pieces.halfSideMm(post)).covers(point(post.at()))) {
                faults.add(
                        post(platform, i),
                        "The post stands within /platforms/" + lower + ", and so in its boards and joists",
                        "a place beside the lower platform, or an outline of it that leaves the post out");
            }
        }
    }

    /** Beams may meet at their ends, drawn up to each other's centre line. */
    private void beams(int platform, int earlierPlatform) {
        List<Beam> beams = pieces.platform(platform).beams();
        List<Beam> earlier = pieces.platform(earlierPlatform).beams();
        for (int i = 0; i < beams.size(); i++) {
            int before = platform == earlierPlatform ? i : earlier.size();
            for (int k = 0; k < before; k++) {
                boolean sameId = platform == earlierPlatform
                        && beams.get(i).id().equals(earlier.get(k).id());
                if (!sameId && cross(beams.get(i), platform, earlier.get(k), earlierPlatform)) {
                    faults.add(
                            pointer(platform).child("beams").child(i).child("line"),
                            "The beam passes through beam "
                                    + Found.quoted(earlier.get(k).id()) + " of /platforms/" + earlierPlatform,
                            "a line that stays clear of every other beam, or ends at it");
                }
            }
        }
    }

    private boolean cross(Beam beam, int platform, Beam other, int otherPlatform) {
        Platform own = pieces.platform(platform);
        Platform its = pieces.platform(otherPlatform);
        double half = pieces.widthMm(beam, own) / 2;
        double otherHalf = pieces.widthMm(other, its) / 2;
        Optional<Polygon> strip = Pieces.strip(beam.line(), half - Tolerances.SEATING_MM, otherHalf);
        Optional<Polygon> otherStrip = Pieces.strip(other.line(), otherHalf - Tolerances.SEATING_MM, half);
        boolean inPlan = strip.flatMap(s -> otherStrip.map(s::intersects)).orElse(false);
        return inPlan && levelsMeet(beam, own, other, its, platform == otherPlatform);
    }

    private boolean levelsMeet(Beam beam, Platform own, Beam other, Platform its, boolean same) {
        Optional<Double> up = above(own, its, same);
        Optional<Double> top = pieces.topBelowBoardsMm(beam, own);
        Optional<Double> underside = pieces.undersideBelowBoardsMm(beam, own);
        Optional<Double> otherTop = pieces.topBelowBoardsMm(other, its);
        Optional<Double> otherUnderside = pieces.undersideBelowBoardsMm(other, its);
        if (up.isEmpty() || top.isEmpty() || underside.isEmpty() || otherTop.isEmpty() || otherUnderside.isEmpty()) {
            return same && beam.joists() == other.joists();
        }
        double shared = Math.min(up.get() - top.get(), -otherTop.get())
                - Math.max(up.get() - underside.get(), -otherUnderside.get());
        return shared > (same ? Tolerances.SEATING_MM : Tolerances.FALL_MM);
    }

    private void walls(int index) {
        Platform platform = pieces.platform(index);
        for (Wall wall : submission.site().walls()) {
            LineSegment face = Plan.segment(wall.line());
            across(index, wall);
            for (int i = 0; i < platform.posts().size(); i++) {
                Post post = platform.posts().get(i);
                cut(face, post.at(), pieces.halfSideMm(post), "post", wall, post(index, i));
                footing(platform, post)
                        .ifPresent(f -> cut(
                                face,
                                platform.footings().get(f).at().orElse(post.at()),
                                Pieces.halfSideMm(platform.footings().get(f)),
                                "footing",
                                wall,
                                pointer(index).child("footings").child(f)));
            }
            for (int i = 0; i < platform.footings().size(); i++) {
                Footing block = platform.footings().get(i);
                Pointer at = pointer(index).child("footings").child(i);
                place(block).ifPresent(centre -> cut(face, centre, Pieces.halfSideMm(block), "block", wall, at));
            }
            for (int i = 0; i < platform.beams().size(); i++) {
                Beam beam = platform.beams().get(i);
                if (Pieces.strip(
                                beam.line(),
                                pieces.widthMm(beam, platform) / 2 - Tolerances.OUTLINE_MM,
                                Tolerances.INTO_WALL_MM)
                        .filter(s -> s.intersects(Plan.lineString(wall.line())))
                        .isPresent()) {
                    faults.add(
                            pointer(index).child("beams").child(i).child("line"),
                            "The beam passes through the wall " + Found.quoted(wall.id()),
                            "a beam on one side of every wall of /site/walls");
                }
            }
        }
    }

    /** Of a block on which joists lie. */
    private static Optional<PlanPoint> place(Footing footing) {
        return footing.at().filter(at -> footing.kind() == FootingKind.BLOCK);
    }

    private void blocks(int index) {
        List<Footing> footings = pieces.platform(index).footings();
        for (int i = 0; i < footings.size(); i++) {
            for (int j = 0; j < i; j++) {
                Footing one = footings.get(i);
                Footing other = footings.get(j);
                double least = Pieces.halfSideMm(one) + Pieces.halfSideMm(other) - Tolerances.OUTLINE_MM;
                boolean meet = place(one)
                        .flatMap(a ->
                                place(other).filter(b -> Plan.coordinate(a).distance(Plan.coordinate(b)) < least))
                        .isPresent();
                if (meet) {
                    faults.add(
                            pointer(index).child("footings").child(i).child("at"),
                            "The block stands in the block " + Found.quoted(other.id()),
                            "a place beside it");
                }
            }
        }
    }

    private static Optional<Integer> footing(Platform platform, Post post) {
        for (int i = 0; i < platform.footings().size(); i++) {
            if (post.footing().filter(platform.footings().get(i).id()::equals).isPresent()) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private void cut(LineSegment face, PlanPoint centre, double half, String piece, Wall wall, Pointer at) {
        double off = face.distance(Plan.coordinate(centre));
        if (off < half - Tolerances.OUTLINE_MM) {
            faults.add(
                    at,
                    "The face of the wall " + Found.quoted(wall.id()) + " passes through the " + piece + ", "
                            + faults.length(off) + " from its centre",
                    "a " + piece + " whose centre lies at least " + faults.length(half) + " from every wall");
        }
    }

    private void across(int index, Wall wall) {
        boolean below = pieces.levelMm(pieces.platform(index))
                .flatMap(z -> wall.topLevel().map(t -> t.mm() < z))
                .orElse(false);
        if (below || !areas.containsKey(index)) {
            return;
        }
        Geometry inside = areas.get(index).buffer(-Tolerances.LEDGER_MM).intersection(Plan.lineString(wall.line()));
        if (inside.getLength() > Tolerances.OUTLINE_MM) {
            faults.add(
                    pointer(index).child("outline"),
                    "The wall " + Found.quoted(wall.id()) + " crosses the platform on "
                            + faults.length(inside.getLength()),
                    "an outline that leaves every wall out, or the level of the wall's top where it ends below the deck");
        }
    }

    private void braces(int index) {
        Platform platform = pieces.platform(index);
        for (int i = 0; i < platform.braces().size(); i++) {
            Brace brace = platform.braces().get(i);
            double length =
                    StrictMath.hypot(brace.direction().dx(), brace.direction().dy());
            Optional<Post> post = platform.posts().stream()
                    .filter(p -> p.id().equals(brace.post()))
                    .findFirst();
            if (post.isEmpty() || length == 0 || !areas.containsKey(index)) {
                continue;
            }
            Coordinate head = new Coordinate(
                    post.get().at().xMm()
                            + brace.direction().dx() / length * brace.reach().mm(),
                    post.get().at().yMm()
                            + brace.direction().dy() / length * brace.reach().mm());
            boolean underDeck = areas.get(index).buffer(Tolerances.OUTLINE_MM).covers(Plan.GEOMETRY.createPoint(head));
            boolean atBeam = platform.beams().stream()
                    .anyMatch(b -> Plan.segment(b.line()).distance(head)
                            <= pieces.widthMm(b, platform) / 2 + Tolerances.OUTLINE_MM);
            if (!underDeck && !atBeam) {
                faults.add(
                        pointer(index).child("braces").child(i).child("reach"),
                        "The upper end of the brace lies at " + faults.point(head)
                                + ", beside the platform and all of its beams",
                        "a reach and a direction to a beam or a joist of the platform");
            }
        }
    }

    private static Geometry point(PlanPoint at) {
        return Plan.GEOMETRY.createPoint(Plan.coordinate(at));
    }
}
