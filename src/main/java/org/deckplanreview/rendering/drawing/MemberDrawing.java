package org.deckplanreview.rendering.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.loadpath.MemberAnalysis;

/** Load, moment, shear and deflection of members in bending, two to a sheet. */
final class MemberDrawing {

    private static final String TITLE = "Members in bending";
    private static final int ON_SHEET = 2;
    private static final double FOOT = 13;
    private static final double PAD = 4;

    private static final String WHAT =
            "Characteristic loads, each with factor 1: permanent with the imposed load in its"
                    + " worst arrangement, with the concentrated load, or with snow; at each place the farthest of them. Moments"
                    + " are drawn on the side in tension; deflections are without creep.";

    private MemberDrawing() {}

    static List<Drawing> draw(DrawnDeck deck) {
        ShownUnits units = ShownUnits.of(deck.layout().submission().units());
        List<MemberEffects> members = members(deck, units);
        if (members.isEmpty()) {
            return List.of(NoteSheet.draw(
                    "members",
                    TITLE,
                    1,
                    1,
                    units,
                    deck.report(),
                    "No member can be calculated until the submission gives:",
                    needs(deck)));
        }
        int sheets = (members.size() + ON_SHEET - 1) / ON_SHEET;
        List<Drawing> drawings = new ArrayList<>();
        for (int i = 0; i < sheets; i++) {
            drawings.add(sheet(
                    deck,
                    units,
                    members.subList(i * ON_SHEET, Math.min(members.size(), (i + 1) * ON_SHEET)),
                    i + 1,
                    sheets));
        }
        return drawings;
    }

    private static Drawing sheet(
            DrawnDeck deck, ShownUnits units, List<MemberEffects> members, int number, int sheets) {
        SheetFormat format = SheetFormat.A4;
        Box area = format.wideArea();
        Canvas canvas = new Canvas();
        Callouts callouts = new Callouts(deck.report());
        double width = 2 * area.halfLength() / ON_SHEET;
        for (int i = 0; i < members.size(); i++) {
            Box panel = Box.upright(area.left() + i * width, area.top(), width, 2 * area.halfHeight() - FOOT);
            new MemberPanel(canvas, callouts, units, panel, members.get(i)).draw();
        }
        Canvas.Figure foot = canvas.figure("note", "");
        double y = area.bottom() - FOOT + Lettering.LINE;
        for (String line : Lettering.wrapped(WHAT, 2 * area.halfLength() - 2 * PAD, Lettering.SIZE)) {
            foot.text(line, new Vec(area.left() + PAD, y), Lettering.SIZE, false);
            y += Lettering.LINE;
        }
        String described = members.stream().map(MemberEffects::described).collect(Collectors.joining(" "));
        return new Sheet(
                        sheets == 1 ? "members" : "members-" + number,
                        TITLE,
                        number,
                        sheets,
                        format,
                        Optional.empty(),
                        units,
                        deck.report())
                .finished(canvas, area, Optional.empty(), described + " " + WHAT);
    }

    /** Of joists that are alike the worst; of beams with equal spans and effects the first, which names the others. */
    private static List<MemberEffects> members(DrawnDeck deck, ShownUnits units) {
        List<MemberEffects> drawn = new ArrayList<>();
        for (PlatformLayout p : deck.layout().platforms()) {
            Map<String, MemberEffects> joists = new LinkedHashMap<>();
            analysed(p.joists(), deck.loadPath(), units)
                    .forEach(j -> joists.merge(
                            j.member().alikeKey(), j, (a, b) -> b.largestMomentNMm() > a.largestMomentNMm() ? b : a));
            drawn.addAll(joists.values());
            Map<String, MemberEffects> beams = new LinkedHashMap<>();
            analysed(p.beams(), deck.loadPath(), units)
                    .forEach(b -> beams.merge(b.member().alikeKey() + b.told(), b, MemberEffects::andAlike));
            drawn.addAll(beams.values());
        }
        return drawn;
    }

    private static List<MemberEffects> analysed(List<? extends Member> members, LoadPath loadPath, ShownUnits units) {
        return members.stream()
                .map(loadPath::member)
                .map(Derived::optional)
                .flatMap(Optional::stream)
                .map((MemberAnalysis a) -> MemberEffects.of(a, units))
                .toList();
    }

    private static List<Need> needs(DrawnDeck deck) {
        return deck.layout().platforms().stream()
                .flatMap(p -> Stream.<Member>concat(p.joists().stream(), p.beams().stream()))
                .flatMap(m -> deck.loadPath().member(m).needs().stream())
                .distinct()
                .sorted()
                .toList();
    }
}
