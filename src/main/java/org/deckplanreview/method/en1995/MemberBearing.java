package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.measure.MeasureUnit.SQUARE_MILLIMETRE;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.method.Bearing;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Compression across the grain where joists and beams bear, 6.1.5 (6.3), (6.4). */
final class MemberBearing implements Method {
    static final ParameterDescription EXTENSION = ParameterDescription.number(
            "contactExtension", MILLIMETRE, "largest length added to the contact at each end");
    static final ParameterDescription KC90 = ParameterDescription.table(
            "kc90",
            "k_c,90 by support (general, or discrete with other forces far enough away) and kind of timber",
            wordColumn("support"),
            wordColumn("kind"),
            numberColumn("kc90", RATIO));
    private static final ParameterDescription LEAST_DISTANCE = ParameterDescription.number(
            "kc90LeastDistance", RATIO, "depths to the next force for the discrete row of k_c,90");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.bearing",
            En1995.SOURCE,
            "bearing stress across the grain",
            NEWTON_PER_SQUARE_MILLIMETRE,
            MemberBasis.SUBJECTS,
            MemberBasis.parameters(
                    DesignStrength.PARAMETERS,
                    SystemStrength.PARAMETERS,
                    StrengthClass.TABLE,
                    Combination.COMBINATIONS,
                    Combination.Psi.TABLE,
                    Loading.PARAMETER,
                    EXTENSION,
                    KC90,
                    LEAST_DISTANCE),
            "Largest stress across the grain over all supports on which the member lies, on the effective contact area,"
                    + " against k_c,90 f_c,90,d: equations (6.3) and (6.4). Joists in hangers on a beam's face and beams bolted"
                    + " to a post's side are left to the connection.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return Bearing.evaluate(
                (Member) subject,
                context,
                () -> MemberBasis.evaluate(subject, parameters, context, MemberBearing::worst));
    }

    private static Evaluation worst(MemberBasis basis) {
        List<Place> places = new ArrayList<>();
        List<MemberSupport> supports = basis.member().supports();
        for (Combination combination : Loading.of(basis.parameters()).filter(basis.combinations(State.ULTIMATE))) {
            Effects effects = basis.analysis().effects(combination.factors());
            for (int i = 0; i < supports.size(); i++) {
                if (supports.get(i).contactLengthMm().isPresent()) {
                    places.add(new Place(
                            basis,
                            combination,
                            i,
                            effects.supports().get(i).largestReactionN(),
                            basis.designStrength("c,90", basis.strengthClass().fc90k(), combination)));
                }
            }
        }
        return Case.worst(places);
    }

    /** One support under one combination. */
    private record Place(MemberBasis basis, Combination combination, int support, double reactionN, DesignStrength fc90)
            implements Case {
        private Contact contact() {
            return Contact.at(basis.member(), support, joistBreadthMm());
        }

        private double joistBreadthMm() {
            return platform().joists().stream()
                    .mapToDouble(j -> j.timber().breadth().mm())
                    .max()
                    .orElse(0);
        }

        private PlatformLayout platform() {
            return basis.context().layout().platformOf(basis.member());
        }

        private Bearing bearing() {
            return new Bearing(basis.member(), support, basis.context());
        }

        private double extensionMm() {
            return basis.parameters().number(EXTENSION.name(), MILLIMETRE);
        }

        private double areaMm2() {
            return bearing().breadthMm() * contact().effectiveLengthMm(extensionMm());
        }

        /** sigma_c,90,d of (6.4). */
        private double stress() {
            return Math.max(0, reactionN) / areaMm2();
        }

        private boolean discrete() {
            double least = basis.parameters().number(LEAST_DISTANCE.name(), RATIO)
                    * basis.section().depthMm();
            return !combination.isConcentrated()
                    && Sense.AT_LEAST.holds(contact().smallestGapMm(), least);
        }

        private double kc90() {
            return basis.parameters()
                    .table(KC90.name())
                    .find(
                            "support",
                            discrete() ? "discrete" : "general",
                            "kind",
                            basis.strengthClass().kind())
                    .orElseThrow(() -> new IllegalArgumentException(
                            "No k_c,90 for " + basis.strengthClass().kind()))
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
                    "at " + basis.supportName(support) + ", combination " + combination.id() + ", "
                            + fc90.modification().duration(),
                    working(),
                    basis.assumptions(List.of("Members lie square and in full contact on what carries them.")));
        }

        private List<WorkingStep> working() {
            Parameters p = basis.parameters();
            Contact contact = contact();
            Sheet w = Sheet.blank();
            basis.writeSection(w);
            w.given(
                    "l",
                    contact.lengthMm(),
                    MILLIMETRE,
                    "contact length along the member at " + basis.supportName(support),
                    "",
                    basis.member().supports().get(support).pointer());
            writeExtension(
                    w,
                    "s",
                    "its start",
                    contact.startMm(),
                    contact.startGapMm(),
                    contact.startExtensionMm(extensionMm()));
            writeExtension(
                    w, "e", "its end", contact.endMm(), contact.endGapMm(), contact.endExtensionMm(extensionMm()));
            w.step("l_ef", "l + Δ_s + Δ_e", contact.effectiveLengthMm(extensionMm()), MILLIMETRE, "6.1.5(1)");
            writeArea(w);
            w.given(
                    "F_c,90,d",
                    Math.max(0, reactionN),
                    NEWTON_,
                    "design reaction at " + basis.supportName(support) + ", " + combination.id(),
                    p.source(Combination.COMBINATIONS.name()),
                    basis.member().pointer());
            w.step("σ_c,90,d", "F_c,90,d / A_ef", stress(), NEWTON_PER_SQUARE_MILLIMETRE, "(6.4)");
            fc90.write(
                    w,
                    p,
                    "strength across the grain of " + basis.strengthClass().name(),
                    basis.strengthClassPointer());
            w.given(
                    "k_c,90",
                    kc90(),
                    RATIO,
                    discrete()
                            ? "discrete supports, other forces at least "
                                    + Numbers.plain(p.number(LEAST_DISTANCE.name(), RATIO)) + " h away"
                            : "general",
                    p.source(KC90.name()));
            w.step("utilisation", "σ_c,90,d / (k_c,90 * f_c,90,d)", utilisation(), RATIO, "(6.3)");
            return w.steps();
        }

        private void writeExtension(
                Sheet w, String index, String side, double toEndMm, OptionalDouble gapMm, double valueMm) {
            w.given("a_" + index, toEndMm, MILLIMETRE, "from the contact to the member's end, towards " + side, "");
            StringBuilder of = new StringBuilder("min(" + Numbers.plain(extensionMm()) + ", a_" + index + ", l");
            if (gapMm.isPresent()) {
                w.given("l_1," + index, gapMm.getAsDouble(), MILLIMETRE, "to the next contact towards " + side, "");
                of.append(", l_1,").append(index).append(" / 2");
            }
            w.step("Δ_" + index, of + ")", valueMm, MILLIMETRE, "6.1.5(1)");
        }

        private void writeArea(Sheet w) {
            Optional<PostPlace> post = bearing().post();
            if (post.isPresent()) {
                w.given(
                        "b_p",
                        post.get().timber().depth().mm(),
                        MILLIMETRE,
                        "side of the post across the beam",
                        "",
                        basis.context()
                                .submission()
                                .timberPointer(post.get().timber().id())
                                .child("depth"));
                double off = bearing().offMm(post.get());
                if (off > 0) {
                    w.given(
                            "o",
                            off,
                            MILLIMETRE,
                            "from the post's axis to the beam's line",
                            "",
                            post.get().pointer());
                }
                w.step(
                        "A_ef",
                        "min(b, b_p" + (off > 0 ? ", (b + b_p) / 2 - o" : "") + ") * l_ef",
                        areaMm2(),
                        SQUARE_MILLIMETRE,
                        "6.1.5(1)");
            } else {
                w.step("A_ef", "b * l_ef", areaMm2(), SQUARE_MILLIMETRE, "6.1.5(1)");
            }
        }
    }
}
