package org.deckplanreview.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.schedule.SetOutRectangle.Corner;
import org.deckplanreview.submission.PlanPoint;

/** Rectangles that a platform is set out by. */
final class Rectangles {

    private final PlatformLayout platform;
    private final SitePractice practice;
    private final List<SetOutRectangle> found = new ArrayList<>();

    private Rectangles(PlatformLayout platform, SitePractice practice) {
        this.platform = platform;
        this.practice = practice;
    }

    static List<SetOutRectangle> of(PlatformLayout platform, SitePractice practice) {
        Rectangles rectangles = new Rectangles(platform, practice);
        for (List<Row> parallel : rectangles.rows()) {
            rectangles.betweenNeighbours(parallel);
            rectangles.ofOutermost(parallel);
        }
        rectangles.ofOutline();
        return List.copyOf(rectangles.found);
    }

    /** Posts under beams on one line, by their place along it. */
    private record Row(Baseline line, TreeMap<Double, PostPlace> posts) {

        Corner corner(double along) {
            PostPlace post = posts.get(along);
            return new Corner(post.label(), post.post().at());
        }

        /** The post that lies nearest to a place along the line. */
        double nearest(double along) {
            return posts.keySet().stream()
                    .min(Comparator.comparingDouble(a -> Math.abs(a - along)))
                    .orElseThrow();
        }
    }

    /** Rows of posts, those that are parallel together, in order across. */
    private List<List<Row>> rows() {
        List<List<Row>> families = new ArrayList<>();
        for (BeamLine beam : platform.beams()) {
            List<Row> family = families.stream()
                    .filter(f -> isParallel(f.get(0).line(), beam))
                    .findFirst()
                    .orElseGet(() -> {
                        List<Row> started = new ArrayList<>();
                        families.add(started);
                        return started;
                    });
            Row row = family.stream()
                    .filter(r -> Math.abs(r.line().offsetMm(beam.line().from())) <= practice.rectangleToleranceMm())
                    .findFirst()
                    .orElseGet(() -> {
                        Row started = new Row(lineOf(beam, family), new TreeMap<>());
                        family.add(started);
                        return started;
                    });
            beam.supports()
                    .forEach(s -> platform.posts().stream()
                            .filter(p -> p.id().equals(s.id()))
                            .forEach(p ->
                                    row.posts().put(row.line().alongMm(p.post().at()), p)));
        }
        families.forEach(f -> {
            Baseline first = f.get(0).line();
            f.removeIf(r -> r.posts().isEmpty());
            f.sort(Comparator.comparingDouble(r -> first.offsetMm(r.line().datum())));
        });
        return families;
    }

    private boolean isParallel(Baseline line, BeamLine beam) {
        double apart =
                line.offsetMm(beam.line().to()) - line.offsetMm(beam.line().from());
        return Math.abs(apart) <= practice.rectangleToleranceMm();
    }

    /** Parallel rows count along one direction from one place, so that their places compare. */
    private static Baseline lineOf(BeamLine beam, List<Row> family) {
        if (family.isEmpty()) {
            return Baseline.of(List.of(beam.line().from(), beam.line().to()));
        }
        Baseline first = family.get(0).line();
        double offset = first.offsetMm(beam.line().from());
        PlanPoint datum = new PlanPoint(
                first.datum().xMm() - first.side() * offset * first.dy(),
                first.datum().yMm() + first.side() * offset * first.dx());
        return new Baseline(datum, first.dx(), first.dy(), first.side());
    }

    private void betweenNeighbours(List<Row> rows) {
        for (int i = 0; i + 1 < rows.size(); i++) {
            List<Double> places = List.copyOf(rows.get(i).posts().keySet());
            for (int k = 0; k + 1 < places.size(); k++) {
                add(rows.get(i), rows.get(i + 1), places.get(k), places.get(k + 1));
            }
        }
    }

    private void ofOutermost(List<Row> rows) {
        if (rows.size() < 2) {
            return;
        }
        Row first = rows.get(0);
        add(
                first,
                rows.get(rows.size() - 1),
                first.posts().firstKey(),
                first.posts().lastKey());
    }

    private void add(Row row, Row other, double from, double to) {
        double acrossFrom = other.nearest(from);
        double acrossTo = other.nearest(to);
        if (from == to || acrossFrom == acrossTo) {
            return;
        }
        add(List.of(row.corner(from), row.corner(to), other.corner(acrossTo), other.corner(acrossFrom)));
    }

    private void ofOutline() {
        List<PlanPoint> outline = platform.platform().outline();
        if (outline.size() != 4) {
            return;
        }
        List<Corner> corners = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            corners.add(new Corner("corner " + (i + 1) + " of the outline", outline.get(i)));
        }
        add(corners);
    }

    private void add(List<Corner> corners) {
        Optional<SetOutRectangle> rectangle = SetOutRectangle.of(corners, practice);
        rectangle.filter(r -> !found.contains(r)).ifPresent(found::add);
    }
}
