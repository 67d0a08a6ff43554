package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.InstanceOfAssertFactories.type;
import static org.deckplanreview.ruleset.EditedFiles.EDITION;

import java.time.LocalDate;
import org.json.JSONObject;
import org.junit.jupiter.api.Test;

/** Editions that bind only where they are adopted, as model codes do. */
class AsAdoptedTest {

    private static final String LATER = "testland/2027.yaml";
    private static final String COUNTY = "testland/amendments/county.yaml";
    private static final String IN_FORCE = "inForce: {from: 2024-10-01}";
    private static final String PUBLISHED = "published: 2023-08-31";

    private static EditedFiles model() {
        EditedFiles good = EditedFiles.good();
        return good.with(EDITION, IN_FORCE, PUBLISHED)
                .with(LATER, good.text(EDITION))
                .with(LATER, "edition: \"2024\"", "edition: \"2027\"")
                .with(LATER, IN_FORCE, "published: 2026-08-31");
    }

    private static String county(String adopts) {
        return "region: testland\namendment: county\ntitle: A county\namends: [\"2024\"]\nadopts: \"" + adopts + "\"\n";
    }

    @Test
    void no_day_picks_one_and_all_are_listed_by_the_day_of_publication() {
        assertThat(model().with(COUNTY, county("2024")).loaded().inForce("testland", LocalDate.of(2030, 1, 1)))
                .asInstanceOf(type(InForce.OnlyAsAdopted.class))
                .satisfies(only -> {
                    assertThat(only.editions()).containsExactly("2024", "2027");
                    assertThat(only.adopting()).extracting(Amendment::name).containsExactly("county");
                });
        assertThat(model().loaded().periods("testland")).isEmpty();
    }

    @Test
    void two_may_be_published_on_one_day() {
        assertThat(model().with(LATER, "published: 2026-08-31", PUBLISHED)
                        .loaded()
                        .all())
                .hasSize(2);
    }

    @Test
    void the_day_of_publication_stands_in_the_canonical_form() {
        Edition edition = model().edition();
        assertThat(edition.binding()).isEqualTo(new Binding.AsAdopted(LocalDate.of(2023, 8, 31)));
        JSONObject canonical = new JSONObject(edition.canonical());
        assertThat(canonical.getString("published")).isEqualTo("2023-08-31");
        assertThat(canonical.has("inForce")).isFalse();
    }

    @Test
    void beside_them_an_edition_by_date_binds_on_its_days() {
        Rulesets mixed = model().with(LATER, "published: 2026-08-31", "inForce: {from: 2026-04-01}")
                .loaded();
        assertThat(mixed.inForce("testland", LocalDate.of(2026, 4, 1)))
                .asInstanceOf(type(InForce.Found.class))
                .satisfies(found -> assertThat(found.edition()).isEqualTo("2027"));
        assertThat(mixed.inForce("testland", LocalDate.of(2026, 3, 31))).isInstanceOf(InForce.NoneThatDay.class);
    }

    @Test
    void an_edition_has_either_day() {
        assertThat(EditedFiles.good()
                        .with(EDITION, IN_FORCE, IN_FORCE + "\n" + PUBLISHED)
                        .fault()
                        .detail())
                .isEqualTo("'inForce' and 'published' stand side by side");
        assertThat(EditedFiles.good().with(EDITION, IN_FORCE + "\n", "").fault().detail())
                .isEqualTo("'inForce' or 'published' is missing");
        assertThat(EditedFiles.good()
                        .with(EDITION, IN_FORCE, "published: 2023-02-30")
                        .fault()
                        .detail())
                .isEqualTo("This is no day of the calendar");
    }

    @Test
    void only_an_edition_that_it_amends_and_that_binds_as_adopted_can_be_adopted() {
        assertThat(model().with(COUNTY, county("2027")).fault().detail())
                .isEqualTo("It adopts an edition that it does not amend");
        assertThat(EditedFiles.good().with(COUNTY, county("2024")).fault().detail())
                .isEqualTo("This edition binds by its date and is not adopted");
    }
}
