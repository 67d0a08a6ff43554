package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.SQUARE_MILLIMETRE;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.method.Bearing;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Compression across the grain where joists and beams bear, 6.1.5 (6.3), (6.4). */
final class MemberBearing implements Method {
    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.bearing",
            En1995.SOURCE,
            "bearing stress across the grain",
            NEWTON_PER_SQUARE_MILLIMETRE,
            MemberBasis.SUBJECTS,
            MemberBasis.parameters(Inputs.OF_STRENGTH, SystemStrength.PARAMETERS, Seat.KC90),
            "Largest stress across the grain over all supports on which the member lies, on the effective contact area,"
                    + " against k_c,90 f_c,90,d: equations (6.3) and (6.4). Joists in hangers on a beam's face and beams bolted"
                    + " to a post's side are left to the connection.");

    private static final Formula AREA_ON_POST = Formula.of("A_ef = min(b, b_p) * l_ef", SQUARE_MILLIMETRE, "6.1.5(1)");
    private static final Formula AREA_BESIDE_AXIS =
            Formula.of("A_ef = min(b, b_p, (b + b_p) / 2 - o) * l_ef", SQUARE_MILLIMETRE, "6.1.5(1)");

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
        List<Place> places = places(basis);
        List<Case> cases = new ArrayList<>();
        Sheet characteristic = basis.characteristic(Strength.COMPRESSION_ACROSS);
        for (Combination combination : Loading.of(basis.parameters()).filter(basis.combinations(State.ULTIMATE))) {
            Sheet strength = basis.design(characteristic, Strength.COMPRESSION_ACROSS, combination);
            Effects effects = basis.analysis().effects(combination.factors());
            for (Place place : places) {
                double reactionN =
                        effects.supports().get(place.seat().support()).largestReactionN();
                Seat.Support kind = Seat.Support.of(place.contact(), basis.start(), combination);
                cases.add(place.seat().under(combination, reactionN, strength, kind));
            }
        }
        return Case.worst(cases);
    }

    private record Place(Contact contact, Seat seat) {}

    /** Supports on which the member lies. */
    private static List<Place> places(MemberBasis basis) {
        List<String> assumptions =
                basis.assumptions(List.of("Members lie square and in full contact on what carries them."));
        double joistBreadthMm = basis.context().layout().platformOf(basis.member()).joists().stream()
                .mapToDouble(j -> j.timber().breadth().mm())
                .max()
                .orElse(0);
        List<Place> places = new ArrayList<>();
        List<MemberSupport> supports = basis.member().supports();
        for (int i = 0; i < supports.size(); i++) {
            if (supports.get(i).contactLengthMm().isPresent()) {
                Contact contact = Contact.at(basis.member(), i, joistBreadthMm);
                Sheet area = area(basis, i, contact);
                String place = "at " + basis.supportName(i);
                places.add(new Place(contact, new Seat(basis, i, basis.material(), area, place, assumptions)));
            }
        }
        return places;
    }

    private static Sheet area(MemberBasis basis, int support, Contact contact) {
        Sheet sheet = Sheet.on(basis.start());
        sheet.given(
                "l",
                contact.lengthMm(),
                MILLIMETRE,
                () -> "contact length along the member at " + basis.supportName(support),
                "",
                basis.member().supports().get(support).pointer());
        contact.calculate(sheet, "the member");
        Bearing bearing = new Bearing(basis.member(), support, basis.context());
        bearing.post()
                .ifPresentOrElse(
                        post -> onPost(basis, sheet, post, bearing.offMm(post)), () -> sheet.calculate(Seat.AREA));
        return sheet;
    }

    private static void onPost(MemberBasis basis, Sheet sheet, PostPlace post, double offMm) {
        sheet.given(
                "b_p",
                post.timber().depth().mm(),
                MILLIMETRE,
                "side of the post across the beam",
                "",
                basis.context().submission().timberPointer(post.timber().id()).child("depth"));
        if (offMm > 0) {
            sheet.given("o", offMm, MILLIMETRE, "from the post's axis to the beam's line", "", post.pointer());
        }
        sheet.calculate(offMm > 0 ? AREA_BESIDE_AXIS : AREA_ON_POST);
    }
}
