package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.SidewaysSupport;
import org.deckplanreview.loadpath.ActionForces;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.Psi;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * What a check of a post starts from. Its breadth lies along the beam, its depth across.
 *
 * @param start the sheet with which every working begins: b and h
 */
record PostBasis(
        PostPlace post,
        Loads loads,
        StrengthClass strengthClass,
        Psi psi,
        Parameters parameters,
        ReviewContext context,
        Sheet start) {

    private static final Formula WEIGHT = Formula.of("G_d = γ_G * G_k", NEWTON_, "");
    private static final Formula AXIAL = Formula.of("N_d = max(0, F_d + G_d)", NEWTON_, "");
    private static final Formula TO_SIDE_BEAM = Formula.of("e = (h + b_b) / 2", MILLIMETRE, "");
    private static final Formula SEAT_MOMENT = Formula.of("M_e,d = max(0, F_d) * e", NEWTON_MILLIMETRE, "");

    /** M_y,d of a post that nothing but its beam bends. */
    static final Formula MOMENT_OF_SEAT = Formula.of("M_y,d = M_e,d", NEWTON_MILLIMETRE, "");

    static final String ALONG = "along the beam";
    static final String ACROSS = "across the beam";

    static final List<ParameterDescription> PARAMETERS = MemberBasis.parameters(
            Column.PARAMETERS, List.of(Combination.COMBINATIONS, Combination.Psi.TABLE), PostLength.FACTORS);

    /** What comes down on the post, and between which heights. */
    record Loads(ActionForces forces, double weightN, double heightMm, FootingKind foot, Direction alongBeam) {}

    static Evaluation evaluate(
            PostPlace post, Parameters parameters, ReviewContext context, Function<PostBasis, Evaluation> check) {
        return Inputs.gather(
                post.timber(),
                context.submission().timberPointer(post.timber().id()),
                loads(post, context),
                context.loadCategories().get(post.platformIndex()),
                parameters,
                (loads, strengthClass, psi) -> check.apply(
                        new PostBasis(post, loads, strengthClass, psi, parameters, context, section(post, context))));
    }

    private static Sheet section(PostPlace post, ReviewContext context) {
        Sheet sheet = Sheet.blank();
        Pointer timber = context.submission().timberPointer(post.timber().id());
        double breadth = post.timber().breadth().mm();
        sheet.given("b", breadth, MILLIMETRE, "side along the beam", "", timber.child("breadth"));
        double depth = post.timber().depth().mm();
        sheet.given("h", depth, MILLIMETRE, "side across the beam", "", timber.child("depth"));
        return sheet;
    }

    private static Derived<Loads> loads(PostPlace post, ReviewContext context) {
        record Weighed(ActionForces forces, double weightN) {}
        record Founded(double heightMm, FootingKind foot) {}
        record Standing(double heightMm, FootingKind foot, Direction alongBeam) {}
        Derived<Weighed> weighed =
                context.loadPath().post(post).with(context.loadPath().postWeightN(post), Weighed::new);
        Derived<Standing> standing = post.heightMm()
                .with(foot(post), Founded::new)
                .with(direction(post, context), (f, along) -> new Standing(f.heightMm(), f.foot(), along));
        return weighed.with(
                standing, (w, s) -> new Loads(w.forces(), w.weightN(), s.heightMm(), s.foot(), s.alongBeam()));
    }

    static Derived<FootingKind> foot(PostPlace post) {
        return Derived.of(
                post.footing().map(FootingPlace::footing).map(f -> f.kind()),
                post.pointer().child("footing"),
                "the footing under " + post.label());
    }

    static Derived<Direction> direction(PostPlace post, ReviewContext context) {
        PlatformLayout platform = context.layout().platformOf(post);
        return Derived.of(
                new SidewaysSupport(platform).alongBeam(post),
                platform.pointer().child("beams"),
                "the beam that " + post.label() + " carries");
    }

    List<Combination> combinations() {
        return Combination.of(parameters, State.ULTIMATE, psi, loads.forces().snowN() != 0);
    }

    SidewaysSupport support() {
        return new SidewaysSupport(context.layout().platformOf(post));
    }

    Direction acrossBeam() {
        return SidewaysSupport.across(loads.alongBeam());
    }

    PostLength lengthAlong() {
        return length(loads.alongBeam());
    }

    PostLength lengthAcross() {
        return length(acrossBeam());
    }

    private PostLength length(Direction direction) {
        return PostLength.of(post, loads.foot(), loads.heightMm(), direction, support(), parameters);
    }

    /** The broadest beam that sits on one side of the post. */
    private Optional<BeamLine> sideBeam() {
        return seated(BeamSeating.ONE_SIDE).max(Comparator.comparingDouble(PostBasis::breadthMm));
    }

    /** The beams that the post carries in this way. */
    private Stream<BeamLine> seated(BeamSeating seating) {
        PlatformLayout platform = context.layout().platformOf(post);
        List<String> ids = platform.platform().beams().stream()
                .filter(b -> b.seating() == seating)
                .map(Beam::id)
                .toList();
        return platform.beams().stream()
                .filter(b -> post.beams().contains(b.id()))
                .filter(b -> ids.contains(b.id()));
    }

    private static double breadthMm(BeamLine beam) {
        return beam.plies() * beam.timber().breadth().mm();
    }

    /** Strengths and buckling. */
    Column column() {
        Sheet lengths = Sheet.on(start);
        lengthAcross().calculate(lengths, PostLength.Axis.Y, ACROSS, parameters, post.pointer());
        lengthAlong().calculate(lengths, PostLength.Axis.Z, ALONG, parameters, post.pointer());
        return Column.of(new Material(strengthClass, timberPointer().child("strengthClass"), parameters), lengths);
    }

    Pointer timberPointer() {
        return context.submission().timberPointer(post.timber().id());
    }

    /** A sheet with b, h, N_d and, where {@link #isEccentric}, M_e,d. */
    Sheet loads(Combination combination) {
        Sheet sheet = Sheet.on(start);
        String source = parameters.source(Combination.COMBINATIONS.name());
        sheet.given(
                "F_d",
                loads.forces().largestN(combination.factors()),
                NEWTON_,
                () -> "design load from the beam, " + combination.id(),
                source,
                post.pointer());
        double factor = combination.factors().permanent();
        sheet.given("γ_G", factor, RATIO, "partial factor of the permanent action", source);
        sheet.given("G_k", loads.weightN(), NEWTON_, "weight of the whole post", "", post.pointer());
        sheet.calculate(WEIGHT);
        sheet.calculate(AXIAL);
        if (isEccentric()) {
            enterEccentricity(sheet);
            sheet.calculate(SEAT_MOMENT);
        }
        return sheet;
    }

    /** Whether the post carries a beam on one of its sides, or one on its top off its axis. */
    boolean isEccentric() {
        return sideBeam().isPresent() || offAxisMm() > 0;
    }

    private double offAxisMm() {
        return seated(BeamSeating.ON_POST)
                .mapToDouble(b -> b.offMm(post.post().at()))
                .max()
                .orElse(0);
    }

    private void enterEccentricity(Sheet sheet) {
        Optional<BeamLine> beside = sideBeam();
        if (beside.isPresent()) {
            Pointer beam = beside.get().pointer();
            sheet.given("b_b", breadthMm(beside.get()), MILLIMETRE, "breadth of the beam on its side", "", beam);
            sheet.calculate(TO_SIDE_BEAM);
        } else {
            Pointer at = post.pointer().child("at");
            sheet.given("e", offAxisMm(), MILLIMETRE, "from the post's axis to the line of the beam on it", "", at);
        }
    }

    List<String> assumptions(List<String> own) {
        List<String> all = new ArrayList<>();
        all.add(lengthAlong().assumption(ALONG, loads.foot()));
        all.add(lengthAcross().assumption(ACROSS, loads.foot()));
        all.add("A post carries the whole of its own weight at its foot.");
        all.add("What braces add to or take from the load along a post is not counted.");
        if (support().isTiedToBuilding()) {
            all.add(HorizontalLoad.BUILDING_HOLDS);
        }
        all.addAll(own);
        return List.copyOf(all);
    }
}
