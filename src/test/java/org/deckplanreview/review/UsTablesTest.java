package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.deckplanreview.assessment.DeckUnderEdition;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.method.nds2018.Nds2018;
import org.deckplanreview.quantity.Quantities;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.vocabulary.QuantityDescription;
import org.deckplanreview.vocabulary.Sense;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each cell of the tables for decks in the International Residential Code, editions 2015, 2018, 2021 and 2024, as
 * adoptions of it by states print it (secondary pages: two adoptions of 2015, three of 2018, eight of 2021, four of 2024):
 * what a deck comes to at the cell, and a sixteenth of an inch beyond it. Species of one group take turns. The
 * files hold the tables as printed; print errors stand in {@link #READ_AS} with how they are read.
 */
class UsTablesTest {

    private static final Map<String, DeckUnderEdition> DECK = BuiltIn.RULESETS.all().stream()
            .filter(edition -> edition.region().equals("us-irc"))
            .collect(Collectors.toMap(Edition::name, UsTablesTest::sampleUnder));
    private static final double SIXTEENTH_IN = 0.0625;
    private static final String NOT_PERMITTED = "NP";

    /**
     * Cells that are not as printed, by file, what the row is of and column. Of the first two the printed value is unsafe:
     * 4-11 stands as 4-7 from 2021 on, and 12-2 is more than 2-2x12 may span. The others are no lengths; they are as the
     * 2024 edition prints them.
     */
    private static final Map<String, String> READ_AS = Map.of(
            "irc-2018-r507.5-beams SP 1-2x6 6", "4-7",
            "irc-2024-r507.5-beams 40 RW_WC_PP_RP 2-2x10 c1", "10-2",
            "irc-2021-r507.5-beams 50 RW_WC_PP_RP 3-2x8 14", "6-4",
            "irc-2021-r507.5-beams 60 RW_WC_PP_RP 3-2x8 10", "6-11",
            "irc-2021-r507.5-beams 60 RW_WC_PP_RP 3-2x8 14", "5-10");

    private static final Map<String, List<String>> SPECIES = Map.of(
            "SP", List.of("southern-pine"),
            "DFL_HF_SPF", List.of("douglas-fir-larch", "hem-fir", "spruce-pine-fir"),
            "RW_WC_PP_RP", List.of("redwood", "western-cedars", "ponderosa-pine", "red-pine"),
            "MIXED",
                    List.of(
                            "douglas-fir-larch",
                            "hem-fir",
                            "spruce-pine-fir",
                            "redwood",
                            "western-cedars",
                            "ponderosa-pine",
                            "red-pine"));

    /** Joist span in ft and cantilever in ft of each column of the tables of beams of 2024, as every adoption heads them. */
    private static final Map<String, List<double[]>> COLUMNS_OF_2024 = Map.of(
            "c1", List.of(pair(6, 0)),
            "c2", List.of(pair(6, 1.5), pair(8, 0)),
            "c3", List.of(pair(8, 1), pair(10, 0)),
            "c4", List.of(pair(8, 2), pair(10, 1), pair(12, 0)),
            "c5", List.of(pair(10, 2.5), pair(12, 1), pair(14, 0)),
            "c6", List.of(pair(12, 2), pair(14, 1), pair(16, 0)),
            "c7", List.of(pair(12, 3), pair(14, 2), pair(16, 1), pair(18, 0)),
            "c8", List.of(pair(14, 3.5), pair(16, 2.5), pair(18, 1)),
            "c9", List.of(pair(18, 3)),
            "c10", List.of(pair(18, 4.5)));

    private static double[] pair(double joistSpanFt, double cantileverFt) {
        return new double[] {joistSpanFt, cantileverFt};
    }

    private static DeckUnderEdition sampleUnder(Edition edition) {
        Submission deck = BuiltIn.submission(BuiltIn.sample("us-attached-deck.json"));
        return new DeckUnderEdition(deck, edition, Quantities.all(), Nds2018.methods());
    }

    /** One cell of a table and what a deck must have to be found in it. */
    private record Probe(
            String edition,
            String provision,
            Map<String, String> given,
            String quantity,
            Sense sense,
            String allowed,
            String cell) {

        /** The same with more of what the deck must have. */
        Probe with(String name, String token) {
            Map<String, String> more = new LinkedHashMap<>(given);
            more.put(name, token);
            return new Probe(edition, provision, more, quantity, sense, allowed, cell);
        }

        DynamicTest test() {
            return dynamicTest(edition + " " + provision + ": " + cell + ": " + allowed, this::check);
        }

        private void check() {
            if (allowed.equals(NOT_PERMITTED)) {
                assertThat(at(MeasureUnit.FOOT, 1)).containsOnly(Determination.DOES_NOT_COMPLY);
                return;
            }
            double limit = inches(allowed);
            double beyond = sense == Sense.AT_MOST ? SIXTEENTH_IN : -SIXTEENTH_IN;
            assertThat(at(MeasureUnit.INCH, limit)).containsOnly(Determination.COMPLIES);
            assertThat(at(MeasureUnit.INCH, limit + beyond)).containsOnly(Determination.DOES_NOT_COMPLY);
        }

        private List<Determination> at(MeasureUnit unit, double value) {
            Map<String, Value> values = new LinkedHashMap<>();
            given.forEach((name, token) -> values.put(name, value(name, token)));
            values.put(quantity, Measure.of(value, unit));
            return DECK.get(edition).determinations(provision, values);
        }

        private static double inches(String cell) {
            String[] parts = cell.split("-");
            return parts.length == 1
                    ? Double.parseDouble(cell)
                    : 12 * Double.parseDouble(parts[0]) + Double.parseDouble(parts[1]);
        }
    }

    /** A cell as printed, with what stands before it in its row. */
    private record Cell(String file, Map<String, String> row, String column, String printed, int number) {

        String value() {
            return READ_AS.getOrDefault(file + " " + name(), printed);
        }

        String name() {
            return String.join(" ", row.values()) + " " + column;
        }

        String species() {
            List<String> all = SPECIES.get(row.get("group"));
            return all.get(number % all.size());
        }

        String load() {
            return row.getOrDefault("load", "20") + " psf";
        }

        Probe probe(String edition, String provision, String quantity, Sense sense) {
            return new Probe(edition, provision, Map.of(), quantity, sense, value(), file + " " + name())
                    .with("ground snow load", load());
        }

        /** Of lumber, for a table with groups of species and sizes, that carries no more than the table assumes. */
        Probe ofLumber(String edition, String provision, String quantity, String nominal) {
            String[] sides = nominal.split("x");
            return probe(edition, provision, quantity, Sense.AT_MOST)
                    .with("equivalent load", load())
                    .with("load at the tip of overhang", "220 lbf")
                    .with("species", species())
                    .with("section breadth", dressed(sides[0]) + " in")
                    .with("section depth", dressed(sides[1]) + " in");
        }

        /** American Softwood Lumber Standard PS 20: half an inch less up to 6 in nominal, three quarters beyond. */
        private static double dressed(String nominal) {
            double inches = Double.parseDouble(nominal);
            return inches > 6 ? inches - 0.75 : inches - 0.5;
        }

        /** A beam for each that the row is for, such as 3x6or2-2x6. */
        Stream<Probe> ofBeams(String edition, String provision) {
            return Stream.of(row.get("size").split("or")).map(size -> {
                String[] parts = size.split("-");
                String plies = parts.length == 1 ? "1" : parts[0];
                return ofLumber(edition, provision, "beam span", parts[parts.length - 1])
                        .with("plies", plies);
            });
        }
    }

    /** @param lead how many columns stand before the cells */
    private static Stream<Cell> cells(String file, int lead) {
        List<Cell> cells = new ArrayList<>();
        List<String> lines = lines(file);
        String[] header = lines.get(0).split(",");
        for (String line : lines.subList(1, lines.size())) {
            String[] row = line.split(",");
            Map<String, String> before = new LinkedHashMap<>();
            IntStream.range(0, lead).forEach(i -> before.put(header[i], row[i]));
            for (int i = lead; i < header.length; i++) {
                cells.add(new Cell(file, before, header[i], row[i], cells.size()));
            }
        }
        return cells.stream();
    }

    private static List<String> lines(String file) {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                UsTablesTest.class.getResourceAsStream("published-us-tables/" + file + ".csv"),
                StandardCharsets.UTF_8))) {
            return reader.lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }

    private static Stream<DynamicTest> tests(Stream<Cell> cells, Function<Cell, Stream<Probe>> probes) {
        return cells.flatMap(probes).map(Probe::test);
    }

    private static Stream<DynamicTest> lateEditions(
            String file, int lead, BiFunction<Cell, String, Stream<Probe>> probes) {
        return Stream.of("2021", "2024").flatMap(edition -> tests(cells(file, lead), c -> probes.apply(c, edition)));
    }

    /** R507.5 and R507.6 of 2015. */
    @TestFactory
    Stream<DynamicTest> joists_of_2015() {
        return Stream.concat(
                tests(
                        cells("irc-2015-r507.5-joists-without-cantilever", 2),
                        c -> Stream.of(c.ofLumber(
                                        "2015",
                                        "joist.span",
                                        "joist span",
                                        c.row().get("size"))
                                .with("joist spacing", c.column() + " in")
                                .with("joist overhang", "0 in"))),
                tests(
                        cells("irc-2015-r507.5-joists-with-cantilever", 2),
                        c -> Stream.of(c.ofLumber(
                                        "2015",
                                        "joist.span-overhanging",
                                        "joist span",
                                        c.row().get("size"))
                                .with("joist spacing", c.column() + " in")
                                .with("joist overhang", "12 in"))));
    }

    /** Table R507.6 of 2015, Table R507.5 of 2018 and Tables R507.5(1) to (4) of 2021, at an overhang of one fourth. */
    @TestFactory
    Stream<DynamicTest> beams_of_2015_to_2021() {
        return Stream.of(
                        tests(
                                cells("irc-2015-r507.6-beams", 2),
                                c -> c.ofBeams("2015", "beam.span")
                                        .map(p -> p.with("joist span carried", c.column() + " ft"))),
                        tests(
                                cells("irc-2018-r507.5-beams", 2),
                                c -> c.ofBeams("2018", "beam.span")
                                        .map(p -> p.with("joist span carried", c.column() + " ft"))),
                        tests(
                                cells("irc-2021-r507.5-beams", 3),
                                c -> c.ofBeams("2021", "beam.span")
                                        .map(p -> p.with("joist span carried", c.column() + " ft")
                                                .with("joist overhang over span carried", "0.25"))))
                .flatMap(all -> all);
    }

    /** Tables R507.5(1) to (4) of 2024: every joist span and cantilever that a column is headed with. */
    @TestFactory
    Stream<DynamicTest> beams_of_2024() {
        return tests(
                cells("irc-2024-r507.5-beams", 3),
                c -> COLUMNS_OF_2024.get(c.column()).stream()
                        .flatMap(pair -> c.ofBeams("2024", pair[1] == 0 ? "beam.span" : "beam.span-overhanging")
                                .map(p -> p.with("joist span carried", pair[0] + " ft")
                                        .with("joist overhang carried", pair[1] + " ft"))));
    }

    /** Table R507.6 of 2018, of 2021 and of 2024, whose spans are alike in the last two. */
    @TestFactory
    Stream<DynamicTest> joists_from_2018_on() {
        return Stream.concat(
                tests(
                        cells("irc-2018-r507.6-joists", 2),
                        c -> Stream.of(c.ofLumber(
                                        "2018",
                                        "joist.span",
                                        "joist span",
                                        c.row().get("size"))
                                .with("joist spacing", c.column() + " in"))),
                lateEditions(
                        "irc-2021-2024-r507.6-joists",
                        3,
                        (c, edition) -> Stream.of(c.ofLumber(
                                        edition,
                                        "joist.span",
                                        "joist span",
                                        c.row().get("size"))
                                .with("joist spacing", c.column() + " in"))));
    }

    /** Table R507.6: greatest cantilevers, by spacing in 2018, by load and back span from 2021 on. */
    @TestFactory
    Stream<DynamicTest> cantilevers() {
        return Stream.concat(
                tests(
                        cells("irc-2018-r507.6-cantilevers", 2),
                        c -> Stream.of(c.ofLumber(
                                        "2018",
                                        "joist.overhang-table",
                                        "joist overhang",
                                        c.row().get("size"))
                                .with("joist spacing", c.column() + " in"))),
                lateEditions(
                        "irc-2021-2024-r507.6-cantilevers",
                        3,
                        (c, edition) -> Stream.of(c.ofLumber(
                                        edition,
                                        "joist.overhang-table",
                                        "joist overhang",
                                        c.row().get("size"))
                                .with("span beside overhang", c.column() + " ft"))));
    }

    /** Table R507.4 of 2021 and 2024. */
    @TestFactory
    Stream<DynamicTest> posts_from_2021_on() {
        return lateEditions(
                "irc-2021-2024-r507.4-posts",
                3,
                (c, edition) -> Stream.of(c.ofLumber(
                                edition,
                                "post.height",
                                "post height under beam",
                                c.row().get("size"))
                        .with("tributary area", c.column() + " ft2")));
    }

    /** Table R507.8 of 2015 and Table R507.4 of 2018, whose 4x4 rows are for one or two plies and for three. */
    @ParameterizedTest
    @CsvSource({
        "2015, 4x4, 1, 8-0",
        "2015, 4x6, 3, 8-0",
        "2015, 6x6, 3, 14-0",
        "2018, 4x4, 1, 8-0",
        "2018, 4x4, 2, 8-0",
        "2018, 4x4, 3, 6-9",
        "2018, 4x6, 3, 8-0",
        "2018, 6x6, 1, 14-0",
        "2018, 6x6, 3, 14-0",
        "2018, 8x8, 2, 14-0"
    })
    void posts_of_2015_and_2018(String edition, String size, String plies, String height) {
        new Cell("posts", Map.of("group", "SP"), size, height, 0)
                .ofLumber(edition, "post.height", "post height under beam", size)
                .with("plies carried", plies)
                .check();
    }

    /** Table R507.3.1 of 2018, of 2021 and of 2024; 3000 is for 3,000 psf and more. */
    @TestFactory
    Stream<DynamicTest> footings() {
        return Stream.concat(
                tests(cells("irc-2018-r507.3.1-footings", 2), c -> Stream.of(footing(c, "2018"))),
                lateEditions("irc-2021-2024-r507.3.1-footings", 2, (c, edition) -> Stream.of(footing(c, edition))));
    }

    private static Probe footing(Cell c, String edition) {
        String[] column = c.column().split("_");
        String[] asked =
                switch (column[0]) {
                    case "side" -> new String[] {"footing.side", "footing side", "rectangular"};
                    case "dia" -> new String[] {"footing.diameter", "footing diameter", "round"};
                    default -> new String[] {"footing.thickness", "footing thickness", "round"};
                };
        return c.probe(edition, asked[0], asked[1], Sense.AT_LEAST)
                .with("tributary area", c.row().get("tributary") + " ft2")
                .with("bearing resistance", column[1] + " psf")
                .with("footing shape", asked[2]);
    }

    /** Table R507.2 of 2015, which is that of 2018, Table R507.9.1.3(1) of 2018, of 2021 and of 2024, which are alike. */
    @TestFactory
    Stream<DynamicTest> ledger_fasteners() {
        return tests(
                cells("irc-all-r507.9.1.3-ledger-fasteners", 3),
                c -> (c.row().get("edition").equals("2018") ? Stream.of("2015", "2018") : Stream.of("2021", "2024"))
                        .map(edition -> fasteners(c, edition)));
    }

    private static Probe fasteners(Cell c, String edition) {
        String fixing = c.row().get("fixing");
        return c.probe(edition, "ledger.fastener-spacing", "ledger fixing spacing", Sense.AT_MOST)
                .with("ledger fixing kind", fixing.equals("lag") ? "lag-screw" : "bolt")
                .with("ledger distance from band joist", fixing.equals("bolt1") ? "1 in" : "0.5 in")
                .with("joist span carried", c.column() + " ft");
    }

    private static Value value(String quantity, String token) {
        QuantityDescription described = BuiltIn.VOCABULARY.quantity(quantity).orElseThrow();
        return switch (described.type()) {
            case NUMBER -> Measure.parse(token);
            case WORD -> new Word(token);
            default -> new Flag(Boolean.parseBoolean(token));
        };
    }
}
