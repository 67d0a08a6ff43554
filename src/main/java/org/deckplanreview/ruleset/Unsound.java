package org.deckplanreview.ruleset;

/**
 * A part of a file that cannot be read although the check of its form told nothing of it. The loader tells it as a fault
 * of the file, so that no file, however mangled, stops the loading of the others.
 */
final class Unsound extends RuntimeException {

    private final transient Entry entry;
    private final String accepted;

    Unsound(Entry entry, String accepted) {
        super(accepted);
        this.entry = entry;
        this.accepted = accepted;
    }

    void tell() {
        entry.fault("This has not the right form", accepted);
    }
}
