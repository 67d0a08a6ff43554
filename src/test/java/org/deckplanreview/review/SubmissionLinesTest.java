package org.deckplanreview.review;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines as newline-delimited JSON has them. */
class SubmissionLinesTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "'';''",
                "a;1:a",
                "a|b;1:a 2:b",
                "a|b|;1:a 2:b",
                "a^|b^|;1:a 2:b",
                "|a||__^|b;2:a 5:b",
                "a|12345|b;1:a 2:12345 3:b",
                "a|12345^|b;1:a 2:12345 3:b",
                "a|123456|b;1:a 2:too long 3:b",
                "a|123456^|b;1:a 2:too long 3:b",
                "123456;1:too long",
                "______|a;1:too long 2:a",
                "1^2;1:1^2",
            })
    void lines_of_at_most_five_bytes(String text, String expected) throws IOException {
        String stream = text.replace('|', '\n').replace('^', '\r').replace('_', ' ');

        assertThat(String.join(" ", read(new ByteArrayInputStream(stream.getBytes(UTF_8)), 5))
                        .replace('\r', '^'))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 65_535, 65_536, 65_537, 131_072, 200_000})
    void a_line_may_be_longer_than_what_is_read_at_once(int length) throws IOException {
        String line = "x".repeat(length);

        assertThat(read(new ByteArrayInputStream((line + "\r\n" + line).getBytes(UTF_8)), length))
                .containsExactly("1:" + line, "2:" + line);
        assertThat(read(new ByteArrayInputStream((line + "\n" + line + "y").getBytes(UTF_8)), length))
                .containsExactly("1:" + line, "2:too long");
    }

    /** Two thousand million bytes would not fit into the memory of a test. */
    @Test
    void a_line_that_is_too_long_is_skipped_without_being_held() throws IOException {
        assertThat(read(new Blanks(2_000_000_000L), 5)).containsExactly("1:too long");
    }

    private static List<String> read(InputStream in, long most) throws IOException {
        SubmissionLines lines = new SubmissionLines(in, most);
        List<String> read = new ArrayList<>();
        for (Optional<SubmissionSource.Received> next = lines.next(); next.isPresent(); next = lines.next()) {
            assertThat(next.get().name()).isEqualTo("line " + next.get().number());
            read.add(next.get().number() + ":"
                    + next.get().bytes().map(b -> new String(b, UTF_8)).orElse("too long"));
        }
        return read;
    }

    /** Many blanks without a line end. */
    private static final class Blanks extends InputStream {
        private long left;

        Blanks(long left) {
            this.left = left;
        }

        @Override
        public int read() {
            return left-- > 0 ? ' ' : -1;
        }

        @Override
        public int read(byte[] piece, int from, int length) {
            if (left <= 0) {
                return -1;
            }
            int n = (int) Math.min(left, length);
            Arrays.fill(piece, from, from + n, (byte) ' ');
            left -= n;
            return n;
        }
    }
}
