package org.deckplanreview.method.durability;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.GuardRun;
import org.deckplanreview.layout.StairRun;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.layout.TimberPiece;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Word;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.GuardPosts;
import org.deckplanreview.submission.NaturalDurability;
import org.deckplanreview.submission.Stair;
import org.deckplanreview.submission.Strings;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.submission.Treatment;
import org.deckplanreview.submission.UseClass;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;
import org.deckplanreview.vocabulary.Table;

/**
 * The use class (EN 335) that a timber reaches: by its preservative treatment or, untreated, by the natural durability of its
 * heartwood (EN 350). What is needed can differ: a standard may ask more of a treatment than the place asks of heartwood.
 * Timber with sapwood left counts as the least durable class.
 *
 * <p>Use classes are words, so the utilisation is a convention: 0 where the class that is needed is reached, otherwise
 * 1 plus the number of classes that it falls short by.
 */
final class UseClassReached implements Method {

    private static final String WITH_SAPWOOD = "5";

    private static final String[] USE_CLASSES =
            Stream.of(UseClass.values()).map(UseClass::word).toArray(String[]::new);

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "durability.useClass",
            "EN 335:2013, EN 350:2016",
            "use class reached",
            MeasureUnit.RATIO,
            List.of(
                    SubjectKind.BOARDS,
                    SubjectKind.JOISTS,
                    SubjectKind.BEAMS,
                    SubjectKind.LEDGERS,
                    SubjectKind.POSTS,
                    SubjectKind.GUARDS,
                    SubjectKind.STAIRS),
            List.of(
                    ParameterDescription.word("neededUseClass", "the use class that the timber must reach by treatment")
                            .rising(USE_CLASSES),
                    ParameterDescription.word(
                                    "neededOfHeartwood", "the use class that untreated heartwood must reach by nature")
                            .rising(USE_CLASSES),
                    ParameterDescription.table(
                            "naturalDurability",
                            "the use class that untreated heartwood of each durability class reaches",
                            ParameterDescription.wordColumn("heartwoodClass"),
                            ParameterDescription.wordColumn("useClass"))),
            "The use class that the timber reaches by treatment or by natural durability, against the one that it needs by"
                    + " that way; of a guard or a stair, the timber that falls shortest. Sapwood counts as heartwood class 5.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    /** @throws IllegalArgumentException if the ruleset names a use class or leaves out a heartwood class that EN 335 or EN 350 has */
    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        if (subject instanceof TimberPiece piece && !piece.isSawn()) {
            return new Evaluation.NotApplicable("manufactured boards need no treatment");
        }
        List<Evaluation> all = timbers(subject, context).stream()
                .map(timber -> evaluate(timber, parameters, context))
                .toList();
        Optional<Evaluation.Measured> worst = all.stream()
                .filter(Evaluation.Measured.class::isInstance)
                .map(Evaluation.Measured.class::cast)
                .max(Comparator.comparingDouble(Evaluation.Measured::utilisation));
        List<Need> needs = all.stream()
                .filter(Evaluation.Missing.class::isInstance)
                .flatMap(e -> ((Evaluation.Missing) e).needs().stream())
                .toList();
        if (worst.isPresent() && (needs.isEmpty() || worst.get().utilisation() > 1)) {
            return worst.get();
        }
        return needs.isEmpty()
                ? new Evaluation.NotApplicable("the submission states no timber of it")
                : new Evaluation.Missing(needs);
    }

    /** Of a guard its posts, rail and infill, of a stair its strings and treads, as far as they are stated. */
    private static List<Timber> timbers(Subject subject, ReviewContext context) {
        if (subject instanceof TimberPiece piece) {
            return List.of(piece.timber());
        }
        Stream<Optional<String>> ids;
        if (subject instanceof GuardRun run) {
            Guard guard = run.guard();
            ids = Stream.of(guard.posts().map(GuardPosts::timber), guard.rail(), guard.infillTimber());
        } else {
            Stair stair = ((StairRun) subject).stair();
            ids = Stream.of(stair.strings().map(Strings::timber), stair.treadTimber());
        }
        return ids.flatMap(Optional::stream)
                .distinct()
                .map(context.submission()::timber)
                .toList();
    }

    private static Evaluation evaluate(Timber timber, Parameters parameters, ReviewContext context) {
        UseClass needed = useClass(parameters.word("neededUseClass"));
        UseClass neededOfHeartwood = useClass(parameters.word("neededOfHeartwood"));
        Optional<UseClass> treated = timber.treatment().flatMap(Treatment::useClass);
        Optional<UseClass> natural =
                timber.naturalDurability().map(d -> byNature(d, parameters.table("naturalDurability")));
        boolean lasts = natural.filter(n -> n.compareTo(neededOfHeartwood) >= 0).isPresent();
        boolean isTreated = treated.filter(t -> t.compareTo(needed) >= 0).isPresent();
        if (timber.treatment().isPresent() && treated.isEmpty() && !lasts) {
            return new Evaluation.Missing(List.of(useClassMissing(timber, context)));
        }
        if (treated.isEmpty() && natural.isEmpty()) {
            return new Evaluation.Missing(List.of(missing(timber, context)));
        }
        return treated.isPresent() && (isTreated || !lasts)
                ? measured(treated.get(), needed, timber.displayLabel() + ", by treatment")
                : measured(natural.orElseThrow(), neededOfHeartwood, remark(timber));
    }

    private static Evaluation measured(UseClass found, UseClass needed, String remark) {
        return new Evaluation.Measured(
                new Word(found.word()),
                Sense.AT_LEAST,
                new Word(needed.word()),
                found.compareTo(needed) >= 0 ? 0 : 1 + needed.ordinal() - found.ordinal(),
                remark,
                List.of(),
                List.of());
    }

    private static UseClass byNature(NaturalDurability durability, Table table) {
        String heartwoodClass =
                durability.heartwoodOnly() ? Integer.toString(durability.heartwoodClass()) : WITH_SAPWOOD;
        return table.find("heartwoodClass", heartwoodClass)
                .map(row -> useClass(row.word("useClass")))
                .orElseThrow(() -> new IllegalArgumentException(
                        table.source() + " gives no use class for heartwood class " + heartwoodClass));
    }

    private static String remark(Timber timber) {
        boolean heartwoodOnly =
                timber.naturalDurability().map(NaturalDurability::heartwoodOnly).orElse(false);
        return timber.displayLabel() + (heartwoodOnly ? ", by natural durability" : ", with sapwood left");
    }

    private static Need missing(Timber timber, ReviewContext context) {
        Pointer pointer = context.submission().timberPointer(timber.id()).child("treatment");
        return new Need(
                pointer,
                "the use class that " + timber.displayLabel()
                        + " is treated for, for example UC4, or its natural durability if it is untreated");
    }

    private static Need useClassMissing(Timber timber, ReviewContext context) {
        return new Need(
                context.submission()
                        .timberPointer(timber.id())
                        .child("treatment")
                        .child("useClass"),
                "the use class of EN 335 that " + timber.displayLabel() + " is treated for, for example UC4");
    }

    private static UseClass useClass(String word) {
        return Stream.of(UseClass.values())
                .filter(u -> u.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("'" + word + "' is not a use class of EN 335"));
    }
}
