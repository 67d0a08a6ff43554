package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.KILONEWTON_PER_CUBIC_METRE;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.SidewaysSupport;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Length;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.Psi;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.Footing;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.FootingShape;
import org.deckplanreview.submission.Soil;
import org.deckplanreview.submission.SoilClass;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Table;

/**
 * The ground's hold on an embedded post that stands free: depth of a pole without restraint at the ground's surface, IBC,
 * 1807.3.2.1 (18-1), under the horizontal load without partial factors.
 */
final class PostLean implements Method {
    private static final Pointer SOIL_CLASS = Pointer.of("/site/soil/soilClass");
    private static final ParameterDescription MOTION = ParameterDescription.number(
            "poleMotionFactor", RATIO, "factor of the pressure where 12 mm of motion at the ground does no harm");
    private static final ParameterDescription LATERAL = ParameterDescription.table(
            "lateralBearing",
            "lateral bearing pressure of each class of soil for each metre below the ground; a class without a row has none"
                    + " that can be relied on",
            wordColumn("soilClass"),
            numberColumn("lateral", KILONEWTON_PER_CUBIC_METRE));

    private static final Formula PUSH = Formula.of("P = s * τ * H_k", NEWTON_, "");

    /** The soil's pressure at a third of the depth. */
    private static final Formula PRESSURE =
            Formula.of("S_1 = k_m * s_1 * d / 3", NEWTON_PER_SQUARE_MILLIMETRE, "1807.3.2.1");

    private static final Formula A = Formula.of("A = 2.34 * P / (S_1 * b)", MILLIMETRE, "1807.3.2.1");
    private static final Formula NEEDED =
            Formula.of("d_req = 0 if A <= 0; 0.5 * A * (1 + sqrt(1 + 4.36 * h / A))", MILLIMETRE, "(18-1)");
    private static final Utilisation UTILISATION = Utilisation.atLeast("d", "d_req", MILLIMETRE, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.postLean",
            "IBC 2021, 1807.3.2.1, with the combinations of EN 1990:2002+A1:2005, 6.5.3",
            "depth of the post in the ground",
            MILLIMETRE,
            List.of(SubjectKind.POSTS),
            MemberBasis.parameters(
                    HorizontalLoad.PARAMETERS, List.of(Combination.COMBINATIONS, Psi.TABLE), MOTION, LATERAL),
            "Depth of an embedded post against that of a pole that the ground alone holds, (18-1), under the post's share of the"
                    + " horizontal load at its upper end; in directions that neither a ledger nor braces hold.");

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
        Derived<FootingKind> foot = PostBasis.foot(post);
        Derived<Direction> along = PostBasis.direction(post, context);
        if (!foot.isKnown() || !along.isKnown()) {
            return new Evaluation.Missing(foot.with(along, (a, b) -> a).needs());
        }
        List<Direction> open = List.of(along.get(), SidewaysSupport.across(along.get())).stream()
                .filter(d -> support.braces(d).isEmpty())
                .toList();
        if (foot.get() != FootingKind.EMBEDDED_POST || open.isEmpty()) {
            return new Evaluation.NotApplicable(
                    open.isEmpty() ? "braces hold the deck in both directions" : "the post stands on a pad");
        }
        Footing footing = post.footing().orElseThrow().footing();
        Pointer at = post.footing().orElseThrow().pointer();
        Optional<Length> depth = footing.depth().or(footing::embedment);
        Optional<SoilClass> soil = context.submission().site().soil().flatMap(Soil::soilClass);
        Derived<Double> height = post.heightMm();
        Derived<String> category = context.loadCategories().get(post.platformIndex());
        List<Derived<HorizontalLoad>> loads = open.stream()
                .map(d -> HorizontalLoad.of(platform, d, parameters, context))
                .toList();
        List<Need> needs = new ArrayList<>(height.needs());
        needs.addAll(category.needs());
        loads.forEach(l -> needs.addAll(l.needs()));
        if (depth.isEmpty()) {
            needs.add(new Need(at.child("depth"), "the depth of " + footing.displayLabel() + " below the ground"));
        }
        if (soil.isEmpty()) {
            needs.add(
                    new Need(
                            SOIL_CLASS,
                            "the class of the soil that holds the posts' feet, for example firm-clay; or braces that hold the deck"));
        }
        if (!needs.isEmpty()) {
            return new Evaluation.Missing(needs.stream().distinct().sorted().toList());
        }
        Optional<Psi> psi = Psi.find(parameters, category.get());
        if (psi.isEmpty()) {
            return Inputs.noFactors(category.get(), parameters);
        }
        Table table = parameters.table(LATERAL.name());
        Optional<Table.Row> row = table.find("soilClass", soil.get().word());
        if (row.isEmpty()) {
            return new Evaluation.OutOfScope(
                    "no lateral pressure can be relied on in " + soil.get().word()
                            + ", so that nothing shows that the ground holds the post upright",
                    table.source());
        }
        double lateral = row.get().number("lateral", KILONEWTON_PER_CUBIC_METRE);
        double embedded = platform.posts().stream()
                .filter(p -> PostBasis.foot(p)
                        .optional()
                        .filter(FootingKind.EMBEDDED_POST::equals)
                        .isPresent())
                .count();
        Pole pole = new Pole(
                post,
                platform,
                new Hold(1 / embedded, height.get(), depth.get().mm(), breadthMm(footing), lateral),
                parameters,
                context);
        List<Case> cases = new ArrayList<>();
        for (int i = 0; i < open.size(); i++) {
            Direction direction = open.get(i);
            String words = direction.equals(along.get()) ? PostBasis.ALONG : PostBasis.ACROSS;
            Twist twist = Twist.of(support, direction, post.post().at());
            boolean snow = loads.get(i).get().vertical().snowN() != 0;
            for (Combination c : Combination.of(parameters, State.SERVICEABILITY, psi.get(), snow)) {
                for (HorizontalLoad load : loads.get(i).get().alternatives(psi.get())) {
                    cases.add(pole.pushed(load, twist, c, words));
                }
            }
        }
        return Case.worst(cases);
    }

    /** Diameter of a round footing, diagonal of a rectangular one. */
    private static double breadthMm(Footing footing) {
        double b = footing.breadth().mm();
        return footing.shape() == FootingShape.ROUND
                ? b
                : StrictMath.hypot(b, footing.length().map(Length::mm).orElse(b));
    }

    /**
     * How the ground holds the post.
     *
     * @param part of the push that the post takes
     * @param heightMm of the push above the ground
     * @param breadthMm diameter or diagonal of the concrete
     */
    private record Hold(double part, double heightMm, double depthMm, double breadthMm, double lateralKNPerM3) {}

    private record Pole(
            PostPlace post, PlatformLayout platform, Hold hold, Parameters parameters, ReviewContext context) {

        /** Pushed one way under one combination. */
        Case pushed(HorizontalLoad load, Twist twist, Combination combination, String direction) {
            Sheet sheet = Sheet.blank();
            load.calculateCharacteristic(sheet, combination, parameters, direction, platform.pointer());
            twist.calculate(sheet, parameters, post.pointer(), platform.pointer());
            sheet.given("s", hold.part(), RATIO, "this post's share of it", "", post.pointer());
            sheet.calculate(PUSH);
            Pointer at = post.footing().orElseThrow().pointer();
            sheet.given("d", hold.depthMm(), MILLIMETRE, "depth in the ground", "", at.child("depth"));
            sheet.given(
                    "s_1",
                    hold.lateralKNPerM3(),
                    KILONEWTON_PER_CUBIC_METRE,
                    "lateral pressure of the soil for each metre below the ground",
                    parameters.source(LATERAL.name()),
                    SOIL_CLASS);
            parameters.enter(sheet, "k_m", MOTION);
            sheet.calculate(PRESSURE);
            Pointer breadth = at.child("breadth");
            sheet.given("b", hold.breadthMm(), MILLIMETRE, "diameter or diagonal of the concrete", "", breadth);
            sheet.calculate(A);
            sheet.given("h", hold.heightMm(), MILLIMETRE, "height of the push above the ground", "", post.pointer());
            sheet.calculate(NEEDED);
            return UTILISATION.of(
                    sheet,
                    () -> "pushed " + direction + ", combination " + combination.id() + load.words(),
                    this::assumed);
        }

        private List<String> assumed() {
            List<String> all = new ArrayList<>(HorizontalLoad.assumptions(parameters, context));
            all.add(
                    "The hole of an embedded post is filled with concrete, which the ground holds over its whole depth.");
            return List.copyOf(all);
        }
    }
}
