package org.deckplanreview.quantity.timber;

import static org.deckplanreview.quantity.DescribedQuantity.flag;
import static org.deckplanreview.quantity.DescribedQuantity.number;
import static org.deckplanreview.quantity.DescribedQuantity.risingWord;
import static org.deckplanreview.quantity.DescribedQuantity.word;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.FixingPlace;
import org.deckplanreview.layout.LedgerLine;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.layout.TimberPiece;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.submission.Boards;
import org.deckplanreview.submission.FixingFinish;
import org.deckplanreview.submission.FixingKind;
import org.deckplanreview.submission.NaturalDurability;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.submission.Treatment;
import org.deckplanreview.submission.UseCategory;
import org.deckplanreview.submission.UseClass;

/** What keeps timber from rot and metal from rust. */
public final class TimberAndMetal {

    public static final String MANUFACTURED = "the boards are manufactured";

    private static final List<SubjectKind> DECK = List.of(SubjectKind.DECK);
    private static final List<SubjectKind> FIXINGS = List.of(SubjectKind.FIXINGS);
    private static final List<SubjectKind> OVER_GROUND =
            List.of(SubjectKind.BOARDS, SubjectKind.JOISTS, SubjectKind.BEAMS, SubjectKind.LEDGERS);
    private static final List<SubjectKind> TIMBERS =
            List.of(SubjectKind.BOARDS, SubjectKind.JOISTS, SubjectKind.BEAMS, SubjectKind.LEDGERS, SubjectKind.POSTS);

    private TimberAndMetal() {}

    public static List<Quantity> quantities() {
        return List.of(
                number(
                        "ground clearance",
                        MeasureUnit.MILLIMETRE,
                        Subject.class,
                        OVER_GROUND,
                        "The smallest clear height between the timber's underside and the ground.",
                        (subject, context) -> Observations.derived(
                                groundClearance(subject),
                                "c",
                                MeasureUnit.MILLIMETRE,
                                "clear height between the timber and the ground")),
                flag(
                        "treated",
                        TimberPiece.class,
                        TIMBERS,
                        "Whether the timber is treated with preservative, as against left as a durable species.",
                        (subject, context) -> ofTimber(
                                subject,
                                context,
                                treatment -> Observations.flag(true, ""),
                                durability -> Observations.flag(false, ""))),
                risingWord(
                        "use class of treatment",
                        UseClass.values(),
                        TimberPiece.class,
                        TIMBERS,
                        "The use class (EN 335) that the timber is treated for, mildest first.",
                        (subject, context) -> ofTreatment(
                                subject,
                                context,
                                (treatment, pointer) -> Observations.word(
                                        treatment.useClass(),
                                        pointer.child("useClass"),
                                        "the use class of EN 335 that "
                                                + subject.timber().displayLabel()
                                                + " is treated for, for example UC4"))),
                risingWord(
                        "use category of treatment",
                        UseCategory.values(),
                        TimberPiece.class,
                        TIMBERS,
                        "The use category (AWPA U1) that the timber is treated for, mildest first.",
                        (subject, context) -> ofTreatment(
                                subject,
                                context,
                                (treatment, pointer) -> Observations.word(
                                        treatment.useCategory(),
                                        pointer.child("useCategory"),
                                        "the use category of AWPA U1 that "
                                                + subject.timber().displayLabel()
                                                + " is treated for, for example UC4A"))),
                number(
                        "service life",
                        MeasureUnit.YEAR_,
                        TimberPiece.class,
                        TIMBERS,
                        "The service life that the timber's treatment is made for.",
                        (subject, context) -> ofTreatment(subject, context, TimberAndMetal::serviceLife)),
                number(
                        "heartwood class",
                        MeasureUnit.RATIO,
                        TimberPiece.class,
                        TIMBERS,
                        "The natural durability of untreated heartwood against fungi, 1 (very durable) to 5 (EN 350).",
                        (subject, context) -> ofNaturalDurability(
                                subject,
                                context,
                                (durability, pointer) -> Observations.number(
                                        "DC",
                                        durability.heartwoodClass(),
                                        MeasureUnit.RATIO,
                                        "durability class of the heartwood",
                                        "",
                                        pointer.child("heartwoodClass")))),
                flag(
                        "heartwood only",
                        TimberPiece.class,
                        TIMBERS,
                        "Whether untreated timber is free of sapwood.",
                        (subject, context) -> ofNaturalDurability(
                                subject,
                                context,
                                (durability, pointer) -> Observations.flag(durability.heartwoodOnly(), ""))),
                flag(
                        "cut ends treated",
                        Subject.class,
                        DECK,
                        "Whether every cut, notch and hole made after treatment is brushed with preservative.",
                        (subject, context) -> cutEndsTreated(context)),
                flag(
                        "treated timber in the deck",
                        Subject.class,
                        List.of(SubjectKind.DECK, SubjectKind.FIXINGS),
                        "Whether any timber of the deck is treated with preservative.",
                        (subject, context) -> treatedTimber(context)),
                word(
                        "fixing kind",
                        FixingKind.values(),
                        FixingPlace.class,
                        FIXINGS,
                        "What the fixing is.",
                        (place, context) -> Observations.word(place.fixing().kind(), "")),
                word(
                        "fixing finish",
                        FixingFinish.values(),
                        FixingPlace.class,
                        FIXINGS,
                        "The fixing's protection against corrosion, or the metal that it is made of; in no order.",
                        (place, context) -> Observations.word(
                                place.fixing().finish(),
                                place.pointer().child("finish"),
                                "the finish or metal of " + place.label() + ", for example hot-dip")),
                number(
                        "fixing diameter",
                        MeasureUnit.MILLIMETRE,
                        FixingPlace.class,
                        FIXINGS,
                        "The diameter of the fixing's shank; plates have none.",
                        (place, context) -> place.fixing().kind() == FixingKind.PLATE
                                ? Observations.notApplicable("a plate has no shank")
                                : Observations.length(
                                        place.fixing().diameter(),
                                        "d",
                                        "the diameter of " + place.label(),
                                        place.pointer().child("diameter"))),
                number(
                        "plate thickness",
                        MeasureUnit.MILLIMETRE,
                        FixingPlace.class,
                        FIXINGS,
                        "The thickness of a metal plate; other fixings have none.",
                        (place, context) -> place.fixing().kind() == FixingKind.PLATE
                                ? Observations.length(
                                        place.fixing().thickness(),
                                        "t",
                                        "the thickness of " + place.label(),
                                        place.pointer().child("thickness"))
                                : Observations.notApplicable("only plates have a thickness")));
    }

    /** Of what lies above the ground; posts stand on it or in it. */
    public static Derived<Double> groundClearance(Subject subject) {
        if (subject instanceof BoardField boards) {
            return boards.groundClearanceMm();
        }
        return subject instanceof LedgerLine ledger
                ? ledger.groundClearanceMm()
                : ((Member) subject).groundClearanceMm();
    }

    private static Observation serviceLife(Treatment treatment, Pointer pointer) {
        Pointer member = pointer.child("serviceLifeYears");
        return treatment
                .serviceLifeYears()
                .map(years -> Observations.number(
                        "t_life", years, MeasureUnit.YEAR_, "service life of the treatment", "", member))
                .orElseGet(() -> Observations.missing(
                        member, "the service life that the treatment is made for, for example 15 years"));
    }

    private static Observation cutEndsTreated(ReviewContext context) {
        boolean nothingTreated = sawn(context)
                .allMatch(t -> t.treatment().isEmpty() && t.naturalDurability().isPresent());
        return nothingTreated
                ? Observations.notApplicable("no timber of the deck is treated")
                : Observations.flag(
                        context.submission().protection().cutEndsTreated(),
                        Pointer.of("/protection/cutEndsTreated"),
                        "whether cut ends, notches and holes are brushed with end-grain preservative");
    }

    private static Observation treatedTimber(ReviewContext context) {
        List<Timber> timbers = sawn(context).toList();
        if (timbers.stream().anyMatch(t -> t.treatment().isPresent())) {
            return Observations.flag(true, "");
        }
        return timbers.stream()
                .filter(t -> t.naturalDurability().isEmpty())
                .findFirst()
                .map(t -> protectionMissing(t, context))
                .orElseGet(() -> Observations.flag(false, ""));
    }

    /** All stock but that of manufactured boards. */
    private static Stream<Timber> sawn(ReviewContext context) {
        List<String> manufactured = context.submission().platforms().stream()
                .flatMap(p -> p.boards().stream())
                .filter(b -> b.manufactured().isPresent())
                .map(Boards::timber)
                .toList();
        return context.submission().timbers().stream().filter(t -> !manufactured.contains(t.id()));
    }

    private static Observation ofTreatment(
            TimberPiece subject, ReviewContext context, BiFunction<Treatment, Pointer, Observation> observing) {
        Pointer pointer = timberPointer(subject, context).child("treatment");
        return ofTimber(
                subject,
                context,
                treatment -> observing.apply(treatment, pointer),
                durability -> Observations.notApplicable("the timber is left untreated as a durable species"));
    }

    private static Observation ofNaturalDurability(
            TimberPiece subject, ReviewContext context, BiFunction<NaturalDurability, Pointer, Observation> observing) {
        Pointer pointer = timberPointer(subject, context).child("naturalDurability");
        Timber timber = subject.timber();
        if (!subject.isSawn()) {
            return Observations.notApplicable(MANUFACTURED);
        }
        if (timber.naturalDurability().isPresent()) {
            return observing.apply(timber.naturalDurability().get(), pointer);
        }
        return timber.treatment().isPresent()
                ? Observations.notApplicable("the timber relies on its treatment")
                : protectionMissing(timber, context);
    }

    private static Observation ofTimber(
            TimberPiece subject,
            ReviewContext context,
            Function<Treatment, Observation> whenTreated,
            Function<NaturalDurability, Observation> whenUntreated) {
        Timber timber = subject.timber();
        if (!subject.isSawn()) {
            return Observations.notApplicable(MANUFACTURED);
        }
        if (timber.treatment().isPresent()) {
            return whenTreated.apply(timber.treatment().get());
        }
        return timber.naturalDurability().map(whenUntreated).orElseGet(() -> protectionMissing(timber, context));
    }

    private static Observation protectionMissing(Timber timber, ReviewContext context) {
        return Observations.missing(
                context.submission().timberPointer(timber.id()).child("treatment"),
                "the preservative treatment of " + timber.displayLabel()
                        + ", or its natural durability if it is untreated");
    }

    private static Pointer timberPointer(TimberPiece subject, ReviewContext context) {
        return context.submission().timberPointer(subject.timber().id());
    }
}
