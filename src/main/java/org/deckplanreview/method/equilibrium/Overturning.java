package org.deckplanreview.method.equilibrium;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.measure.MeasureUnit.SQUARE_MILLIMETRE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.BraceLine;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.SidewaysSupport;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.loadpath.LiftForces;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.DeckPush;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/**
 * Uplift of a post, or of the beam on it, because a free-standing deck that is pushed sideways turns over. What the posts' feet must take together
 * is known from balance alone; how they share it lies between a stiff deck, whose posts take it by their distance from the
 * middle, and one that bends, where a braced post and the post that its brace leans towards take the braces' own part. A brace that is pressed pushes its
 * post down and lifts the beam beside it, so that beam and post part with more than the post's own uplift.
 */
final class Overturning implements Method {
    private static final double SAME_LINE_MM = 1;
    /** Braces at both sides that lift by less than one part in a million per mm are alike. */
    private static final double NO_LIFT_PER_MM = 1e-6;

    private static List<ParameterDescription> parameters(ParameterDescription ordinary) {
        return Stream.concat(DeckPush.PARAMETERS.stream(), Stream.of(Balance.TABLE, ordinary))
                .toList();
    }

    /** Where the lift is held. */
    enum Place {
        FOOT(new MethodDescription(
                "equilibrium.overturning",
                Equilibrium.SOURCE,
                "smallest force at the post's foot while the deck is pushed",
                NEWTON_,
                List.of(SubjectKind.POSTS),
                parameters(PostUplift.ORDINARY),
                "Smallest force at the foot of a post of a free-standing deck, pushed sideways at its boards by wind and by people"
                        + " at its guards while nothing but its weight holds it down: the push times its height above the feet,"
                        + " taken by all posts by their distance from their middle, or by a braced post and the nearest one,"
                        + " whichever lifts more; against its base, and against the weight of its footing. Embedded posts without"
                        + " braces stand as cantilevers and do not lift.")),
        BEAM(
                new MethodDescription(
                        "equilibrium.beamJoint",
                        Equilibrium.SOURCE,
                        "smallest force between beam and post while the deck is pushed",
                        NEWTON_,
                        List.of(SubjectKind.POSTS),
                        parameters(MemberUplift.ORDINARY),
                        "Smallest force between a post of a free-standing deck and its beam under the same push: what lifts the post, or"
                                + " what braces along the beam lift the beam with over the reach from the post to their upper end, less"
                                + " what presses the post at that side; against what the beam's fixings at one post hold down."));

        private final MethodDescription description;

        Place(MethodDescription description) {
            this.description = description;
        }
    }

    private static final Formula LIFT = Formula.of("N_H,d = H_d * h * x / S", NEWTON_, "");
    private static final Formula LIFT_OF_BRACES = Formula.of("N_H,d = s_b * H_d * h_b / L_b", NEWTON_, "");
    private static final Formula LIFT_OF_BEAM = Formula.of("N_H,d = s_b * H_d * h_b * (1 / r_b)", NEWTON_, "");
    private static final Formula LIFT_OF_BEAM_BEFORE_POST =
            Formula.of("N_H,d = s_b * H_d * h_b * (1 / r_b - 1 / L_b)", NEWTON_, "");
    private static final Formula LIFT_OF_BEAM_BEHIND_POST =
            Formula.of("N_H,d = s_b * H_d * h_b * (1 / r_b + 1 / L_b)", NEWTON_, "");

    private final Place place;

    Overturning(Place place) {
        this.place = place;
    }

    /**
     * How one post is lifted by a push of the deck in one direction.
     *
     * @param stiff where the deck is stiff: h, x and S
     * @param braces where it bends: what the post's braces lift with; empty where none do
     */
    private record Lift(Sheet stiff, Optional<Braces> braces) {

        /** A sheet on which the larger of the two stands as {@code N_H,d}. */
        Sheet by(DeckPush push) {
            Sheet force = Sheet.blank();
            push.write(force, Balance.TABLE);
            Sheet byDistance = Sheet.on(force, stiff);
            double stiffN = byDistance.calculate(LIFT);
            if (braces.isEmpty()) {
                return byDistance;
            }
            Sheet byBraces = Sheet.on(force, braces.get().sheet());
            return byBraces.calculate(braces.get().lift()) > stiffN ? byBraces : byDistance;
        }
    }

    private static Sheet stiff(PostPlace post, PlatformLayout platform, Direction direction, double heightMm) {
        double middle = platform.posts().stream()
                .mapToDouble(p -> placeMm(p, direction))
                .average()
                .orElseThrow();
        double square = platform.posts().stream()
                .mapToDouble(p -> placeMm(p, direction) - middle)
                .map(x -> x * x)
                .sum();
        Sheet sheet = Sheet.blank();
        sheet.given("h", heightMm, MILLIMETRE, "height of the boards above the lowest foot", "", platform.pointer());
        sheet.given(
                "x",
                Math.abs(placeMm(post, direction) - middle),
                MILLIMETRE,
                "from the middle of all posts, along the push",
                "",
                post.pointer());
        sheet.given("S", square, SQUARE_MILLIMETRE, "sum of the squares of x of all posts", "", platform.pointer());
        return sheet;
    }

    /** What the braces of a post lift with: their share of the push times the height over an arm. */
    private record Braces(Sheet sheet, Formula lift) {

        /** At the foot: the arm is the distance of the nearest post that way. */
        static Braces atFoot(PostPlace post, double share, double heightMm, double apartMm) {
            Sheet sheet = sheet(post, share, heightMm);
            enterApart(sheet, post, apartMm);
            return new Braces(sheet, LIFT_OF_BRACES);
        }

        /**
         * At the beam, which a brace lifts at its upper end.
         *
         * @param reachMm from the post to that end
         * @param apartMm to the nearest post that way, negative where the only one stands the other way; 0 without one
         */
        static Braces atBeam(PostPlace post, double share, double heightMm, double reachMm, double apartMm) {
            Sheet sheet = sheet(post, share, heightMm);
            sheet.given("r_b", reachMm, MILLIMETRE, "from the post to the brace's upper end", "", post.pointer());
            if (apartMm == 0) {
                return new Braces(sheet, LIFT_OF_BEAM);
            }
            enterApart(sheet, post, Math.abs(apartMm));
            return new Braces(sheet, apartMm > 0 ? LIFT_OF_BEAM_BEFORE_POST : LIFT_OF_BEAM_BEHIND_POST);
        }

        private static Sheet sheet(PostPlace post, double share, double heightMm) {
            Sheet sheet = Sheet.blank();
            sheet.given("s_b", share, RATIO, "share of the post's braces, with twist", "", post.pointer());
            sheet.given("h_b", heightMm, MILLIMETRE, "height of the boards above its foot", "", post.pointer());
            return sheet;
        }

        private static void enterApart(Sheet sheet, PostPlace post, double apartMm) {
            sheet.given("L_b", apartMm, MILLIMETRE, "to the nearest post that way", "", post.pointer());
        }
    }

    /** The post under one push and one combination. */
    private record Pushed(Balance balance, DeckPush push, Sheet lift) {
        Joint joint(LiftForces forces, Hold hold, List<String> assumed, Parameters parameters) {
            return Joint.pushed(push.words(), forces, balance, lift, hold, parameters, assumed);
        }
    }

    @Override
    public MethodDescription description() {
        return place.description;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        PostPlace post = (PostPlace) subject;
        PlatformLayout platform = context.layout().platformOf(post);
        SidewaysSupport support = new SidewaysSupport(platform);
        if (support.isTiedToBuilding()) {
            return new Evaluation.NotApplicable("the building holds the deck through the ledger");
        }
        Derived<Direction> along = DeckPush.along(post, context);
        Derived<Double> above = DeckPush.abovePostsMm(platform);
        Derived<Double> highest = highest(platform);
        Derived<Double> own = post.heightMm();
        Derived<LiftForces> forces = place == Place.BEAM
                ? context.loadPath().lift(post)
                : context.loadPath().lift(post).with(context.loadPath().postWeightN(post), LiftForces::withWeight);
        List<Need> needs = new ArrayList<>(DeckPush.footNeeds(platform));
        Stream.of(along, above, highest, own, forces).forEach(d -> needs.addAll(d.needs()));
        if (!needs.isEmpty()) {
            return new Evaluation.Missing(needs.stream().distinct().sorted().toList());
        }
        List<Pushed> pushes = new ArrayList<>();
        for (boolean isAlong : List.of(true, false)) {
            Direction direction = isAlong ? along.get() : SidewaysSupport.across(along.get());
            boolean braced = !support.braces(direction).isEmpty();
            if (!braced && platform.posts().stream().anyMatch(PostUplift::isEmbedded)) {
                continue;
            }
            Sheet stiff = stiff(post, platform, direction, highest.get() + above.get());
            if (Math.sqrt(stiff.value("S")) < SAME_LINE_MM) {
                return new Evaluation.OutOfScope(
                        "all posts stand in one line, and nothing that is calculated keeps the deck from turning over it",
                        "");
            }
            double boardsMm = own.get() + above.get();
            Optional<Braces> braces = Optional.empty();
            if (place == Place.FOOT) {
                braces = braces(post, direction, boardsMm, support, parameters);
            } else if (isAlong) {
                braces = liftingBeam(post, direction, boardsMm, support, parameters);
            }
            Lift lift = new Lift(stiff, braces);
            for (Balance balance : Balance.of(parameters)) {
                Derived<List<DeckPush>> of = DeckPush.of(
                        platform,
                        direction,
                        isAlong ? "along the beam" : "across the beam",
                        balance.id(),
                        new ActionFactors(balance.stabilising(), balance.imposed(), balance.concentrated(), 0),
                        parameters,
                        context);
                needs.addAll(of.needs());
                of.optional()
                        .ifPresent(all -> all.forEach(
                                p -> pushes.add(new Pushed(balance.withImposed(p.imposedPart()), p, lift.by(p)))));
            }
        }
        if (!needs.isEmpty()) {
            return new Evaluation.Missing(needs.stream().distinct().sorted().toList());
        }
        return pushes.isEmpty()
                ? new Evaluation.NotApplicable("the ground holds the feet of embedded posts, and the deck with them")
                : worst(post, forces.get(), pushes, parameters, context);
    }

    private static Derived<Double> highest(PlatformLayout platform) {
        return platform.posts().stream()
                .map(PostPlace::heightMm)
                .reduce((a, b) -> a.with(b, Math::max))
                .orElseThrow();
    }

    /** Along a direction, taken without sense. */
    private static double placeMm(PostPlace post, Direction direction) {
        return SidewaysSupport.acrossMm(
                SidewaysSupport.across(direction), post.post().at());
    }

    private static Optional<Braces> braces(
            PostPlace post, Direction direction, double heightMm, SidewaysSupport support, Parameters parameters) {
        OptionalDouble reach = support.braces(direction, post).stream()
                .mapToDouble(b -> b.brace().reach().mm())
                .max();
        double apart = reach.isEmpty() ? 0 : apartMm(post, direction, reach.getAsDouble(), support.platform());
        return apart == 0
                ? Optional.empty()
                : Optional.of(
                        Braces.atFoot(post, DeckPush.share(post, direction, support, parameters), heightMm, apart));
    }

    /** Braces at both sides of a post work against each other: the side with the larger part lifts. */
    private static Optional<Braces> liftingBeam(
            PostPlace post, Direction direction, double heightMm, SidewaysSupport support, Parameters parameters) {
        List<BraceLine> braces = support.braces(direction, post);
        double perMm = braces.stream()
                .mapToDouble(b -> side(b, direction) / b.brace().reach().mm() / braces.size())
                .sum();
        if (Math.abs(perMm) < NO_LIFT_PER_MM) {
            return Optional.empty();
        }
        double towards = nearestMm(post, direction, Math.signum(perMm), support.platform());
        double apart = towards > 0 ? towards : -nearestMm(post, direction, -Math.signum(perMm), support.platform());
        double share = DeckPush.share(post, direction, support, parameters);
        return Optional.of(Braces.atBeam(post, share, heightMm, 1 / Math.abs(perMm), apart));
    }

    /** 1 for a brace that leans along the direction, -1 against it. */
    private static double side(BraceLine brace, Direction direction) {
        Direction own = brace.brace().direction();
        return Math.signum(own.dx() * direction.dx() + own.dy() * direction.dy());
    }

    /** To the nearest post on one side that lies more along the direction than across it; 0 without one. */
    private static double nearestMm(PostPlace post, Direction direction, double side, PlatformLayout platform) {
        PlanPoint at = post.post().at();
        double length = StrictMath.hypot(direction.dx(), direction.dy());
        return platform.posts().stream()
                .filter(p -> {
                    double along = ((p.post().at().xMm() - at.xMm()) * direction.dx()
                                    + (p.post().at().yMm() - at.yMm()) * direction.dy())
                            * side
                            / length;
                    return along > SAME_LINE_MM && along >= alongMm(post, p, SidewaysSupport.across(direction));
                })
                .mapToDouble(p -> alongMm(post, p, direction))
                .min()
                .orElse(0);
    }

    /** To the nearest post beyond the brace that lies more along the direction than across it; 0 without one. */
    private static double apartMm(PostPlace post, Direction direction, double reachMm, PlatformLayout platform) {
        return platform.posts().stream()
                .filter(p -> alongMm(post, p, direction) > reachMm
                        && alongMm(post, p, direction) >= alongMm(post, p, SidewaysSupport.across(direction)))
                .mapToDouble(p -> alongMm(post, p, direction))
                .min()
                .orElse(0);
    }

    private static double alongMm(PostPlace a, PostPlace b, Direction direction) {
        return Math.abs(placeMm(a, direction) - placeMm(b, direction));
    }

    private Evaluation worst(
            PostPlace post, LiftForces forces, List<Pushed> pushes, Parameters parameters, ReviewContext context) {
        List<String> assumed = new ArrayList<>(DeckPush.assumptions(parameters, context));
        assumed.add(
                "Wind and people push a free-standing deck at its boards; no load on it holds it down, and people who sway hold"
                        + " it down themselves.");
        BiFunction<LiftForces, Hold, List<Joint>> joints = (f, hold) ->
                pushes.stream().map(p -> p.joint(f, hold, assumed, parameters)).toList();
        List<Joint> byWeight = joints.apply(forces, PostUplift.NOTHING);
        if (byWeight.stream().allMatch(Joint::holds)) {
            return Case.worst(byWeight);
        }
        if (place == Place.BEAM) {
            return onPost(post, forces, pushes, assumed, parameters, context);
        }
        List<Evaluation> all = new ArrayList<>();
        if (!PostUplift.isEmbedded(post)) {
            all.add(PostUplift.held(
                    post,
                    (hold, ofBase) -> pushes.stream()
                            .map(p -> p.joint(
                                    forces,
                                    hold,
                                    Stream.concat(assumed.stream(), ofBase.stream())
                                            .toList(),
                                    parameters))
                            .toList(),
                    "which wind and people lift as they push the deck sideways",
                    parameters,
                    context));
        }
        FootingPlace footing = post.footing().orElseThrow();
        Derived<Double> weight = context.loadPath().footingWeightN(footing);
        all.add(
                weight.isKnown()
                        ? onFooting(
                                footing,
                                joints.apply(
                                        forces.withWeight(
                                                weight.get() / footing.posts().size()),
                                        FootingUplift.NOTHING))
                        : new Evaluation.Missing(weight.needs()));
        return weakest(all);
    }

    private static Evaluation onPost(
            PostPlace post,
            LiftForces forces,
            List<Pushed> pushes,
            List<String> assumed,
            Parameters parameters,
            ReviewContext context) {
        PlatformLayout platform = context.layout().platformOf(post);
        BeamLine beam = platform.beams().stream()
                .filter(b -> post.beams().contains(b.id()))
                .findFirst()
                .orElseThrow();
        return MemberUplift.heldOnPost(
                beam,
                (hold, ofFixings) -> pushes.stream()
                        .map(p -> p.joint(
                                forces,
                                hold,
                                Stream.concat(assumed.stream(), ofFixings.stream())
                                        .toList(),
                                parameters))
                        .toList(),
                post.label(),
                parameters,
                context);
    }

    private static Evaluation onFooting(FootingPlace footing, List<Joint> joints) {
        boolean holds = joints.stream().allMatch(Joint::holds);
        return !holds && footing.footing().kind() == FootingKind.EMBEDDED_POST
                ? FootingUplift.friction(footing)
                : Case.worst(joints);
    }

    /** One that fails, else what must be given, else where the method ends, else the one that is used most. */
    private static Evaluation weakest(List<Evaluation> all) {
        return all.stream().min(Comparator.comparingDouble(Overturning::rank)).orElseThrow();
    }

    private static double rank(Evaluation evaluation) {
        if (evaluation instanceof Evaluation.Measured m) {
            return Sense.AT_MOST.holds(m.utilisation(), 1) ? 1 - m.utilisation() : -3;
        }
        return evaluation instanceof Evaluation.Missing ? -2 : -1;
    }
}
