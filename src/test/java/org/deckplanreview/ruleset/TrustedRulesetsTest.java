package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.deckplanreview.review.ReviewServices;
import org.deckplanreview.vocabulary.Vocabulary;
import org.junit.jupiter.api.Test;

/** Editions that are read when they are first asked for, against the same ones loaded and checked in full. */
class TrustedRulesetsTest {

    private static final Vocabulary VOCABULARY = ReviewServices.catalogue().vocabulary();

    /** The files that come with the service, and which of them were opened. */
    private static final class Opened implements RulesetFiles {
        private final RulesetFiles files = RulesetFiles.ofClassPath();
        private final Set<String> opened = new TreeSet<>();

        @Override
        public List<String> list() throws IOException {
            return files.list();
        }

        @Override
        public InputStream open(String path) throws IOException {
            opened.add(path);
            return files.open(path);
        }
    }

    @Test
    void each_edition_and_amendment_is_the_one_that_loading_in_full_gives() {
        RulesetFiles files = RulesetFiles.ofClassPath();
        Rulesets checked = ((LoadResult.Loaded) RulesetLoader.load(files, VOCABULARY)).rulesets();
        Rulesets trusted = RulesetLoader.trust(files, VOCABULARY);

        assertThat(trusted.headings()).isEqualTo(checked.headings()).isNotEmpty();
        assertThat(digests(trusted)).isEqualTo(digests(checked));
    }

    private static List<String> digests(Rulesets rulesets) {
        Stream<Edition> amended = rulesets.headings().stream()
                .flatMap(heading -> rulesets.amendments(heading.region()).stream()
                        .filter(amendment -> amendment.amends().contains(heading.name()))
                        .map(amendment -> List.of(amendment.name()))
                        .map(names -> rulesets.edition(heading.region(), heading.name(), names)))
                .map(amending -> ((Amending.Amended) amending.orElseThrow()).edition());
        return Stream.concat(rulesets.all().stream(), amended)
                .map(Edition::digest)
                .toList();
    }

    @Test
    void no_file_is_read_but_headings_and_what_the_edition_builds_on() {
        Opened files = new Opened();
        Rulesets rulesets = RulesetLoader.trust(files, VOCABULARY);
        assertThat(files.opened).isNotEmpty().noneMatch(path -> path.startsWith("common/"));

        Edition england = rulesets.edition("uk-england", "2024").orElseThrow();
        assertThat(files.opened)
                .containsAll(england.bases().stream().map(Edition.Base::path).toList())
                .doesNotContain("common/us-framing.yaml", "standards/irc-2021.yaml")
                .noneMatch(path -> path.contains("/cases/"))
                .noneMatch(path -> path.startsWith("us-irc/tables/"));
    }

    @Test
    void what_has_a_fault_nevertheless_is_not_used() {
        RulesetFiles faulty =
                EditedFiles.good().with("testland/2024.yaml", "inForce: {from: 2024", "inForce: {from: 20x4");
        assertThatThrownBy(() -> RulesetLoader.trust(faulty, TestVocabulary.SMALL))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("testland/2024.yaml");
    }
}
