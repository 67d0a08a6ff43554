package org.deckplanreview.quantity;

import java.util.List;
import java.util.stream.Stream;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.quantity.asbuilt.AsBuilt;
import org.deckplanreview.quantity.board.FallAndBoards;
import org.deckplanreview.quantity.connection.Connections;
import org.deckplanreview.quantity.connection.LedgerConnection;
import org.deckplanreview.quantity.drawing.DrawingSense;
import org.deckplanreview.quantity.edge.EdgesAndGuards;
import org.deckplanreview.quantity.footing.PostsAndFootings;
import org.deckplanreview.quantity.site.AccessAndPlanning;
import org.deckplanreview.quantity.site.BesideBuilding;
import org.deckplanreview.quantity.site.Surroundings;
import org.deckplanreview.quantity.site.UseAndSite;
import org.deckplanreview.quantity.span.Contacts;
import org.deckplanreview.quantity.span.PrescriptiveFrame;
import org.deckplanreview.quantity.span.Room;
import org.deckplanreview.quantity.span.Spans;
import org.deckplanreview.quantity.span.Stability;
import org.deckplanreview.quantity.span.TableLoads;
import org.deckplanreview.quantity.stair.Stairs;
import org.deckplanreview.quantity.stair.TreadsAndHandrails;
import org.deckplanreview.quantity.timber.Lumber;
import org.deckplanreview.quantity.timber.TimberAndMetal;

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
