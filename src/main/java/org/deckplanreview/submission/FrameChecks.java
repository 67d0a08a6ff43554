package org.deckplanreview.submission;

import java.util.Optional;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Length;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;

/** Members of one platform's frame that do not fit the outline, the walls or each other. */
final class FrameChecks {

    private final Submission submission;
    private final Platform platform;
    private final Pointer pointer;
    private final Optional<Polygon> area;
    private final FaultList faults;

    /**
     * @param area of the platform; empty where its outline is at fault, and then nothing is compared with it
     */
    FrameChecks(Submission submission, int platformIndex, Optional<Polygon> area, FaultList faults) {
        this.submission = submission;
        this.platform = submission.platforms().get(platformIndex);
        this.pointer = Pointer.of("/platforms").child(platformIndex);
        this.area = area;
        this.faults = faults;
    }

    void check() {
        platform.fall().ifPresent(f -> fall(f, pointer.child("fall").child("direction")));
        platform.boards()
                .ifPresent(b -> direction(b.direction(), pointer.child("boards").child("direction")));
        platform.joists().ifPresent(j -> joists(j, pointer.child("joists")));
        platform.ledger().ifPresent(l -> ledger(l, pointer.child("ledger")));
        for (int i = 0; i < platform.beams().size(); i++) {
            beam(platform.beams().get(i), pointer.child("beams").child(i));
        }
        for (int i = 0; i < platform.posts().size(); i++) {
            postBase(platform.posts().get(i), pointer.child("posts").child(i).child("base"));
        }
        for (int i = 0; i < platform.footings().size(); i++) {
            footing(platform.footings().get(i), pointer.child("footings").child(i));
        }
        for (int i = 0; i < platform.braces().size(); i++) {
            direction(
                    platform.braces().get(i).direction(),
                    pointer.child("braces").child(i).child("direction"));
        }
    }

    private void fall(Fall fall, Pointer direction) {
        fall.direction().ifPresent(d -> direction(d, direction));
        if (fall.direction().isEmpty() && Double.isFinite(fall.oneIn())) {
            faults.add(
                    direction,
                    "The member is missing, though the platform falls",
                    "the direction downhill as a list of two numbers, [dx, dy]");
        }
    }

    private void direction(Direction direction, Pointer at) {
        if (direction.dx() == 0 && direction.dy() == 0) {
            faults.add(at, "The direction has no length", "a list of two numbers, [dx, dy], not both zero");
        }
    }

    private void joists(JoistField joists, Pointer at) {
        joists.endNotch().ifPresent(n -> endNotch(n, joists.timber(), at));
        direction(joists.direction(), at.child("direction"));
    }

    private void endNotch(EndNotch notch, String timber, Pointer member) {
        timber(timber)
                .filter(t -> notch.depth().mm() >= t.depth().mm())
                .ifPresent(t -> faults.add(
                        member.child("endNotch").child("depth"),
                        "The notch of " + faults.length(notch.depth().mm()) + " leaves nothing of the timber's depth",
                        "a depth below " + faults.length(t.depth().mm())));
    }

    private void ledger(Ledger ledger, Pointer at) {
        ledger.fixings().ifPresent(f -> rows(f, ledger, at.child("fixings")));
        if (!Plan.hasLength(ledger.line(), at.child("line"), faults)) {
            return;
        }
        lateralConnections(ledger, at.child("lateralConnections"));
        submission.site().walls().stream()
                .filter(w -> w.id().equals(ledger.wall()))
                .findFirst()
                .ifPresent(w -> alongWall(ledger, Plan.segment(w.line()), at.child("line")));
        area.map(a -> farther(Plan.segment(ledger.line()), a))
                .filter(off -> off > Tolerances.LEDGER_MM)
                .ifPresent(off -> faults.add(
                        at.child("line"),
                        "An end of the ledger lies " + faults.length(off) + " outside the outline",
                        "a ledger with both ends within " + faults.length(Tolerances.LEDGER_MM) + " of the outline"));
    }

    private void rows(LedgerFixings fixings, Ledger ledger, Pointer at) {
        double taken = Stream.of(fixings.topEdgeDistance(), fixings.rowDistance(), fixings.bottomEdgeDistance())
                .flatMap(Optional::stream)
                .mapToDouble(Length::mm)
                .sum();
        timber(ledger.timber())
                .map(t -> t.depth().mm())
                .filter(depth -> taken > depth + Tolerances.SEATING_MM)
                .ifPresent(depth -> faults.add(
                        at,
                        "The distances of the fixings from the ledger's edges and of their rows add up to "
                                + faults.length(taken),
                        "topEdgeDistance, rowDistance and bottomEdgeDistance that add up to at most the ledger's depth, "
                                + faults.length(depth)));
    }

    private void lateralConnections(Ledger ledger, Pointer at) {
        double length = Plan.segment(ledger.line()).getLength();
        for (int i = 0; i < ledger.lateralConnections().size(); i++) {
            double place = ledger.lateralConnections().get(i).at().mm();
            if (place > length + Tolerances.SEATING_MM) {
                faults.add(
                        at.child(i).child("at"),
                        "The lateral connection lies " + faults.length(place)
                                + " along the ledger, and so beyond its end",
                        "a distance of at most the ledger's length, " + faults.length(length));
            }
        }
    }

    /** How far outside an area the end of a line lies that is farther from it, mm. */
    private static double farther(LineSegment line, Polygon area) {
        GeometryFactory points = area.getFactory();
        return Math.max(area.distance(points.createPoint(line.p0)), area.distance(points.createPoint(line.p1)));
    }

    private void alongWall(Ledger ledger, LineSegment wall, Pointer at) {
        LineSegment line = Plan.segment(ledger.line());
        double off = Math.max(wall.distance(line.p0), wall.distance(line.p1));
        if (off > Tolerances.LEDGER_MM) {
            faults.add(
                    at,
                    "An end of the ledger lies " + faults.length(off) + " from the wall " + Found.quoted(ledger.wall()),
                    "a ledger with both ends within " + faults.length(Tolerances.LEDGER_MM) + " of its wall");
        }
    }

    private void beam(Beam beam, Pointer at) {
        beam.endNotch().ifPresent(n -> endNotch(n, beam.timber(), at));
        beam.joint().ifPresent(j -> joint(j, at.child("joint")));
        if (!Plan.hasLength(beam.line(), at.child("line"), faults)) {
            return;
        }
        area.map(a -> a.distance(Plan.lineString(beam.line())))
                .filter(outside -> outside > Tolerances.BEAM_OUTSIDE_MM)
                .ifPresent(outside -> faults.add(
                        at.child("line"),
                        "The beam lies " + faults.length(outside) + " outside the outline",
                        "a beam within " + faults.length(Tolerances.BEAM_OUTSIDE_MM) + " of the outline"));
    }

    private void joint(Joint joint, Pointer at) {
        if (joint.count() % joint.rows() != 0) {
            faults.add(
                    at.child("rows"),
                    FaultList.counted(joint.count(), "fastener") + " cannot stand in "
                            + FaultList.counted(joint.rows(), "row") + " of equally many",
                    "a number of rows that divides the number of fasteners");
        }
    }

    private void postBase(Post post, Pointer at) {
        Optional<FootingKind> footing = platform.footings().stream()
                .filter(f -> post.footing().filter(f.id()::equals).isPresent())
                .map(Footing::kind)
                .findFirst();
        if (footing.equals(Optional.of(FootingKind.BLOCK))) {
            faults.add(
                    at,
                    "The post stands on a block, which carries joists",
                    "a footing of the kind pad or embedded-post");
            return;
        }
        if (post.base().equals(Optional.of(PostBase.EMBEDDED)) && footing.equals(Optional.of(FootingKind.PAD))) {
            faults.add(
                    at, "The post is embedded, and its footing is a pad that carries it on top", "connector or none");
        } else if (post.base().equals(Optional.of(PostBase.CONNECTOR))
                && footing.equals(Optional.of(FootingKind.EMBEDDED_POST))) {
            faults.add(at, "The post stands in a connector, and its footing is one that embeds it", "embedded");
        }
    }

    private void footing(Footing footing, Pointer at) {
        if (footing.shape() == FootingShape.ROUND && footing.length().isPresent()) {
            faults.add(
                    at.child("length"),
                    "A round footing has no length",
                    "a round footing with its diameter as breadth alone, or a rectangular one");
        }
        if (footing.kind() == FootingKind.BLOCK && footing.at().isEmpty()) {
            faults.add(at.child("at"), "The block has no place", "the place of its middle in plan, [x, y]");
        }
        Optional<Length> depth = footing.depth();
        if (depth.isPresent()
                && footing.embedment().filter(e -> e.mm() > depth.get().mm()).isPresent()) {
            faults.add(
                    at.child("embedment"),
                    "The post reaches below the underside of its footing",
                    "an embedment of at most the footing's depth, "
                            + faults.length(depth.get().mm()));
        }
    }

    private Optional<Timber> timber(String id) {
        return submission.timbers().stream().filter(t -> t.id().equals(id)).findFirst();
    }
}
