package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.JoistBearing;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.Notches;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/**
 * Compression across the grain of the beam or ledger on which a joist lies, 6.1.5 (6.3), (6.4): the joist's breadth lies along
 * the carrier's grain. k_c,90 is that of any other case, since other joists stand near.
 */
final class CarrierBearing implements Method {

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.carrierBearing",
            En1995.SOURCE,
            "bearing stress across the grain of what carries the joist",
            NEWTON_PER_SQUARE_MILLIMETRE,
            List.of(SubjectKind.JOISTS),
            MemberBasis.parameters(Inputs.OF_STRENGTH, List.of(Seat.KC90)),
            "Largest stress across the grain of the beams and the ledger on which a joist lies, under its contact with the"
                    + " effective length along their grain, against k_c,90 f_c,90,d: equations (6.3) and (6.4).");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        JoistLine joist = (JoistLine) subject;
        boolean lies = joist.supports().stream().anyMatch(CarrierBearing::lies);
        return lies
                ? MemberBasis.evaluate(subject, parameters, context, basis -> worst(basis, joist))
                : new Evaluation.NotApplicable("It lies on no beam or ledger");
    }

    private static boolean lies(MemberSupport support) {
        return support.kind() != MemberSupport.Kind.BLOCK
                && support.seating() == JoistSeating.ON_TOP
                && support.contactLengthMm().isPresent();
    }

    private static Evaluation worst(MemberBasis basis, JoistLine joist) {
        List<Need> needs = new ArrayList<>();
        List<Case> cases = new ArrayList<>();
        for (int i = 0; i < joist.supports().size(); i++) {
            if (!lies(joist.supports().get(i))) {
                continue;
            }
            Carrier carrier = Carrier.of(basis, joist, i);
            Optional<String> name = carrier.timber().strengthClass();
            if (name.isEmpty()) {
                needs.add(new Need(
                        carrier.classPointer(basis),
                        "the strength class of " + carrier.timber().displayLabel() + ", for example C24"));
                continue;
            }
            Optional<StrengthClass> found = StrengthClass.find(basis.parameters(), name.get());
            if (found.isEmpty()) {
                return new Evaluation.OutOfScope(
                        "Strength class " + name.get() + " is not in the table",
                        basis.parameters().source(StrengthClass.TABLE.name()));
            }
            cases.addAll(cases(basis, carrier, found.get()));
        }
        Optional<Evaluation.Measured> measured = cases.isEmpty() ? Optional.empty() : Optional.of(Case.worst(cases));
        boolean fails =
                measured.filter(m -> !Sense.AT_MOST.holds(m.utilisation(), 1)).isPresent();
        return needs.isEmpty() || fails
                ? measured.orElseThrow()
                : new Evaluation.Missing(needs.stream().distinct().sorted().toList());
    }

    private static List<Case> cases(MemberBasis basis, Carrier carrier, StrengthClass strengthClass) {
        Material material = new Material(strengthClass, carrier.classPointer(basis), basis.parameters());
        Sheet characteristic = Sheet.blank();
        material.enter(characteristic, Strength.COMPRESSION_ACROSS, 1);
        Seat seat = new Seat(
                basis,
                carrier.support(),
                material,
                area(basis, carrier),
                "of " + carrier.label(),
                List.of("Members lie square and in full contact on what carries them."));
        List<Case> cases = new ArrayList<>();
        for (Combination combination : Loading.of(basis.parameters()).filter(basis.combinations(State.ULTIMATE))) {
            Effects effects = basis.analysis().effects(combination.factors());
            double reactionN = effects.supports().get(carrier.support()).largestReactionN();
            Sheet strength = Sheet.on(characteristic);
            material.calculate(strength, Strength.COMPRESSION_ACROSS, basis.modification(combination));
            cases.add(seat.under(combination, reactionN, strength, Seat.Support.GENERAL));
        }
        return cases;
    }

    /** The joist's breadth is the contact's length along the carrier's grain. */
    private static Sheet area(MemberBasis basis, Carrier carrier) {
        Sheet sheet = Sheet.blank();
        int support = carrier.support();
        sheet.given(
                "b",
                Notches.bearsMm(basis.member(), support, -1) + Notches.bearsMm(basis.member(), support, 1),
                MILLIMETRE,
                "contact length along the joist",
                "",
                basis.member().supports().get(support).pointer());
        double length = sheet.given(
                "l",
                basis.breadthMm(),
                MILLIMETRE,
                () -> "breadth of the joist, along the grain of " + carrier.label(),
                "",
                basis.timberPointer().child("breadth"));
        carrier.contact(length).calculate(sheet, carrier.label());
        sheet.calculate(Seat.AREA);
        return sheet;
    }

    /**
     * What a joist lies on at one of its supports.
     *
     * @param atMm along the carrier
     * @param othersMm the other joists along it
     */
    private record Carrier(
            int support, String label, Timber timber, double lengthMm, double atMm, List<Double> othersMm) {

        static Carrier of(MemberBasis basis, JoistLine joist, int support) {
            PlatformLayout platform = basis.context().layout().platformOf(joist);
            MemberSupport s = joist.supports().get(support);
            return s.kind() == MemberSupport.Kind.LEDGER
                    ? platform.ledger()
                            .map(l -> on(joist, support, l.label(), l.timber(), l.lengthMm(), l.joists()))
                            .orElseThrow()
                    : platform.beams().stream()
                            .filter(b -> b.id().equals(s.id())
                                    && carried(b.joists(), joist, support)
                                            .findAny()
                                            .isPresent())
                            .findFirst()
                            .map(b -> on(joist, support, b.label(), b.timber(), b.lengthMm(), b.joists()))
                            .orElseThrow();
        }

        private static Carrier on(
                JoistLine joist, int support, String label, Timber timber, double lengthMm, List<JoistBearing> joists) {
            double at =
                    carried(joists, joist, support).findFirst().orElseThrow().atMm();
            List<Double> others = joists.stream()
                    .filter(b -> b.joist() != joist.number() - 1)
                    .map(JoistBearing::atMm)
                    .toList();
            return new Carrier(support, label, timber, lengthMm, at, others);
        }

        /** Of a beam that is jointed over posts only one piece carries the joist. */
        private static Stream<JoistBearing> carried(List<JoistBearing> joists, JoistLine joist, int support) {
            return joists.stream().filter(b -> b.joist() == joist.number() - 1 && b.joistSupport() == support);
        }

        Pointer classPointer(MemberBasis basis) {
            return basis.context().submission().timberPointer(timber.id()).child("strengthClass");
        }

        /** With a joist of this breadth. */
        Contact contact(double breadthMm) {
            return new Contact(
                    breadthMm,
                    Math.max(0, atMm - breadthMm / 2),
                    Math.max(0, lengthMm - atMm - breadthMm / 2),
                    gapMm(-1, breadthMm),
                    gapMm(1, breadthMm),
                    OptionalDouble.empty());
        }

        /** Clear distance to the next joist towards the carrier's start (-1) or end (1). */
        private OptionalDouble gapMm(int towards, double breadthMm) {
            return othersMm.stream()
                    .mapToDouble(other -> towards * (other - atMm))
                    .filter(gap -> gap > 0)
                    .map(gap -> Math.max(0, gap - breadthMm))
                    .min();
        }
    }
}
