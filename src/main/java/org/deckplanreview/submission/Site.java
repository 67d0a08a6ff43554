package org.deckplanreview.submission;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;

/**
 * The site.
 *
 * @param groundLevels none: not surveyed; one: level ground; three or more: a triangulated surface
 * @param frostDepth if the local authority states one
 * @param snowLoad on the deck, an area load
 * @param groundSnowLoad on the ground, an area load, from which tables take the snow on decks
 * @param windPressure an area load, if the designer states one
 */
public record Site(
        List<GroundLevel> groundLevels,
        Optional<Soil> soil,
        Optional<Length> frostDepth,
        Optional<Measure> snowLoad,
        Optional<Measure> groundSnowLoad,
        Optional<Measure> coastDistance,
        List<Wall> walls,
        Optional<Planning> planning,
        Optional<Measure> windPressure) {
    public Site {
        groundLevels = List.copyOf(groundLevels);
        walls = List.copyOf(walls);
    }

    public Site withFrostDepth(Length depth) {
        return with(Optional.of(depth), snowLoad, groundSnowLoad);
    }

    public Site withSnowLoad(Measure load) {
        return with(frostDepth, Optional.of(load), groundSnowLoad);
    }

    public Site withGroundSnowLoad(Measure load) {
        return with(frostDepth, snowLoad, Optional.of(load));
    }

    private Site with(Optional<Length> frost, Optional<Measure> snow, Optional<Measure> groundSnow) {
        return ReadLog.copied(
                this,
                new Site(groundLevels, soil, frost, snow, groundSnow, coastDistance, walls, planning, windPressure));
    }
}
