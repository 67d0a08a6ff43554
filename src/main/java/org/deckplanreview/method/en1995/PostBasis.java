package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
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

/** What a check of a post starts from. Its breadth lies along the beam, its depth across. */
record PostBasis(
        PostPlace post,
        Loads loads,
        StrengthClass strengthClass,
        Psi psi,
        Parameters parameters,
        ReviewContext context) {

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
                (loads, strengthClass, psi) ->
                        check.apply(new PostBasis(post, loads, strengthClass, psi, parameters, context)));
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

    Section section() {
        return new Section(post.timber().breadth().mm(), post.timber().depth().mm());
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

    private double beamLoadN(Combination combination) {
        return loads.forces().largestN(combination.factors());
    }

    private double weightN(Combination combination) {
        return combination.factors().permanent() * loads.weightN();
    }

    private double axialN(Combination combination) {
        return Math.max(0, beamLoadN(combination) + weightN(combination));
    }

    /** From the post's axis to the axis of a beam on one of its sides, or to the line of one on its top. */
    double eccentricityMm() {
        return sideBeam()
                .map(b -> (section().depthMm() + breadthMm(b)) / 2)
                .orElseGet(() -> seated(BeamSeating.ON_POST)
                        .mapToDouble(b -> b.offMm(post.post().at()))
                        .max()
                        .orElse(0));
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

    private double seatMomentNmm(Combination combination) {
        return Math.max(0, beamLoadN(combination)) * eccentricityMm();
    }

    /** The post under a combination, with moments from sideways loads added to those of a beam on one side. */
    Column column(Combination combination, double swayAcrossNmm, double swayAlongNmm, Modification modification) {
        return new Column(
                section(),
                new Buckling("y", lengthAcross().effectiveMm(), section().depthMm(), strengthClass, parameters),
                new Buckling("z", lengthAlong().effectiveMm(), section().breadthMm(), strengthClass, parameters),
                axialN(combination),
                seatMomentNmm(combination) + swayAcrossNmm,
                swayAlongNmm,
                modification,
                strengthClass,
                parameters);
    }

    Pointer timberPointer() {
        return context.submission().timberPointer(post.timber().id());
    }

    /** Shows b, h, N_d and, where the beam is on one side or off the axis, M_e,d. */
    void writeLoads(Sheet w, Combination combination) {
        w.given(
                "b",
                section().breadthMm(),
                MILLIMETRE,
                "side along the beam",
                "",
                timberPointer().child("breadth"));
        w.given(
                "h",
                section().depthMm(),
                MILLIMETRE,
                "side across the beam",
                "",
                timberPointer().child("depth"));
        w.given(
                "F_d",
                beamLoadN(combination),
                NEWTON_,
                "design load from the beam, " + combination.id(),
                parameters.source(Combination.COMBINATIONS.name()),
                post.pointer());
        w.given(
                "G_d",
                weightN(combination),
                NEWTON_,
                "design weight of the whole post",
                parameters.source(Combination.COMBINATIONS.name()),
                post.pointer());
        w.step("N_d", "max(0, F_d + G_d)", axialN(combination), NEWTON_, "");
        if (eccentricityMm() > 0) {
            writeEccentricity(w);
            w.step("M_e,d", "max(0, F_d) * e", seatMomentNmm(combination), NEWTON_MILLIMETRE, "");
        }
    }

    private void writeEccentricity(Sheet w) {
        Optional<BeamLine> beside = sideBeam();
        if (beside.isPresent()) {
            w.given(
                    "b_b",
                    breadthMm(beside.get()),
                    MILLIMETRE,
                    "breadth of the beam on its side",
                    "",
                    beside.get().pointer());
            w.step("e", "(h + b_b) / 2", eccentricityMm(), MILLIMETRE, "");
        } else {
            w.given(
                    "e",
                    eccentricityMm(),
                    MILLIMETRE,
                    "from the post's axis to the line of the beam on it",
                    "",
                    post.pointer().child("at"));
        }
    }

    void writeColumn(Sheet w, Column column) {
        column.write(w, ACROSS, ALONG, post.pointer(), timberPointer().child("strengthClass"));
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
