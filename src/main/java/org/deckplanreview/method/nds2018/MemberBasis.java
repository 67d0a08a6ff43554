package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.loadpath.MemberAnalysis;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** What a check of a joist or beam starts from. */
record MemberBasis(Member member, MemberAnalysis analysis, Adjustments adjustments, ReviewContext context) {

    static final List<SubjectKind> SUBJECTS = List.of(SubjectKind.JOISTS, SubjectKind.BEAMS);

    static Evaluation evaluate(
            Subject subject, Parameters parameters, ReviewContext context, Function<MemberBasis, Evaluation> check) {
        Member member = (Member) subject;
        return Graded.gather(
                member.timber(),
                context.submission().timberPointer(member.timber().id()),
                context.loadPath().member(member),
                parameters,
                (analysis, adjustments) -> check.apply(new MemberBasis(member, analysis, adjustments, context)));
    }

    /** One list of what all members need, and what one check needs. */
    static List<ParameterDescription> parameters(List<ParameterDescription> own) {
        List<ParameterDescription> all = new ArrayList<>(Adjustments.PARAMETERS);
        all.addAll(List.of(Combination.COMBINATIONS, Combination.DURATION_FACTORS));
        all.addAll(own);
        return List.copyOf(all);
    }

    Parameters parameters() {
        return adjustments.parameters();
    }

    List<Combination> combinations() {
        return Combination.of(parameters(), analysis.totalN(Action.SNOW) != 0);
    }

    Section section() {
        return Section.of(member.timber(), member.plies());
    }

    Section ply() {
        return Section.of(member.timber(), 1);
    }

    private Timber timber() {
        return member.timber();
    }

    Pointer timberPointer() {
        return context.submission().timberPointer(timber().id());
    }

    /** Where the submission gives what a reference design value follows from. */
    Pointer[] grading() {
        return new Pointer[] {timberPointer().child("species"), timberPointer().child("grade")};
    }

    /** Shows b and d. */
    void writeSection(Sheet w) {
        Pointer breadth = timberPointer().child("breadth");
        if (member.plies() == 1) {
            w.given("b", ply().breadthIn(), INCH, "breadth", "", breadth);
        } else {
            w.given("b_1", ply().breadthIn(), INCH, "breadth of a ply", "", breadth);
            w.given("n", member.plies(), RATIO, "plies", "", member.pointer().child("plies"));
            w.step("b", "n * b_1", section().breadthIn(), INCH, "");
        }
        w.given("d", ply().depthIn(), INCH, "depth", "", timberPointer().child("depth"));
    }

    String supportName(int index) {
        return member.supports().get(index).label();
    }

    List<String> assumptions(String... own) {
        List<String> all = new ArrayList<>(adjustments.assumptions(timber()));
        if (member.plies() > 1) {
            all.add("The plies of a beam are fixed together so that they share its load equally.");
        }
        all.addAll(List.of(own));
        return List.copyOf(all);
    }
}
