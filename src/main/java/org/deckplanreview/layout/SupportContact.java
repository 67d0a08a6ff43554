package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Post;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.Tolerances;

/** Whether members touch what is drawn to carry them. */
public final class SupportContact {

    /** A member on fewer supports falls or turns. */
    private static final int FEWEST = 2;

    private final Submission submission;
    private final PlatformLayout platform;

    private SupportContact(Submission submission, PlatformLayout platform) {
        this.submission = submission;
        this.platform = platform;
    }

    public static SupportContact of(Layout layout, Subject subject) {
        return new SupportContact(layout.submission(), layout.platformOf(subject));
    }

    /** How many beams, ledgers and blocks the platform has, whether or not its joists reach them. */
    public int carriers() {
        long blocks = platform.footings().stream().filter(FootingPlace::isBlock).count();
        return platform.platform().beams().size() + (platform.ledger().isPresent() ? 1 : 0) + (int) blocks;
    }

    /**
     * What is amiss with the joist's supports, the nearest miss first; empty where it lies or hangs on two or more and
     * ends just in front of none.
     */
    public Optional<Miss> ofJoist(JoistLine joist) {
        boolean stands = joist.supports().size() >= FEWEST;
        return missed(joist).stream()
                .filter(m -> !stands || isMeant(m))
                .min(Comparator.comparingDouble(Miss::mm))
                .or(() -> stands ? Optional.empty() : Optional.of(standing(joist)));
    }

    /** A joist that stands without it may pass a beam by far; one that ends just in front of it was to rest on it. */
    private static boolean isMeant(Miss miss) {
        return miss.kind() == Miss.Kind.PARTLY_BESIDE
                || miss.kind() == Miss.Kind.SHORT && miss.mm() <= Tolerances.MEANT_MM;
    }

    private static Miss standing(Member member) {
        return member.supports().stream()
                .findFirst()
                .map(s -> new Miss(
                        isHung(s) && member instanceof JoistLine ? Miss.Kind.OVERHANGS_HANGER : Miss.Kind.ALONE,
                        member.lengthMm(),
                        s.label(),
                        s.pointer()))
                .orElse(new Miss(Miss.Kind.NOTHING, 0, "", member.pointer()));
    }

    private static boolean isHung(MemberSupport support) {
        return support.seating() == JoistSeating.HANGERS;
    }

    private List<Miss> missed(JoistLine joist) {
        Platform described = platform.platform();
        Axis axis = Axis.of(described.joists().orElseThrow().direction());
        JoistPiece piece = piece(axis, joist);
        List<Miss> missed = new ArrayList<>();
        for (Carrier carrier : Carrier.all(submission, described, platform.pointer(), axis)) {
            boolean carries =
                    joist.supports().stream().anyMatch(s -> s.pointer().equals(carrier.pointer()));
            if (!carries && !isBehindAnother(joist, piece, carrier, axis)) {
                miss(piece, joist.timber().breadth().mm(), carrier).ifPresent(missed::add);
            }
        }
        return missed;
    }

    private static JoistPiece piece(Axis axis, JoistLine joist) {
        return new JoistPiece(
                axis.across(joist.line().from()),
                axis.along(joist.line().from()),
                axis.along(joist.line().to()));
    }

    /** Whether the joist ends at a face that it hangs on, or another of its line begins, before it could reach the carrier. */
    private boolean isBehindAnother(JoistLine joist, JoistPiece piece, Carrier carrier, Axis axis) {
        double at = carrier.line().alongAt(piece.across());
        if (at >= piece.from() && at <= piece.to()) {
            return false;
        }
        boolean hangsThere = joist.supports().stream()
                .filter(SupportContact::isHung)
                .anyMatch(s -> (s.atMm() == 0) == (at < piece.from()));
        return hangsThere
                || platform.joists().stream()
                        .filter(j -> j.number() != joist.number())
                        .map(j -> piece(axis, j))
                        .filter(j -> Math.abs(j.across() - piece.across()) <= Supports.ROUNDING_MM)
                        .anyMatch(j -> at < piece.from()
                                ? j.to() <= piece.from() && j.to() > at
                                : j.from() >= piece.to() && j.from() < at);
    }

    private static Optional<Miss> miss(JoistPiece piece, double breadthMm, Carrier carrier) {
        Carrier.Stretch body = carrier.body(piece.across(), piece.middle());
        double gap = -body.overlap(piece.from(), piece.to());
        double met = carrier.breadthMet(piece.across(), breadthMm);
        if (carrier.takes(piece.across(), breadthMm)) {
            // Of two beams that meet under a joist one is its support; it lies on the other too.
            double carried = carrier.hangs() ? Supports.ROUNDING_MM : -Supports.ROUNDING_MM;
            return Optional.of(miss(Miss.Kind.SHORT, gap, carrier)).filter(m -> gap >= carried);
        }
        if (gap > Supports.ROUNDING_MM) {
            return Optional.empty();
        }
        return Optional.of(
                met > Supports.ROUNDING_MM
                        ? miss(Miss.Kind.PARTLY_BESIDE, breadthMm - met, carrier)
                        : miss(Miss.Kind.BESIDE, -met, carrier));
    }

    private static Miss miss(Miss.Kind kind, double mm, Carrier carrier) {
        return new Miss(kind, Math.max(0, mm), carrier.label(), carrier.pointer());
    }

    /**
     * The post that the beam names and does not touch, of several the one that it misses by most; or what a piece of it
     * that its joints leave on fewer than two posts rests on alone. Empty where neither is.
     */
    public Optional<Miss> ofBeam(BeamLine line) {
        Beam beam = platform.platform().beams().stream()
                .filter(b -> b.id().equals(line.id()))
                .findFirst()
                .orElseThrow();
        List<Miss> missed = new ArrayList<>();
        List<Post> posts = platform.platform().posts();
        for (int i = 0; i < posts.size(); i++) {
            Post post = posts.get(i);
            if (beam.posts().contains(post.id())) {
                PostContact contact = PostContact.of(submission, beam, post);
                if (!contact.carries()) {
                    missed.add(new Miss(
                            contact.endsShort() ? Miss.Kind.SHORT : Miss.Kind.BESIDE,
                            contact.missedByMm(),
                            post.displayLabel(),
                            platform.pointer().child("posts").child(i)));
                }
            }
        }
        return missed.stream()
                .max(Comparator.comparingDouble(Miss::mm))
                .or(() -> line.lengthMm() < Axis.length(beam.line()) - Supports.ROUNDING_MM
                                && line.supports().size() < FEWEST
                        ? Optional.of(standing(line))
                        : Optional.empty());
    }

    /** The post beside which a ply of the beam lies, of several the one that it misses by most; empty where every ply lies on every post, and for a beam bolted to its posts. */
    public Optional<Miss> ofPlies(BeamLine line) {
        Axis axis = Axis.of(line.line());
        double ply = line.timber().breadth().mm();
        List<Miss> missed = new ArrayList<>();
        for (MemberSupport support : line.supports()) {
            PostPlace post = platform.posts().stream()
                    .filter(p -> p.id().equals(support.id()))
                    .findFirst()
                    .orElseThrow();
            double off = axis.across(post.post().at()) - axis.across(line.line().from());
            double reach = (post.timber().depth().mm() + ply) / 2;
            for (int i = 0; i < line.plies() && !isHung(support); i++) {
                double middle = (i - (line.plies() - 1) / 2.0) * ply;
                double beside = Math.abs(middle - off) - reach;
                if (beside >= -Supports.ROUNDING_MM) {
                    missed.add(new Miss(Miss.Kind.BESIDE, Math.max(0, beside), support.label(), support.pointer()));
                }
            }
        }
        return missed.stream().max(Comparator.comparingDouble(Miss::mm));
    }
}
