package org.deckplanreview.method;

import java.util.LinkedHashMap;
import java.util.Map;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.loadpath.ActionForces;
import org.deckplanreview.loadpath.LiftForces;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.loadpath.MemberAnalysis;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Table;

/** What single timbers of C24, guards and stairs are calculated with, written down from the documents that the tests name. */
public final class TimberParameters {

    /** For checks that take no load from the deck. */
    public static final LoadPath NO_LOADS = new NoLoads();

    private TimberParameters() {}

    public static Parameters parameters() {
        return new GivenParameters()
                .with("loadDuration", "short-term")
                .with("gammaM", "1.3")
                .with("guardLoadHeight", "1100 mm")
                .with("guardDeflectionLimit", "25 mm")
                .with("stairPermanentLoad", "0.5 kN/m2")
                .word("serviceClass", "3")
                .rows("kmod", row("serviceClass", "@3", "duration", "short-term", "kmod", "0.7"))
                .rows(
                        "strengthClasses",
                        row(
                                "class",
                                "C24",
                                "kind",
                                "softwood",
                                "fmk",
                                "24 N/mm2",
                                "fc90k",
                                "2.5 N/mm2",
                                "fvk",
                                "4 N/mm2",
                                "e0Mean",
                                "11000 N/mm2",
                                "e005",
                                "7400 N/mm2",
                                "gMean",
                                "690 N/mm2",
                                "rhoK",
                                "350 kg/m3",
                                "ft0k",
                                "14.5 N/mm2",
                                "fc0k",
                                "21 N/mm2",
                                "rhoMean",
                                "420 kg/m3"))
                .rows(
                        "combinations",
                        row("state", "ultimate", "leading", "imposed", "permanent", "1.35", "imposed", "1.5"))
                .rows(
                        "guardLoads",
                        row(
                                "occupancy",
                                "single-dwelling",
                                "line",
                                "0.74 kN/m",
                                "infill",
                                "1 kN/m2",
                                "infillPoint",
                                "0.5 kN"),
                        row("occupancy", "public", "line", "3 kN/m", "infill", "1.5 kN/m2", "infillPoint", "1.5 kN"))
                .rows("guardWeights", row("infill", "balusters", "weight", "0.3 kN/m"))
                .rows(
                        "stairLoads",
                        row("occupancy", "single-dwelling", "uniform", "2.5 kN/m2", "concentrated", "2 kN"),
                        row("occupancy", "public", "uniform", "5 kN/m2", "concentrated", "3.6 kN"));
    }

    /** Columns and cells in turn; {@code @} marks a word that starts with a digit. */
    private static Table.Row row(String... columnsAndCells) {
        Map<String, Value> cells = new LinkedHashMap<>();
        for (int i = 0; i < columnsAndCells.length; i += 2) {
            String cell = columnsAndCells[i + 1];
            cells.put(
                    columnsAndCells[i],
                    Character.isDigit(cell.charAt(0)) ? Measure.parse(cell) : new Word(cell.replace("@", "")));
        }
        return new Table.Row(cells);
    }

    private static final class NoLoads implements LoadPath {
        @Override
        public Derived<Sheet> areaLoads(int platformIndex) {
            return Derived.missing(Pointer.of("/platforms/0/boards"), "the boards");
        }

        private static <T> Derived<T> none() {
            throw new AssertionError("No load of the deck enters here");
        }

        @Override
        public Derived<MemberAnalysis> member(Member member) {
            return none();
        }

        @Override
        public Derived<BoardLoads> boards(BoardField boards) {
            return none();
        }

        @Override
        public Derived<ActionForces> post(PostPlace post) {
            return none();
        }

        @Override
        public Derived<LiftForces> lift(PostPlace post) {
            return none();
        }

        @Override
        public Derived<LiftForces> lift(FootingPlace footing) {
            return none();
        }

        @Override
        public Derived<Double> postWeightN(PostPlace post) {
            return none();
        }

        @Override
        public Derived<ActionForces> footing(FootingPlace footing) {
            return none();
        }

        @Override
        public Derived<Double> footingWeightN(FootingPlace footing) {
            return none();
        }

        @Override
        public Derived<DeckLoads> deckLoads(int platformIndex) {
            throw new AssertionError();
        }

        @Override
        public Derived<Double> imposedKNPerM2(int platformIndex) {
            throw new AssertionError();
        }
    }
}
