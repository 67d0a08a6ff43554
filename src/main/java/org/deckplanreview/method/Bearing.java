package org.deckplanreview.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.vocabulary.Sense;

/** Where a member lies on one of its supports. */
public record Bearing(Member member, int support, ReviewContext context) {

    /**
     * A check of every support on which a member lies. Does not apply where it lies on none. What carries it on a ledger
     * may be left out of the submission; a support that fails decides, whatever the unknown ones would be.
     *
     * @param known the check of the supports whose contact length is known
     */
    public static Evaluation evaluate(Member member, ReviewContext context, Supplier<Evaluation> known) {
        List<Need> needs = needs(member, context);
        boolean bears =
                member.supports().stream().anyMatch(s -> s.contactLengthMm().isPresent());
        if (!bears) {
            return needs.isEmpty()
                    ? new Evaluation.NotApplicable("It lies on no support; hangers or bolts carry it")
                    : new Evaluation.Missing(needs);
        }
        Evaluation evaluation = known.get();
        return isDecidedWithout(needs, evaluation) ? evaluation : new Evaluation.Missing(allNeeds(needs, evaluation));
    }

    private static boolean isDecidedWithout(List<Need> needs, Evaluation known) {
        return needs.isEmpty()
                || known instanceof Evaluation.OutOfScope
                || known instanceof Evaluation.Measured m && !Sense.AT_MOST.holds(m.utilisation(), 1);
    }

    private static List<Need> allNeeds(List<Need> needs, Evaluation known) {
        List<Need> all = new ArrayList<>(needs);
        if (known instanceof Evaluation.Missing missing) {
            all.addAll(missing.needs());
        }
        return all.stream().distinct().sorted().toList();
    }

    private static List<Need> needs(Member member, ReviewContext context) {
        return member.supports().stream()
                .filter(s -> s.kind() == MemberSupport.Kind.LEDGER)
                .filter(s -> s.contactLengthMm().isEmpty())
                .map(s -> new Need(
                        context.layout()
                                .platformOf(member)
                                .pointer()
                                .child("ledger")
                                .child("bearingLength"),
                        "the length of joist that bears on the ledger or in its hanger"))
                .distinct()
                .toList();
    }

    private PlatformLayout platform() {
        return context.layout().platformOf(member);
    }

    /** The post under a beam, whose depth lies across the beam. */
    public Optional<PostPlace> post() {
        MemberSupport s = member.supports().get(support);
        return s.kind() == MemberSupport.Kind.POST
                ? platform().posts().stream().filter(p -> p.id().equals(s.id())).findFirst()
                : Optional.empty();
    }

    /** From the post's axis to the beam's line. */
    public double offMm(PostPlace post) {
        return member instanceof BeamLine beam ? beam.offMm(post.post().at()) : 0;
    }

    /** Across the member: its breadth, or what of it lies on the post. */
    public double breadthMm() {
        double b = member.plies() * member.timber().breadth().mm();
        return post().map(p -> onPostMm(p, b)).orElse(b);
    }

    private double onPostMm(PostPlace post, double beamBreadthMm) {
        double side = post.timber().depth().mm();
        return Math.min(Math.min(beamBreadthMm, side), (beamBreadthMm + side) / 2 - offMm(post));
    }
}
