package org.deckplanreview.method.equilibrium;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.MemberAnalysis;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Enough;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.JoistField;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * Uplift at the supports of a joist or beam, EN 1990, 6.4.2 (6.7) with the resistance of fixings, (6.8). What ordinary fixings
 * hold is an assumption: beyond it the resistance must be stated, and only one that is stated can be too small.
 */
final class MemberUplift implements Method {
    static final ParameterDescription ORDINARY = ParameterDescription.number(
                    "holdDown",
                    NEWTON_,
                    "resistance that ordinary fixings at a support are taken to have against uplift")
            .lowerIsStricter();
    /** Joists lie loose on blocks. */
    private static final Hold LOOSE = Hold.none("nothing holds joists down on a block");

    private static final String STATED = "holdDownResistance";

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "equilibrium.uplift",
            Equilibrium.SOURCE,
            "smallest reaction",
            NEWTON_,
            List.of(SubjectKind.JOISTS, SubjectKind.BEAMS),
            List.of(Balance.TABLE, ORDINARY),
            "Smallest reaction of any support under the combinations of equilibrium, against what its fixings hold down: a"
                    + " stated resistance or else that of ordinary fixings. The utilisation is all that lifts over what presses down"
                    + " and fixings together. Beyond ordinary fixings a resistance must be stated.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        Member member = (Member) subject;
        Derived<MemberAnalysis> analysis = context.loadPath().member(member);
        if (!analysis.isKnown()) {
            return new Evaluation.Missing(analysis.needs());
        }
        Pointer pointer = member.pointer().child(STATED);
        Optional<Measure> stated = stated(member, context.layout().platformOf(member));
        Hold hold = hold(stated, pointer, parameters);
        List<List<Joint>> joints = joints(member, analysis.get(), hold, parameters);
        if (stated.isEmpty() && !joints.stream().flatMap(List::stream).allMatch(Joint::holds)) {
            return new Evaluation.Missing(List.of(new Need(pointer, asked(member, hold, parameters, context))));
        }
        List<String> lifted = lifted(joints, member);
        String fixings = stated.isPresent() ? "Fixings of the stated resistance" : "Ordinary fixings";
        List<String> assumed = lifted.stream()
                .map(support -> fixings + " hold " + name(member) + " down at " + support + " with "
                        + context.written(Measure.of(hold.newtons(), NEWTON_)) + " at least.")
                .toList();
        return Case.worst(joints.stream()
                .flatMap(List::stream)
                .map(j -> j.named("at " + j.name() + alsoLifted(lifted, j.name()), assumed))
                .toList());
    }

    /** What is stated, or else that of ordinary fixings. */
    private static Hold hold(Optional<Measure> stated, Pointer pointer, Parameters parameters) {
        return stated.map(resistance -> Hold.stated(resistance, "fixing", pointer))
                .orElseGet(() -> Hold.ordinary(ORDINARY, "ordinary fixings", parameters));
    }

    /**
     * The joint of a beam with one of its posts, with what the beam's fixings there hold.
     *
     * @param joints of a hold, with what is assumed of it
     */
    static Evaluation heldOnPost(
            BeamLine beam,
            BiFunction<Hold, List<String>, List<Joint>> joints,
            String post,
            Parameters parameters,
            ReviewContext context) {
        Pointer pointer = beam.pointer().child(STATED);
        Optional<Measure> stated = stated(beam, context.layout().platformOf(beam));
        if (stated.isPresent()) {
            return Case.worst(joints.apply(hold(stated, pointer, parameters), List.of()));
        }
        Hold ordinary = hold(stated, pointer, parameters);
        List<Joint> held = joints.apply(
                ordinary,
                List.of("Ordinary fixings hold " + beam.label() + " down at " + post + " with "
                        + context.written(Measure.of(ordinary.newtons(), NEWTON_)) + " at least."));
        return held.stream().allMatch(Joint::holds)
                ? Case.worst(held)
                : new Evaluation.Missing(List.of(new Need(
                        pointer,
                        "the resistance against uplift of the fixing of " + beam.label() + " at " + post
                                + ", which wind and people lift as they push the deck sideways, in "
                                + context.units().unit(MeasureUnit.KILONEWTON).symbol()
                                + Enough.from(Joint.neededN(held), context.units()))));
    }

    private static Optional<Measure> stated(Member member, PlatformLayout platform) {
        return member instanceof BeamLine beam
                ? platform.platform().beams().stream()
                        .filter(b -> b.id().equals(beam.id()))
                        .findFirst()
                        .flatMap(b -> b.holdDownResistance())
                : platform.platform().joists().flatMap(JoistField::holdDownResistance);
    }

    /** For each support, all combinations. */
    private static List<List<Joint>> joints(Member member, MemberAnalysis analysis, Hold hold, Parameters parameters) {
        List<List<Joint>> joints = new ArrayList<>();
        for (int i = 0; i < member.supports().size(); i++) {
            MemberSupport support = member.supports().get(i);
            Hold held = support.kind() == MemberSupport.Kind.BLOCK ? LOOSE : hold;
            joints.add(Joint.of(support.label(), analysis.lift(i), held, parameters, List.of()));
        }
        return joints;
    }

    private static List<String> lifted(List<List<Joint>> joints, Member member) {
        List<String> labels = new ArrayList<>();
        for (int i = 0; i < joints.size(); i++) {
            if (Joint.neededN(joints.get(i)) > 0) {
                labels.add(member.supports().get(i).label());
            }
        }
        return labels;
    }

    private static String alsoLifted(List<String> lifted, String worst) {
        List<String> others = lifted.stream().filter(l -> !l.equals(worst)).toList();
        return others.isEmpty() ? "" : ", lifted at " + String.join(" and ", others) + " too";
    }

    private static String name(Member member) {
        return member instanceof JoistLine ? "joists" : member.label();
    }

    /** What would do for every member that the same resistance holds, with all joints that it is asked for. */
    private static String asked(Member member, Hold hold, Parameters parameters, ReviewContext context) {
        TreeSet<String> supports = new TreeSet<>();
        double enoughN = 0;
        for (Member other : sharing(member, context).toList()) {
            Optional<MemberAnalysis> analysis = context.loadPath().member(other).optional();
            if (analysis.isPresent()) {
                for (List<Joint> support : joints(other, analysis.get(), hold, parameters)) {
                    double needed = Joint.neededN(support);
                    if (needed > 0) {
                        supports.add(support.get(0).name());
                        enoughN = Math.max(enoughN, needed);
                    }
                }
            }
        }
        return "the resistance against uplift of the fixing of " + name(member) + " at "
                + String.join(" and at ", supports) + ", in "
                + context.units().unit(MeasureUnit.KILONEWTON).symbol()
                + Enough.from(enoughN, context.units());
    }

    private static Stream<? extends Member> sharing(Member member, ReviewContext context) {
        return member instanceof JoistLine ? context.layout().platformOf(member).joists().stream() : Stream.of(member);
    }
}
