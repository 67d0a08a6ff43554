package org.deckplanreview.ruleset;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** One file while it is read: where its faults are gathered, and which of its parts are already known to be wrong. */
final class RulesetFile {

    private final String path;
    private final List<RulesetFault> faults = new ArrayList<>();
    private final TreeSet<String> unsound = new TreeSet<>();

    RulesetFile(String path) {
        this.path = path;
    }

    String path() {
        return path;
    }

    List<RulesetFault> faults() {
        return faults;
    }

    boolean faultless() {
        return faults.isEmpty();
    }

    void fault(int line, String found, String detail, String accepted) {
        faults.add(new RulesetFault(path, line, found, detail, accepted));
    }

    void unsound(String pointer) {
        unsound.add(pointer);
    }

    /** Whether the part at the pointer, with all that is in it, has the right format. */
    boolean isSound(String pointer) {
        String below = pointer + "/";
        String next = unsound.ceiling(below);
        return !unsound.contains(pointer) && (next == null || !next.startsWith(below));
    }
}
