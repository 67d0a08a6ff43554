package org.deckplanreview.report;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.assessment.Finding;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.measure.Value;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.Figure;
import org.deckplanreview.ruleset.Figures;
import org.deckplanreview.ruleset.Provision;
import org.deckplanreview.ruleset.Rule;
import org.deckplanreview.ruleset.ShownFigure;
import org.deckplanreview.ruleset.Wording;
import org.deckplanreview.vocabulary.Vocabulary;

/** Texts of provisions with the figures that count for a finding, in a report's units. */
final class FilledTexts {

    private final Figures figures;
    private final UnitSystem units;

    FilledTexts(Edition edition, Vocabulary vocabulary, UnitSystem units) {
        this.figures = new Figures(edition.provisions(), vocabulary);
        this.units = units;
    }

    Optional<String> advice(Finding finding) {
        return Optional.of(finding.provision().advice())
                .filter(text -> !text.isBlank())
                .map(text -> filled(text, finding));
    }

    Optional<String> caution(Finding finding) {
        return finding.provision().caution().map(text -> filled(text, finding));
    }

    Optional<String> referral(Finding finding) {
        return finding.provision().referral().map(text -> filled(text, finding));
    }

    private String filled(String text, Finding finding) {
        return Wording.of(text).filled(place -> shown(place, finding));
    }

    private String shown(Wording.Place place, Finding finding) {
        Provision provision = finding.provision();
        boolean isOwnLimit = place.name().equals(Figures.LIMIT);
        Figure figure = isOwnLimit ? limit(finding) : stated(place.name(), provision);
        boolean isComputed = isOwnLimit && !(provision.rule() instanceof Rule.Limit);
        return figure.values().isEmpty() ? Figures.UNTOLD : ShownFigure.in(units, figure, place.isRatio(), isComputed);
    }

    /** What counts for the finding; where nobody looked, what the provision states for all cases. */
    private Figure limit(Finding finding) {
        Provision provision = finding.provision();
        Figure stated = stated(Figures.LIMIT, provision);
        List<Value> counts = finding.mayCount().isEmpty() ? stated.values() : finding.mayCount();
        return new Figure(
                provision.rule() instanceof Rule.Limit
                        ? stated.sense()
                        : finding.sense().orElse(stated.sense()),
                counts);
    }

    private Figure stated(String name, Provision provision) {
        return figures.find(provision, name)
                .orElseThrow(
                        () -> new IllegalStateException("The loader lets no text of '" + provision.id() + "' name it"));
    }
}
