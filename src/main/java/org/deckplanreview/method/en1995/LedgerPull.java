package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.KILONEWTON_PER_SQUARE_METRE;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.LedgerLine;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.SidewaysSupport;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.ActionForces;
import org.deckplanreview.loadpath.LoadPath.DeckLoads;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Enough;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.Psi;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.Ledger;
import org.deckplanreview.submission.LedgerFixings;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;

/** The pull on one fixing of a ledger that keeps the deck from moving away from its wall. */
final class LedgerPull implements Method {
    private static final Formula ON_ONE = Formula.of("F_t,d = H_d / L * s", NEWTON_, "");
    private static final Utilisation UTILISATION = Utilisation.atMost("F_t,d", "F_t,Rd", NEWTON_, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.ledgerPull",
            "statics, with the combinations of EN 1990:2002+A1:2005, 6.4.3",
            "pull on one ledger fixing",
            NEWTON_,
            List.of(SubjectKind.LEDGERS),
            MemberBasis.parameters(HorizontalLoad.PARAMETERS, List.of(Combination.COMBINATIONS, Psi.TABLE)),
            "Horizontal load of the whole platform away from the wall, of people and wind, shared evenly by the fixings of the"
                    + " ledger, against the stated design resistance of one fixing in tension. Posts and braces are not counted.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        LedgerLine line = (LedgerLine) subject;
        PlatformLayout platform = context.layout().platformOf(line);
        Pointer at = line.pointer().child("fixings");
        Optional<LedgerFixings> fixings = platform.platform().ledger().flatMap(Ledger::fixings);
        Derived<Double> spacing = Derived.of(
                fixings.flatMap(LedgerFixings::spacing).map(Length::mm),
                at.child("spacing"),
                "the spacing of the ledger's fixings, a length");
        Direction away = SidewaysSupport.across(new Direction(
                line.line().to().xMm() - line.line().from().xMm(),
                line.line().to().yMm() - line.line().from().yMm()));
        Derived<HorizontalLoad> load = HorizontalLoad.of(
                platform,
                away,
                context.loadPath().deckLoads(line.platformIndex()).map(deck -> forces(deck, platform.areaMm2())),
                parameters,
                context);
        Derived<String> category = context.loadCategories().get(line.platformIndex());
        List<Need> needs = new ArrayList<>(spacing.needs());
        needs.addAll(load.needs());
        needs.addAll(category.needs());
        Pointer resistanceAt = at.child("tensionResistance");
        Optional<Measure> resistance = fixings.flatMap(LedgerFixings::tensionResistance);
        String asked = "the design resistance of one ledger fixing against being pulled out of this wall, in "
                + context.units().unit(MeasureUnit.KILONEWTON).symbol();
        if (!needs.isEmpty()) {
            if (resistance.isEmpty()) {
                needs.add(new Need(resistanceAt, asked));
            }
            return new Evaluation.Missing(needs.stream().distinct().sorted().toList());
        }
        Optional<Psi> psi = Psi.find(parameters, category.get());
        if (psi.isEmpty()) {
            return Inputs.noFactors(category.get(), parameters);
        }
        Pulled pulled = new Pulled(line, platform, parameters);
        List<Pull> pulls =
                Combination.of(
                                parameters,
                                State.ULTIMATE,
                                psi.get(),
                                load.get().vertical().snowN() != 0)
                        .stream()
                        .flatMap(c ->
                                load.get().alternatives(psi.get()).stream().map(l -> pulled.by(l, c, spacing.get())))
                        .toList();
        if (resistance.isEmpty()) {
            double enough = pulls.stream().mapToDouble(Pull::forceN).max().orElseThrow();
            return new Evaluation.Missing(
                    List.of(new Need(resistanceAt, asked + Enough.from(enough, context.units()))));
        }
        double resistanceN = resistance.get().in(NEWTON_);
        return Case.worst(pulls.stream()
                .map(p -> p.against(resistanceN, resistanceAt, () -> assumed(parameters, context)))
                .toList());
    }

    private static List<String> assumed(Parameters parameters, ReviewContext context) {
        List<String> all = new ArrayList<>(HorizontalLoad.ofWind(parameters, context));
        all.add("All fixings of a ledger pull alike, and nothing else keeps the deck at its wall.");
        return List.copyOf(all);
    }

    private static ActionForces forces(DeckLoads deck, double areaMm2) {
        double imposed = newtons(deck.imposed(), areaMm2);
        return new ActionForces(newtons(deck.permanent(), areaMm2), imposed, imposed, 0, newtons(deck.snow(), areaMm2));
    }

    private static double newtons(double kNPerM2, double areaMm2) {
        return KILONEWTON_PER_SQUARE_METRE.convert(kNPerM2, NEWTON_PER_SQUARE_MILLIMETRE) * areaMm2;
    }

    /** The ledger that is pulled off its wall. */
    private record Pulled(LedgerLine line, PlatformLayout platform, Parameters parameters) {
        Pull by(HorizontalLoad load, Combination combination, double spacingMm) {
            Sheet sheet = Sheet.blank();
            load.calculate(sheet, combination, parameters, "away from the wall", platform.pointer());
            Pointer length = line.pointer().child("line");
            sheet.given("L", line.lengthMm(), MILLIMETRE, "length of the ledger", "", length);
            Pointer spacing = line.pointer().child("fixings").child("spacing");
            sheet.given("s", spacingMm, MILLIMETRE, "spacing of its fixings", "", spacing);
            return new Pull(combination, load, sheet, sheet.calculate(ON_ONE));
        }
    }

    /** One fixing under one push and combination. */
    private record Pull(Combination combination, HorizontalLoad load, Sheet sheet, double forceN) {
        Case against(double resistanceN, Pointer stated, Supplier<List<String>> assumed) {
            sheet.given(
                    "F_t,Rd", resistanceN, NEWTON_, "stated design resistance of one fixing in tension", "", stated);
            return UTILISATION.of(sheet, () -> "combination " + combination.id() + load.words(), assumed);
        }
    }
}
