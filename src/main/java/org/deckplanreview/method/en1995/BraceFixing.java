package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.KILONEWTON;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BraceLine;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Force in a brace against the design resistance that the submission states for the fixing at either end. */
final class BraceFixing implements Method {
    private static final Formula UTILISATION = Formula.of("utilisation = F_b,d / F_v,Rd", RATIO, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.braceFixing",
            "statics of a braced frame, against a stated resistance",
            "force on the brace's fixing",
            KILONEWTON,
            List.of(SubjectKind.BRACES),
            BraceBasis.PARAMETERS,
            "The brace's share of the horizontal load as a force along it, against the stated design resistance of its"
                    + " fixings.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        BraceLine brace = (BraceLine) subject;
        return BraceBasis.evaluate(brace, parameters, context, basis -> fixed(brace, basis, context.units()));
    }

    private static Evaluation fixed(BraceLine brace, BraceBasis basis, UnitSystem units) {
        BraceBasis.Pushed worst = basis.pushed().stream()
                .max(Comparator.comparingDouble(BraceBasis.Pushed::forceN))
                .orElseThrow();
        double force = NEWTON_.convert(worst.forceN(), KILONEWTON);
        Pointer pointer = brace.pointer().child("fixingResistance");
        Optional<Measure> stated = brace.brace().fixingResistance();
        if (stated.isEmpty()) {
            return new Evaluation.Missing(List.of(new Need(
                    pointer,
                    "the design resistance of the fixing at either end of " + brace.label() + ", in "
                            + units.unit(KILONEWTON).symbol() + "; from "
                            + Phrases.of(roundedUp(Measure.of(force, KILONEWTON), units))
                            + " on it complies")));
        }
        double resistance = stated.get().in(KILONEWTON);
        if (resistance <= 0) {
            return new Evaluation.OutOfScope("a fixing without resistance holds no brace", "");
        }
        Sheet sheet = worst.sheet();
        sheet.given(
                "F_v,Rd", stated.get().in(NEWTON_), NEWTON_, "stated design resistance of each fixing", "", pointer);
        return new Evaluation.Measured(
                Measure.of(force, KILONEWTON),
                Sense.AT_MOST,
                Measure.of(resistance, KILONEWTON),
                sheet.calculate(UTILISATION),
                "combination " + worst.combination().id() + worst.load().words(),
                sheet.steps(),
                basis.assumptions());
    }

    /** To 0.1 kN or 10 lbf, so that whoever gives this value complies. */
    private static Measure roundedUp(Measure force, UnitSystem units) {
        Measure shown = units.measure(force);
        int decimals = units == UnitSystem.METRIC ? 1 : -1;
        double roundedUp = BigDecimal.valueOf(shown.value())
                .setScale(decimals, RoundingMode.CEILING)
                .doubleValue();
        return Measure.of(roundedUp, shown.unit());
    }
}
