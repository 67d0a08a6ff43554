package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.JoistBearing;
import org.deckplanreview.layout.LedgerLine;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.loadpath.MemberAnalysis;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Enough;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.Psi;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.submission.Ledger;
import org.deckplanreview.submission.LedgerFixings;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * What the joists put on one fixing of a ledger: the larger of the whole load shared evenly, and that of a fixing behind a
 * joist whose ledger is hinged at every fixing, so that each joist goes to the two fixings beside it by the law of the lever.
 */
final class LedgerFixingForce implements Method {
    private static final Formula LEVER_ALONE = Formula.of("F_Ed = F_lever", NEWTON_, "");
    private static final Formula EVEN = Formula.of("F_even = R / L * s", NEWTON_, "");
    private static final Formula LARGER = Formula.of("F_Ed = max(F_lever, F_even)", NEWTON_, "");
    private static final Utilisation UTILISATION = Utilisation.atMost("F_Ed", "F_Rd", NEWTON_, "");

    /** By how many joists go to the fixing. */
    private static final ConcurrentMap<Integer, Formula> LEVER = new ConcurrentHashMap<>();

    private static final List<String> ASSUMED = List.of(
            "The fixings stand at their spacing from one end of the ledger to the other, one of them behind a joist.",
            "The stated resistance is a design value for this wall, with its partial factors.");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.ledgerFixing",
            "common practice, with the combinations of EN 1990:2002+A1:2005, 6.4.3",
            "force on one ledger fixing",
            NEWTON_,
            List.of(SubjectKind.LEDGERS),
            List.of(Combination.COMBINATIONS, Combination.Psi.TABLE),
            "Design reactions of the joists on the ledger, shared by its fixings: evenly over its length, and by the lever from"
                    + " each joist to the fixings beside it with one fixing behind a joist; the larger of the two against the stated"
                    + " design resistance.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        LedgerLine line = (LedgerLine) subject;
        PlatformLayout platform = context.layout().platformOf(line);
        if (line.joists().isEmpty() && !platform.joists().isEmpty()) {
            return new Evaluation.NotApplicable("No joist rests on it");
        }
        Optional<LedgerFixings> fixings = platform.platform().ledger().flatMap(Ledger::fixings);
        Pointer pointer = line.pointer().child("fixings");
        List<Need> needs = new ArrayList<>();
        if (platform.joists().isEmpty()) {
            needs.add(new Need(platform.pointer().child("joists"), "the joists that rest on the ledger"));
        }
        List<MemberAnalysis> analyses = new ArrayList<>();
        for (JoistBearing bearing : line.joists()) {
            Derived<MemberAnalysis> analysis =
                    context.loadPath().member(platform.joists().get(bearing.joist()));
            needs.addAll(analysis.needs());
            analysis.optional().ifPresent(analyses::add);
        }
        Derived<String> category = context.loadCategories().get(line.platformIndex());
        needs.addAll(category.needs());
        if (fixings.isEmpty()) {
            needs.add(
                    new Need(pointer, "the fixings of the ledger: what they hold in, spacing and resistance of each"));
        } else if (fixings.get().spacing().isEmpty()) {
            needs.add(new Need(pointer.child("spacing"), "the spacing of the ledger's fixings, a length"));
        }
        Optional<Psi> psi = category.optional().flatMap(c -> Psi.find(parameters, c));
        if (category.isKnown() && psi.isEmpty()) {
            return new Evaluation.OutOfScope(
                    "The table has no combination factors for imposed load of category " + category.get(),
                    parameters.source(Psi.TABLE.name()));
        }
        Optional<Measure> resistance = fixings.flatMap(LedgerFixings::resistance);
        if (!needs.isEmpty()) {
            if (fixings.isPresent() && resistance.isEmpty()) {
                needs.add(new Need(pointer.child("resistance"), resistanceAsked(context.units())));
            }
            return new Evaluation.Missing(needs.stream().distinct().sorted().toList());
        }
        double spacing = fixings.orElseThrow().spacing().orElseThrow().mm();
        List<Share> shares = shares(line, analyses, parameters, psi.orElseThrow(), spacing);
        if (resistance.isEmpty()) {
            double enough = shares.stream().mapToDouble(Share::forceN).max().orElseThrow();
            return new Evaluation.Missing(List.of(new Need(
                    pointer.child("resistance"),
                    resistanceAsked(context.units()) + Enough.from(enough, context.units()))));
        }
        double resistanceN = resistance.get().in(NEWTON_);
        return Case.worst(
                shares.stream().map(s -> s.against(resistanceN, pointer)).toList());
    }

    private static Formula lever(int joists) {
        return Formula.of(
                IntStream.rangeClosed(1, joists)
                        .mapToObj(i -> "R_" + i + " * (1 - x_" + i + " / s)")
                        .collect(Collectors.joining(" + ", "F_lever = ", "")),
                NEWTON_,
                "");
    }

    private static String resistanceAsked(UnitSystem units) {
        return "the design resistance of one ledger fixing in shear in this wall, as its maker or a test states it, in "
                + units.unit(MeasureUnit.KILONEWTON).symbol();
    }

    private static List<Share> shares(
            LedgerLine line, List<MemberAnalysis> analyses, Parameters parameters, Psi psi, double spacingMm) {
        boolean snow = analyses.stream().anyMatch(a -> a.totalN(Action.SNOW) != 0);
        List<Share> shares = new ArrayList<>();
        for (Combination combination : Combination.of(parameters, State.ULTIMATE, psi, snow)) {
            List<Reaction> reactions = new ArrayList<>();
            for (int i = 0; i < analyses.size(); i++) {
                JoistBearing bearing = line.joists().get(i);
                MemberAnalysis joist = analyses.get(i);
                ActionFactors f = combination.factors();
                reactions.add(new Reaction(
                        bearing.atMm(),
                        reactionN(joist, bearing, f),
                        reactionN(joist, bearing, new ActionFactors(f.permanent(), f.imposed(), 0, f.snow()))));
            }
            Joists joists = new Joists(
                    line, combination, parameters.source(Combination.COMBINATIONS.name()), reactions, spacingMm);
            reactions.forEach(r -> shares.add(joists.share(r)));
        }
        return shares;
    }

    private static double reactionN(MemberAnalysis joist, JoistBearing bearing, ActionFactors factors) {
        return Math.max(
                0, joist.effects(factors).supports().get(bearing.joistSupport()).largestReactionN());
    }

    /**
     * Of one joist at a place along the ledger.
     *
     * @param newtons with the concentrated load on this joist, where the combination has one
     * @param elsewhereN with the concentrated load on another
     */
    private record Reaction(double atMm, double newtons, double elsewhereN) {
        double distanceMm(Reaction other) {
            return Math.abs(atMm - other.atMm);
        }
    }

    /** All joists on the ledger under one combination. */
    private record Joists(
            LedgerLine line, Combination combination, String source, List<Reaction> reactions, double spacingMm) {

        /** The force on a fixing behind one of them, F_Ed; the concentrated load stands on that one. */
        Share share(Reaction behind) {
            Sheet sheet = Sheet.blank();
            sheet.given(
                    "s",
                    spacingMm,
                    MILLIMETRE,
                    "spacing of the fixings",
                    "",
                    fixings().child("spacing"));
            List<Reaction> near = reactions.stream()
                    .filter(r -> r.distanceMm(behind) < spacingMm)
                    .toList();
            for (int i = 0; i < near.size(); i++) {
                Reaction r = near.get(i);
                sheet.given(
                        "R_" + (i + 1),
                        r.atMm() == behind.atMm() ? r.newtons() : r.elsewhereN(),
                        NEWTON_,
                        () -> "design reaction of a joist, " + combination.id(),
                        source,
                        line.pointer());
                sheet.given("x_" + (i + 1), r.distanceMm(behind), MILLIMETRE, "from that joist to the fixing", "");
            }
            sheet.calculate(LEVER.computeIfAbsent(near.size(), LedgerFixingForce::lever));
            if (combination.isConcentrated()) {
                sheet.calculate(LEVER_ALONE);
            } else {
                shareEvenly(sheet);
                sheet.calculate(LARGER);
            }
            return new Share(combination, sheet);
        }

        private void shareEvenly(Sheet sheet) {
            sheet.given(
                    "R",
                    reactions.stream().mapToDouble(Reaction::newtons).sum(),
                    NEWTON_,
                    () -> "design reactions of all joists on the ledger, " + combination.id(),
                    source,
                    line.pointer());
            Pointer length = line.pointer().child("line");
            sheet.given("L", line.lengthMm(), MILLIMETRE, "length of the ledger", "", length);
            sheet.calculate(EVEN);
        }

        private Pointer fixings() {
            return line.pointer().child("fixings");
        }
    }

    /** The fixing behind one joist under one combination. */
    private record Share(Combination combination, Sheet sheet) {
        double forceN() {
            return sheet.value("F_Ed");
        }

        Case against(double resistanceN, Pointer fixings) {
            Pointer stated = fixings.child("resistance");
            sheet.given("F_Rd", resistanceN, NEWTON_, "stated design resistance of one fixing", "", stated);
            return UTILISATION.of(sheet, () -> "combination " + combination.id(), () -> ASSUMED);
        }
    }
}
