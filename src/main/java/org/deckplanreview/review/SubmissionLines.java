package org.deckplanreview.review;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Optional;

/**
 * Submissions as newline-delimited JSON, one a line; blank lines are none. Holds one line at a time, and of a line that is
 * too long no more than what may be.
 */
public final class SubmissionLines implements SubmissionSource {
    private static final int PIECE = 1 << 16;

    private final InputStream in;
    private final long mostBytes;
    private final byte[] piece = new byte[PIECE];
    private int place;
    private int end;
    private long number;

    /** @param mostBytes of a submission, without the line end */
    public SubmissionLines(InputStream in, long mostBytes) {
        this.in = in;
        this.mostBytes = mostBytes;
    }

    @Override
    public Optional<Received> next() throws IOException {
        while (fill()) {
            number++;
            ByteArrayOutputStream line = new ByteArrayOutputStream();
            if (!read(line)) {
                return Optional.of(received(Optional.empty()));
            }
            byte[] bytes = withoutReturn(line.toByteArray());
            if (bytes.length > mostBytes) {
                return Optional.of(received(Optional.empty()));
            }
            if (!isBlank(bytes)) {
                return Optional.of(received(Optional.of(bytes)));
            }
        }
        return Optional.empty();
    }

    private Received received(Optional<byte[]> bytes) {
        return new Received(number, "line " + number, bytes);
    }

    /** Whether there is a byte left. */
    private boolean fill() throws IOException {
        if (place == end) {
            place = 0;
            end = Math.max(0, in.read(piece));
        }
        return place < end;
    }

    /** Reads to the line's end; false if it holds more than may be. */
    private boolean read(ByteArrayOutputStream line) throws IOException {
        boolean isWhole = true;
        while (fill()) {
            int lineEnd = lineEnd();
            int length = lineEnd - place;
            // One byte more for the carriage return before a line feed.
            isWhole = isWhole && line.size() + (long) length <= mostBytes + 1;
            if (isWhole) {
                line.write(piece, place, length);
            }
            place = Math.min(end, lineEnd + 1);
            if (lineEnd < end) {
                break;
            }
        }
        return isWhole;
    }

    private static byte[] withoutReturn(byte[] line) {
        boolean hasReturn = line.length > 0 && line[line.length - 1] == '\r';
        return hasReturn ? Arrays.copyOf(line, line.length - 1) : line;
    }

    private int lineEnd() {
        int i = place;
        while (i < end && piece[i] != '\n') {
            i++;
        }
        return i;
    }

    private static boolean isBlank(byte[] line) {
        for (byte b : line) {
            if (b != ' ' && b != '\t' && b != '\r') {
                return false;
            }
        }
        return true;
    }
}
