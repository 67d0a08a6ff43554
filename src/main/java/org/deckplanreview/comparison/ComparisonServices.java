package org.deckplanreview.comparison;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.deckplanreview.review.Editions;
import org.deckplanreview.review.Reviewer;
import org.deckplanreview.vocabulary.Vocabulary;

/** Puts the comparison together from the review. */
@ApplicationScoped
class ComparisonServices {
    @Produces
    @Singleton
    Comparisons comparisons(Reviewer reviewer, Editions editions, Vocabulary vocabulary) {
        return new Comparisons(reviewer, editions, vocabulary);
    }
}
