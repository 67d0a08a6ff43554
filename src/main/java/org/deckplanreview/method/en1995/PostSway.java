package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BraceLine;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.SidewaysSupport;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * Posts that hold the deck sideways: embedded ones as cantilevers out of the ground, braced ones bent between a hinged foot
 * and their brace; with their load, 6.2.4 and 6.3.2.
 */
final class PostSway implements Method {
    private static final Formula PUSH_ON_POST = Formula.of("H_p,d = s * τ * H_d", NEWTON_, "");
    private static final Formula ALONG = Formula.of("M_z,d = H_p,d * a", NEWTON_MILLIMETRE, "");
    private static final Formula ACROSS = Formula.of("M_y,d = H_p,d * a", NEWTON_MILLIMETRE, "");
    private static final Formula ACROSS_AND_SEAT = Formula.of("M_y,d = M_e,d + H_p,d * a", NEWTON_MILLIMETRE, "");

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
            List<Way> ways = List.of(
                    new Way(basis, loadAlong.get(), along.get(), support, true),
                    new Way(basis, loadAcross.get(), across, support, false));
            Column column = basis.column();
            List<Case> cases = new ArrayList<>();
            for (Combination c : basis.combinations()) {
                Sheet loads = basis.loads(c);
                ways.forEach(w -> cases.addAll(w.pushed(column, c, loads)));
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

    private static double part(PostPlace post, Direction direction, SidewaysSupport support) {
        List<BraceLine> all = support.braces(direction);
        if (!all.isEmpty()) {
            return cosines(support.braces(direction, post), direction) / cosines(all, direction);
        }
        long embedded =
                support.platform().posts().stream().filter(PostSway::isEmbedded).count();
        return isEmbedded(post) ? 1.0 / embedded : 0;
    }

    /** Enters s, the part of the push that one post takes by itself or by its braces. */
    static void enterPart(Sheet sheet, PostPlace post, Direction direction, SidewaysSupport support) {
        sheet.given("s", part(post, direction, support), RATIO, "this post's share of it", "", post.pointer());
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

    /** One way in which the deck can be pushed. */
    private record Way(
            PostBasis basis, HorizontalLoad load, Direction direction, SidewaysSupport support, boolean along) {

        /** Of each load that may lead, in its order. */
        List<Case> pushed(Column column, Combination combination, Sheet loads) {
            Sheet share = share();
            return load.alternatives(basis.psi()).stream()
                    .map(l -> pushed(column, combination, Sheet.on(loads, share), l))
                    .toList();
        }

        /** s, the factor for twist and the lever. */
        private Sheet share() {
            Sheet sheet = Sheet.blank();
            Pointer post = basis.post().pointer();
            enterPart(sheet, basis.post(), direction, support);
            Twist.of(support, direction, basis.post().post().at())
                    .calculate(
                            sheet, basis.parameters(), post, support.platform().pointer());
            boolean braced = !support.braces(direction).isEmpty();
            double below = support.braces(direction, basis.post()).stream()
                    .mapToDouble(b -> b.brace().below().mm())
                    .max()
                    .orElse(0);
            sheet.given(
                    "a",
                    Math.max(0, basis.loads().heightMm() - below),
                    MILLIMETRE,
                    braced ? "from its foot up to its lowest brace" : "clear height out of the ground",
                    "",
                    post);
            return sheet;
        }

        private Case pushed(Column column, Combination combination, Sheet sheet, HorizontalLoad alternative) {
            alternative.calculate(
                    sheet,
                    combination,
                    basis.parameters(),
                    words(),
                    support.platform().pointer());
            sheet.calculate(PUSH_ON_POST);
            double aboutY = momentY(sheet);
            double aboutZ = along ? sheet.calculate(ALONG) : 0;
            Modification modification = alternative.modification(combination, basis.parameters());
            return column.under(
                    sheet,
                    aboutY,
                    aboutZ,
                    modification,
                    used -> "pushed " + words() + ", combination " + combination.id() + alternative.words() + ", "
                            + modification.duration(),
                    this::assumptions);
        }

        private double momentY(Sheet sheet) {
            if (basis.isEccentric()) {
                return sheet.calculate(along ? PostBasis.MOMENT_OF_SEAT : ACROSS_AND_SEAT);
            }
            return along ? 0 : sheet.calculate(ACROSS);
        }

        private String words() {
            return along ? PostBasis.ALONG : PostBasis.ACROSS;
        }

        private List<String> assumptions() {
            List<String> own = new ArrayList<>(HorizontalLoad.assumptions(basis.parameters(), basis.context()));
            own.add(
                    "Posts that hold the deck sideways share the load equally, or as their braces do; the ground is taken to"
                            + " hold the feet of embedded posts, which is not calculated.");
            return basis.assumptions(own);
        }
    }
}
