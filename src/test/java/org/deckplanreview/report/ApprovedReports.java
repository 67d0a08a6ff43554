package org.deckplanreview.report;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.SortedMap;
import java.util.TreeMap;
import org.deckplanreview.provenance.Digest;

/**
 * What the reports of the samples are compared with: the text as it was read and approved, and of the JSON, which is long
 * and says the same, its digest.
 */
public final class ApprovedReports {
    private static final Path FOLDER = Path.of("src", "test", "resources", "approved");
    private static final Path DIGESTS = FOLDER.resolve("json-digests.csv");
    private static final String HEADER = "sample,edition,digest,bytes";
    private static final Path SEEN = Path.of("target", "json-reports");

    private ApprovedReports() {}

    /** The digest (see {@link Digest}) and the size of a sample's JSON report under an edition such as uk-england/2024. */
    public record JsonDigest(String sample, String edition, String digest, int bytes) {

        public static JsonDigest of(String sample, String edition, byte[] json) {
            return new JsonDigest(sample, edition, Digest.sha256(json), json.length);
        }

        /** The name of the report among those that tests have seen. */
        Path seen() {
            int shown = 12;
            String hex = digest.substring(digest.indexOf(':') + 1);
            return SEEN.resolve(sample + "-" + hex.substring(0, shown) + ".json");
        }
    }

    /** The samples that have an approved text. */
    public static Collection<String> texts() throws IOException {
        try (var files = Files.list(FOLDER)) {
            return files.map(f -> f.getFileName().toString())
                    .filter(name -> name.endsWith(".txt"))
                    .map(name -> name.replaceFirst("\\.txt$", ""))
                    .toList();
        }
    }

    public static Path text(String sample) {
        return FOLDER.resolve(sample + ".txt");
    }

    /** By sample. */
    public static SortedMap<String, JsonDigest> json() {
        SortedMap<String, JsonDigest> digests = new TreeMap<>();
        try {
            Files.readAllLines(DIGESTS).stream()
                    .skip(1)
                    .map(line -> line.split(","))
                    .map(c -> new JsonDigest(c[0], c[1], c[2], Integer.parseInt(c[3])))
                    .forEach(one -> digests.put(one.sample(), one));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return digests;
    }

    /** Approves texts and digests, and nothing else. */
    public static void approve(SortedMap<String, String> texts, Collection<JsonDigest> digests) throws IOException {
        for (String old : texts()) {
            Files.delete(text(old));
        }
        for (var text : texts.entrySet()) {
            Files.writeString(text(text.getKey()), text.getValue());
        }
        StringBuilder lines = new StringBuilder(HEADER).append('\n');
        digests.forEach(
                one -> lines.append("%s,%s,%s,%d\n".formatted(one.sample(), one.edition(), one.digest(), one.bytes())));
        Files.writeString(DIGESTS, lines);
    }

    /** Leaves a JSON report, indented, where a difference can be looked at later. */
    public static void keep(JsonDigest digest, byte[] json) throws IOException {
        ObjectMapper mapper = new ObjectMapper();
        Files.createDirectories(SEEN);
        mapper.writerWithDefaultPrettyPrinter().writeValue(digest.seen().toFile(), mapper.readTree(json));
    }

    /** What to do where only the JSON report differs. */
    public static String help(JsonDigest approved, JsonDigest now) {
        String show = "git diff --no-index %s %s".formatted(approved.seen(), now.seen());
        String before = Files.exists(approved.seen())
                ? "To see the difference:\n  " + show
                : """
                        To see the difference, let the last commit write the approved one:
                          git worktree add --detach target/before HEAD
                          mvn -q -f target/before test -Dtest=SamplesTest
                          cp target/before/%s %s
                          git worktree remove --force target/before
                          %s""".formatted(approved.seen(), approved.seen(), show);
        return """
                The JSON report of %s differs from the approved one.
                Approved: %s
                Now:      %s
                %s
                If the difference is intended, approve it:
                  mvn test -Dtest=SamplesTest -Dapprove=true
                """.formatted(now.sample(), approved, now, before);
    }
}
