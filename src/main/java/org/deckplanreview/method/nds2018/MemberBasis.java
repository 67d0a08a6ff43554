package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.loadpath.MemberAnalysis;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.MemberLoads;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * What a check of a joist or beam starts from.
 *
 * @param section the sheet on which its section stands: b, which is that of all plies, and d
 */
record MemberBasis(
        Member member, MemberAnalysis analysis, Adjustments adjustments, ReviewContext context, Sheet section) {

    private static final Formula PLIES = Formula.of("b = n * b_1", INCH, "");

    static final List<SubjectKind> SUBJECTS = List.of(SubjectKind.JOISTS, SubjectKind.BEAMS);

    static Evaluation evaluate(
            Subject subject, Parameters parameters, ReviewContext context, Function<MemberBasis, Evaluation> check) {
        Member member = (Member) subject;
        return Graded.gather(
                member.timber(),
                context.submission().timberPointer(member.timber().id()),
                context.loadPath().member(member),
                parameters,
                (analysis, adjustments) ->
                        check.apply(new MemberBasis(member, analysis, adjustments, context, section(member, context))));
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

    Section ply() {
        return Section.of(member.timber(), 1);
    }

    private static Sheet section(Member member, ReviewContext context) {
        Sheet sheet = Sheet.blank();
        Pointer timber = context.submission().timberPointer(member.timber().id());
        Section ply = Section.of(member.timber(), 1);
        if (member.plies() == 1) {
            sheet.given("b", ply.breadthIn(), INCH, "breadth", "", timber.child("breadth"));
        } else {
            sheet.given("b_1", ply.breadthIn(), INCH, "breadth of a ply", "", timber.child("breadth"));
            sheet.given(
                    "n", member.plies(), RATIO, "plies", "", member.pointer().child("plies"));
            sheet.calculate(PLIES);
        }
        sheet.given("d", ply.depthIn(), INCH, "depth", "", timber.child("depth"));
        return sheet;
    }

    /** What lies on the member and how far it spans, under the factors of a combination. */
    Supplier<Sheet> loads(ActionFactors factors) {
        return () ->
                new MemberLoads(member, analysis, context, factors, combinationSource()).sheet(UnitSystem.INCH_POUND);
    }

    /** Where the factors of combinations come from. */
    String combinationSource() {
        return parameters().source(Combination.COMBINATIONS.name());
    }

    String supportName(int index) {
        return member.supports().get(index).label();
    }

    List<String> assumptions(String... own) {
        List<String> all = new ArrayList<>(adjustments.assumptions(member.timber()));
        if (member.plies() > 1) {
            all.add("The plies of a beam are fixed together so that they share its load equally.");
        }
        all.addAll(List.of(own));
        return List.copyOf(all);
    }
}
