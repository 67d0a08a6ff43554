package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.Boards;
import org.deckplanreview.submission.GroundLevel;
import org.deckplanreview.submission.HeavyItem;
import org.deckplanreview.submission.JoistField;
import org.deckplanreview.submission.Ledger;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.Timber;
import org.locationtech.jts.geom.Coordinate;

/** Derives one platform, from its joists down to its footings. */
final class PlatformDerivation {

    /** Boards that cross the joists at a smaller angle than this lie along them. */
    private static final double ALONG_SINE = 1e-6;

    /** A platform has one ledger at most. */
    static final String LEDGER_ID = "ledger";

    private final Submission submission;
    private final int index;
    private final Platform platform;
    private final Pointer pointer;
    private final GroundSurface ground;
    private final Neighbours neighbours;
    private final Outline outline;
    private final DeckLevels levels;

    PlatformDerivation(Submission submission, int index, GroundSurface ground, Neighbours neighbours) {
        this.submission = submission;
        this.index = index;
        this.platform = submission.platforms().get(index);
        this.pointer = Pointer.of("/platforms").child(index);
        this.ground = ground;
        this.neighbours = neighbours;
        this.outline = new Outline(platform.outline());
        this.levels = DeckLevels.of(submission, platform, pointer);
    }

    PlatformLayout derive() {
        Optional<Joists> joists = platform.joists().flatMap(this::joists);
        List<FootingPlace> footings = Footings.of(submission, platform, index, pointer, ground);
        List<EdgeRun> edges = EdgeRuns.of(
                submission.units().system(), platform, index, pointer, outline, levels.boardsTop(), ground, neighbours);
        return new PlatformLayout(
                index,
                pointer,
                platform.displayLabel(),
                platform,
                outline.areaMm2(),
                EdgeRuns.largestDropMm(edges),
                platform.boards().map(b -> boards(b, joists)),
                joists.map(Joists::lines).orElse(List.of()),
                beams(joists),
                platform.ledger().map(l -> ledger(l, joists)),
                Posts.of(submission, platform, index, pointer, levels, ground, footings),
                footings,
                edges,
                StairsAndGuards.guards(platform, index, pointer, edges),
                StairsAndGuards.stairs(platform, index, pointer, levels.boardsTop(), ground, neighbours),
                BraceLines.of(submission, platform, index, pointer),
                assumptions(joists));
    }

    private List<String> assumptions(Optional<Joists> joists) {
        List<String> assumptions = new ArrayList<>();
        if (platform.level().isPresent() && platform.fall().isEmpty()) {
            assumptions.add("The fall of " + platform.displayLabel()
                    + " is not given: its levels are taken as if it were level.");
        }
        if (submission.site().groundLevels().size() == 1) {
            GroundLevel only = submission.site().groundLevels().get(0);
            assumptions.add("The ground is taken as level, as at the one place where it was surveyed: x = "
                    + written(only.x()) + ", y = " + written(only.y()) + ".");
        }
        joists.ifPresent(j -> assumptions.addAll(j.setAside()));
        platform.beams().stream()
                .filter(b -> !b.plyJoints().isEmpty())
                .forEach(b -> assumptions.add("The plies of " + b.displayLabel() + " of " + platform.displayLabel()
                        + " are all taken to be cut through at the joints given: each piece spans by itself."));
        return assumptions;
    }

    /** What a builder does with a joist that would stand half in front of the end of what it hangs on. */
    private List<String> setAside(List<JoistPieces.SetAside> moves, Axis axis, List<JoistLine> lines) {
        return moves.stream()
                .flatMap(move -> lines.stream()
                        .filter(j -> Math.abs(axis.across(j.line().from()) - move.across()) <= Supports.ROUNDING_MM)
                        .findFirst()
                        .map(j -> setAside(move, j))
                        .stream())
                .toList();
    }

    private String setAside(JoistPieces.SetAside move, JoistLine joist) {
        return "The " + joist.label() + " is set aside by "
                + Phrases.of(
                        Measure.of(move.byMm(), MeasureUnit.MILLIMETRE),
                        submission.units().system())
                + ", wholly " + (move.beside() ? "beside" : "in front of") + " the end of "
                + move.carrier().label() + ", because only a part of its breadth would meet it.";
    }

    private String written(Length length) {
        return Phrases.of(Measure.mm(length.mm()), submission.units().system());
    }

    /** The joists with what they meet, in the same order. */
    private record Joists(
            Axis axis,
            List<JoistLine> lines,
            List<List<Supports.Crossing>> crossings,
            double beyondLastMm,
            List<String> setAside) {

        double largestSpacingMm() {
            return lines.stream().mapToDouble(JoistLine::spacingMm).max().orElse(0);
        }

        List<JoistBearing> on(MemberSupport.Kind kind, String id) {
            List<JoistBearing> bearings = new ArrayList<>();
            for (int j = 0; j < crossings.size(); j++) {
                for (int s = 0; s < crossings.get(j).size(); s++) {
                    Supports.Crossing crossing = crossings.get(j).get(s);
                    if (crossing.support().kind() == kind
                            && crossing.support().id().equals(id)) {
                        bearings.add(new JoistBearing(j, s, crossing.alongCarrierMm()));
                    }
                }
            }
            return bearings.stream()
                    .sorted(Comparator.comparingDouble(JoistBearing::atMm))
                    .toList();
        }
    }

    private Optional<Joists> joists(JoistField field) {
        Timber timber = submission.timber(field.timber());
        Axis axis = Axis.of(field.direction());
        List<Coordinate> corners = outline.along(axis);
        double breadth = timber.breadth().mm();
        List<Carrier> carriers = Carrier.all(submission, platform, pointer, axis);
        JoistPieces.Laid laid =
                JoistPieces.lay(corners, breadth, field.spacing().mm(), carriers);
        List<JoistPiece> pieces = HungJoists.cut(laid.pieces(), breadth, carriers);
        if (pieces.isEmpty()) {
            return Optional.empty();
        }
        TributaryAreas areas = TributaryAreas.divide(corners, pieces);
        List<HeavyItem> items = submission.use().heavyItems();
        for (int i = 0; i < items.size(); i++) {
            areas.divideHeavyItem(i, new Outline(items.get(i).outline()).along(axis), corners);
        }
        List<JoistLine> lines = new ArrayList<>();
        List<List<Supports.Crossing>> crossings = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            JoistPiece piece = pieces.get(i);
            List<Supports.Crossing> met = Supports.ofJoist(piece, breadth, carriers);
            List<MemberSupport> supports =
                    met.stream().map(Supports.Crossing::support).toList();
            PlanLine line =
                    new PlanLine(axis.point(piece.from(), piece.across()), axis.point(piece.to(), piece.across()));
            crossings.add(met);
            lines.add(new JoistLine(
                    index,
                    pointer.child("joists"),
                    "joist " + (i + 1) + " of " + platform.displayLabel(),
                    i + 1,
                    timber,
                    field.endNotch(),
                    line,
                    piece.lengthMm(),
                    supports,
                    Supports.spans(piece.lengthMm(), supports),
                    areas.strips(i),
                    areas.spacingMm(i),
                    areas.fieldSize(i),
                    Height.smallest(levels.joistsUnderside(), ground, line)));
        }
        return Optional.of(
                new Joists(axis, lines, crossings, areas.beyondLastJoistMm(), setAside(laid.setAside(), axis, lines)));
    }

    private Pointer beamPointer(int i) {
        return pointer.child("beams").child(i);
    }

    private List<BeamLine> beams(Optional<Joists> joists) {
        List<BeamLine> beams = new ArrayList<>();
        for (int i = 0; i < platform.beams().size(); i++) {
            Beam beam = platform.beams().get(i);
            List<BeamPiece> pieces = BeamPiece.of(beam);
            for (int k = 0; k < pieces.size(); k++) {
                String label =
                        pieces.size() == 1 ? beam.displayLabel() : "piece " + (k + 1) + " of " + beam.displayLabel();
                beams.add(beam(beam, pieces.get(k), label, beamPointer(i), joists));
            }
        }
        return beams;
    }

    private BeamLine beam(Beam beam, BeamPiece piece, String label, Pointer beamPointer, Optional<Joists> joists) {
        Timber timber = submission.timber(beam.timber());
        Beam drawn = beam.along(piece.line());
        List<MemberSupport> supports = Supports.ofBeam(submission, drawn, platform.posts(), pointer.child("posts"));
        return new BeamLine(
                index,
                beamPointer,
                label,
                beam.id(),
                timber,
                beam.plies(),
                beam.endNotch(),
                piece.line(),
                piece.lengthMm(),
                supports,
                Supports.spans(piece.lengthMm(), supports),
                joists.map(j -> piece.bearings(j.on(MemberSupport.Kind.BEAM, beam.id())))
                        .orElse(List.of()),
                Height.smallest(
                        levels.carrierUnderside(beam.joists(), timber.depth().mm()), ground, piece.line()));
    }

    private LedgerLine ledger(Ledger ledger, Optional<Joists> joists) {
        Timber timber = submission.timber(ledger.timber());
        return new LedgerLine(
                index,
                pointer.child("ledger"),
                Carrier.ledgerLabel(platform),
                timber,
                ledger.line(),
                Axis.length(ledger.line()),
                joists.map(j -> j.on(MemberSupport.Kind.LEDGER, LEDGER_ID)).orElse(List.of()),
                Height.smallest(
                        levels.carrierUnderside(ledger.joists(), timber.depth().mm()), ground, ledger.line()));
    }

    private BoardField boards(Boards boards, Optional<Joists> joists) {
        Pointer boardsPointer = pointer.child("boards");
        Axis axis = Axis.of(boards.direction());
        Derived<Joists> crossed = Derived.of(
                        joists, pointer.child("joists"), "the joists of " + platform.displayLabel())
                .flatMap(j -> Derived.of(
                        Optional.of(j).filter(k -> k.axis().sineTo(axis) > ALONG_SINE),
                        boardsPointer.child("direction"),
                        "a direction of the boards that crosses the joists"));
        Derived<Double> span = crossed.flatMap(j -> Derived.of(
                Optional.of(j.largestSpacingMm() / j.axis().sineTo(axis)).filter(s -> s > 0),
                pointer.child("joists"),
                "two or more joists side by side under the boards"));
        Derived<Double> angleToFall = Derived.of(
                        platform.fall().flatMap(f -> f.direction()),
                        pointer.child("fall"),
                        "the fall of " + platform.displayLabel() + " with its direction, downhill")
                .map(d -> axis.degreesTo(Axis.of(d)));
        return new BoardField(
                index,
                boardsPointer,
                "boards of " + platform.displayLabel(),
                boards,
                submission.timber(boards.timber()),
                span,
                crossed.map(j -> j.beyondLastMm() / j.axis().sineTo(axis)),
                angleToFall,
                Height.smallest(levels.boardsUnderside(), ground, outline));
    }
}
