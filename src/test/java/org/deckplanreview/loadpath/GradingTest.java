package org.deckplanreview.loadpath;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.loadpath.LoadModel.Material;
import org.deckplanreview.submission.SampleDeck;
import org.deckplanreview.submission.Submission;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How timber finds its stiffness, by class or by species and grade, and what is asked for where it finds none. */
class GradingTest {

    private static final Material ANY = new Material(11_000, 690, 420);

    @ParameterizedTest
    @CsvSource({"C24, , ", ", southern-pine, no.2"})
    void a_timber_finds_its_stiffness_by_class_or_by_species_and_grade(
            String strengthClass, String species, String grade) {
        assertThat(material(strengthClass, species, grade, "C24", "southern-pine no.2"))
                .isEqualTo(Derived.known(ANY));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "- | - | - | C24 | strengthClass | the strength class of J, for example C24",
                "- | redwood | no.2 | C24 | strengthClass | the strength class of J, for example C24",
                "C16 | - | - | C24 | strengthClass | a strength class of J that the ruleset has: C24; C16 is none of them",
                "- | - | - | hem-fir no.2 | species | the species and grade of J, for example southern-pine no.2",
                "C24 | - | - | hem-fir no.2 | species | the species and grade of J, for example southern-pine no.2",
                "- | hem-fir | - | hem-fir no.2 | grade | the grade of J, for example no.2",
                "- | hem-fir | no.3 | hem-fir no.2 | species | a species and grade of J that the ruleset has: hem-fir no.2;"
                        + " hem-fir no.3 is none of them",
                "- | - | - | C24,hem-fir no.2 | strengthClass | the strength class of J, for example C24, or its species and"
                        + " grade, for example southern-pine no.2",
            })
    void what_is_asked_for_is_what_the_ruleset_can_use(
            String strengthClass, String species, String grade, String listed, String member, String what) {
        assertThat(material(strengthClass, species, grade, listed.split(",")).needs())
                .containsExactly(new Need(Pointer.of("/timbers/0/" + member), what));
    }

    private static Derived<Material> material(String strengthClass, String species, String grade, String... listed) {
        SampleDeck deck = SampleDeck.complete().without("/timbers/0/strengthClass");
        if (strengthClass != null) {
            deck.with("/timbers/0/strengthClass", strengthClass);
        }
        if (species != null) {
            deck.with("/timbers/0/species", species);
        }
        if (grade != null) {
            deck.with("/timbers/0/grade", grade);
        }
        SortedMap<String, Material> materials = new TreeMap<>();
        Arrays.stream(listed).forEach(name -> materials.put(name, ANY));
        Submission submission = deck.submission();
        LoadModel model = new LoadModel(
                List.of(),
                materials,
                24,
                9.81,
                false,
                1.2,
                0.5,
                OptionalDouble.empty(),
                new LoadModel.OnEdges(0, Derived.known(0.0), Derived.known(0.0), new TreeMap<>()));
        return new Weights(submission, model).material(submission.timbers().get(0));
    }
}
