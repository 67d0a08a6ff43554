package org.deckplanreview.rendering.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.measure.Length;
import org.deckplanreview.submission.Footing;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.FootingShape;
import org.deckplanreview.submission.Timber;

/** The members of a deck in words: what a drawing says once instead of beside each. */
final class MemberKey {

    private final ShownUnits units;

    MemberKey(ShownUnits units) {
        this.units = units;
    }

    List<String> lines(Layout layout) {
        List<String> lines = new ArrayList<>();
        for (PlatformLayout p : layout.platforms()) {
            if (layout.platforms().size() > 1) {
                lines.add(p.label() + ":");
            }
            lines.addAll(lines(p));
        }
        return lines;
    }

    List<String> lines(PlatformLayout p) {
        List<String> lines = new ArrayList<>();
        p.boards()
                .ifPresent(b -> lines.add("Boards " + timber(b.timber())
                        + b.boards()
                                .gap()
                                .map(g -> ", gap " + units.length(g.mm()))
                                .orElse("")));
        joists(p).ifPresent(lines::add);
        grouped(onePieceEach(p.beams()), BeamLine::id, this::beam)
                .forEach((what, ids) -> lines.add((ids.contains(",") ? "Beams " : "Beam ") + ids + ": " + what));
        p.ledger().ifPresent(l -> lines.add("Ledger " + timber(l.timber())));
        grouped(p.posts(), PostPlace::id, q -> timber(q.timber())).forEach((what, ids) -> lines.add("Posts " + what));
        grouped(p.footings(), f -> f.footing().id(), this::footing)
                .forEach((what, ids) -> lines.add("Footings " + what));
        return lines;
    }

    /** Pieces of one beam share its id and its section. */
    private static List<BeamLine> onePieceEach(List<BeamLine> beams) {
        Map<String, BeamLine> first = new LinkedHashMap<>();
        beams.forEach(b -> first.putIfAbsent(b.id(), b));
        return List.copyOf(first.values());
    }

    /** Empty where there are none. */
    Optional<String> joists(PlatformLayout p) {
        int number = p.joists().size();
        double spacing =
                p.joists().stream().mapToDouble(JoistLine::spacingMm).max().orElse(0);
        return p.joists().stream()
                .findFirst()
                .map(j -> number
                        + (number == 1 ? " joist " : " joists ")
                        + timber(j.timber())
                        + (spacing > 0 ? " at " + units.length(spacing) : ""));
    }

    private String beam(BeamLine b) {
        return (b.plies() > 1 ? b.plies() + " × " : "") + timber(b.timber());
    }

    private String footing(FootingPlace place) {
        Footing f = place.footing();
        String breadth = units.length(f.breadth().mm());
        String size = f.shape() == FootingShape.ROUND
                ? "diameter " + breadth
                : breadth + " × "
                        + f.length().map(Length::mm).map(units::length).orElse(breadth);
        return size
                + f.depth().map(d -> ", " + units.length(d.mm()) + " deep").orElse("")
                + (f.kind() == FootingKind.EMBEDDED_POST ? ", post embedded" : place.isBlock() ? ", precast" : "");
    }

    /** Plies and their section. */
    String plies(BeamLine b) {
        return (b.plies() > 1 ? b.plies() + " × " : "") + section(b.timber());
    }

    String section(Timber t) {
        return units.section(t.breadth().mm(), t.depth().mm());
    }

    private String timber(Timber t) {
        return section(t) + t.stiffnessName().map(c -> " " + c).orElse("");
    }

    /** What members are, with the ids of those that are so, in the order of the first of each. */
    private static <T> Map<String, String> grouped(List<T> members, Function<T, String> id, Function<T, String> what) {
        Map<String, String> groups = new LinkedHashMap<>();
        members.forEach(m -> groups.merge(what.apply(m), id.apply(m), (a, b) -> a + ", " + b));
        return groups;
    }
}
