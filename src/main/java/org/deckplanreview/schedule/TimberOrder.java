package org.deckplanreview.schedule;

import java.util.List;
import org.deckplanreview.kernel.Pointer;

/**
 * What is needed of one timber for one use.
 *
 * @param pieces by member, then by falling length
 * @param lengthMm of all pieces
 * @param stock what to buy and how to cut it
 * @param stockLengthMm of all stock
 * @param wasteMm stock less what is cut from it
 * @param wastePercent of the stock; 0 without stock
 * @param overlong pieces longer than the longest stock: to be jointed over a support, or ordered to length
 */
public record TimberOrder(
        Pointer pointer,
        String label,
        TimberUse use,
        double breadthMm,
        double depthMm,
        List<Pieces> pieces,
        double lengthMm,
        List<Stock> stock,
        double stockLengthMm,
        double wasteMm,
        double wastePercent,
        List<Pieces> overlong) {
    public TimberOrder {
        pieces = List.copyOf(pieces);
        stock = List.copyOf(stock);
        overlong = List.copyOf(overlong);
    }

    /** Pieces of one length for one member. */
    public record Pieces(String member, double lengthMm, int count) {}

    /**
     * Stock of one length that is cut alike.
     *
     * @param cutsMm lengths of the pieces from each
     */
    public record Stock(double lengthMm, int count, List<Double> cutsMm) {
        public Stock {
            cutsMm = List.copyOf(cutsMm);
        }
    }
}
