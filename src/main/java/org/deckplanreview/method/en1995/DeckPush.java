package org.deckplanreview.method.en1995;

import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.SidewaysSupport;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.Psi;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** What pushes a free-standing platform sideways in one direction, for questions of balance: nothing lies on it. */
public record DeckPush(
        HorizontalLoad load, Combination combination, Parameters parameters, String direction, Pointer platform) {

    public static final List<ParameterDescription> PARAMETERS =
            MemberBasis.parameters(HorizontalLoad.PARAMETERS, List.of(Psi.TABLE));

    private static final Formula SHARE = Formula.of("s_b = s * τ", MeasureUnit.RATIO, "");

    private static final Psi UNREDUCED = new Psi(1, 1, 1, 1);

    /**
     * Each of the loads that may lead, with the factors of one combination.
     *
     * @param words for the direction
     * @param id of the combination
     * @param factors of the platform's weight and of people
     */
    public static Derived<List<DeckPush>> of(
            PlatformLayout platform,
            Direction direction,
            String words,
            String id,
            ActionFactors factors,
            Parameters parameters,
            ReviewContext context) {
        Combination combination = new Combination(id, factors);
        return HorizontalLoad.of(platform, direction, parameters, context)
                .with(
                        context.loadCategories().get(platform.platformIndex()),
                        (load, category) ->
                                load
                                        .ofWeightAlone()
                                        .alternatives(
                                                Psi.find(parameters, category).orElse(UNREDUCED))
                                        .stream()
                                        .map(l -> new DeckPush(l, combination, parameters, words, platform.pointer()))
                                        .toList());
    }

    /** The direction along the first beam that a post carries. */
    public static Derived<Direction> along(PostPlace post, ReviewContext context) {
        return PostBasis.direction(post, context);
    }

    /** What the platform's posts must tell of their feet before it is known what holds it. */
    public static List<Need> footNeeds(PlatformLayout platform) {
        return PostSway.footNeeds(platform);
    }

    /** From the upper ends of the posts to the top of the boards, where the push acts, mm. */
    public static Derived<Double> abovePostsMm(PlatformLayout platform) {
        return HorizontalLoad.frameDepth(platform);
    }

    /** What one post or its braces take of the push, the deck's twist with it. */
    public static double share(PostPlace post, Direction direction, SidewaysSupport support, Parameters parameters) {
        Sheet sheet = Sheet.blank();
        PostSway.enterPart(sheet, post, direction, support);
        Twist.of(support, direction, post.post().at())
                .calculate(sheet, parameters, post.pointer(), support.platform().pointer());
        return sheet.calculate(SHARE);
    }

    /** N. */
    public double newtons() {
        return load.calculate(Sheet.blank(), combination, parameters, direction, platform, "");
    }

    /** What imposed loads count beside it: their combination factor where wind leads. */
    public double imposedPart() {
        return load.peopleFactor();
    }

    /** Calculates the push as {@code H_d}, with the table that its factors stand in. */
    public void write(Sheet sheet, ParameterDescription factors) {
        load.calculate(sheet, combination, parameters, direction, platform, parameters.source(factors.name()));
    }

    /** For the remark of a finding. */
    public String words() {
        return "pushed " + direction + load.words();
    }

    public static List<String> assumptions(Parameters parameters, ReviewContext context) {
        return HorizontalLoad.ofWind(parameters, context);
    }
}
