package org.deckplanreview.comparison;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.deckplanreview.assessment.Determination;

/** Comparisons as pages of HTML that stand alone. */
public final class ComparisonPages {
    private ComparisonPages() {}

    @CheckedTemplate(basePath = "comparison")
    static final class Templates {
        private Templates() {}

        static native TemplateInstance differences(EditionDifferences differences, List<Group> groups);

        static native TemplateInstance submission(SubmissionComparison comparison);

        static native TemplateInstance summary(
                ComparisonSummary summary, TransitionChart chart, List<Determination> outcomes);
    }

    /** The provisions of one effect. */
    public record Group(Effect effect, List<ProvisionDifference> provisions) {
        public String id() {
            return effect.name().toLowerCase(Locale.ROOT);
        }
    }

    public static String of(EditionDifferences differences) {
        List<Group> groups = Arrays.stream(Effect.values())
                .map(effect -> new Group(
                        effect,
                        differences.provisions().stream()
                                .filter(p -> p.effect() == effect)
                                .toList()))
                .filter(group -> !group.provisions().isEmpty())
                .toList();
        return Templates.differences(differences, groups).render();
    }

    public static String of(SubmissionComparison comparison) {
        return Templates.submission(comparison).render();
    }

    public static String of(ComparisonSummary summary) {
        return Templates.summary(summary, TransitionChart.of(summary), Tallying.OUTCOMES)
                .render();
    }
}
