package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Length;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * Spacings, end and edge distances of the fasteners between a beam and its posts, 8.5.1.1(3), Table 8.4; for screws that follow
 * the rules of bolts, 8.7.1(4), with the diameter of the thread.
 */
final class JointDistance implements Method {
    private static final ParameterDescription PLACE = ParameterDescription.word(
            "place",
            "which distance: in-row, between-rows, post-end, post-end-holding-down, post-side, beam-upper-edge,"
                    + " beam-lower-edge or beam-end");

    private static final Formula TO_LOWER_EDGE = Formula.of("a = h - e - l", MILLIMETRE, "");
    private static final Formula TO_SIDE = Formula.of("a = (b - r) / 2", MILLIMETRE, "");
    private static final Formula TO_END = Formula.of("a = x - r / 2", MILLIMETRE, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.jointDistance",
            En1995.SOURCE,
            "distance of the fasteners",
            MILLIMETRE,
            List.of(SubjectKind.BEAMS),
            List.of(PLACE),
            "The smallest of one kind of distance of a joint's fasteners, from each other or from an end or edge, against Table 8.4"
                    + " for a force along the grain of the post and across that of the beam.");

    /** A kind of distance, with its name in Table 8.4. */
    private enum Place {
        IN_ROW("in-row", LeastDistance.SPACING_ALONG, false),
        BETWEEN_ROWS("between-rows", LeastDistance.SPACING_ACROSS, false),
        POST_END("post-end", LeastDistance.UNLOADED_END, false),
        POST_END_HOLDING_DOWN("post-end-holding-down", LeastDistance.LOADED_END, false),
        POST_SIDE("post-side", LeastDistance.UNLOADED_EDGE, false),
        BEAM_UPPER_EDGE("beam-upper-edge", LeastDistance.LOADED_EDGE, true),
        BEAM_LOWER_EDGE("beam-lower-edge", LeastDistance.UNLOADED_EDGE, true),
        BEAM_END("beam-end", LeastDistance.LOADED_END, true);

        private final String word;
        private final LeastDistance distance;
        private final boolean across;

        Place(String word, LeastDistance distance, boolean across) {
            this.word = word;
            this.distance = distance;
            this.across = across;
        }

        static Place of(Parameters p) {
            String word = p.word(PLACE.name());
            return Arrays.stream(values())
                    .filter(v -> v.word.equals(word))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("No place '" + word + "': " + PLACE.meaning()));
        }
    }

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return BeamJoint.evaluate(
                subject, context, joint -> new Distances(joint, parameters, Place.of(parameters)).evaluate());
    }

    /** One kind of distance of one joint. */
    private record Distances(BeamJoint joint, Parameters parameters, Place place) {

        Evaluation evaluate() {
            return switch (place) {
                case IN_ROW ->
                    joint.longestRow() <= 1
                            ? new Evaluation.NotApplicable("No row has more than one fastener")
                            : stated(joint.joint().spacing(), "spacing", joint.spacingNeeds());
                case BETWEEN_ROWS ->
                    joint.rows() <= 1
                            ? new Evaluation.NotApplicable("The fasteners stand in one row")
                            : stated(joint.joint().rowSpacing(), "rowSpacing", joint.rowSpacingNeeds());
                case POST_END, POST_END_HOLDING_DOWN ->
                    stated(
                            joint.joint().endDistance(),
                            "endDistance",
                            List.of(new Need(
                                    joint.pointer().child("endDistance"),
                                    "the distance from the upper end of the post to the nearest of the "
                                            + joint.fasteners())));
                case BEAM_UPPER_EDGE -> stated(joint.joint().edgeDistance(), "edgeDistance", joint.edgeNeeds());
                case BEAM_LOWER_EDGE -> lowerEdge();
                case POST_SIDE -> unlessMissing(joint.rowSpacingNeeds(), this::postSide);
                case BEAM_END -> unlessMissing(joint.rowSpacingNeeds(), this::beamEnd);
            };
        }

        private Evaluation stated(Optional<Length> distance, String member, List<Need> needs) {
            if (distance.isEmpty()) {
                return new Evaluation.Missing(needs);
            }
            Sheet w = Sheet.blank();
            w.given(
                    "a",
                    distance.get().mm(),
                    MILLIMETRE,
                    "as given",
                    "",
                    joint.pointer().child(member));
            return compare(w, "", List.of());
        }

        private Evaluation lowerEdge() {
            List<Need> needs = Stream.concat(joint.edgeNeeds().stream(), joint.spacingNeeds().stream())
                    .sorted()
                    .toList();
            return unlessMissing(needs, () -> {
                Sheet w = Sheet.blank();
                w.given(
                        "h",
                        joint.line().timber().depth().mm(),
                        MILLIMETRE,
                        "depth of the beam",
                        "",
                        joint.context()
                                .submission()
                                .timberPointer(joint.line().timber().id())
                                .child("depth"));
                joint.enterEdgeDistance(w);
                joint.enterRowLength(w);
                w.calculate(TO_LOWER_EDGE);
                return compare(w, "", List.of());
            });
        }

        private Evaluation postSide() {
            int narrowest = IntStream.range(0, joint.line().supports().size())
                    .boxed()
                    .min((i, k) -> Double.compare(postBreadthMm(i), postBreadthMm(k)))
                    .orElse(-1);
            if (narrowest < 0) {
                return noPost();
            }
            Sheet w = Sheet.blank();
            w.given(
                    "b",
                    postBreadthMm(narrowest),
                    MILLIMETRE,
                    "side of the post along the beam",
                    "",
                    joint.postTimberPointer(narrowest).child("breadth"));
            writeWidth(w);
            w.calculate(TO_SIDE);
            return compare(w, at(narrowest), List.of(centred()));
        }

        private Evaluation beamEnd() {
            int nearest = IntStream.range(0, joint.line().supports().size())
                    .boxed()
                    .min((i, k) -> Double.compare(toEndMm(i), toEndMm(k)))
                    .orElse(-1);
            if (nearest < 0) {
                return noPost();
            }
            Sheet w = Sheet.blank();
            w.given(
                    "x",
                    toEndMm(nearest),
                    MILLIMETRE,
                    "from the middle of the post to the beam's end",
                    "",
                    joint.line().pointer().child("line"));
            writeWidth(w);
            w.calculate(TO_END);
            return compare(w, at(nearest), List.of(centred()));
        }

        private void writeWidth(Sheet w) {
            w.given(
                    "r",
                    joint.rowsWidthMm(),
                    MILLIMETRE,
                    "from the first row of fasteners to the last",
                    "",
                    joint.pointer().child("rows"));
        }

        private double postBreadthMm(int support) {
            return joint.post(support).timber().breadth().mm();
        }

        private double toEndMm(int support) {
            MemberSupport s = joint.line().supports().get(support);
            return Math.min(s.atMm(), joint.line().lengthMm() - s.atMm());
        }

        private String at(int support) {
            return "at " + joint.line().supports().get(support).label();
        }

        private static String centred() {
            return "The fasteners of a joint are centred on the post.";
        }

        private Evaluation noPost() {
            return new Evaluation.Missing(List.of(new Need(
                    joint.line().pointer().child("posts"),
                    "the posts that carry " + joint.line().label())));
        }

        private static Evaluation unlessMissing(
                List<Need> needs, java.util.function.Supplier<? extends Evaluation> otherwise) {
            return needs.isEmpty() ? otherwise.get() : new Evaluation.Missing(needs);
        }

        private Evaluation compare(Sheet w, String remark, List<String> assumptions) {
            return place.distance.compare(
                    w, place.across, joint.diameterMm(), joint.pointer().child("diameter"), remark, assumptions);
        }
    }
}
