package org.deckplanreview.rendering.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.BraceLine;
import org.deckplanreview.layout.Drop;
import org.deckplanreview.layout.EdgeRun;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.GuardRun;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.LedgerLine;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.StairRun;
import org.deckplanreview.measure.Length;
import org.deckplanreview.submission.EdgeKind;
import org.deckplanreview.submission.FootingShape;
import org.deckplanreview.submission.GuardPosts;
import org.deckplanreview.submission.HeavyItem;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Stair;
import org.deckplanreview.submission.Wall;

/**
 * The frame from above with its boards taken away. What lies under the joists is drawn with hidden lines, in its true size.
 */
final class PlanDrawing {

    private static final double GOOD_SCALE = 50;
    private static final double LABEL_ROOM = 20;
    private static final double LABEL_WIDTH = 46;
    private static final double SHORT_LABEL = 30;
    private static final double WALL_MM = 3;
    private static final double WALL_BEYOND_MM = 400;
    private static final double EDGE_MM = 2;
    private static final double GUARD_MM = 1.3;
    private static final double ARROW_MM = 22;
    private static final double HEAD_MM = 3;
    private static final double STROKE_CLEAR = 1;
    private static final double CENTRE_BEYOND = 2;
    private static final double DATUM = 1.5;
    private static final double DATUM_ARROW = 9;
    private static final double SECTION_MARK = 6;
    private static final double WALL_HATCH = 1.6;
    private static final double ROUNDING = 1e-9;
    private static final int MOST_ANCHORS = 24;

    private final DrawnDeck deck;
    private final Layout layout;
    private final ShownUnits units;
    private final Callouts callouts;
    private final Canvas canvas = new Canvas();
    private final MarkedCanvas marked;
    private final MemberKey key;
    private final PlanDimensions dimensions;
    private final Fit fit;
    private final PlanView view;

    private PlanDrawing(DrawnDeck deck) {
        this.deck = deck;
        this.layout = deck.layout();
        this.units = ShownUnits.of(layout.submission().units());
        this.callouts = new Callouts(deck.report());
        this.marked = new MarkedCanvas(canvas, callouts);
        this.key = new MemberKey(units);
        this.dimensions = new PlanDimensions(layout);
        List<PlanPoint> all = extent();
        double left = all.stream().mapToDouble(PlanPoint::xMm).min().orElseThrow();
        double right = all.stream().mapToDouble(PlanPoint::xMm).max().orElseThrow();
        double low = all.stream().mapToDouble(PlanPoint::yMm).min().orElseThrow();
        double high = all.stream().mapToDouble(PlanPoint::yMm).max().orElseThrow();
        double leftRoom = dimensions.roomBeside();
        double lowRoom = dimensions.roomBelow();
        this.fit = Fit.of(
                units.scales(), GOOD_SCALE, right - left, high - low, leftRoom + LABEL_ROOM, lowRoom + LABEL_ROOM);
        Box area = fit.format().area();
        double spareX = 2 * area.halfLength() - fit.scale().onSheet(right - left) - leftRoom - LABEL_ROOM;
        double spareY = 2 * area.halfHeight() - fit.scale().onSheet(high - low) - lowRoom - LABEL_ROOM;
        this.view = new PlanView(
                new Vec(area.left() + leftRoom + spareX / 2, area.bottom() - lowRoom - spareY / 2),
                left,
                low,
                fit.scale());
    }

    static Drawing draw(DrawnDeck deck) {
        return new PlanDrawing(deck).draw();
    }

    private List<PlanPoint> extent() {
        List<PlanPoint> all = new ArrayList<>();
        layout.platforms().forEach(p -> all.addAll(reach(p)));
        return all;
    }

    /** Corners, feet of stairs and posts of a platform. */
    static List<PlanPoint> reach(PlatformLayout p) {
        List<PlanPoint> all = new ArrayList<>(p.platform().outline());
        p.stairs().forEach(s -> all.addAll(flight(s, p)));
        p.posts().forEach(q -> all.add(q.post().at()));
        return all;
    }

    private Drawing draw() {
        walls();
        for (PlatformLayout p : layout.platforms()) {
            platform(p);
        }
        heavyItems();
        datum();
        dimensions.draw(canvas, units, view);
        return new Sheet(
                        "plan", "Plan of the frame", 1, 1, fit.format(), Optional.of(fit.scale()), units, deck.report())
                .finished(
                        canvas,
                        fit.format().area(),
                        Optional.of(new Sheet.Keys(key.lines(layout), callouts)),
                        description());
    }

    private String description() {
        StringBuilder text =
                new StringBuilder("The frame from above at " + fit.scale().text() + ", without its boards.");
        layout.platforms().forEach(p -> text.append(" " + p.label() + ": " + String.join("; ", key.lines(p)) + "."));
        text.append(
                callouts.shown().isEmpty()
                        ? " Nothing drawn here is found not to comply."
                        : " What does not comply is hatched and numbered as in the report: " + callouts.shown() + ".");
        return text.toString();
    }

    private void platform(PlatformLayout p) {
        PlanArea area = new PlanArea(p.platform().outline());
        joists(p);
        p.ledger().ifPresent(l -> ledger(l, p));
        p.beams().forEach(b -> beam(b, p.platform()));
        p.braces().forEach(b -> brace(b, p));
        p.footings().forEach(f -> footing(f, p));
        p.posts().forEach(q -> post(q, p));
        canvas.figure("outline", p.label())
                .polygon(Pen.WIDE, Colour.NONE, view.at(p.platform().outline()));
        p.edges().forEach(e -> edge(e, area));
        p.guards().forEach(g -> guard(g, area));
        p.stairs().forEach(s -> stair(s, p));
        surface(p, area);
        sectionMark(p);
    }

    private void joists(PlatformLayout p) {
        SortedSet<Integer> numbers = new TreeSet<>();
        for (JoistLine j : p.joists()) {
            marked.part(
                    j,
                    "joist",
                    Pen.NARROW,
                    Colour.TIMBER,
                    view.strip(j.line(), j.timber().breadth().mm()));
            numbers.addAll(callouts.on(j));
        }
        List<Vec> anchors = p.joists().stream()
                .sorted(Comparator.comparing(j -> callouts.worstOn(j).isEmpty()))
                .filter(j -> numbers.isEmpty() || !callouts.on(j).isEmpty())
                .flatMap(j -> Stream.of(onLine(j.line(), 0.5), onLine(j.line(), 0.2), onLine(j.line(), 0.8)))
                .limit(MOST_ANCHORS)
                .toList();
        key.joists(p).ifPresent(text -> marked.note(numbers, List.of(text), "", 0, anchors));
    }

    private Vec onLine(PlanLine line, double fraction) {
        Vec a = view.at(line.from());
        return a.plus(view.at(line.to()).minus(a).times(fraction));
    }

    private List<Vec> onLine(PlanLine line, double... fractions) {
        return DoubleStream.of(fractions).mapToObj(f -> onLine(line, f)).toList();
    }

    private void ledger(LedgerLine l, PlatformLayout p) {
        marked.part(
                l,
                "ledger",
                Pen.NARROW,
                Colour.TIMBER,
                view.strip(l.middle(p), l.timber().breadth().mm()));
        marked.note(
                callouts.on(l),
                List.of("ledger " + key.section(l.timber())),
                "",
                0,
                onLine(l.line(), 0.65, 0.35, 0.8, 0.2));
    }

    private void beam(BeamLine b, Platform platform) {
        boolean below =
                platform.beams().stream().anyMatch(s -> s.id().equals(b.id()) && s.joists() == JoistSeating.ON_TOP);
        List<Vec> strip = view.strip(b.line(), b.timber().breadth().mm() * b.plies());
        Canvas.Figure figure = marked.part(b, "beam", below ? Pen.HIDDEN : Pen.NARROW, Colour.NONE, strip);
        for (int i = 1; i < b.plies(); i++) {
            Vec aside = strip.get(3).minus(strip.get(0)).times((double) i / b.plies());
            figure.line(Pen.THIN, strip.get(0).plus(aside), strip.get(1).plus(aside));
        }
        String name = MarkedCanvas.name(b.label(), "beam ");
        marked.note(
                callouts.on(b),
                List.of(MarkedCanvas.lettered(name, SHORT_LABEL) + ": " + key.plies(b)),
                MarkedCanvas.whole(SHORT_LABEL, name),
                0,
                betweenPosts(b));
    }

    /** The middles of the spans, else of the beam, then its ends. */
    private List<Vec> betweenPosts(BeamLine b) {
        Stream<Double> middles =
                b.spans().stream().filter(s -> !s.isCantilever()).map(s -> (s.fromMm() + s.toMm()) / 2);
        return Stream.concat(middles, Stream.of(b.lengthMm() / 2, b.lengthMm(), 0.0))
                .map(mm -> onLine(b.line(), mm / b.lengthMm()))
                .toList();
    }

    private void brace(BraceLine b, PlatformLayout p) {
        p.posts().stream()
                .filter(q -> q.id().equals(b.brace().post()))
                .findFirst()
                .ifPresent(q -> {
                    Axes d = Axes.of(b.brace().direction());
                    PlanPoint at = q.post().at();
                    double reach = b.brace().reach().mm();
                    PlanLine line =
                            new PlanLine(at, new PlanPoint(at.xMm() + d.dx() * reach, at.yMm() + d.dy() * reach));
                    marked.part(
                            b,
                            "brace",
                            Pen.HIDDEN,
                            Colour.NONE,
                            view.strip(line, b.timber().breadth().mm()));
                    if (callouts.mark(b) != Mark.NONE) {
                        marked.note(
                                callouts.on(b),
                                List.of(MarkedCanvas.lettered(b.label(), SHORT_LABEL)),
                                MarkedCanvas.whole(SHORT_LABEL, b.label()),
                                0,
                                onLine(line, 0.5, 0.8));
                    }
                });
    }

    private Optional<PlanPoint> place(FootingPlace f, PlatformLayout p) {
        return f.isBlock()
                ? f.footing().at()
                : p.posts().stream()
                        .filter(q -> f.posts().contains(q.id()))
                        .findFirst()
                        .map(q -> q.post().at());
    }

    private void footing(FootingPlace f, PlatformLayout p) {
        place(f, p).ifPresent(at -> {
            double breadth = f.footing().breadth().mm();
            double length = f.footing().length().map(Length::mm).orElse(breadth);
            Vec c = view.at(at);
            Canvas.Figure figure;
            if (f.footing().shape() == FootingShape.ROUND) {
                double radius = fit.scale().onSheet(breadth) / 2;
                Mark mark = callouts.mark(f);
                figure = marked.figure(f, "footing")
                        .circle(mark.pen(Pen.HIDDEN), Colour.NONE, c, radius)
                        .hatch(mark, Canvas.around(c, radius));
            } else {
                figure = marked.part(
                        f, "footing", Pen.HIDDEN, Colour.NONE, view.rectangle(at, new Axes(1, 0), breadth, length));
            }
            double half = fit.scale().onSheet(Math.max(breadth, length)) / 2 + CENTRE_BEYOND;
            figure.line(Pen.CENTRE, c.plus(new Vec(-half, 0)), c.plus(new Vec(half, 0)));
            figure.line(Pen.CENTRE, c.plus(new Vec(0, -half)), c.plus(new Vec(0, half)));
        });
    }

    private void post(PostPlace q, PlatformLayout p) {
        Axes along = p.beams().stream()
                .filter(b -> q.beams().contains(b.id()))
                .findFirst()
                .map(b -> Axes.of(b.line()))
                .orElse(new Axes(1, 0));
        List<Vec> corners = view.rectangle(
                q.post().at(),
                along,
                q.timber().breadth().mm(),
                q.timber().depth().mm());
        marked.part(q, "post", Pen.HIDDEN, Colour.NONE, corners);
        SortedSet<Integer> numbers = new TreeSet<>(callouts.on(q));
        q.footing().ifPresent(f -> numbers.addAll(callouts.on(f)));
        String post = MarkedCanvas.name(q.label(), "post ");
        List<String> names = q.footing()
                .map(f -> List.of(post, MarkedCanvas.name(f.label(), "footing ")))
                .orElse(List.of(post));
        marked.note(
                numbers,
                List.of(names.stream()
                        .map(n -> MarkedCanvas.lettered(n, SHORT_LABEL))
                        .collect(Collectors.joining(", "))),
                MarkedCanvas.whole(SHORT_LABEL, names.toArray(String[]::new)),
                clear(corners),
                List.of(view.at(q.post().at())));
    }

    private static double clear(List<Vec> corners) {
        return corners.get(2).minus(corners.get(0)).length() / 2;
    }

    private List<Vec> beside(PlanLine line, PlanArea area, double mm) {
        PlanPoint n = area.outwards(line);
        Vec out = PlanView.direction(n.xMm(), n.yMm()).times(mm);
        Vec a = view.at(line.from());
        Vec b = view.at(line.to());
        return List.of(a, b, b.plus(out), a.plus(out));
    }

    private void edge(EdgeRun e, PlanArea area) {
        Mark mark = callouts.mark(e);
        if (mark != Mark.NONE) {
            List<Vec> strip = beside(e.line(), area, EDGE_MM);
            marked.figure(e, "edge")
                    .polygon(mark.pen(Pen.NARROW), Colour.NONE, strip)
                    .hatch(mark, strip);
        }
        boolean isOpen = e.edgeKind().filter(k -> k != EdgeKind.OPEN).isEmpty();
        boolean isStep = e.edgeKind().filter(EdgeKind.PLATFORM::equals).isPresent();
        if (!isOpen && !isStep && mark == Mark.NONE) {
            return;
        }
        String drop = e.drop()
                .optional()
                .map(Drop::largestMm)
                .map(mm -> "drop " + units.length(mm))
                .orElse("drop not known");
        String guard = e.guard()
                .map(g ->
                        "guard " + g.height().map(Length::mm).map(units::length).orElse("of unknown height"))
                .orElse("no guard");
        List<String> lines = new ArrayList<>();
        if (!isOpen) {
            lines.add(MarkedCanvas.lettered(e.label(), LABEL_WIDTH));
        }
        lines.add(drop);
        lines.add(guard);
        marked.note(
                callouts.on(e),
                lines,
                Lettering.plain(e.label()),
                EDGE_MM,
                onLine(e.line(), 0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9));
    }

    private void guard(GuardRun g, PlanArea area) {
        Mark mark = callouts.mark(g);
        Canvas.Figure figure = marked.figure(g, "guard");
        for (EdgeRun e : g.edges()) {
            List<Vec> strip = beside(e.line(), area, -GUARD_MM);
            Vec a = strip.get(3);
            Vec b = strip.get(2);
            figure.line(mark.pen(Pen.NARROW), a, b).hatch(mark, strip);
            int bays = g.guard()
                    .posts()
                    .map(GuardPosts::spacing)
                    .map(s -> (int) Math.ceil(length(e.line()) / s.mm() - ROUNDING))
                    .orElse(1);
            Vec d = b.minus(a).unit().times(GUARD_MM / 2);
            for (int i = 0; i <= bays; i++) {
                Vec c = a.plus(b.minus(a).times((double) i / bays));
                figure.area(mark.pen(Pen.NARROW).colour(), PlanView.strip(c.minus(d), c.plus(d), GUARD_MM));
            }
        }
        if (mark != Mark.NONE && !g.edges().isEmpty()) {
            marked.note(
                    callouts.on(g),
                    List.of(MarkedCanvas.lettered(g.label(), LABEL_WIDTH)),
                    MarkedCanvas.whole(LABEL_WIDTH, g.label()),
                    1,
                    g.edges().stream()
                            .flatMap(e -> onLine(e.line(), 0.25, 0.75, 0.5).stream())
                            .toList());
        }
    }

    static double length(PlanLine line) {
        double dx = line.to().xMm() - line.from().xMm();
        double dy = line.to().yMm() - line.from().yMm();
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** The corners of a flight: its head, then its foot. */
    private static List<PlanPoint> flight(StairRun s, PlatformLayout p) {
        PlanPoint n = new PlanArea(p.platform().outline()).outwards(s.stair().line());
        PlanPoint a = s.stair().line().from();
        PlanPoint b = s.stair().line().to();
        return List.of(a, b, moved(b, n, s.goingMm()), moved(a, n, s.goingMm()));
    }

    private static PlanPoint moved(PlanPoint p, PlanPoint direction, double mm) {
        return new PlanPoint(p.xMm() + direction.xMm() * mm, p.yMm() + direction.yMm() * mm);
    }

    private void stair(StairRun s, PlatformLayout p) {
        List<Vec> corners = view.at(flight(s, p));
        Canvas.Figure figure = marked.part(s, "stair", Pen.NARROW, Colour.NONE, corners);
        Stair stair = s.stair();
        int treads = stair.risers() - 1;
        Vec down = corners.get(3).minus(corners.get(0));
        for (int i = 1; i < treads; i++) {
            Vec step = down.times((double) i / treads);
            figure.line(Pen.THIN, corners.get(0).plus(step), corners.get(1).plus(step));
        }
        Vec top = corners.get(0).middle(corners.get(1));
        Vec foot = corners.get(2).middle(corners.get(3));
        figure.line(Pen.NARROW, foot, top)
                .arrowHead(Pen.NARROW, top, top.minus(foot).unit(), HEAD_MM);
        marked.note(
                callouts.on(s),
                List.of(
                        MarkedCanvas.lettered(s.label(), SHORT_LABEL) + ", up",
                        stair.risers() + " risers " + units.length(stair.rise().mm()),
                        "going " + units.length(stair.going().mm()) + ", width " + units.length(s.widthMm())),
                MarkedCanvas.whole(SHORT_LABEL, s.label()),
                1,
                List.of(
                        corners.get(1).middle(corners.get(2)),
                        corners.get(0).middle(corners.get(3)),
                        foot,
                        corners.get(2),
                        corners.get(3)));
    }

    private void heavyItems() {
        for (HeavyItem item : layout.submission().use().heavyItems()) {
            List<Vec> corners = view.at(item.outline());
            String label = item.label().orElse(item.id());
            canvas.figure("heavy-item", label).polygon(Pen.BESIDE, Colour.NONE, corners);
            List<Vec> anchors = new ArrayList<>(List.of(corners.get(0).middle(corners.get(corners.size() / 2))));
            anchors.addAll(corners);
            name(label, 0, anchors);
        }
    }

    private void name(String label, double clear, List<Vec> anchors) {
        marked.note(
                List.of(),
                List.of(MarkedCanvas.lettered(label, LABEL_WIDTH)),
                MarkedCanvas.whole(LABEL_WIDTH, label),
                clear,
                anchors);
    }

    /** Direction of the boards, fall and level, at a place inside where few members lie. */
    private void surface(PlatformLayout p, PlanArea area) {
        Vec middle = clearest(area, p);
        SortedSet<Integer> numbers = new TreeSet<>(callouts.on(p));
        if (layout.platforms().size() > 1 || !numbers.isEmpty()) {
            List<Vec> anchors = new ArrayList<>(List.of(middle));
            p.edges().forEach(e -> anchors.add(onLine(e.line(), 0.5).middle(middle)));
            marked.note(
                    numbers,
                    List.of(MarkedCanvas.lettered(p.label(), LABEL_WIDTH)),
                    MarkedCanvas.whole(LABEL_WIDTH, p.label()),
                    0,
                    anchors);
        }
        p.boards().ifPresent(b -> boards(b, middle));
        p.platform().fall().ifPresent(f -> {
            String level =
                    p.platform().level().map(l -> units.level(l.z().mm())).orElse("");
            if (f.direction().isPresent() && Double.isFinite(f.oneIn())) {
                Axes d = Axes.of(f.direction().get());
                Vec along = PlanView.direction(d.dx(), d.dy());
                Vec from = middle.along(along, -ARROW_MM / 2).along(along.left(), ARROW_MM / 2);
                Vec to = from.along(along, ARROW_MM);
                canvas.keepClear(stroke(from, to));
                canvas.figure("fall", "Fall of " + p.label())
                        .line(Pen.WIDE, from, to)
                        .arrowHead(Pen.WIDE, to, along, HEAD_MM);
                canvas.label(
                        Wanted.note("fall 1:" + MetricUnits.decimals(f.oneIn(), 1), from.middle(to), STROKE_CLEAR));
            }
            p.platform().level().filter(l -> !level.isEmpty()).ifPresent(l -> level(level, view.at(l.at())));
        });
        if (p.platform().fall().isEmpty()) {
            p.platform().level().ifPresent(l -> level(units.level(l.z().mm()), view.at(l.at())));
        }
    }

    private void boards(BoardField b, Vec middle) {
        Mark mark = callouts.mark(b);
        Axes d = Axes.of(b.boards().direction());
        Vec along = PlanView.direction(d.dx(), d.dy());
        Vec from = middle.along(along, -ARROW_MM / 2);
        Vec to = middle.along(along, ARROW_MM / 2);
        Pen pen = mark.pen(Pen.WIDE);
        canvas.keepClear(stroke(from, to));
        marked.figure(b, "boards")
                .line(pen, from, to)
                .arrowHead(pen, to, along, HEAD_MM)
                .arrowHead(pen, from, along.times(-1), HEAD_MM)
                .hatch(mark, PlanView.strip(from.along(along, HEAD_MM), to.along(along, -HEAD_MM), HEAD_MM));
        marked.note(
                callouts.on(b),
                List.of("boards " + key.section(b.timber())),
                "",
                STROKE_CLEAR,
                List.of(middle, from.along(along, HEAD_MM), to.along(along, -HEAD_MM)));
    }

    /** What labels keep clear of around an arrow. */
    private static Box stroke(Vec a, Vec b) {
        return new Box(a.middle(b), b.minus(a).unit(), b.minus(a).length() / 2, STROKE_CLEAR);
    }

    /** Of places around the middle the one where a square for arrows covers least. */
    private Vec clearest(PlanArea area, PlatformLayout p) {
        PlanPoint middle = area.middle();
        double step = fit.scale().divisor() * ARROW_MM / 2;
        List<PlanPoint> places = new ArrayList<>(List.of(middle));
        for (int i = 1; i <= 2; i++) {
            for (Vec d : List.of(Vec.RIGHT, Vec.UP, Vec.RIGHT.times(-1), Vec.UP.times(-1))) {
                places.add(new PlanPoint(middle.xMm() + d.x() * i * step, middle.yMm() + d.y() * i * step));
            }
        }
        Ink ink = new Ink(beamsAndPosts(p));
        return places.stream()
                .filter(area::contains)
                .map(view::at)
                .min(Comparator.comparingDouble(v -> ink.under(new Box(v, Vec.RIGHT, ARROW_MM * 0.6, ARROW_MM * 0.6))))
                .orElse(view.at(middle));
    }

    private List<Segment> beamsAndPosts(PlatformLayout p) {
        List<Segment> all = new ArrayList<>();
        p.beams()
                .forEach(b -> all.add(
                        new Segment(view.at(b.line().from()), view.at(b.line().to()))));
        Axes.sides(p).forEach(s -> all.add(new Segment(view.at(s.from()), view.at(s.to()))));
        SectionLine.of(p)
                .ifPresent(c -> all.add(new Segment(
                        view.at(c.inside().from()), view.at(c.inside().to()))));
        return all;
    }

    private void level(String text, Vec at) {
        canvas.figure("level", "Level of the boards")
                .line(Pen.NARROW, at.plus(new Vec(-DATUM, -DATUM)), at.plus(new Vec(DATUM, DATUM)))
                .line(Pen.NARROW, at.plus(new Vec(-DATUM, DATUM)), at.plus(new Vec(DATUM, -DATUM)));
        canvas.label(Wanted.note("level " + text, at, 1));
    }

    private void sectionMark(PlatformLayout p) {
        SectionLine.of(p).ifPresent(s -> {
            Vec a = view.at(s.inside().from());
            Vec b = view.at(s.inside().to());
            Vec d = b.minus(a).unit();
            String letter = SectionDrawing.letter(p.platformIndex());
            Canvas.Figure figure = canvas.figure("section-line", "Section " + letter + "–" + letter);
            for (Vec end : List.of(a, b)) {
                Vec out = end == a ? d.times(-1) : d;
                Vec far = end.along(out, SECTION_MARK);
                figure.line(Pen.CENTRE, end, far).line(Pen.FRAME, far.along(out, -SECTION_MARK / 2), far);
                canvas.keepClear(stroke(far.along(out, -SECTION_MARK / 2), far));
                canvas.label(Wanted.symbol(letter, far.along(out, -SECTION_MARK / 4), 0.5));
            }
        });
    }

    private void walls() {
        List<PlanPoint> all = extent();
        double left = all.stream().mapToDouble(PlanPoint::xMm).min().orElseThrow() - WALL_BEYOND_MM;
        double right = all.stream().mapToDouble(PlanPoint::xMm).max().orElseThrow() + WALL_BEYOND_MM;
        double low = all.stream().mapToDouble(PlanPoint::yMm).min().orElseThrow() - WALL_BEYOND_MM;
        double high = all.stream().mapToDouble(PlanPoint::yMm).max().orElseThrow() + WALL_BEYOND_MM;
        PlanArea seen = new PlanArea(List.of(
                new PlanPoint(left, low),
                new PlanPoint(right, low),
                new PlanPoint(right, high),
                new PlanPoint(left, high)));
        for (Wall w : layout.submission().site().walls()) {
            seen.longestInside(w.line()).ifPresent(line -> wall(w, line));
        }
    }

    private void wall(Wall w, PlanLine line) {
        Vec a = view.at(line.from());
        Vec b = view.at(line.to());
        Vec side = b.minus(a).unit().left().times(WALL_MM);
        boolean decksOnLeft = layout.platforms().stream()
                        .map(p -> view.at(new PlanArea(p.platform().outline()).middle()))
                        .mapToDouble(m -> m.minus(a).dot(side))
                        .sum()
                > 0;
        Vec away = decksOnLeft ? side.times(-1) : side;
        String label = w.label().orElse("wall " + w.id());
        canvas.figure("wall", label).line(Pen.WIDE, a, b).hatch(List.of(a, b, b.plus(away), a.plus(away)), WALL_HATCH);
        name(
                label,
                0.5,
                DoubleStream.of(0.85, 0.7, 0.5, 0.3, 0.15)
                        .mapToObj(t -> a.plus(b.minus(a).times(t)).plus(away))
                        .toList());
    }

    /** The origin of the submission's coordinates, or the lowest corner of the first platform where that is out of sight. */
    private void datum() {
        Box area = fit.format().area();
        PlanPoint origin = new PlanPoint(0, 0);
        Vec at = view.at(origin);
        boolean isSeen = new Box(at, Vec.RIGHT, DATUM_ARROW, DATUM_ARROW).within(area);
        PlanPoint place =
                isSeen ? origin : layout.platforms().get(0).platform().outline().get(0);
        Vec c = view.at(place);
        Vec x = c.plus(new Vec(DATUM_ARROW, 0));
        Vec y = c.plus(new Vec(0, -DATUM_ARROW));
        canvas.figure("datum", "Datum of the coordinates")
                .circle(Pen.NARROW, Colour.PAPER, c, DATUM)
                .line(Pen.NARROW, c, x)
                .arrowHead(Pen.NARROW, x, Vec.RIGHT, HEAD_MM / 2)
                .line(Pen.NARROW, c, y)
                .arrowHead(Pen.NARROW, y, Vec.UP, HEAD_MM / 2);
        canvas.label(Wanted.note("x", x, 0));
        canvas.label(Wanted.note("y", y, 0));
        canvas.label(Wanted.note("datum " + units.length(place.xMm()) + ", " + units.length(place.yMm()), c, DATUM));
    }
}
