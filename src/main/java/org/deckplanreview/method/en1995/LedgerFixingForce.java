package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
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
import org.deckplanreview.vocabulary.Sense;

/**
 * What the joists put on one fixing of a ledger: the larger of the whole load shared evenly, and that of a fixing behind a
 * joist whose ledger is hinged at every fixing, so that each joist goes to the two fixings beside it by the law of the lever.
 */
final class LedgerFixingForce implements Method {
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
        List<Share> shares = shares(line, analyses, parameters, psi.orElseThrow(), spacing, resistance);
        if (resistance.isEmpty()) {
            double enough = shares.stream().mapToDouble(Share::forceN).max().orElseThrow();
            return new Evaluation.Missing(List.of(new Need(
                    pointer.child("resistance"),
                    resistanceAsked(context.units()) + Enough.from(enough, context.units()))));
        }
        return Case.worst(shares);
    }

    private static String resistanceAsked(UnitSystem units) {
        return "the design resistance of one ledger fixing in shear in this wall, as its maker or a test states it, in "
                + units.unit(MeasureUnit.KILONEWTON).symbol();
    }

    private static List<Share> shares(
            LedgerLine line,
            List<MemberAnalysis> analyses,
            Parameters parameters,
            Psi psi,
            double spacingMm,
            Optional<Measure> resistance) {
        boolean snow = analyses.stream().anyMatch(a -> a.totalN(Action.SNOW) != 0);
        double allowedN = resistance.map(r -> r.in(NEWTON_)).orElse(1.0);
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
            reactions.forEach(r ->
                    shares.add(new Share(line, parameters, combination, reactions, r.atMm(), spacingMm, allowedN)));
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
    private record Reaction(double atMm, double newtons, double elsewhereN) {}

    /** The fixing behind one joist under one combination. */
    private record Share(
            LedgerLine line,
            Parameters parameters,
            Combination combination,
            List<Reaction> reactions,
            double atMm,
            double spacingMm,
            double allowedN)
            implements Case {

        /** Joists that the fixing helps to carry. */
        private List<Reaction> near() {
            return reactions.stream().filter(r -> distanceMm(r) < spacingMm).toList();
        }

        /** The concentrated load stands on the joist in front of the fixing. */
        private double newtons(Reaction r) {
            return r.atMm() == atMm ? r.newtons() : r.elsewhereN();
        }

        private double distanceMm(Reaction r) {
            return Math.abs(r.atMm() - atMm);
        }

        private double leverN() {
            return near().stream()
                    .mapToDouble(r -> newtons(r) * (1 - distanceMm(r) / spacingMm))
                    .sum();
        }

        private double totalN() {
            return reactions.stream().mapToDouble(Reaction::newtons).sum();
        }

        private double evenN() {
            return combination.isConcentrated() ? 0 : totalN() / line.lengthMm() * spacingMm;
        }

        double forceN() {
            return Math.max(leverN(), evenN());
        }

        @Override
        public double utilisation() {
            return forceN() / allowedN;
        }

        @Override
        public Evaluation.Measured measured() {
            return new Evaluation.Measured(
                    Measure.of(forceN(), NEWTON_),
                    Sense.AT_MOST,
                    Measure.of(allowedN, NEWTON_),
                    utilisation(),
                    "combination " + combination.id(),
                    working(),
                    List.of(
                            "The fixings stand at their spacing from one end of the ledger to the other, one of them behind a joist.",
                            "The stated resistance is a design value for this wall, with its partial factors."));
        }

        private List<WorkingStep> working() {
            Sheet w = Sheet.blank();
            Pointer fixings = line.pointer().child("fixings");
            String source = parameters.source(Combination.COMBINATIONS.name());
            w.given("s", spacingMm, MILLIMETRE, "spacing of the fixings", "", fixings.child("spacing"));
            List<Reaction> near = near();
            List<String> terms = new ArrayList<>();
            for (int i = 0; i < near.size(); i++) {
                String r = "R_" + (i + 1);
                String x = "x_" + (i + 1);
                w.given(
                        r,
                        newtons(near.get(i)),
                        NEWTON_,
                        "design reaction of a joist, " + combination.id(),
                        source,
                        line.pointer());
                w.given(x, distanceMm(near.get(i)), MILLIMETRE, "from that joist to the fixing", "");
                terms.add(r + " * (1 - " + x + " / s)");
            }
            w.step("F_lever", terms.stream().collect(Collectors.joining(" + ")), leverN(), NEWTON_, "");
            if (combination.isConcentrated()) {
                w.step("F_Ed", "F_lever", forceN(), NEWTON_, "");
            } else {
                w.given(
                        "R",
                        totalN(),
                        NEWTON_,
                        "design reactions of all joists on the ledger, " + combination.id(),
                        source,
                        line.pointer());
                w.given(
                        "L",
                        line.lengthMm(),
                        MILLIMETRE,
                        "length of the ledger",
                        "",
                        line.pointer().child("line"));
                w.step("F_even", "R / L * s", evenN(), NEWTON_, "");
                w.step("F_Ed", "max(F_lever, F_even)", forceN(), NEWTON_, "");
            }
            w.given(
                    "F_Rd",
                    allowedN,
                    NEWTON_,
                    "stated design resistance of one fixing",
                    "",
                    fixings.child("resistance"));
            w.step("utilisation", "F_Ed / F_Rd", utilisation(), RATIO, "");
            return w.steps();
        }
    }
}
