package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.measure.MeasureUnit.SQUARE_MILLIMETRE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.JoistBearing;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Numbers;
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
            MemberBasis.parameters(
                    DesignStrength.PARAMETERS,
                    SystemStrength.PARAMETERS,
                    StrengthClass.TABLE,
                    Combination.COMBINATIONS,
                    Combination.Psi.TABLE,
                    Loading.PARAMETER,
                    MemberBearing.EXTENSION,
                    MemberBearing.KC90),
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
        List<Place> places = new ArrayList<>();
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
            places.addAll(places(basis, carrier, found.get()));
        }
        Optional<Evaluation.Measured> measured = places.isEmpty() ? Optional.empty() : Optional.of(Case.worst(places));
        boolean fails =
                measured.filter(m -> !Sense.AT_MOST.holds(m.utilisation(), 1)).isPresent();
        return needs.isEmpty() || fails
                ? measured.orElseThrow()
                : new Evaluation.Missing(needs.stream().distinct().sorted().toList());
    }

    private static List<Place> places(MemberBasis basis, Carrier carrier, StrengthClass strengthClass) {
        List<Place> places = new ArrayList<>();
        for (Combination combination : Loading.of(basis.parameters()).filter(basis.combinations(State.ULTIMATE))) {
            Effects effects = basis.analysis().effects(combination.factors());
            DesignStrength fc90 = new DesignStrength(
                    "c,90",
                    strengthClass.fc90k(),
                    Modification.of(basis.parameters(), combination.factors()),
                    1,
                    basis.parameters().number(DesignStrength.GAMMA_M.name(), RATIO));
            places.add(new Place(
                    basis,
                    carrier,
                    strengthClass,
                    combination,
                    effects.supports().get(carrier.support()).largestReactionN(),
                    fc90));
        }
        return places;
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

        /** Clear length of carrier beside the joist, towards its start (-1) or end (1), half of it up to the next joist. */
        double besideMm(int towards, double breadthMm) {
            double toEnd = towards < 0 ? atMm : lengthMm - atMm;
            DoubleStream gaps = othersMm.stream()
                    .mapToDouble(o -> towards * (o - atMm))
                    .filter(gap -> gap > 0)
                    .map(gap -> (gap - breadthMm) / 2);
            return Math.max(0, Math.min(toEnd - breadthMm / 2, gaps.min().orElse(Double.POSITIVE_INFINITY)));
        }
    }

    /** One support under one combination. */
    private record Place(
            MemberBasis basis,
            Carrier carrier,
            StrengthClass strengthClass,
            Combination combination,
            double reactionN,
            DesignStrength fc90)
            implements Case {

        private double breadthMm() {
            return basis.section().breadthMm();
        }

        private double contactMm() {
            return Notches.bearsMm(basis.member(), carrier.support(), -1)
                    + Notches.bearsMm(basis.member(), carrier.support(), 1);
        }

        private double besideMm(int towards) {
            double most = basis.parameters().number(MemberBearing.EXTENSION.name(), MILLIMETRE);
            return Math.min(Math.min(most, breadthMm()), carrier.besideMm(towards, breadthMm()));
        }

        private double lengthMm() {
            return breadthMm() + besideMm(-1) + besideMm(1);
        }

        private double areaMm2() {
            return contactMm() * lengthMm();
        }

        private double stress() {
            return Math.max(0, reactionN) / areaMm2();
        }

        private double kc90() {
            return basis.parameters()
                    .table(MemberBearing.KC90.name())
                    .find("support", "general", "kind", strengthClass.kind())
                    .orElseThrow(() -> new IllegalArgumentException("No k_c,90 for " + strengthClass.kind()))
                    .number("kc90", RATIO);
        }

        private double allowed() {
            return kc90() * fc90.value();
        }

        @Override
        public double utilisation() {
            return stress() / allowed();
        }

        @Override
        public Evaluation.Measured measured() {
            return new Evaluation.Measured(
                    Measure.of(stress(), NEWTON_PER_SQUARE_MILLIMETRE),
                    Sense.AT_MOST,
                    Measure.of(allowed(), NEWTON_PER_SQUARE_MILLIMETRE),
                    utilisation(),
                    "of " + carrier.label() + ", combination " + combination.id() + ", "
                            + fc90.modification().duration(),
                    working(),
                    List.of("Members lie square and in full contact on what carries them."));
        }

        private List<WorkingStep> working() {
            Parameters p = basis.parameters();
            Sheet w = Sheet.blank();
            w.given(
                    "b",
                    breadthMm(),
                    MILLIMETRE,
                    "breadth of the joist, along the grain of " + carrier.label(),
                    "",
                    basis.timberPointer().child("breadth"));
            w.given(
                    "l",
                    contactMm(),
                    MILLIMETRE,
                    "contact length along the joist",
                    "",
                    basis.member().supports().get(carrier.support()).pointer());
            w.given(
                    "Δ_s",
                    besideMm(-1),
                    MILLIMETRE,
                    "added on one side, at most "
                            + Numbers.plain(p.number(MemberBearing.EXTENSION.name(), MILLIMETRE))
                            + " mm, b, what the carrier has there"
                            + " and half the clear distance to the next joist",
                    p.source(MemberBearing.EXTENSION.name()));
            w.given(
                    "Δ_e",
                    besideMm(1),
                    MILLIMETRE,
                    "added on the other side",
                    p.source(MemberBearing.EXTENSION.name()));
            w.step("A_ef", "l * (b + Δ_s + Δ_e)", areaMm2(), SQUARE_MILLIMETRE, "6.1.5(1)");
            w.given(
                    "F_c,90,d",
                    Math.max(0, reactionN),
                    NEWTON_,
                    "design reaction at " + basis.supportName(carrier.support()) + ", " + combination.id(),
                    p.source(Combination.COMBINATIONS.name()),
                    basis.member().pointer());
            w.step("σ_c,90,d", "F_c,90,d / A_ef", stress(), NEWTON_PER_SQUARE_MILLIMETRE, "(6.4)");
            fc90.write(w, p, "strength across the grain of " + strengthClass.name(), carrier.classPointer(basis));
            w.given("k_c,90", kc90(), RATIO, "general", p.source(MemberBearing.KC90.name()));
            w.step("utilisation", "σ_c,90,d / (k_c,90 * f_c,90,d)", utilisation(), RATIO, "(6.3)");
            return w.steps();
        }
    }
}
