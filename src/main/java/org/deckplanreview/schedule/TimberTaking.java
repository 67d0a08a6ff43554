package org.deckplanreview.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Worded;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.submission.PostEnd;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.Timber;

/** Every piece of timber of a deck. Pieces whose length does not follow are left out; their needs are kept. */
final class TimberTaking {

    /** Lengths that are shown alike are cut alike. */
    private static final double SHOWN_PER_MM = 10;

    private static final double PERCENT = 100;

    private final Submission submission;
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Need> needs = new ArrayList<>();
    private final Map<Kind, Derived<Integer>> ends = new TreeMap<>();

    /** In the order in which members are put up. */
    private enum Kind implements Worded {
        POSTS("posts"),
        BEAMS("beams"),
        LEDGERS("ledgers"),
        JOISTS("joists"),
        BRACES("braces"),
        BOARDS("boards");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }

        TimberUse use() {
            return switch (this) {
                case POSTS -> TimberUse.POSTS;
                case BOARDS -> TimberUse.BOARDS;
                default -> TimberUse.FRAME;
            };
        }
    }

    private record Piece(Kind kind, String member, Timber timber, double lengthMm) {}

    private TimberTaking(Submission submission) {
        this.submission = submission;
    }

    /** @param boards cut from the outlines, by index of the platform */
    static TimberTaking of(Layout layout, SortedMap<Integer, Derived<BoardPieces>> boards) {
        TimberTaking taking = new TimberTaking(layout.submission());
        for (PlatformLayout p : layout.platforms()) {
            taking.take(p);
            p.boards().ifPresent(b -> taking.take(b, boards.get(p.platformIndex())));
        }
        return taking;
    }

    private void take(PlatformLayout platform) {
        platform.posts().forEach(p -> take(p, platform));
        platform.beams().forEach(this::take);
        platform.ledger().ifPresent(l -> take(Kind.LEDGERS, l.label(), l.timber(), l.lengthMm()));
        platform.joists().forEach(j -> take(Kind.JOISTS, "joists of " + platform.label(), j.timber(), j.lengthMm()));
        platform.braces().forEach(b -> take(Kind.BRACES, b.label(), b.timber(), b.lengthMm()));
    }

    private void take(PostPlace post, PlatformLayout platform) {
        Derived<Double> length = PostCut.lengthMm(post, platform);
        length.optional().ifPresent(l -> pieces.add(new Piece(Kind.POSTS, post.label(), post.timber(), l)));
        needs.addAll(length.needs());
        boolean isGroundEndCut =
                post.post().groundEnd().filter(PostEnd.UNCUT::equals).isEmpty();
        addEnds(Kind.POSTS, Derived.known(isGroundEndCut ? 2 : 1));
    }

    private void take(BeamLine beam) {
        for (int i = 0; i < beam.plies(); i++) {
            take(Kind.BEAMS, beam.label(), beam.timber(), beam.lengthMm());
        }
    }

    private void take(BoardField boards, Derived<BoardPieces> cut) {
        cut.optional().stream()
                .flatMap(b -> b.pieces().stream())
                .forEach(p -> pieces.add(new Piece(Kind.BOARDS, boards.label(), boards.timber(), p.lengthMm())));
        needs.addAll(cut.needs());
        if (boards.isSawn()) {
            addEnds(Kind.BOARDS, cut.map(b -> 2 * b.pieces().size()));
        }
    }

    private void take(Kind kind, String member, Timber timber, double lengthMm) {
        pieces.add(new Piece(kind, member, timber, lengthMm));
        addEnds(kind, Derived.known(2));
    }

    private void addEnds(Kind kind, Derived<Integer> more) {
        ends.merge(kind, more, (a, b) -> a.with(b, Integer::sum));
    }

    List<Need> needs() {
        return List.copyOf(needs);
    }

    List<CutEnds> cutEnds() {
        return ends.entrySet().stream()
                .map(e -> new CutEnds(e.getKey().word(), e.getValue()))
                .toList();
    }

    List<TimberOrder> orders(SitePractice practice) {
        List<TimberOrder> orders = new ArrayList<>();
        for (Timber timber : submission.timbers()) {
            for (TimberUse use : TimberUse.values()) {
                List<Piece> of = pieces.stream()
                        .filter(p ->
                                p.timber().id().equals(timber.id()) && p.kind().use() == use)
                        .toList();
                if (!of.isEmpty()) {
                    orders.add(order(timber, use, of, practice));
                }
            }
        }
        return orders;
    }

    private TimberOrder order(Timber timber, TimberUse use, List<Piece> of, SitePractice practice) {
        List<Double> stock = practice.stockMm(use);
        CuttingPlan plan = CuttingPlan.of(of.stream().map(Piece::lengthMm).toList(), stock, practice.sawKerfMm());
        double bought =
                plan.lengths().stream().mapToDouble(CuttingPlan.Length::stockMm).sum();
        double cut = plan.lengths().stream()
                .flatMap(l -> l.piecesMm().stream())
                .mapToDouble(Double::doubleValue)
                .sum();
        Optional<Double> shortestOverlong = plan.overlongMm().stream().min(Comparator.naturalOrder());
        return new TimberOrder(
                submission.timberPointer(timber.id()),
                timber.displayLabel(),
                use,
                timber.breadth().mm(),
                timber.depth().mm(),
                counted(of.stream()),
                of.stream().mapToDouble(Piece::lengthMm).sum(),
                counted(plan),
                bought,
                bought - cut,
                bought == 0 ? 0 : (bought - cut) / bought * PERCENT,
                counted(shortestOverlong.stream().flatMap(least -> of.stream().filter(p -> p.lengthMm() >= least))));
    }

    private static List<TimberOrder.Pieces> counted(Stream<Piece> pieces) {
        record Alike(Kind kind, String member, long shown) {}
        Map<Alike, TimberOrder.Pieces> counted = new LinkedHashMap<>();
        pieces.sorted(Comparator.comparing(Piece::kind)
                        .thenComparing(Piece::member)
                        .thenComparing(
                                Comparator.comparingDouble(Piece::lengthMm).reversed()))
                .forEach(p -> counted.merge(
                        new Alike(p.kind(), p.member(), shown(p.lengthMm())),
                        new TimberOrder.Pieces(p.member(), p.lengthMm(), 1),
                        (a, b) -> new TimberOrder.Pieces(a.member(), a.lengthMm(), a.count() + 1)));
        return List.copyOf(counted.values());
    }

    private static List<TimberOrder.Stock> counted(CuttingPlan plan) {
        record Alike(double stock, List<Long> shown) {}
        Map<Alike, TimberOrder.Stock> counted = new LinkedHashMap<>();
        for (CuttingPlan.Length l : plan.lengths()) {
            counted.merge(
                    new Alike(
                            l.stockMm(),
                            l.piecesMm().stream().map(TimberTaking::shown).toList()),
                    new TimberOrder.Stock(l.stockMm(), 1, l.piecesMm()),
                    (a, b) -> new TimberOrder.Stock(a.lengthMm(), a.count() + 1, a.cutsMm()));
        }
        return List.copyOf(counted.values());
    }

    private static long shown(double mm) {
        return Math.round(mm * SHOWN_PER_MM);
    }
}
