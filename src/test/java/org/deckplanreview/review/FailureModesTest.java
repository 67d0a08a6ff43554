package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.Provision;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Every way in which a deck fails has something that looks at it in every edition: a provision, the words of a caution,
 * referral or note, or a drawing that is refused. {@code -Dapprove=true} writes the table that contributors read anew.
 */
class FailureModesTest {

    private static final Path MODES = Path.of("src/docs/failure-modes.yaml");
    private static final Path TABLE = Path.of("src/docs/failure-modes.md");
    private static final String TESTS = "org.deckplanreview.submission.";
    private static final List<String> TESTS_OF_REFUSALS = List.of("MisfitsTest", "PiecesTest");

    private static List<Group> groups;
    private static List<Mode> modes;
    private static List<Edition> editions;

    private record Group(String title, List<Mode> modes) {}

    private record Mode(String id, String fails, Looks uk, Looks us, List<String> refused) {
        Looks in(Edition edition) {
            return edition.region().startsWith("uk-") ? uk : us;
        }
    }

    /**
     * @param provisions their ids
     * @param says words that a report prints
     */
    private record Looks(List<String> provisions, List<String> says) {}

    @BeforeAll
    static void read() throws IOException {
        groups = new ArrayList<>();
        for (JsonNode group : new YAMLMapper().readTree(MODES.toFile()).get("groups")) {
            groups.add(new Group(
                    group.get("title").asText(),
                    StreamSupport.stream(group.get("modes").spliterator(), false)
                            .map(FailureModesTest::mode)
                            .toList()));
        }
        modes = groups.stream().flatMap(g -> g.modes().stream()).toList();
        editions = BuiltIn.RULESETS.all();
    }

    private static Mode mode(JsonNode node) {
        return new Mode(
                node.get("mode").asText(),
                node.get("fails").asText(),
                new Looks(words(node, "uk"), words(node, "ukSays")),
                new Looks(words(node, "us"), words(node, "usSays")),
                words(node, "refused"));
    }

    private static List<String> words(JsonNode node, String member) {
        return StreamSupport.stream(node.path(member).spliterator(), false)
                .map(JsonNode::asText)
                .toList();
    }

    @Test
    void modes_are_numbered_through_in_their_groups() {
        List<String> numbers = new ArrayList<>();
        for (int g = 0; g < groups.size(); g++) {
            for (int m = 0; m < groups.get(g).modes().size(); m++) {
                numbers.add((g + 1) + "." + (m + 1));
            }
        }
        assertThat(modes).extracting(Mode::id).isEqualTo(numbers);
    }

    @Test
    void every_edition_looks_at_every_mode() {
        List<String> unseen = new ArrayList<>();
        for (Edition edition : editions) {
            Set<String> ids = edition.provisions().stream().map(Provision::id).collect(Collectors.toSet());
            for (Mode mode : modes) {
                boolean looks = !mode.refused().isEmpty()
                        || mode.in(edition).provisions().stream().anyMatch(ids::contains)
                        || mode.in(edition).says().stream()
                                .anyMatch(w -> said(edition, w).isPresent());
                if (!looks) {
                    unseen.add(edition.region() + "/" + edition.name() + " " + mode.id() + " " + mode.fails());
                }
            }
        }
        assertThat(unseen).isEmpty();
    }

    @Test
    void what_is_named_is_there() {
        List<String> unknown = new ArrayList<>();
        for (Mode mode : modes) {
            unknown(mode.id(), mode.uk(), "uk-", unknown);
            unknown(mode.id(), mode.us(), "us-", unknown);
            mode.refused().stream()
                    .filter(t -> !testsOfRefusals().contains(t))
                    .forEach(t -> unknown.add(mode.id() + " test " + t));
        }
        assertThat(unknown).isEmpty();
    }

    private static void unknown(String mode, Looks looks, String region, List<String> unknown) {
        List<Edition> there =
                editions.stream().filter(e -> e.region().startsWith(region)).toList();
        looks.provisions().stream()
                .filter(id ->
                        there.stream().flatMap(e -> e.provisions().stream()).noneMatch(p -> p.id().equals(id)))
                .forEach(id -> unknown.add(mode + " provision " + id + " in " + region));
        looks.says().stream()
                .filter(w -> there.stream().noneMatch(e -> said(e, w).isPresent()))
                .forEach(w -> unknown.add(mode + " words '" + w + "' in " + region));
    }

    private static Set<String> testsOfRefusals() {
        Set<String> names = new TreeSet<>();
        for (String test : TESTS_OF_REFUSALS) {
            try {
                Class<?> type = Class.forName(TESTS + test);
                Stream.concat(Stream.of(type), Stream.of(type.getDeclaredClasses()))
                        .flatMap(c -> Stream.of(c.getDeclaredMethods()))
                        .map(Method::getName)
                        .forEach(names::add);
            } catch (ClassNotFoundException e) {
                throw new AssertionError(e);
            }
        }
        return names;
    }

    /** What an edition's reports print with those words: a caution, a referral, or a note. */
    private static Optional<String> said(Edition edition, String words) {
        return Stream.of(
                        kind("caution", edition.cautions().stream()),
                        kind("referral", edition.referrals().stream()),
                        kind("note", edition.notes().stream()),
                        kind("caution", edition.provisions().stream().flatMap(p -> p.caution().stream())),
                        kind("referral", edition.provisions().stream().flatMap(p -> p.referral().stream())))
                .flatMap(s -> s)
                .filter(s -> s.contains(words))
                .map(s -> s.substring(0, s.indexOf(':')))
                .findFirst();
    }

    private static Stream<String> kind(String kind, Stream<String> texts) {
        return texts.map(t -> kind + ": " + t);
    }

    @Test
    void the_table_for_contributors_is_the_one_that_follows() throws IOException {
        String table = table();
        if (Boolean.getBoolean("approve")) {
            Files.writeString(TABLE, table);
        }
        assertThat(Files.readString(TABLE, StandardCharsets.UTF_8))
                .as("written anew by mvn test -Dtest=FailureModesTest -Dapprove=true")
                .isEqualTo(table);
    }

    private static String table() {
        StringBuilder out = new StringBuilder("""
                # Ways in which a deck fails, and what looks at each

                Generated from `failure-modes.yaml` and the rulesets; a test fails where it is stale or a row is empty.
                *Refused* is a submission that is not accepted because it draws this. Words in quotation marks are found in
                the cautions, referrals or notes of a report.
                """);
        for (int g = 0; g < groups.size(); g++) {
            out.append("\n## ")
                    .append(g + 1)
                    .append(' ')
                    .append(groups.get(g).title())
                    .append("\n\n| | How it fails | United Kingdom | United States |\n|---|---|---|---|\n");
            groups.get(g)
                    .modes()
                    .forEach(m -> out.append("| ")
                            .append(m.id())
                            .append(" | ")
                            .append(m.fails())
                            .append(" | ")
                            .append(cell(m, m.uk(), "uk-"))
                            .append(" | ")
                            .append(cell(m, m.us(), "us-"))
                            .append(" |\n"));
        }
        return out.toString();
    }

    private static String cell(Mode mode, Looks looks, String region) {
        List<String> parts = new ArrayList<>();
        if (!mode.refused().isEmpty()) {
            parts.add("refused");
        }
        looks.provisions().forEach(p -> parts.add("`" + p + "`"));
        looks.says()
                .forEach(w -> editions.stream()
                        .filter(e -> e.region().startsWith(region))
                        .flatMap(e -> said(e, w).stream())
                        .findFirst()
                        .ifPresent(kind -> parts.add(kind + " “" + w + "”")));
        return String.join(", ", parts);
    }
}
