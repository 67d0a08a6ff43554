package org.deckplanreview.rendering.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
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

    private static final double LABEL_ROOM = 20;
    private static final double LABEL_WIDTH = 46;
    private static final double SHORT_LABEL = 30;
    private static final double WALL_MM = 3;
    private static final double WALL_BEYOND_MM = 400;
    private static final double EDGE_MM = 2;
    private static final double GUARD_MM = 1.3;
    private static final double ARROW_MM = 22;
    private static final double HEAD_MM = 3;
    private static final double CENTRE_BEYOND = 2;
    private static final double DATUM = 1.5;
    private static final double DATUM_ARROW = 9;
    private static final double SECTION_MARK = 7;
    private static final double WALL_HATCH = 1.6;

    private final DrawnDeck deck;
    private final Layout layout;
    private final ShownUnits units;
    private final Callouts callouts;
    private final Canvas canvas = new Canvas();
    private final MemberKey key;
    private final PlanDimensions dimensions;
    private final Fit fit;
    private final PlanView view;

    private PlanDrawing(DrawnDeck deck) {
        this.deck = deck;
        this.layout = deck.layout();
        this.units = ShownUnits.of(layout.submission().units());
        this.callouts = new Callouts(deck.report());
        this.key = new MemberKey(units);
        this.dimensions = new PlanDimensions(layout);
        List<PlanPoint> all = extent();
        double left = all.stream().mapToDouble(PlanPoint::xMm).min().orElseThrow();
        double right = all.stream().mapToDouble(PlanPoint::xMm).max().orElseThrow();
        double low = all.stream().mapToDouble(PlanPoint::yMm).min().orElseThrow();
        double high = all.stream().mapToDouble(PlanPoint::yMm).max().orElseThrow();
        double leftRoom = dimensions.roomBeside();
        double lowRoom = dimensions.roomBelow();
        this.fit = Fit.of(units.scales(), right - left, high - low, leftRoom + LABEL_ROOM, lowRoom + LABEL_ROOM);
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
        p.ledger().ifPresent(this::ledger);
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

    private static String css(String kind, boolean fails) {
        return fails ? kind + " does-not-comply" : kind;
    }

    private void joists(PlatformLayout p) {
        for (JoistLine j : p.joists()) {
            boolean fails = callouts.fails(j);
            List<Vec> strip = view.strip(j.line(), j.timber().breadth().mm());
            Canvas.Figure figure = canvas.figure(css("joist", fails), j.label());
            figure.polygon(Pen.of(Pen.NARROW, fails), Colour.TIMBER, strip);
            if (fails) {
                figure.hatch(strip);
            }
        }
        SortedSet<Integer> all = new TreeSet<>();
        p.joists().forEach(j -> all.addAll(callouts.on(j)));
        Optional<JoistLine> named = p.joists().stream()
                .filter(j -> !callouts.worstOn(j).isEmpty())
                .findFirst()
                .or(() -> p.joists().stream().skip(p.joists().size() / 3).findFirst());
        named.ifPresent(
                j -> note(callouts.callout(all), List.of(key.joists(p).orElseThrow()), "", onLine(j.line(), 0.3), 0));
    }

    private Vec onLine(PlanLine line, double fraction) {
        Vec a = view.at(line.from());
        return a.plus(view.at(line.to()).minus(a).times(fraction));
    }

    private void note(String callout, List<String> lines, String title, Vec anchor, double clear) {
        canvas.label(Wanted.note(callout, lines, title, anchor, clear));
    }

    /** A name as it is lettered, in so much room. */
    private static String lettered(String name, double room) {
        return Lettering.fitted(name, room, Lettering.SIZE);
    }

    /** The whole of names of which at least one is cut; blank otherwise. */
    private static String whole(String... names) {
        boolean isCut = Stream.of(names).anyMatch(n -> !lettered(n, SHORT_LABEL).equals(n));
        return isCut ? Lettering.plain(String.join(", ", names)) : "";
    }

    private void ledger(LedgerLine l) {
        boolean fails = callouts.fails(l);
        List<Vec> strip = view.strip(l.line(), l.timber().breadth().mm());
        Canvas.Figure figure = canvas.figure(css("ledger", fails), l.label());
        figure.polygon(Pen.of(Pen.NARROW, fails), Colour.TIMBER, strip);
        if (fails) {
            figure.hatch(strip);
        }
        note(
                callouts.callout(callouts.on(l)),
                List.of("ledger " + key.timber(l.timber())),
                "",
                onLine(l.line(), 0.6),
                0);
    }

    private void beam(BeamLine b, Platform platform) {
        boolean fails = callouts.fails(b);
        boolean below =
                platform.beams().stream().anyMatch(s -> s.id().equals(b.id()) && s.joists() == JoistSeating.ON_TOP);
        double ply = b.timber().breadth().mm();
        List<Vec> strip = view.strip(b.line(), ply * b.plies());
        Pen pen = Pen.of(below ? Pen.HIDDEN : Pen.NARROW, fails);
        Canvas.Figure figure = canvas.figure(css("beam", fails), b.label());
        figure.polygon(pen, Colour.NONE, strip);
        for (int i = 1; i < b.plies(); i++) {
            Vec aside = strip.get(3).minus(strip.get(0)).times((double) i / b.plies());
            figure.line(Pen.THIN, strip.get(0).plus(aside), strip.get(1).plus(aside));
        }
        if (fails) {
            figure.hatch(strip);
        }
        note(
                callouts.callout(callouts.on(b)),
                List.of(lettered(name(b.label(), "beam "), SHORT_LABEL) + ": " + key.beam(b)),
                whole(b.label()),
                onLine(b.line(), b.spans().isEmpty() ? 0.5 : middleOfLastSpan(b)),
                0);
    }

    private static double middleOfLastSpan(BeamLine b) {
        return b.spans().stream()
                .filter(s -> !s.isCantilever())
                .reduce((first, last) -> last)
                .map(s -> (s.fromMm() + s.toMm()) / 2 / b.lengthMm())
                .orElse(0.5);
    }

    /** Without the kind in front, which the drawing shows. */
    private static String name(String label, String kind) {
        return label.startsWith(kind) ? label.substring(kind.length()) : label;
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
                    boolean fails = callouts.fails(b);
                    List<Vec> strip = view.strip(line, b.timber().breadth().mm());
                    Canvas.Figure figure = canvas.figure(css("brace", fails), b.label());
                    figure.polygon(Pen.of(Pen.HIDDEN, fails), Colour.NONE, strip);
                    if (fails) {
                        figure.hatch(strip);
                        note(
                                callouts.callout(callouts.on(b)),
                                List.of(lettered(b.label(), SHORT_LABEL)),
                                whole(b.label()),
                                onLine(line, 0.5),
                                0);
                    }
                });
    }

    private Optional<PlanPoint> place(FootingPlace f, PlatformLayout p) {
        return p.posts().stream()
                .filter(q -> f.posts().contains(q.id()))
                .findFirst()
                .map(q -> q.post().at());
    }

    private void footing(FootingPlace f, PlatformLayout p) {
        place(f, p).ifPresent(at -> {
            boolean fails = callouts.fails(f);
            Pen pen = Pen.of(Pen.HIDDEN, fails);
            Canvas.Figure figure = canvas.figure(css("footing", fails), f.label());
            double breadth = f.footing().breadth().mm();
            double length = f.footing().length().map(Length::mm).orElse(breadth);
            Vec c = view.at(at);
            List<Vec> around;
            if (f.footing().shape() == FootingShape.ROUND) {
                double radius = fit.scale().onSheet(breadth) / 2;
                figure.circle(pen, Colour.NONE, c, radius);
                around = Canvas.around(c, radius);
            } else {
                around = view.rectangle(at, new Axes(1, 0), breadth, length);
                figure.polygon(pen, Colour.NONE, around);
            }
            if (fails) {
                figure.hatch(around);
            }
            double half = fit.scale().onSheet(Math.max(breadth, length)) / 2 + CENTRE_BEYOND;
            figure.line(Pen.CENTRE, c.plus(new Vec(-half, 0)), c.plus(new Vec(half, 0)));
            figure.line(Pen.CENTRE, c.plus(new Vec(0, -half)), c.plus(new Vec(0, half)));
        });
    }

    private void post(PostPlace q, PlatformLayout p) {
        boolean fails = callouts.fails(q);
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
        Canvas.Figure figure = canvas.figure(css("post", fails), q.label());
        figure.polygon(Pen.of(Pen.HIDDEN, fails), Colour.NONE, corners);
        if (fails) {
            figure.hatch(corners);
        }
        SortedSet<Integer> numbers = new TreeSet<>(callouts.on(q));
        q.footing().ifPresent(f -> numbers.addAll(callouts.on(f)));
        String post = name(q.label(), "post ");
        String text = q.footing()
                .map(f -> lettered(post, SHORT_LABEL) + ", " + lettered(name(f.label(), "footing "), SHORT_LABEL))
                .orElse(lettered(post, SHORT_LABEL));
        String whole = q.footing().map(f -> whole(q.label(), f.label())).orElse(whole(q.label()));
        note(callouts.callout(numbers), List.of(text), whole, view.at(q.post().at()), clear(corners));
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
        boolean fails = callouts.fails(e);
        if (fails) {
            List<Vec> strip = beside(e.line(), area, EDGE_MM);
            canvas.figure(css("edge", true), e.label())
                    .polygon(Pen.FAILING, Colour.NONE, strip)
                    .hatch(strip);
        }
        boolean isHead = e.edgeKind().filter(EdgeKind.STAIR::equals).isPresent();
        boolean isWall = e.edgeKind().filter(EdgeKind.WALL::equals).isPresent();
        if (isWall && !fails || isHead && !fails) {
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
        if (isHead || e.edgeKind().filter(EdgeKind.PLATFORM::equals).isPresent() || isWall) {
            lines.add(lettered(e.label(), LABEL_WIDTH));
        }
        lines.add(drop);
        lines.add(guard);
        note(callouts.callout(callouts.on(e)), lines, Lettering.plain(e.label()), onLine(e.line(), 0.5), 1);
    }

    private void guard(GuardRun g, PlanArea area) {
        boolean fails = callouts.fails(g);
        Canvas.Figure figure = canvas.figure(css("guard", fails), g.label());
        for (EdgeRun e : g.edges()) {
            List<Vec> strip = beside(e.line(), area, -GUARD_MM);
            Vec a = strip.get(3);
            Vec b = strip.get(2);
            figure.line(Pen.of(Pen.NARROW, fails), a, b);
            int bays = g.guard()
                    .posts()
                    .map(GuardPosts::spacing)
                    .map(s -> (int) Math.ceil(length(e.line()) / s.mm() - 1e-9))
                    .orElse(1);
            Vec d = b.minus(a).unit().times(GUARD_MM / 2);
            for (int i = 0; i <= bays; i++) {
                Vec c = a.plus(b.minus(a).times((double) i / bays));
                figure.area(fails ? Colour.FAILING : Colour.INK, PlanView.strip(c.minus(d), c.plus(d), GUARD_MM));
            }
            if (fails) {
                figure.hatch(strip);
            }
        }
        if (fails) {
            g.edges().stream()
                    .findFirst()
                    .ifPresent(e -> note(
                            callouts.callout(callouts.on(g)),
                            List.of(lettered(g.label(), SHORT_LABEL)),
                            whole(g.label()),
                            onLine(e.line(), 0.25),
                            1));
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
        boolean fails = callouts.fails(s);
        List<Vec> corners = view.at(flight(s, p));
        Canvas.Figure figure = canvas.figure(css("stair", fails), s.label());
        figure.polygon(Pen.of(Pen.NARROW, fails), Colour.NONE, corners);
        if (fails) {
            figure.hatch(corners);
        }
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
        note(
                callouts.callout(callouts.on(s)),
                List.of(
                        lettered(s.label(), SHORT_LABEL) + ", up",
                        stair.risers() + " risers " + units.length(stair.rise().mm()),
                        "going " + units.length(stair.going().mm()) + ", width " + units.length(s.widthMm())),
                whole(s.label()),
                foot,
                1);
    }

    private void heavyItems() {
        for (HeavyItem item : layout.submission().use().heavyItems()) {
            List<Vec> corners = view.at(item.outline());
            String label = item.label().orElse(item.id());
            canvas.figure("heavy-item", label).polygon(Pen.BESIDE, Colour.NONE, corners);
            Vec middle = corners.get(0).middle(corners.get(corners.size() / 2));
            note("", List.of(lettered(label, LABEL_WIDTH)), whole(label), middle, 0);
        }
    }

    /** Direction of the boards, fall and level, at a place inside where few members lie. */
    private void surface(PlatformLayout p, PlanArea area) {
        Vec middle = view.at(area.middle());
        SortedSet<Integer> numbers = new TreeSet<>(callouts.on(p));
        if (layout.platforms().size() > 1 || !numbers.isEmpty()) {
            note(callouts.callout(numbers), List.of(lettered(p.label(), LABEL_WIDTH)), whole(p.label()), middle, 0);
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
                canvas.figure("fall", "Fall of " + p.label())
                        .line(Pen.WIDE, from, to)
                        .arrowHead(Pen.WIDE, to, along, HEAD_MM);
                note("", List.of("fall 1:" + MetricUnits.decimals(f.oneIn(), 1)), "", from.middle(to), 0);
            }
            p.platform().level().filter(l -> !level.isEmpty()).ifPresent(l -> level(level, view.at(l.at())));
        });
        if (p.platform().fall().isEmpty()) {
            p.platform().level().ifPresent(l -> level(units.level(l.z().mm()), view.at(l.at())));
        }
    }

    private void boards(BoardField b, Vec middle) {
        boolean fails = callouts.fails(b);
        Axes d = Axes.of(b.boards().direction());
        Vec along = PlanView.direction(d.dx(), d.dy());
        Vec from = middle.along(along, -ARROW_MM / 2);
        Vec to = middle.along(along, ARROW_MM / 2);
        Pen pen = Pen.of(Pen.WIDE, fails);
        Canvas.Figure figure = canvas.figure(css("boards", fails), b.label());
        figure.line(pen, from, to).arrowHead(pen, to, along, HEAD_MM).arrowHead(pen, from, along.times(-1), HEAD_MM);
        if (fails) {
            figure.hatch(PlanView.strip(from.along(along, HEAD_MM), to.along(along, -HEAD_MM), HEAD_MM));
        }
        note(
                callouts.callout(callouts.on(b)),
                List.of("boards " + key.timber(b.timber())),
                "",
                from.along(along, HEAD_MM),
                1);
    }

    private void level(String text, Vec at) {
        canvas.figure("level", "Level of the boards")
                .line(Pen.NARROW, at.plus(new Vec(-DATUM, -DATUM)), at.plus(new Vec(DATUM, DATUM)))
                .line(Pen.NARROW, at.plus(new Vec(-DATUM, DATUM)), at.plus(new Vec(DATUM, -DATUM)));
        note("", List.of("level " + text), "", at, 1);
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
                note("", List.of(letter), "", far, 0);
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
        Vec anchor = a.plus(b.minus(a).times(0.8)).plus(away);
        note("", List.of(lettered(label, LABEL_WIDTH)), whole(label), anchor, 0.5);
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
        note("", List.of("x"), "", x, 0);
        note("", List.of("y"), "", y, 0);
        note("", List.of("datum " + units.length(place.xMm()) + ", " + units.length(place.yMm())), "", c, DATUM);
    }
}
