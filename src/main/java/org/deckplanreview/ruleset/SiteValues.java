package org.deckplanreview.ruleset;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.deckplanreview.kernel.Worded;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.submission.Site;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.vocabulary.Sense;

/** What an authority says of the sites of its area: at least these values hold, whatever a submission states. */
public record SiteValues(List<Local> values) {

    static final SiteValues NONE = new SiteValues(List.of());

    public SiteValues {
        values = List.copyOf(values);
    }

    /** @param setBy name of the amendment that states it */
    public record Local(Member member, Measure value, Citation citation, String setBy) {}

    /** The members of a submission's site that local values are given for. */
    public enum Member implements Worded {
        FROST_DEPTH("frostDepth", "frost depth", MeasureUnit.MILLIMETRE),
        SNOW_LOAD("snowLoad", "snow load on the deck", MeasureUnit.KILONEWTON_PER_SQUARE_METRE),
        GROUND_SNOW_LOAD("groundSnowLoad", "snow load on the ground", MeasureUnit.KILONEWTON_PER_SQUARE_METRE);

        private final String word;
        private final String phrase;
        private final MeasureUnit unit;

        Member(String word, String phrase, MeasureUnit unit) {
            this.word = word;
            this.phrase = phrase;
            this.unit = unit;
        }

        @Override
        public String word() {
            return word;
        }

        /** As sentences write it. */
        public String phrase() {
            return phrase;
        }

        MeasureUnit unit() {
            return unit;
        }

        private Optional<Measure> stated(Site site) {
            return switch (this) {
                case FROST_DEPTH -> site.frostDepth().map(depth -> Measure.mm(depth.mm()));
                case SNOW_LOAD -> site.snowLoad();
                case GROUND_SNOW_LOAD -> site.groundSnowLoad();
            };
        }

        private Site with(Site site, Measure value) {
            return switch (this) {
                case FROST_DEPTH -> site.withFrostDepth(Length.ofMm(value.in(MeasureUnit.MILLIMETRE)));
                case SNOW_LOAD -> site.withSnowLoad(value);
                case GROUND_SNOW_LOAD -> site.withGroundSnowLoad(value);
            };
        }
    }

    /**
     * A submission as it is reviewed.
     *
     * @param assumptions each local value that was taken, in words
     */
    public record Localised(Submission submission, List<String> assumptions) {
        public Localised {
            assumptions = List.copyOf(assumptions);
        }
    }

    /** The submission with each local value where it states none or less. */
    public Localised over(Submission submission) {
        Site site = submission.site();
        List<String> assumptions = new ArrayList<>();
        for (Local local : values) {
            Optional<Measure> stated = local.member().stated(site);
            MeasureUnit unit = local.value().unit();
            if (stated.filter(
                            s -> Sense.AT_LEAST.holds(s.in(unit), local.value().value()))
                    .isEmpty()) {
                site = local.member().with(site, local.value());
                assumptions.add(text(local, stated));
            }
        }
        return new Localised(assumptions.isEmpty() ? submission : submission.with(site), assumptions);
    }

    private static String text(Local local, Optional<Measure> stated) {
        String phrase = local.member().phrase();
        return phrase.substring(0, 1).toUpperCase(Locale.ROOT) + phrase.substring(1) + ": "
                + Phrases.of(local.value()) + ", the local value of the amendment " + local.setBy() + " ("
                + local.citation().text() + "). The submission states "
                + (stated.isPresent() ? "less; the local value is used." : "none.");
    }
}
