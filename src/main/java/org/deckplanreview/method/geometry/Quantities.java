package org.deckplanreview.method.geometry;

import java.util.List;
import java.util.stream.Stream;
import org.deckplanreview.method.Quantity;

/** All quantities, in the order in which a reader looks them up: the whole deck, then its parts. */
public final class Quantities {

    private static final List<Quantity> ALL = Stream.of(
                    UseAndSite.quantities(),
                    AccessAndPlanning.quantities(),
                    BesideBuilding.quantities(),
                    FallAndBoards.quantities(),
                    EdgesAndGuards.quantities(),
                    Stairs.quantities(),
                    TreadsAndHandrails.quantities(),
                    PostsAndFootings.quantities(),
                    Spans.quantities(),
                    Contacts.quantities(),
                    Room.quantities(),
                    PrescriptiveFrame.quantities(),
                    TableLoads.quantities(),
                    Stability.quantities(),
                    Connections.quantities(),
                    LedgerConnection.quantities(),
                    Lumber.quantities(),
                    DrawingSense.quantities(),
                    Surroundings.quantities(),
                    TimberAndMetal.quantities(),
                    AsBuilt.quantities())
            .flatMap(List::stream)
            .toList();

    private Quantities() {}

    public static List<Quantity> all() {
        return ALL;
    }
}
