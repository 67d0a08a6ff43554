package org.deckplanreview.rendering.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.Span;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.loadpath.BeamLoad;
import org.deckplanreview.loadpath.Effects.Peak;
import org.deckplanreview.loadpath.Effects.SpanEffects;
import org.deckplanreview.loadpath.MemberDiagrams;
import org.deckplanreview.loadpath.MemberDiagrams.Place;
import org.deckplanreview.loadpath.MemberDiagrams.Reach;

/** One member with its loads and the diagrams under it, all along the same line. */
final class MemberPanel {

    private static final double SIDE = 16;
    private static final double PAD = 4;
    private static final double TITLE_HEIGHT = 16;
    private static final double LOAD_LINE = 30;
    private static final double LOAD_HEIGHT = 8;
    private static final double POINT_HEIGHT = 10;
    private static final double CHAIN = 12;
    private static final double DIAGRAMS_FROM = 49;
    private static final double NAME_HEIGHT = 6;
    private static final double DIAGRAM_ROOM = 5;
    private static final double BAR = 1.6;
    private static final double SUPPORT = 3;
    private static final double HEAD = 1.6;
    private static final double NOTHING = 0.05;
    private static final double OWN_WEIGHT_HEIGHT = 2;
    private static final double SAME_MM = 20;
    private static final int DIAGRAMS = 3;

    private final Canvas canvas;
    private final MarkedCanvas marked;
    private final Callouts callouts;
    private final ShownUnits units;
    private final Box box;
    private final MemberEffects effects;
    private final Member member;
    private final MemberDiagrams diagrams;

    MemberPanel(Canvas canvas, Callouts callouts, ShownUnits units, Box box, MemberEffects effects) {
        this.canvas = canvas;
        this.marked = new MarkedCanvas(canvas, callouts);
        this.callouts = callouts;
        this.units = units;
        this.box = box;
        this.effects = effects;
        this.member = effects.member();
        this.diagrams = effects.analysis().diagrams(MemberEffects.FACTORS);
    }

    /** A label at a peak of a diagram. */
    private record Told(double atMm, double value, String text) {}

    void draw() {
        canvas.figure("panel", "")
                .line(Pen.NARROW, new Vec(box.right(), box.top()), new Vec(box.right(), box.bottom()));
        title();
        double y = box.top() + LOAD_LINE;
        loads(y - BAR / 2);
        marked.part(
                member,
                "member",
                Pen.NARROW,
                Colour.TIMBER,
                List.of(
                        new Vec(x(0), y - BAR / 2),
                        new Vec(x(member.lengthMm()), y - BAR / 2),
                        new Vec(x(member.lengthMm()), y + BAR / 2),
                        new Vec(x(0), y + BAR / 2)));
        supports(y + BAR / 2);
        chain(y);
        double height = (box.bottom() - box.top() - DIAGRAMS_FROM) / DIAGRAMS;
        diagram("Moment", 0, height, Place::momentNMm, 1, moments());
        diagram("Shear", 1, height, Place::shearN, -1, shears());
        diagram("Deflection", 2, height, Place::deflectionMm, 1, deflections());
    }

    private double x(double mm) {
        return box.left() + SIDE + mm / member.lengthMm() * (2 * box.halfLength() - 2 * SIDE);
    }

    private void title() {
        Canvas.Figure figure = marked.figure(member, "member-title");
        String plies = member.plies() > 1 ? member.plies() + " × " : "";
        String section = plies
                + units.section(
                        member.timber().breadth().mm(), member.timber().depth().mm());
        String callout = callouts.callout(callouts.on(member));
        double left = box.left() + PAD;
        double room = 2 * box.halfLength() - 2 * PAD;
        double base = box.top() + Lettering.LINE;
        if (!callout.isEmpty()) {
            double width = PlacedLabel.calloutWidth(callout);
            Vec start = new Vec(left, base - Lettering.SIZE / 3);
            Mark mark = callouts.mark(member);
            canvas.add(new Shape.Group(mark.css("callout"), "", PlacedLabel.pill(callout, mark, start, width)));
            left += width + 1;
            room -= width + 1;
        }
        String alike = effects.alike().isEmpty()
                ? ""
                : " (alike: "
                        + effects.alike().stream()
                                .map(l -> member instanceof BeamLine ? MarkedCanvas.name(l, "beam ") : l)
                                .collect(Collectors.joining(", "))
                        + ")";
        figure.text(
                Lettering.fitted(member.label() + ", " + section + alike, room, Lettering.SIZE),
                new Vec(left, base),
                Lettering.SIZE,
                false);
        String variable = Stream.of(Action.IMPOSED, Action.CONCENTRATED, Action.SNOW)
                .filter(a -> effects.analysis().totalN(a) > 0)
                .map(this::total)
                .collect(Collectors.joining(", "));
        figure.text(
                Lettering.fitted(
                        total(Action.PERMANENT) + (variable.isEmpty() ? "" : ", " + variable),
                        2 * box.halfLength() - 2 * PAD,
                        Lettering.SIZE),
                new Vec(box.left() + PAD, base + Lettering.LINE),
                Lettering.SIZE,
                false);
    }

    private String total(Action action) {
        String force = units.force(effects.analysis().totalN(action));
        return switch (action) {
            case PERMANENT -> "permanent " + force;
            case IMPOSED -> "imposed " + force;
            case CONCENTRATED -> "or once " + force;
            case SNOW -> "or snow " + force;
        };
    }

    /** Permanent load at the member, imposed load on top of it. */
    private void loads(double base) {
        List<BeamLoad> all = Stream.concat(diagrams.permanent().stream(), diagrams.imposed().stream())
                .toList();
        List<Double> places = Stream.concat(
                        Stream.of(0.0, member.lengthMm()),
                        all.stream()
                                .filter(BeamLoad.Distributed.class::isInstance)
                                .flatMap(l -> Stream.of(l.fromMm(), l.toMm())))
                .distinct()
                .sorted()
                .toList();
        double most = 0;
        for (int i = 1; i < places.size(); i++) {
            double middle = (places.get(i - 1) + places.get(i)) / 2;
            most = Math.max(most, intensity(all, middle));
        }
        if (most > 0) {
            boolean hasPoints = all.stream().anyMatch(BeamLoad.Point.class::isInstance);
            double height = hasPoints ? OWN_WEIGHT_HEIGHT : LOAD_HEIGHT;
            stretch("imposed-load", places, all, base, height / most, Colour.CONCRETE);
            stretch("permanent-load", places, diagrams.permanent(), base, height / most, Colour.SHADE);
        }
        points(all, base);
        double middle = member.lengthMm() / 2;
        double permanent = intensity(diagrams.permanent(), middle);
        double imposed = intensity(diagrams.imposed(), middle);
        if (imposed > 0) {
            canvas.label(Wanted.note(
                    "permanent " + units.lineLoad(permanent) + ", imposed " + units.lineLoad(imposed),
                    new Vec(x(middle), base - LOAD_HEIGHT),
                    0));
        }
    }

    private static double intensity(List<BeamLoad> loads, double mm) {
        double sum = 0;
        for (BeamLoad l : loads) {
            if (l instanceof BeamLoad.Distributed d && d.fromMm() <= mm && mm <= d.toMm()) {
                double t = (mm - d.fromMm()) / (d.toMm() - d.fromMm());
                sum += d.fromNPerMm() * (1 - t) + d.toNPerMm() * t;
            }
        }
        return sum;
    }

    private void stretch(
            String kind, List<Double> places, List<BeamLoad> loads, double base, double scale, String fill) {
        Canvas.Figure figure = canvas.figure(kind, "");
        for (int i = 1; i < places.size(); i++) {
            double a = places.get(i - 1);
            double b = places.get(i);
            double beside = (b - a) * 1e-6;
            double atA = intensity(loads, a + beside) * scale;
            double atB = intensity(loads, b - beside) * scale;
            if (atA > 0 || atB > 0) {
                figure.polygon(
                        Pen.THIN,
                        fill,
                        List.of(
                                new Vec(x(a), base),
                                new Vec(x(a), base - atA),
                                new Vec(x(b), base - atB),
                                new Vec(x(b), base)));
            }
        }
    }

    /** Joists' reactions on a beam: permanent and imposed together. */
    private void points(List<BeamLoad> all, double base) {
        List<Double> at = all.stream()
                .filter(BeamLoad.Point.class::isInstance)
                .map(BeamLoad::fromMm)
                .distinct()
                .sorted()
                .toList();
        List<Double> forces = at.stream()
                .map(p -> all.stream()
                        .filter(l -> l instanceof BeamLoad.Point q && q.atMm() == p)
                        .mapToDouble(l -> ((BeamLoad.Point) l).forceN())
                        .sum())
                .toList();
        double most = forces.stream().mapToDouble(Math::abs).max().orElse(0);
        if (most == 0) {
            return;
        }
        Canvas.Figure figure = canvas.figure("point-load", "");
        int largest = 0;
        for (int i = 0; i < at.size(); i++) {
            double height = Math.abs(forces.get(i)) / most * POINT_HEIGHT;
            if (height > HEAD) {
                Vec low = new Vec(x(at.get(i)), base);
                Vec high = new Vec(x(at.get(i)), base - height);
                boolean down = forces.get(i) > 0;
                figure.line(Pen.THIN, high, low)
                        .arrowHead(Pen.THIN, down ? low : high, down ? Vec.UP.times(-1) : Vec.UP, HEAD);
            }
            largest = forces.get(i) > forces.get(largest) ? i : largest;
        }
        canvas.label(Wanted.note(
                at.size() + (at.size() == 1 ? " force, " : " forces, largest ") + units.force(forces.get(largest)),
                new Vec(x(at.get(largest)), base - POINT_HEIGHT),
                0));
    }

    private void supports(double y) {
        Canvas.Figure figure = canvas.figure("supports", "");
        for (MemberSupport s : member.supports()) {
            Vec tip = new Vec(x(s.atMm()), y);
            figure.polygon(
                    Pen.NARROW,
                    Colour.PAPER,
                    List.of(tip, tip.plus(new Vec(SUPPORT / 2, SUPPORT)), tip.plus(new Vec(-SUPPORT / 2, SUPPORT))));
            String name = MarkedCanvas.name(MarkedCanvas.name(s.label(), "post "), "beam ");
            canvas.label(Wanted.note(
                    "",
                    Mark.NONE,
                    List.of(MarkedCanvas.lettered(name, 20)),
                    MarkedCanvas.whole(20, name),
                    List.of(tip.plus(new Vec(0, SUPPORT / 2))),
                    SUPPORT / 2));
        }
    }

    private void chain(double y) {
        List<Double> stops = new ArrayList<>();
        List<Double> lengths = new ArrayList<>();
        for (Span s : member.spans()) {
            if (stops.isEmpty()) {
                stops.add(s.fromMm());
            }
            stops.add(s.toMm());
            lengths.add(s.lengthMm());
        }
        if (stops.size() > 1) {
            new Dimensions(canvas, units)
                    .chain(
                            stops.stream()
                                    .map(mm -> new Vec(x(mm), y + SUPPORT + BAR))
                                    .toList(),
                            stops.stream().map(mm -> new Vec(x(mm), y + CHAIN)).toList(),
                            lengths);
        }
    }

    private List<Told> moments() {
        List<Told> told = new ArrayList<>();
        effects.peaks(SpanEffects::sagging).forEach(p -> told.add(told(p, 1, units.moment(p.value()))));
        effects.peaks(SpanEffects::hogging).forEach(p -> told.add(told(p, -1, units.moment(p.value()))));
        return told;
    }

    private List<Told> shears() {
        List<Told> told = new ArrayList<>();
        for (Peak p : effects.shears()) {
            double up = 0;
            double down = 0;
            for (Place place : diagrams.places()) {
                if (Math.abs(place.atMm() - p.atMm()) < 1) {
                    up = Math.max(up, place.shearN().largest());
                    down = Math.min(down, place.shearN().smallest());
                }
            }
            told.add(told(p, up >= -down ? 1 : -1, units.force(p.value())));
        }
        return told;
    }

    private List<Told> deflections() {
        List<Told> told = new ArrayList<>();
        effects.peaks(SpanEffects::down).forEach(p -> told.add(told(p, 1, units.deflection(p.value()))));
        effects.peaks(SpanEffects::up).forEach(p -> told.add(told(p, -1, units.deflection(p.value()))));
        return told;
    }

    private static Told told(Peak peak, int sign, String text) {
        return new Told(peak.atMm(), sign * peak.value(), text);
    }

    /** @param sense 1 where positive values are drawn downwards */
    private void diagram(
            String name, int row, double height, Function<Place, Reach> effect, int sense, List<Told> told) {
        double top = box.top() + DIAGRAMS_FROM + row * height;
        canvas.figure("diagram-name", "")
                .text(name, new Vec(box.left() + PAD, top + Lettering.SIZE), Lettering.SIZE, false);
        double highest = 0;
        double lowest = 0;
        for (Place p : diagrams.places()) {
            highest = Math.max(
                    highest,
                    sense < 0 ? effect.apply(p).largest() : -effect.apply(p).smallest());
            lowest = Math.max(
                    lowest,
                    sense < 0 ? -effect.apply(p).smallest() : effect.apply(p).largest());
        }
        double room = height - NAME_HEIGHT - 2 * DIAGRAM_ROOM;
        double most = Math.max(highest + lowest, Double.MIN_NORMAL);
        double zero = top + NAME_HEIGHT + DIAGRAM_ROOM + room * highest / most;
        Function<Double, Double> y = v -> zero + sense * v / most * room;
        Canvas.Figure figure = canvas.figure(name.toLowerCase(Locale.ROOT) + "-diagram", name);
        figure.area(Colour.CONCRETE, around(effect, Reach::largest, y, zero));
        figure.area(Colour.CONCRETE, around(effect, Reach::smallest, y, zero));
        figure.polyline(Pen.NARROW, line(effect, Reach::largest, y));
        figure.polyline(Pen.NARROW, line(effect, Reach::smallest, y));
        figure.line(Pen.WIDE, new Vec(x(0), zero), new Vec(x(member.lengthMm()), zero));
        member.supports()
                .forEach(s -> figure.line(
                        Pen.CENTRE, new Vec(x(s.atMm()), top + NAME_HEIGHT), new Vec(x(s.atMm()), top + height - 1)));
        List<Told> kept = new ArrayList<>();
        double largest =
                told.stream().mapToDouble(t -> Math.abs(t.value())).max().orElse(0);
        for (Told t : told) {
            boolean isNew =
                    kept.stream().noneMatch(k -> Math.abs(k.atMm() - t.atMm()) < SAME_MM && k.value() * t.value() > 0);
            if (isNew && Math.abs(t.value()) > NOTHING * largest) {
                kept.add(t);
                canvas.label(Wanted.note(t.text(), new Vec(x(t.atMm()), y.apply(t.value())), 0));
            }
        }
    }

    private List<Vec> line(Function<Place, Reach> effect, Function<Reach, Double> side, Function<Double, Double> y) {
        return diagrams.places().stream()
                .map(p -> new Vec(x(p.atMm()), y.apply(side.apply(effect.apply(p)))))
                .toList();
    }

    private List<Vec> around(
            Function<Place, Reach> effect, Function<Reach, Double> side, Function<Double, Double> y, double zero) {
        List<Vec> all = new ArrayList<>(line(effect, side, y));
        all.add(new Vec(x(member.lengthMm()), zero));
        all.add(new Vec(x(0), zero));
        return all;
    }
}
