package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.Joint;
import org.deckplanreview.submission.JointKind;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** A beam that bolts or screws hold at the sides of its posts. */
record BeamJoint(BeamLine line, Beam beam, Joint joint, ReviewContext context) {
    static final ParameterDescription GAMMA_M =
            ParameterDescription.number("gammaMConnection", RATIO, "partial factor of connections");

    /** A check that has its joint. */
    interface Check extends Function<BeamJoint, Evaluation> {}

    /** Not applicable on top of posts, missing where the joint is not described. */
    static Evaluation evaluate(Subject subject, ReviewContext context, Check check) {
        BeamLine line = (BeamLine) subject;
        Beam beam = context.submission().platforms().get(line.platformIndex()).beams().stream()
                .filter(b -> b.id().equals(line.id()))
                .findFirst()
                .orElseThrow();
        if (beam.seating() == BeamSeating.ON_POST) {
            return new Evaluation.NotApplicable("It rests on its posts; what fixes it there only holds it in place");
        }
        return beam.joint()
                .map(joint -> check.apply(new BeamJoint(line, beam, joint, context)))
                .orElseGet(() -> new Evaluation.Missing(List.of(new Need(
                        line.pointer().child("joint"),
                        "the bolts or screws that fix " + line.label() + " to each of its posts"))));
    }

    /**
     * The check of a joint under load. What the joint lacks and what the loads lack is told at once; the ways in which the
     * source does not cover the joint come first.
     */
    Evaluation underLoad(Parameters parameters, List<Need> needs, Function<MemberBasis, Evaluation> check) {
        if (sides() == 2 && beam.plies() % 2 != 0) {
            return new Evaluation.OutOfScope(
                    "Plies at both sides of a post share the load only if as many stand on one side as on the other; "
                            + line.label() + " has " + beam.plies(),
                    "8.2.2 (8.7)");
        }
        if (fastenersOnSide() == 0) {
            return new Evaluation.OutOfScope("One screw cannot hold the beam at both sides of a post", "8.7.1");
        }
        Evaluation e = MemberBasis.evaluate(
                line,
                parameters,
                context,
                basis -> needs.isEmpty() ? check.apply(basis) : new Evaluation.Missing(needs));
        if (!(e instanceof Evaluation.Missing missing)) {
            return e;
        }
        List<Need> all = new ArrayList<>(missing.needs());
        all.addAll(needs);
        return new Evaluation.Missing(all.stream().distinct().sorted().toList());
    }

    Pointer pointer() {
        return line.pointer().child("joint");
    }

    boolean screwed() {
        return joint.kind() == JointKind.SCREW;
    }

    /** For people: bolts or screws. */
    String fasteners() {
        return screwed() ? "screws" : "bolts";
    }

    int sides() {
        return beam.seating() == BeamSeating.BOTH_SIDES ? 2 : 1;
    }

    /** A bolt passes through both sides; a screw stops in the post. */
    boolean doubleShear() {
        return sides() == 2 && !screwed();
    }

    /** Thickness of the beam on one side of the post, mm. */
    double sideThicknessMm() {
        return beam.plies() / sides() * line.timber().breadth().mm();
    }

    double diameterMm() {
        return joint.diameter().mm();
    }

    /** Fasteners that are seen on one side: all bolts, but of screws from both sides each side's own. */
    int fastenersOnSide() {
        return screwed() ? joint.count() / sides() : joint.count();
    }

    /** Rows on one side that hold a fastener, at least one. */
    int rows() {
        return Math.max(1, Math.min(joint.rows(), fastenersOnSide()));
    }

    /** Fasteners in the longest row. */
    int longestRow() {
        return (fastenersOnSide() + rows() - 1) / rows();
    }

    /** How many rows have as many as the longest; the others have one less. */
    int longestRows() {
        return fastenersOnSide() - rows() * (longestRow() - 1);
    }

    /** The need for the spacing in a row, where a row has more than one. */
    List<Need> spacingNeeds() {
        return longestRow() > 1 && joint.spacing().isEmpty()
                ? List.of(new Need(
                        pointer().child("spacing"),
                        "the spacing, up the post, of the " + fasteners() + " of " + line.label()))
                : List.of();
    }

    List<Need> rowSpacingNeeds() {
        return rows() > 1 && joint.rowSpacing().isEmpty()
                ? List.of(new Need(
                        pointer().child("rowSpacing"),
                        "the spacing of the rows of " + fasteners() + " of " + line.label()))
                : List.of();
    }

    List<Need> edgeNeeds() {
        return joint.edgeDistance().isEmpty()
                ? List.of(new Need(
                        pointer().child("edgeDistance"),
                        "the distance from the upper edge of " + line.label() + " to the nearest of its "
                                + fasteners()))
                : List.of();
    }

    /** Enters e, which is known. */
    void enterEdgeDistance(Sheet sheet) {
        sheet.given(
                "e",
                joint.edgeDistance().orElseThrow().mm(),
                MILLIMETRE,
                "from the upper edge to the nearest fastener",
                "",
                pointer().child("edgeDistance"));
    }

    /** Enters l. */
    void enterRowLength(Sheet sheet) {
        sheet.given(
                "l",
                rowLengthMm(),
                MILLIMETRE,
                "from there to the farthest",
                "",
                pointer().child("count"));
    }

    /** From the first to the last fastener of the longest row; its spacing is known, or it has one. */
    private double rowLengthMm() {
        return longestRow() == 1
                ? 0
                : (longestRow() - 1) * joint.spacing().orElseThrow().mm();
    }

    /** From the first row to the last; their spacing is known, or there is one. */
    double rowsWidthMm() {
        return rows() == 1 ? 0 : (rows() - 1) * joint.rowSpacing().orElseThrow().mm();
    }

    PostPlace post(int support) {
        String id = line.supports().get(support).id();
        return context.layout().platformOf(line).posts().stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    Pointer postTimberPointer(int support) {
        return context.submission().timberPointer(post(support).timber().id());
    }

    Optional<String> postClass(int support) {
        return post(support).timber().strengthClass();
    }
}
