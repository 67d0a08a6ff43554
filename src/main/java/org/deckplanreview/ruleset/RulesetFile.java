package org.deckplanreview.ruleset;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** One file while it is read: where its faults are gathered, and which of its parts are already known to be wrong. */
final class RulesetFile {

    static final int MOST_BYTES = 1 << 20;

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

    /** What the bytes say; empty if they are too many or no text, which is then told. */
    Optional<String> text(byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            fault(1, "more than " + MOST_BYTES + " bytes", "The file is too large", "a smaller file");
            return Optional.empty();
        }
        try {
            return Optional.of(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        } catch (CharacterCodingException e) {
            fault(1, "bytes that are no text", "The file cannot be read", "text in UTF-8");
            return Optional.empty();
        }
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
