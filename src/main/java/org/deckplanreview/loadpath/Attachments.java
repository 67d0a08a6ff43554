package org.deckplanreview.loadpath;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.EdgeFrame;
import org.deckplanreview.layout.EdgeFrame.Held;
import org.deckplanreview.layout.EdgeRun;
import org.deckplanreview.layout.GuardRun;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.StairRun;
import org.deckplanreview.loadpath.BeamLoad.Point;
import org.deckplanreview.loadpath.LoadModel.OnEdges;
import org.deckplanreview.submission.Strings;

/** Stairs and guards on the members that hold them. */
final class Attachments {

    /** A member by its platform and its number among the joists, or its beam's id and its line, which pieces of one beam do not share. */
    private record Holder(int platform, String member) {
        static Holder of(Member member) {
            String name = member instanceof JoistLine j
                    ? "joist " + j.number()
                    : "beam " + ((BeamLine) member).id() + " " + member.line();
            return new Holder(member.platformIndex(), name);
        }
    }

    /** The loads that one member holds, as they are found. */
    private static final class Found {
        private final List<BeamLoad> weight = new ArrayList<>();
        private final List<BeamLoad> imposed = new ArrayList<>();
        private final List<Point> concentrated = new ArrayList<>();
        private boolean ofStairs;

        Attached attached() {
            return new Attached(weight, imposed, concentrated);
        }
    }

    private final OnEdges loads;
    private final Map<Holder, Found> held = new LinkedHashMap<>();

    private Attachments(OnEdges loads) {
        this.loads = loads;
    }

    static Attachments derive(Layout layout, OnEdges loads) {
        Attachments attachments = new Attachments(loads);
        for (PlatformLayout platform : layout.platforms()) {
            EdgeFrame frame = EdgeFrame.of(platform);
            for (GuardRun guard : platform.guards()) {
                attachments.addGuard(frame, guard);
            }
            for (StairRun stair : platform.stairs()) {
                attachments.addStair(frame, stair);
            }
        }
        return attachments;
    }

    /** Missing where a stair hangs on the member and the loads of stairs are not known. */
    Derived<Attached> on(Member member) {
        Found found = held.get(Holder.of(member));
        if (found == null) {
            return Derived.known(Attached.NONE);
        }
        return found.ofStairs
                ? loads.stairImposedKNPerM2().with(loads.stairConcentratedN(), (q, p) -> found.attached())
                : Derived.known(found.attached());
    }

    private Found found(Held h) {
        return held.computeIfAbsent(Holder.of(h.member()), m -> new Found());
    }

    private void addGuard(EdgeFrame frame, GuardRun guard) {
        double nPerMm = loads.guardKNPerM(guard.guard().infill());
        for (EdgeRun edge : guard.edges()) {
            for (Held h : frame.evenly(edge.line())) {
                double newtons = nPerMm * edge.lengthMm() * h.share();
                found(h).weight.add(Attached.load(h.fromMm(), h.toMm(), newtons));
            }
        }
    }

    private void addStair(EdgeFrame frame, StairRun stair) {
        StairLoads total = StairLoads.of(stair, loads);
        for (Held h : strings(frame, stair)) {
            Found found = found(h);
            found.ofStairs = true;
            found.weight.add(Attached.load(h.fromMm(), h.toMm(), total.weightAtHeadN() * h.share()));
            total.imposedAtHeadN()
                    .optional()
                    .ifPresent(n -> found.imposed.add(Attached.load(h.fromMm(), h.toMm(), n * h.share())));
        }
        loads.stairConcentratedN().optional().ifPresent(n -> addConcentrated(frame, stair, n));
    }

    /** Strings that are described stand evenly over the width; without them the stair hangs on the whole of its line. */
    private static List<Held> strings(EdgeFrame frame, StairRun stair) {
        Optional<Strings> strings = stair.stair().strings();
        if (strings.isEmpty()) {
            return frame.evenly(stair.stair().line());
        }
        int n = strings.get().count();
        List<Held> held = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double part = n == 1 ? 1 : (i == 0 || i == n - 1 ? 0.5 : 1.0) / (n - 1);
            for (Held h : frame.at(stair.stair().line(), place(i, n))) {
                held.add(new Held(h.member(), h.fromMm(), h.toMm(), h.share() * part));
            }
        }
        return held;
    }

    private static double place(int string, int count) {
        return count == 1 ? 0.5 : (double) string / (count - 1);
    }

    /** The whole of it at the head of one string; where no strings are described, on each member in turn. */
    private void addConcentrated(EdgeFrame frame, StairRun stair, double newtons) {
        if (newtons == 0) {
            return;
        }
        Optional<Strings> strings = stair.stair().strings();
        if (strings.isEmpty()) {
            for (Held h : frame.evenly(stair.stair().line())) {
                found(h).concentrated.add(new Point((h.fromMm() + h.toMm()) / 2, newtons));
            }
            return;
        }
        int n = strings.get().count();
        for (int i = 0; i < n; i++) {
            for (Held h : frame.at(stair.stair().line(), place(i, n))) {
                found(h).concentrated.add(new Point(h.fromMm(), newtons * h.share()));
            }
        }
    }
}
