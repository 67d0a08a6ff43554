package org.deckplanreview.cli;

import java.io.Closeable;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.deckplanreview.review.SubmissionLines;
import org.deckplanreview.review.SubmissionSource;

/** Submissions from files or lines, and how much of them is read. */
abstract class SubmissionInput implements SubmissionSource, Closeable {

    /** The part that is read, from 0 to 1; empty where the whole is not known. */
    abstract OptionalDouble done();

    @Override
    public void close() throws IOException {}

    /** The files whose names end with {@code .json}, by name. */
    static List<Path> jsonFiles(Path directory) throws IOException {
        try (Stream<Path> files = Files.list(directory)) {
            return files.filter(f -> f.getFileName().toString().endsWith(".json"))
                    .filter(Files::isRegularFile)
                    .sorted()
                    .toList();
        }
    }

    static SubmissionInput ofFiles(List<Path> files, long mostBytes) {
        Iterator<Path> rest = files.iterator();
        return new SubmissionInput() {
            private int read;

            @Override
            public Optional<Received> next() throws IOException {
                if (!rest.hasNext()) {
                    return Optional.empty();
                }
                Path file = rest.next();
                read++;
                try (InputStream in = Files.newInputStream(file)) {
                    byte[] bytes = in.readNBytes((int) Math.min(Integer.MAX_VALUE - 8, mostBytes + 1));
                    return Optional.of(new Received(
                            read,
                            file.getFileName().toString(),
                            Optional.of(bytes).filter(b -> b.length <= mostBytes)));
                }
            }

            @Override
            OptionalDouble done() {
                return OptionalDouble.of((double) read / files.size());
            }
        };
    }

    static SubmissionInput ofLines(InputStream in, long mostBytes) {
        return ofLines(new Counted(in), OptionalDouble.empty(), mostBytes);
    }

    static SubmissionInput ofFile(Path file, long mostBytes) throws IOException {
        return ofLines(
                new Counted(Files.newInputStream(file)), OptionalDouble.of(Math.max(1, Files.size(file))), mostBytes);
    }

    private static SubmissionInput ofLines(Counted in, OptionalDouble size, long mostBytes) {
        SubmissionLines lines = new SubmissionLines(in, mostBytes);
        return new SubmissionInput() {
            @Override
            public Optional<Received> next() throws IOException {
                return lines.next();
            }

            @Override
            OptionalDouble done() {
                return size.isPresent() ? OptionalDouble.of(Math.min(1, in.read / size.getAsDouble())) : size;
            }

            @Override
            public void close() throws IOException {
                in.close();
            }
        };
    }

    /** Counts what is read in pieces, as lines are. */
    private static final class Counted extends FilterInputStream {
        private long read;

        Counted(InputStream in) {
            super(in);
        }

        @Override
        public int read(byte[] piece, int from, int length) throws IOException {
            int n = super.read(piece, from, length);
            read += Math.max(0, n);
            return n;
        }
    }
}
