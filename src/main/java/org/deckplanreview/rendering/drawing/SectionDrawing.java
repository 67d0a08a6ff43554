package org.deckplanreview.rendering.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.EdgeRun;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.FrameLevels;
import org.deckplanreview.layout.GroundLine;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.LedgerLine;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.measure.Length;
import org.deckplanreview.submission.EdgeKind;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Wall;

/** One platform cut by an upright plane; posts and footings nearest to the plane are seen behind it. */
final class SectionDrawing {

    private static final double GOOD_SCALE = 25;
    private static final double BESIDE_ROOM = 27;
    private static final double ABOVE_ROOM = 14;
    private static final double BELOW_ROOM = 30;
    private static final double GROUND_BEYOND_MM = 600;
    private static final double GROUND_HATCH = 2.5;
    private static final double GROUND_DEPTH = 2.5;
    private static final double WALL_MM = 4;
    private static final double WALL_HATCH = 1.6;
    private static final double WALL_ABOVE_MM = 300;
    private static final double DROP_OFFSET = 9;
    private static final double POST_OFFSET = 5;
    private static final double FOOTING_OFFSET = 5;
    private static final double FIRST_CHAIN = 9;
    private static final double LEVEL_MARK = 2.2;
    private static final double GUARD_POST_MM = 70;
    private static final double ON_EDGE_MM = 1;
    private static final double LEAST_BOARD = 1;
    private static final double LABEL_ROOM = 48;

    private final DrawnDeck deck;
    private final PlatformLayout platform;
    private final SectionLine cut;
    private final FrameLevels levels;
    private final ShownUnits units;
    private final Callouts callouts;
    private final MemberKey key;
    private final Canvas canvas = new Canvas();
    private final MarkedCanvas marked;
    private final List<List<GroundLine.Place>> ground;
    private final List<SeenPost> posts;
    private final TreeMap<Double, Double> supports = new TreeMap<>();
    private final Fit fit;
    private final Vec origin;
    private final double leftMm;
    private final double lowMm;

    /** A post behind the plane, at a place along the cut, and whether its beam is cut. */
    private record SeenPost(PostPlace post, double atMm, boolean beamIsCut) {}

    private SectionDrawing(DrawnDeck deck, PlatformLayout platform, SectionLine cut) {
        this.deck = deck;
        this.platform = platform;
        this.cut = cut;
        this.levels = FrameLevels.of(deck.layout(), platform);
        this.units = ShownUnits.of(deck.layout().submission().units());
        this.callouts = new Callouts(deck.report());
        this.marked = new MarkedCanvas(canvas, callouts);
        this.key = new MemberKey(units);
        double from = cut.fromMm() - GROUND_BEYOND_MM;
        double to = cut.toMm() + GROUND_BEYOND_MM;
        this.ground = GroundLine.along(deck.layout(), new PlanLine(cut.point(from), cut.point(to)));
        this.posts = posts();
        List<Double> z = heights();
        double low = z.stream().min(Comparator.naturalOrder()).orElseThrow();
        double high = z.stream().max(Comparator.naturalOrder()).orElseThrow();
        this.fit = Fit.of(units.scales(), GOOD_SCALE, to - from, high - low, 2 * BESIDE_ROOM, ABOVE_ROOM + BELOW_ROOM);
        Box area = fit.format().area();
        double spareX = 2 * area.halfLength() - fit.scale().onSheet(to - from) - 2 * BESIDE_ROOM;
        double spareY = 2 * area.halfHeight() - fit.scale().onSheet(high - low) - ABOVE_ROOM - BELOW_ROOM;
        this.leftMm = from;
        this.lowMm = low;
        this.origin = new Vec(area.left() + BESIDE_ROOM + spareX / 2, area.bottom() - BELOW_ROOM - spareY / 2);
    }

    /** A, B, C and so on; A1 follows Z. */
    static String letter(int platformIndex) {
        int letters = 'Z' - 'A' + 1;
        String letter = "" + (char) ('A' + platformIndex % letters);
        return platformIndex < letters ? letter : letter + platformIndex / letters;
    }

    static Drawing draw(DrawnDeck deck, PlatformLayout platform) {
        int count = deck.layout().platforms().size();
        int number = platform.platformIndex() + 1;
        String letter = letter(platform.platformIndex());
        String name = count == 1 ? "section" : "section-" + number;
        String title = "Section " + letter + "–" + letter + (count == 1 ? "" : ", " + platform.label());
        ShownUnits units = ShownUnits.of(deck.layout().submission().units());
        Optional<SectionLine> cut = SectionLine.of(platform);
        Derived<Double> top = FrameLevels.of(deck.layout(), platform)
                .boardsTopMm(platform.platform().outline().get(0));
        if (cut.isEmpty() || !top.isKnown()) {
            return NoteSheet.draw(
                    name,
                    title,
                    number,
                    count,
                    units,
                    deck.report(),
                    "The section is drawn as soon as the submission gives:",
                    top.needs());
        }
        return new SectionDrawing(deck, platform, cut.get()).draw(name, title, number, count);
    }

    private Drawing draw(String name, String title, int number, int count) {
        ground();
        wall();
        footings();
        posts.forEach(this::post);
        beams();
        platform.ledger().ifPresent(this::ledger);
        joists();
        boards();
        end(cut.fromMm(), -1);
        end(cut.toMm(), 1);
        chains();
        return new Sheet(name, title, number, count, fit.format(), Optional.of(fit.scale()), units, deck.report())
                .finished(
                        canvas,
                        fit.format().area(),
                        Optional.of(new Sheet.Keys(key.lines(platform), callouts)),
                        description());
    }

    private String description() {
        return "An upright cut through " + platform.label() + " at "
                + fit.scale().text()
                + ", with the ground, footings, posts, beams, joists, boards and guards. "
                + (callouts.shown().isEmpty()
                        ? "Nothing drawn here is found not to comply."
                        : "What does not comply is hatched and numbered as in the report: " + callouts.shown() + ".");
    }

    private Vec at(double alongMm, double levelMm) {
        return origin.plus(
                new Vec(fit.scale().onSheet(alongMm - leftMm), -fit.scale().onSheet(levelMm - lowMm)));
    }

    private double top(double alongMm) {
        return levels.boardsTopMm(cut.point(alongMm)).get();
    }

    private double boardsDepth() {
        return platform.boards().map(b -> b.timber().depth().mm()).orElse(0.0);
    }

    private List<Double> heights() {
        List<Double> z = new ArrayList<>();
        double highest = Math.max(top(cut.fromMm()), top(cut.toMm()));
        z.add(highest + guardHeight());
        z.add(Math.min(top(cut.fromMm()), top(cut.toMm())) - WALL_ABOVE_MM);
        ground.forEach(s -> s.forEach(p -> z.add(p.levelMm())));
        for (SeenPost s : posts) {
            s.post().bottomLevelMm().optional().ifPresent(z::add);
            s.post().footing().flatMap(f -> concrete(s.post(), f)).ifPresent(c -> z.add(c.undersideMm()));
        }
        return z;
    }

    private double guardHeight() {
        double wall = platform.ledger().isPresent() ? WALL_ABOVE_MM : 0;
        return Math.max(
                wall,
                platform.guards().stream()
                        .flatMap(g -> g.guard().height().stream())
                        .mapToDouble(Length::mm)
                        .max()
                        .orElse(0));
    }

    private void note(SortedSet<Integer> numbers, String text, double clear, Vec... anchors) {
        marked.note(
                numbers,
                List.of(MarkedCanvas.lettered(text, LABEL_ROOM)),
                MarkedCanvas.whole(LABEL_ROOM, text),
                clear,
                List.of(anchors));
    }

    private void note(String text, double clear, Vec... anchors) {
        note(new TreeSet<>(), text, clear, anchors);
    }

    private void ground() {
        for (List<GroundLine.Place> stretch : ground) {
            List<Vec> line =
                    stretch.stream().map(p -> at(along(p.at()), p.levelMm())).toList();
            Canvas.Figure figure = canvas.figure("ground", "Ground").polyline(Pen.WIDE, line);
            for (int i = 1; i < line.size(); i++) {
                Vec a = line.get(i - 1);
                Vec b = line.get(i);
                Vec down = new Vec(0, GROUND_DEPTH);
                figure.hatch(List.of(a, b, b.plus(down), a.plus(down)), GROUND_HATCH);
            }
        }
        ground.stream().findFirst().ifPresent(s -> level(s.get(0).at(), s.get(0).levelMm(), "ground "));
        if (!ground.isEmpty()) {
            List<GroundLine.Place> last = ground.get(ground.size() - 1);
            GroundLine.Place end = last.get(last.size() - 1);
            level(end.at(), end.levelMm(), "ground ");
        } else {
            note("ground not known", 1, at(cut.fromMm(), lowMm));
        }
    }

    private Optional<Double> groundAt(double alongMm) {
        for (List<GroundLine.Place> stretch : ground) {
            for (int i = 1; i < stretch.size(); i++) {
                double a = along(stretch.get(i - 1).at());
                double b = along(stretch.get(i).at());
                if (alongMm >= a && alongMm <= b && b > a) {
                    double t = (alongMm - a) / (b - a);
                    return Optional.of(stretch.get(i - 1).levelMm() * (1 - t)
                            + stretch.get(i).levelMm() * t);
                }
            }
        }
        return Optional.empty();
    }

    private void level(PlanPoint place, double levelMm, String what) {
        Vec tip = at(along(place), levelMm);
        canvas.figure("level", "")
                .polygon(
                        Pen.NARROW,
                        Colour.NONE,
                        List.of(
                                tip,
                                tip.plus(new Vec(-LEVEL_MARK / 2, -LEVEL_MARK)),
                                tip.plus(new Vec(LEVEL_MARK / 2, -LEVEL_MARK))));
        note(what + units.level(levelMm), 0, tip.plus(new Vec(0, -LEVEL_MARK)));
    }

    private void wall() {
        Optional<String> id = platform.platform().ledger().map(l -> l.wall());
        for (Wall w : deck.layout().submission().site().walls()) {
            if (id.filter(w.id()::equals).isPresent()) {
                cut.meets(w.line()).ifPresent(s -> wall(w, s));
            }
        }
    }

    private void wall(Wall w, double s) {
        double away = s < (cut.fromMm() + cut.toMm()) / 2 ? -WALL_MM : WALL_MM;
        double high = top(s) + WALL_ABOVE_MM;
        double low = groundAt(s).orElse(lowMm) - WALL_ABOVE_MM;
        Vec a = at(s, Math.max(low, lowMm));
        Vec b = at(s, high);
        Vec side = new Vec(away, 0);
        String label = w.label().orElse("wall " + w.id());
        canvas.figure("wall", label).line(Pen.WIDE, a, b).hatch(List.of(a, b, b.plus(side), a.plus(side)), WALL_HATCH);
        note(label, 0.5, b.plus(side), a.middle(b).plus(side));
    }

    private List<SeenPost> posts() {
        List<SeenPost> seen = new ArrayList<>();
        Comparator<PostPlace> nearest =
                Comparator.comparingDouble(q -> off(q.post().at()));
        for (BeamLine b : platform.beams()) {
            List<PostPlace> own = platform.posts().stream()
                    .filter(q -> q.beams().contains(b.id()))
                    .toList();
            if (cut.meets(b.line()).isPresent()) {
                own.stream()
                        .min(nearest)
                        .ifPresent(q -> seen.add(new SeenPost(q, along(q.post().at()), true)));
            } else if (isSeenAlong(b)) {
                own.forEach(q -> seen.add(new SeenPost(q, along(q.post().at()), false)));
            }
        }
        List<SeenPost> distinct = new ArrayList<>();
        seen.stream()
                .filter(s -> distinct.stream()
                        .noneMatch(d -> d.post().id().equals(s.post().id())))
                .forEach(distinct::add);
        return distinct;
    }

    private double off(PlanPoint p) {
        return Math.abs(cut.axes().across(p) - cut.acrossMm());
    }

    /** Of the beams that lie along the cut the nearest one is seen. */
    private boolean isSeenAlong(BeamLine b) {
        return platform.beams().stream()
                .filter(o -> cut.axes().isParallel(o.line()))
                .min(Comparator.comparingDouble(o -> off(o.line().from())))
                .filter(b::equals)
                .isPresent();
    }

    private void post(SeenPost s) {
        PostPlace q = s.post();
        if (!q.topLevelMm().isKnown() || !q.bottomLevelMm().isKnown()) {
            return;
        }
        double half = (s.beamIsCut() ? q.timber().depth() : q.timber().breadth()).mm() / 2;
        double top = q.topLevelMm().get();
        double bottom = q.bottomLevelMm().get();
        if (top <= bottom) {
            return;
        }
        List<Vec> corners = List.of(
                at(s.atMm() - half, bottom),
                at(s.atMm() + half, bottom),
                at(s.atMm() + half, top),
                at(s.atMm() - half, top));
        marked.part(q, "post", Pen.NARROW, Colour.TIMBER, corners);
        Vec aside = new Vec(POST_OFFSET, 0);
        new Dimensions(canvas, units)
                .single(
                        corners.get(1),
                        corners.get(2),
                        corners.get(1).plus(aside),
                        corners.get(2).plus(aside),
                        top - bottom);
        note(
                callouts.on(q),
                MarkedCanvas.name(q.label(), "post "),
                fit.scale().onSheet(half),
                at(s.atMm(), (top + bottom) / 2),
                at(s.atMm(), (top + 3 * bottom) / 4));
        supports.put(s.atMm(), bottom);
    }

    /** Levels of a footing's concrete. */
    private record Concrete(double topMm, double undersideMm, double groundMm) {}

    private static Optional<Concrete> concrete(PostPlace q, FootingPlace f) {
        Optional<Double> ground = q.groundLevelMm().optional();
        if (ground.isEmpty()) {
            return Optional.empty();
        }
        double top = ground.get() + f.footing().topAboveGround().map(Length::mm).orElse(0.0);
        return f.footing()
                .depth()
                .map(d -> ground.get() - d.mm())
                .or(() -> f.footing().thickness().map(t -> top - t.mm()))
                .filter(u -> u < top)
                .map(u -> new Concrete(top, u, ground.get()));
    }

    private void footings() {
        for (SeenPost s : posts) {
            s.post().footing().ifPresent(f -> concrete(s.post(), f).ifPresent(c -> footing(s, f, c)));
        }
    }

    private void footing(SeenPost s, FootingPlace f, Concrete c) {
        double half = f.footing().breadth().mm() / 2;
        List<Vec> corners = List.of(
                at(s.atMm() - half, c.undersideMm()),
                at(s.atMm() + half, c.undersideMm()),
                at(s.atMm() + half, c.topMm()),
                at(s.atMm() - half, c.topMm()));
        Pen pen = f.footing().kind() == FootingKind.PAD ? Pen.NARROW : Pen.HIDDEN;
        marked.part(f, "footing", pen, Colour.CONCRETE, corners);
        Vec low = at(s.atMm(), c.undersideMm()).plus(new Vec(0, 2));
        canvas.figure("centre-line", "")
                .line(Pen.CENTRE, at(s.atMm(), c.topMm()).plus(new Vec(0, -2)), low);
        double middle = (c.undersideMm() + c.topMm()) / 2;
        note(
                callouts.on(f),
                MarkedCanvas.name(f.label(), "footing "),
                0,
                at(s.atMm() + half / 2, middle),
                at(s.atMm() - half / 2, middle),
                at(s.atMm(), c.undersideMm()));
        f.footing().depth().ifPresent(d -> {
            Vec aside = new Vec(-FOOTING_OFFSET, 0);
            Vec under = corners.get(0);
            Vec surface = at(s.atMm() - half, c.groundMm());
            new Dimensions(canvas, units).single(under, surface, under.plus(aside), surface.plus(aside), d.mm());
        });
    }

    private void beams() {
        for (BeamLine b : platform.beams()) {
            Optional<Double> met = cut.meets(b.line());
            if (met.isPresent()) {
                cutBeam(b, met.get());
            } else if (isSeenAlong(b)) {
                seenBeam(b);
            }
        }
    }

    private void cutBeam(BeamLine b, double s) {
        double a = cut.axes().across(b.line().from());
        double e = cut.axes().across(b.line().to());
        double along = b.lengthMm() * (cut.acrossMm() - a) / (e - a);
        double half = b.timber().breadth().mm() * b.plies() / 2 / cut.axes().sineTo(b.line());
        levels.topMm(b, along).optional().ifPresent(top -> {
            double low = top - b.timber().depth().mm();
            List<Vec> corners = List.of(at(s - half, low), at(s + half, low), at(s + half, top), at(s - half, top));
            marked.part(b, "beam", Pen.WIDE, Colour.TIMBER, corners);
            Canvas.Figure figure = canvas.figure("plies", "");
            for (int i = 0; i < b.plies(); i++) {
                double left = s - half + 2 * half * i / b.plies();
                double right = s - half + 2 * half * (i + 1) / b.plies();
                figure.line(Pen.THIN, at(left, low), at(right, top)).line(Pen.THIN, at(left, top), at(right, low));
                figure.line(Pen.THIN, at(right, low), at(right, top));
            }
            note(
                    callouts.on(b),
                    MarkedCanvas.name(b.label(), "beam "),
                    fit.scale().onSheet(half),
                    at(s, (low + top) / 2));
            supports.put(s, low);
        });
    }

    private void seenBeam(BeamLine b) {
        Derived<Double> first = levels.topMm(b, 0);
        Derived<Double> last = levels.topMm(b, b.lengthMm());
        if (!first.isKnown() || !last.isKnown()) {
            return;
        }
        double depth = b.timber().depth().mm();
        double a = along(b.line().from());
        double e = along(b.line().to());
        marked.part(
                b,
                "beam",
                Pen.NARROW,
                Colour.TIMBER,
                List.of(at(a, first.get()), at(e, last.get()), at(e, last.get() - depth), at(a, first.get() - depth)));
        note(
                callouts.on(b),
                MarkedCanvas.name(b.label(), "beam "),
                0,
                at((a + e) / 2, (first.get() + last.get()) / 2 - depth / 2),
                at((3 * a + e) / 4, (3 * first.get() + last.get()) / 4 - depth / 2));
    }

    private void ledger(LedgerLine l) {
        cut.meets(l.middle(platform)).ifPresent(s -> {
            Optional<Double> joistsTop = levels.joistsTopMm(cut.point(s)).optional();
            double below = platform.platform()
                    .ledger()
                    .filter(d -> d.joists() == JoistSeating.ON_TOP)
                    .flatMap(d -> platform.joists().stream().findFirst())
                    .map(j -> j.timber().depth().mm())
                    .orElse(0.0);
            joistsTop.ifPresent(t -> {
                double top = t - below;
                double low = top - l.timber().depth().mm();
                double half = l.timber().breadth().mm() / 2;
                marked.part(
                        l,
                        "ledger",
                        Pen.WIDE,
                        Colour.TIMBER,
                        List.of(at(s - half, low), at(s + half, low), at(s + half, top), at(s - half, top)));
                note(callouts.on(l), "ledger", fit.scale().onSheet(half), at(s, low));
                supports.put(s, low);
            });
        });
    }

    private void joists() {
        List<JoistLine> along = platform.joists().stream()
                .filter(j -> cut.axes().isParallel(j.line()))
                .filter(j -> Math.min(along(j.line().from()), along(j.line().to())) < cut.toMm()
                        && Math.max(along(j.line().from()), along(j.line().to())) > cut.fromMm())
                .sorted(Comparator.comparingDouble(j -> off(j.line().from())))
                .toList();
        SortedSet<Integer> numbers = new TreeSet<>();
        platform.joists().forEach(j -> numbers.addAll(callouts.on(j)));
        if (!along.isEmpty()) {
            double nearest = off(along.get(0).line().from());
            List<JoistLine> inLine = along.stream()
                    .filter(j -> off(j.line().from()) - nearest < ON_EDGE_MM)
                    .toList();
            inLine.forEach(this::joistAlong);
            JoistLine j = longest(inLine);
            double a = along(j.line().from());
            double e = along(j.line().to());
            note(
                    numbers,
                    "joists",
                    0,
                    DoubleStream.of(0.4, 0.55, 0.25, 0.7, 0.1, 0.9)
                            .map(t -> a + (e - a) * t)
                            .mapToObj(
                                    x -> at(x, joistTop(x) - j.timber().depth().mm() / 2))
                            .toArray(Vec[]::new));
            return;
        }
        List<JoistLine> met = platform.joists().stream()
                .filter(j -> cut.meets(j.line()).isPresent())
                .toList();
        for (JoistLine j : met) {
            double s = cut.meets(j.line()).orElseThrow();
            double half = j.timber().breadth().mm() / 2 / cut.axes().sineTo(j.line());
            joist(j, s - half, s + half, Pen.NARROW);
            double low = joistTop(s) - j.timber().depth().mm();
            canvas.figure("end-grain", "")
                    .line(Pen.THIN, at(s - half, low), at(s + half, joistTop(s)))
                    .line(Pen.THIN, at(s - half, joistTop(s)), at(s + half, low));
        }
        if (!met.isEmpty()) {
            note(
                    numbers,
                    "joists",
                    0,
                    met.stream()
                            .map(j -> cut.meets(j.line()).orElseThrow())
                            .map(x -> at(
                                    x, joistTop(x) - met.get(0).timber().depth().mm() / 2))
                            .toArray(Vec[]::new));
        }
    }

    private void joistAlong(JoistLine j) {
        double a = along(j.line().from());
        double e = along(j.line().to());
        joist(j, Math.min(a, e), Math.max(a, e), Pen.WIDE);
    }

    private static JoistLine longest(List<JoistLine> joists) {
        return joists.stream()
                .max(Comparator.comparingDouble(JoistLine::lengthMm))
                .orElseThrow();
    }

    private double along(PlanPoint p) {
        return cut.axes().along(p);
    }

    private double joistTop(double alongMm) {
        return top(alongMm) - boardsDepth();
    }

    private void joist(JoistLine j, double a, double e, Pen pen) {
        double depth = j.timber().depth().mm();
        marked.part(
                j,
                "joist",
                pen,
                Colour.TIMBER,
                List.of(
                        at(a, joistTop(a)),
                        at(e, joistTop(e)),
                        at(e, joistTop(e) - depth),
                        at(a, joistTop(a) - depth)));
    }

    private void boards() {
        platform.boards().ifPresent(b -> {
            double from = cut.fromMm();
            double to = cut.toMm();
            double depth = boardsDepth();
            marked.part(
                    b,
                    "boards",
                    Pen.NARROW,
                    Colour.PAPER,
                    List.of(
                            at(from, top(from)),
                            at(to, top(to)),
                            at(to, top(to) - depth),
                            at(from, top(from) - depth)));
            double pitch =
                    b.timber().breadth().mm() + b.boards().gap().map(Length::mm).orElse(0.0);
            Axes boards = Axes.of(b.boards().direction());
            boolean isCut = Math.abs(boards.dx() * cut.axes().dx()
                            + boards.dy() * cut.axes().dy())
                    < 0.02;
            if (isCut && fit.scale().onSheet(pitch) > LEAST_BOARD) {
                Canvas.Figure figure = canvas.figure("boards", "");
                for (double s = from + pitch; s < to; s += pitch) {
                    figure.line(Pen.THIN, at(s, top(s)), at(s, top(s) - depth));
                }
            }
            note(
                    callouts.on(b),
                    "boards",
                    0,
                    DoubleStream.of(0.62, 0.8, 0.45, 0.3, 0.15)
                            .map(t -> from + (to - from) * t)
                            .mapToObj(x -> at(x, top(x)))
                            .toArray(Vec[]::new));
        });
    }

    /** What stands at one end of the cut: its edge with the drop, the guard, the level. */
    private void end(double s, int side) {
        PlanPoint place = cut.point(s);
        level(place, top(s), "");
        Optional<EdgeRun> edge = platform.edges().stream()
                .filter(e -> distance(e.line(), place) <= ON_EDGE_MM)
                .max(Comparator.comparingDouble(e -> cut.axes().sineTo(e.line())));
        if (edge.flatMap(EdgeRun::edgeKind).filter(EdgeKind.WALL::equals).isPresent()) {
            return;
        }
        edge.flatMap(EdgeRun::guard).ifPresent(g -> guard(edge.get(), g, s, side));
        groundAt(s).filter(g -> g < top(s)).ifPresent(g -> {
            Vec aside = new Vec(side * DROP_OFFSET, 0);
            Vec low = at(s, g);
            Vec high = at(s, top(s));
            new Dimensions(canvas, units).single(low, high, low.plus(aside), high.plus(aside), top(s) - g);
        });
        edge.filter(e -> callouts.mark(e) != Mark.NONE)
                .ifPresent(e -> note(callouts.on(e), e.label(), 1, at(s, top(s) - boardsDepth())));
    }

    private static double distance(PlanLine line, PlanPoint p) {
        Axes d = Axes.of(line);
        double along = Math.max(d.along(line.from()), Math.min(d.along(line.to()), d.along(p)));
        double dx = along - d.along(p);
        double dy = d.across(line.from()) - d.across(p);
        return Math.sqrt(dx * dx + dy * dy);
    }

    private void guard(EdgeRun edge, Guard g, double s, int side) {
        Optional<Double> height = g.height().map(Length::mm);
        if (height.isEmpty()) {
            return;
        }
        SortedSet<Integer> numbers = new TreeSet<>();
        platform.guards().stream()
                .filter(r -> r.guard().id().equals(g.id()))
                .forEach(r -> numbers.addAll(callouts.on(r)));
        Mark mark = callouts.mark(numbers);
        double width = g.posts()
                .map(p -> deck.layout().submission().timber(p.timber()).depth().mm())
                .orElse(GUARD_POST_MM);
        double inner = s - side * width;
        List<Vec> corners = List.of(
                at(s, top(s)), at(s, top(s) + height.get()), at(inner, top(s) + height.get()), at(inner, top(s)));
        canvas.figure(mark.css("guard"), g.displayLabel())
                .polygon(mark.pen(Pen.NARROW), Colour.TIMBER, corners)
                .hatch(mark, corners);
        Vec aside = new Vec(side * DROP_OFFSET, 0);
        new Dimensions(canvas, units)
                .single(
                        corners.get(0),
                        corners.get(1),
                        corners.get(0).plus(aside),
                        corners.get(1).plus(aside),
                        height.get());
        note(
                numbers,
                g.displayLabel(),
                0,
                at(inner, top(s) + height.get() * 0.7),
                at(inner, top(s) + height.get() * 0.4));
    }

    private void chains() {
        List<Double> stops = new ArrayList<>();
        for (double s : supports.keySet()) {
            stops.add(s);
        }
        List<Double> all = new ArrayList<>(List.of(cut.fromMm()));
        stops.stream()
                .filter(s -> s > cut.fromMm() && s < cut.toMm())
                .filter(s -> s - all.get(all.size() - 1) > ON_EDGE_MM && cut.toMm() - s > ON_EDGE_MM)
                .forEach(all::add);
        all.add(cut.toMm());
        chain(all, FIRST_CHAIN);
        if (all.size() > 2) {
            chain(List.of(cut.fromMm(), cut.toMm()), FIRST_CHAIN + Dimensions.BETWEEN_CHAINS);
        }
    }

    private void chain(List<Double> stops, double below) {
        Vec down = new Vec(0, below);
        List<Double> mm = new ArrayList<>();
        for (int i = 1; i < stops.size(); i++) {
            mm.add(stops.get(i) - stops.get(i - 1));
        }
        List<Vec> feet = stops.stream().map(s -> at(s, lowMm)).toList();
        new Dimensions(canvas, units)
                .chain(feet, feet.stream().map(f -> f.plus(down)).toList(), mm);
    }
}
