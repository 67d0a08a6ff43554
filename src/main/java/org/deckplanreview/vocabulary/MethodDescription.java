package org.deckplanreview.vocabulary;

import java.util.List;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.submission.SubjectKind;

/**
 * A calculation that provisions may name.
 *
 * @param name document and check, for example {@code en1995.bending}
 * @param source the document and edition whose equations it implements
 * @param quantity what it measures, in plain words
 * @param unit of what it measures
 * @param subjects the kinds of subject it can look at
 * @param parameters what the ruleset must give
 * @param definition in one or two sentences, with the equation numbers
 */
public record MethodDescription(
        String name,
        String source,
        String quantity,
        MeasureUnit unit,
        List<SubjectKind> subjects,
        List<ParameterDescription> parameters,
        String definition) {}
