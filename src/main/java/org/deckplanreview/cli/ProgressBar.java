package org.deckplanreview.cli;

import java.io.PrintWriter;
import java.util.OptionalDouble;

/** One line on a terminal that fills up; nothing where the output goes elsewhere. */
final class ProgressBar {
    private static final int CELLS = 40;

    private final PrintWriter terminal;
    private final boolean isShown;
    private String last = "";
    private long count;

    ProgressBar(PrintWriter terminal, boolean isShown) {
        this.terminal = terminal;
        this.isShown = isShown;
    }

    /** One more is done. */
    void show(OptionalDouble part) {
        count++;
        String bar = part.isPresent() ? bar(part.getAsDouble()) : count % 100 == 0 ? count + " done" : last;
        if (isShown && !bar.equals(last)) {
            terminal.print("\r" + bar);
            terminal.flush();
        }
        last = bar;
    }

    /** A message on a line of its own. */
    void interruptedBy(String message) {
        terminal.print((isShown && !last.isEmpty() ? "\n" : "") + message + "\n");
        terminal.flush();
        last = "";
    }

    void end() {
        if (isShown && !last.isEmpty()) {
            terminal.print("\n");
            terminal.flush();
        }
    }

    private static String bar(double part) {
        int full = (int) (part * CELLS);
        return "[" + "#".repeat(full) + ".".repeat(CELLS - full) + "] " + (int) (part * 100) + " %";
    }
}
