package org.deckplanreview.method.foundation;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The values that footings are reviewed with, against the documents that print them. */
class ValuesOnFileTest {

    @Test
    void presumed_bearing_values_are_the_low_ends_of_the_printed_ranges() throws IOException {
        assertThat(rows("bs8004-1986", "presumedBearing"))
                .as(
                        "BS 8004:1986, Table 1, kN/m2: > 600; 200 to 600; > 300; 100 to 300; 300 to 600; 150 to 300; 75 to 150."
                                + " Ranges without a low end (loose gravel < 200, loose sand < 100, soft clay < 75) give no value.")
                .containsExactly(
                        "dense-gravel 600",
                        "medium-dense-gravel 200",
                        "compact-sand 300",
                        "medium-dense-sand 100",
                        "hard-clay 300",
                        "stiff-clay 150",
                        "firm-clay 75");
    }

    @Test
    void clay_depths_grow_with_the_volume_change() throws IOException {
        assertThat(rows("ad-a-2013", "clayDepth"))
                .as("Approved Document A 2013, 2E4, mm, from memory: 0.75 m, 0.9 m and 1.0 m")
                .containsExactly("low 750", "medium 900", "high 1000");
    }

    @Test
    void frost_asks_for_450_mm() throws IOException {
        assertThat(standard("ad-a-2013").at("/values/leastFrostDepth/value").asText())
                .as("Approved Document A 2013, 2E4, from memory: 0.45 m")
                .isEqualTo("450 mm");
    }

    private static List<String> rows(String standard, String table) throws IOException {
        List<String> rows = new ArrayList<>();
        for (JsonNode row : standard(standard).at("/tables/" + table + "/rows")) {
            rows.add(row.get(0).asText() + " " + row.get(1).asText());
        }
        return rows;
    }

    private static JsonNode standard(String name) throws IOException {
        try (InputStream in = ValuesOnFileTest.class.getResourceAsStream("/rulesets/standards/" + name + ".yaml")) {
            return new YAMLMapper().readTree(in);
        }
    }
}
