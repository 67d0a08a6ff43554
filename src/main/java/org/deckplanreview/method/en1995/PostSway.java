package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.layout.BraceLine;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.SidewaysSupport;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/**
 * Posts that hold the deck sideways: embedded ones as cantilevers out of the ground, braced ones bent between a hinged foot
 * and their brace; with their load, 6.2.4 and 6.3.2.
 */
final class PostSway implements Method {
    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.postSway",
            En1995.SOURCE,
            "use of the post's strength with sideways load",
            RATIO,
            List.of(SubjectKind.POSTS),
            MemberBasis.parameters(
                    MemberBasis.parameters(PostBasis.PARAMETERS, HorizontalLoad.PARAMETERS), HorizontalLoad.DURATION),
            "Largest left side of (6.23) and (6.24), or (6.19) and (6.20), with the moment of the post's share of the"
                    + " horizontal load: over its clear height where embedded posts hold the deck, up to its lowest brace where"
                    + " braces do. A ledger takes that load to the building; braces are taken to be stiffer than embedded posts.");

    /** The share of the horizontal load that one post takes, and over which lever. */
    private record Share(HorizontalLoad load, double part, Twist twist, double leverMm, String words) {
        List<Share> alternatives(Combination.Psi psi) {
            return load.alternatives(psi).stream()
                    .map(l -> new Share(l, part, twist, leverMm, words))
                    .toList();
        }

        double momentNmm(Combination c, Parameters p) {
            return part * twist.factor() * load.designN(c, p) * leverMm;
        }
    }

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        PostPlace post = (PostPlace) subject;
        PlatformLayout platform = context.layout().platformOf(post);
        SidewaysSupport support = new SidewaysSupport(platform);
        if (support.isTiedToBuilding()) {
            return new Evaluation.NotApplicable("the building holds the deck through the ledger");
        }
        List<Need> needs = footNeeds(platform);
        if (!needs.isEmpty()) {
            return new Evaluation.Missing(needs);
        }
        Derived<Direction> along = PostBasis.direction(post, context);
        if (!along.isKnown()) {
            return new Evaluation.Missing(along.needs());
        }
        Direction across = SidewaysSupport.across(along.get());
        double partAlong = part(post, along.get(), support);
        double partAcross = part(post, across, support);
        if (partAlong == 0 && partAcross == 0) {
            return new Evaluation.NotApplicable(
                    "the post takes no sideways load: other posts or braces hold the deck, or nothing does");
        }
        Derived<HorizontalLoad> loadAlong = HorizontalLoad.of(platform, along.get(), parameters, context);
        Derived<HorizontalLoad> loadAcross = HorizontalLoad.of(platform, across, parameters, context);
        if (!loadAlong.isKnown() || !loadAcross.isKnown()) {
            return new Evaluation.Missing(
                    loadAlong.with(loadAcross, (a, b) -> a).needs());
        }
        return PostBasis.evaluate(post, parameters, context, basis -> {
            Share alongShare = share(basis, loadAlong.get(), partAlong, along.get(), support);
            Share acrossShare = share(basis, loadAcross.get(), partAcross, across, support);
            List<Pushed> cases = new ArrayList<>();
            for (Combination c : basis.combinations()) {
                alongShare.alternatives(basis.psi()).forEach(s -> cases.add(new Pushed(basis, c, s, true)));
                acrossShare.alternatives(basis.psi()).forEach(s -> cases.add(new Pushed(basis, c, s, false)));
            }
            return Case.worst(cases);
        });
    }

    static List<Need> footNeeds(PlatformLayout platform) {
        return platform.posts().stream()
                .flatMap(p -> PostBasis.foot(p).needs().stream())
                .distinct()
                .sorted()
                .toList();
    }

    static double part(PostPlace post, Direction direction, SidewaysSupport support) {
        List<BraceLine> all = support.braces(direction);
        if (!all.isEmpty()) {
            return cosines(support.braces(direction, post), direction) / cosines(all, direction);
        }
        long embedded =
                support.platform().posts().stream().filter(PostSway::isEmbedded).count();
        return isEmbedded(post) ? 1.0 / embedded : 0;
    }

    static double cosines(List<BraceLine> braces, Direction direction) {
        return braces.stream()
                .mapToDouble(b -> SidewaysSupport.cosine(b, direction))
                .sum();
    }

    private static boolean isEmbedded(PostPlace post) {
        return PostBasis.foot(post)
                .optional()
                .filter(FootingKind.EMBEDDED_POST::equals)
                .isPresent();
    }

    private static Share share(
            PostBasis basis, HorizontalLoad load, double part, Direction direction, SidewaysSupport support) {
        boolean braced = !support.braces(direction).isEmpty();
        double height = basis.loads().heightMm();
        double below = support.braces(direction, basis.post()).stream()
                .mapToDouble(b -> b.brace().below().mm())
                .max()
                .orElse(0);
        return new Share(
                load,
                part,
                Twist.of(support, direction, basis.post().post().at(), basis.parameters()),
                Math.max(0, height - below),
                braced ? "from its foot up to its lowest brace" : "clear height out of the ground");
    }

    /** The post pushed one way under one combination. */
    private record Pushed(PostBasis basis, Combination combination, Share share, boolean along) implements Case {
        private double momentNmm() {
            return share.momentNmm(combination, basis.parameters());
        }

        private Column column() {
            return basis.column(
                    combination,
                    along ? 0 : momentNmm(),
                    along ? momentNmm() : 0,
                    share.load().modification(combination, basis.parameters()));
        }

        @Override
        public double utilisation() {
            return column().utilisation();
        }

        private String direction() {
            return along ? PostBasis.ALONG : PostBasis.ACROSS;
        }

        @Override
        public Evaluation.Measured measured() {
            List<String> own = new ArrayList<>(HorizontalLoad.assumptions(basis.parameters(), basis.context()));
            own.add(
                    "Posts that hold the deck sideways share the load equally, or as their braces do; the ground is taken to"
                            + " hold the feet of embedded posts, which is not calculated.");
            return new Evaluation.Measured(
                    Measure.of(utilisation(), RATIO),
                    Sense.AT_MOST,
                    Measure.of(1, RATIO),
                    utilisation(),
                    "pushed " + direction() + ", combination " + combination.id()
                            + share.load().words() + ", "
                            + column().modification().duration(),
                    working(),
                    basis.assumptions(own));
        }

        private List<WorkingStep> working() {
            Sheet w = Sheet.blank();
            basis.writeLoads(w, combination);
            share.load()
                    .write(
                            w,
                            combination,
                            basis.parameters(),
                            direction(),
                            basis.context().layout().platformOf(basis.post()).pointer());
            w.given(
                    "s",
                    share.part(),
                    RATIO,
                    "this post's share of it",
                    "",
                    basis.post().pointer());
            share.twist()
                    .write(
                            w,
                            basis.post().pointer(),
                            basis.context().layout().platformOf(basis.post()).pointer());
            w.given(
                    "a",
                    share.leverMm(),
                    MILLIMETRE,
                    share.words(),
                    "",
                    basis.post().pointer());
            w.step(
                    "H_p,d",
                    "s * τ * H_d",
                    share.part() * share.twist().factor() * share.load().designN(combination, basis.parameters()),
                    NEWTON_,
                    "");
            String bySeat = basis.eccentricityMm() > 0 ? "M_e,d" : "";
            if (along) {
                if (!bySeat.isEmpty()) {
                    w.step("M_y,d", bySeat, column().momentYNmm(), NEWTON_MILLIMETRE, "");
                }
                w.step("M_z,d", "H_p,d * a", momentNmm(), NEWTON_MILLIMETRE, "");
            } else {
                w.step(
                        "M_y,d",
                        bySeat.isEmpty() ? "H_p,d * a" : "M_e,d + H_p,d * a",
                        column().momentYNmm(),
                        NEWTON_MILLIMETRE,
                        "");
            }
            basis.writeColumn(w, column());
            return w.steps();
        }
    }
}
