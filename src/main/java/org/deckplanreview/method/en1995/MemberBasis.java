package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.loadpath.MemberAnalysis;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.MemberLoads;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.Psi;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * What a check of a joist or beam starts from.
 *
 * @param start the sheet with which every working begins: b, which is that of all plies, and h
 */
record MemberBasis(
        Member member,
        MemberAnalysis analysis,
        StrengthClass strengthClass,
        Psi psi,
        Parameters parameters,
        ReviewContext context,
        Sheet start) {

    private static final Formula PLIES = Formula.of("b = n * b_1", MILLIMETRE, "");

    static final List<SubjectKind> SUBJECTS = List.of(SubjectKind.JOISTS, SubjectKind.BEAMS);

    static Evaluation evaluate(
            Subject subject, Parameters parameters, ReviewContext context, Function<MemberBasis, Evaluation> check) {
        Member member = (Member) subject;
        return Inputs.gather(
                member.timber(),
                context.submission().timberPointer(member.timber().id()),
                context.loadPath().member(member),
                context.loadCategories().get(member.platformIndex()),
                parameters,
                (analysis, strengthClass, psi) -> check.apply(new MemberBasis(
                        member, analysis, strengthClass, psi, parameters, context, section(member, context))));
    }

    /** One list of parameters out of several and single ones. */
    static List<ParameterDescription> parameters(
            List<ParameterDescription> shared, List<ParameterDescription> more, ParameterDescription... own) {
        List<ParameterDescription> all = new ArrayList<>(shared);
        all.addAll(more);
        all.addAll(List.of(own));
        return List.copyOf(all);
    }

    List<Combination> combinations(State state) {
        return Combination.of(parameters, state, psi, analysis.totalN(Action.SNOW) != 0);
    }

    boolean isBeam() {
        return member instanceof BeamLine;
    }

    Pointer timberPointer() {
        return context.submission().timberPointer(member.timber().id());
    }

    Pointer strengthClassPointer() {
        return timberPointer().child("strengthClass");
    }

    Material material() {
        return new Material(strengthClass, strengthClassPointer(), parameters);
    }

    Modification modification(Combination combination) {
        return Modification.of(parameters, combination.factors());
    }

    double ksys() {
        return SystemStrength.of(parameters).factor(member);
    }

    /** What of a strength is the same under all combinations, beside the section. */
    Sheet characteristic(Strength strength) {
        Sheet sheet = Sheet.on(start);
        material().enter(sheet, strength, ksys());
        return sheet;
    }

    /** A strength for design under a combination. */
    Sheet design(Sheet characteristic, Strength strength, Combination combination) {
        Sheet sheet = Sheet.on(characteristic);
        material().calculate(sheet, strength, modification(combination));
        return sheet;
    }

    /** b and h. */
    private static Sheet section(Member member, ReviewContext context) {
        Sheet sheet = Sheet.blank();
        Pointer timber = context.submission().timberPointer(member.timber().id());
        double plyMm = member.timber().breadth().mm();
        if (member.plies() == 1) {
            sheet.given("b", plyMm, MILLIMETRE, "breadth", "", timber.child("breadth"));
        } else {
            sheet.given("b_1", plyMm, MILLIMETRE, "breadth of a ply", "", timber.child("breadth"));
            sheet.given(
                    "n", member.plies(), RATIO, "plies", "", member.pointer().child("plies"));
            sheet.calculate(PLIES);
        }
        sheet.given("h", member.timber().depth().mm(), MILLIMETRE, "depth", "", timber.child("depth"));
        return sheet;
    }

    double breadthMm() {
        return start.value("b");
    }

    double depthMm() {
        return start.value("h");
    }

    /** The whole working of a place, from the loads on. */
    Sheet working(ActionFactors factors, Sheet place) {
        return Sheet.on(
                new MemberLoads(member, analysis, context, factors, combinationSource()).sheet(UnitSystem.METRIC),
                place);
    }

    /** Where the factors of combinations come from. */
    String combinationSource() {
        return parameters.source(Combination.COMBINATIONS.name());
    }

    /** A combination and the load duration that counts in it, for a finding's remark. */
    String named(Combination combination) {
        return "combination " + combination.id() + ", "
                + modification(combination).duration();
    }

    /**
     * Enters what the member takes at a support under a combination.
     *
     * @param what it is, up to the name of the support
     */
    void enterForce(Sheet sheet, String symbol, double newtons, String what, int support, Combination combination) {
        sheet.given(
                symbol,
                newtons,
                NEWTON_,
                () -> what + supportName(support) + ", " + combination.id(),
                combinationSource(),
                member.pointer());
    }

    /** A place of the member, whose working begins with the loads. Its utilisation is still to be calculated. */
    Case place(
            Utilisation utilisation,
            Sheet sheet,
            Combination combination,
            Supplier<String> where,
            Supplier<List<String>> assumptions) {
        return utilisation.of(
                sheet,
                () -> working(combination.factors(), sheet),
                () -> where.get() + ", " + named(combination),
                assumptions);
    }

    String spanName(int index) {
        return member.spanName(index);
    }

    String supportName(int index) {
        return member.supports().get(index).label();
    }

    List<String> assumptions(List<String> own) {
        if (member.plies() == 1) {
            return own;
        }
        List<String> all = new ArrayList<>(own);
        all.add("The plies of a beam are fixed together so that they share its load equally.");
        return List.copyOf(all);
    }
}
