package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.deckplanreview.ruleset.ConfirmationCounts;
import org.deckplanreview.ruleset.Edition;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The table of editions in the README, against the editions that are built in. {@code mvn test -Dtest=ReadmeTest
 * -Dapprove=true} writes the shares anew.
 */
class ReadmeTest {

    private static final Path README = Path.of("README.md");
    private static final Pattern ROW =
            Pattern.compile("^\\| `([a-z-]+)` \\| ([0-9, ]+) \\| ([^|]+) \\|", Pattern.MULTILINE);

    @BeforeAll
    static void approve() throws IOException {
        if (Boolean.getBoolean("approve")) {
            String text = Files.readString(README);
            Matcher row = ROW.matcher(text);
            Files.writeString(
                    README,
                    row.replaceAll(r -> Matcher.quoteReplacement(
                            "| `" + r.group(1) + "` | " + r.group(2) + " | " + shares(r.group(1), r.group(2)) + " |")));
        }
    }

    private static List<String> editions(String cell) {
        return Arrays.stream(cell.split(",")).map(String::strip).toList();
    }

    private static String shares(String region, String editions) {
        return editions(editions).stream()
                .map(name -> ConfirmationCounts.of(
                                        BuiltIn.RULESETS.edition(region, name).orElseThrow())
                                .percentFromMemory()
                        + " %")
                .collect(Collectors.joining(", "));
    }

    @Test
    void every_edition_has_its_share_of_values_from_memory() throws IOException {
        Matcher row = ROW.matcher(Files.readString(README));
        int rows = 0;
        while (row.find()) {
            rows++;
            assertThat(row.group(3))
                    .as("values from memory of %s %s", row.group(1), row.group(2))
                    .isEqualTo(shares(row.group(1), row.group(2)));
        }
        assertThat(rows).isEqualTo((int)
                BuiltIn.RULESETS.all().stream().map(Edition::region).distinct().count());
    }

    @Test
    void every_edition_that_is_built_in_stands_in_the_table() throws IOException {
        Map<String, List<String>> stated = ROW.matcher(Files.readString(README))
                .results()
                .collect(Collectors.toMap(r -> r.group(1), r -> editions(r.group(2))));
        Map<String, List<String>> builtIn = BuiltIn.RULESETS.all().stream()
                .collect(
                        Collectors.groupingBy(Edition::region, Collectors.mapping(Edition::name, Collectors.toList())));
        assertThat(stated.keySet()).isEqualTo(builtIn.keySet());
        builtIn.forEach((region, names) ->
                assertThat(stated.get(region)).as(region).containsExactlyInAnyOrderElementsOf(names));
    }
}
