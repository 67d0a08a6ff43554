package org.deckplanreview.schedule;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.FrameLevels;
import org.deckplanreview.layout.MemberSupport;

/**
 * The levels of a beam's upper face.
 *
 * @param levels at its first end, at each post, at its last end
 */
public record BeamTop(Pointer pointer, String label, List<At> levels) {
    public BeamTop {
        levels = List.copyOf(levels);
    }

    /** @param alongMm from the beam's first end */
    public record At(String place, double alongMm, Derived<Double> levelMm) {}

    static BeamTop of(BeamLine beam, FrameLevels levels) {
        List<At> places = new ArrayList<>();
        places.add(new At("first end", 0, levels.topMm(beam, 0)));
        for (MemberSupport s : beam.supports()) {
            places.add(new At(s.label(), s.atMm(), levels.topMm(beam, s.atMm())));
        }
        places.add(new At("last end", beam.lengthMm(), levels.topMm(beam, beam.lengthMm())));
        return new BeamTop(beam.pointer(), beam.label(), places);
    }
}
