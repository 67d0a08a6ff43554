package org.deckplanreview.rendering.sarif;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.provenance.Digest;
import org.deckplanreview.rendering.text.PlainText;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportedCalculation;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.report.ReportedSubject;
import org.deckplanreview.ruleset.Obligation;

/**
 * A report as a SARIF 2.1.0 log: a result for each finding that does not comply ({@code fail}) or is undetermined
 * ({@code open}), a rule for each provision that they name, and where in the submission's text they stand.
 */
public final class SarifRendering {

    private static final List<Determination> SHOWN = List.of(Determination.DOES_NOT_COMPLY, Determination.UNDETERMINED);
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");

    private final Report report;
    private final String file;
    private final Places places;
    private final List<ReportedFinding> findings;
    private final Map<String, Integer> rules;

    private SarifRendering(Report report, byte[] submission, String file) {
        this.report = report;
        this.file = file;
        this.places = Places.in(submission);
        this.findings = report.findings().stream()
                .filter(f -> SHOWN.contains(f.determination()))
                .toList();
        this.rules = new TreeMap<>();
        findings.forEach(f -> rules.put(f.provision(), 0));
        int index = 0;
        for (Map.Entry<String, Integer> rule : rules.entrySet()) {
            rule.setValue(index++);
        }
    }

    /**
     * UTF-8, indented, ending with a line end.
     *
     * @param submission the bytes that were reviewed
     * @param file what the log calls the submission's file, a relative or absolute URI
     */
    public static byte[] render(Report report, byte[] submission, String file) {
        ObjectNode log = new SarifRendering(report, submission, file).log();
        try {
            return (MAPPER.writer(new DefaultPrettyPrinter()
                                            .withObjectIndenter(INDENT)
                                            .withArrayIndenter(INDENT))
                                    .writeValueAsString(log)
                            + "\n")
                    .getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("A log is always JSON", e);
        }
    }

    private ObjectNode log() {
        ObjectNode log = MAPPER.createObjectNode();
        log.put(
                "$schema",
                "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json");
        log.put("version", "2.1.0");
        ObjectNode run = log.putArray("runs").addObject();
        ObjectNode driver = run.putObject("tool").putObject("driver");
        driver.put("name", "Deck Plan Review");
        driver.put("version", report.provenance().service());
        driver.put("language", "en-GB");
        driver.set("rules", rules());
        run.putObject("automationDetails")
                .put(
                        "id",
                        "deck-plan-review/" + report.edition().region() + "/"
                                + report.edition().edition() + "/");
        run.putArray("invocations").addObject().put("executionSuccessful", true);
        ObjectNode artifact = run.putArray("artifacts").addObject();
        artifact.putObject("location").put("uri", file);
        artifact.putArray("roles").add("analysisTarget");
        artifact.put("mimeType", "application/json");
        artifact.putObject("hashes").put("sha-256", hex(report.provenance().received()));
        run.put("columnKind", "utf16CodeUnits");
        ArrayNode results = run.putArray("results");
        findings.forEach(f -> results.add(result(f)));
        ObjectNode properties = run.putObject("properties");
        properties.put("notice", report.notice());
        properties.put("outcome", report.outcome().word());
        ArrayNode notReviewed = properties.putArray("givenNotReviewed");
        report.givenNotReviewed()
                .forEach(member -> Stream.concat(Stream.of(member.pointer()), member.also().stream())
                        .forEach(pointer -> notReviewed.add(pointer.value())));
        properties.put("reference", PlainText.of(report.reference()));
        properties.put("edition", report.provenance().edition());
        properties.put("report", report.digest());
        return log;
    }

    private static String hex(String digest) {
        return digest.substring(digest.indexOf(':') + 1);
    }

    private ArrayNode rules() {
        ArrayNode all = MAPPER.createArrayNode();
        for (String id : rules.keySet()) {
            ReportedFinding finding = findings.stream()
                    .filter(f -> f.provision().equals(id))
                    .findFirst()
                    .orElseThrow();
            ObjectNode rule = all.addObject().put("id", id);
            rule.putObject("shortDescription").put("text", finding.title());
            rule.putObject("fullDescription").put("text", finding.title() + ". " + source(finding) + ".");
            finding.advice().ifPresent(advice -> rule.putObject("help").put("text", advice));
            rule.putObject("defaultConfiguration").put("level", level(finding.obligation()));
            ObjectNode properties = rule.putObject("properties");
            properties.put("concern", finding.concern().word());
            properties.put("obligation", finding.obligation().word());
            properties.put("standing", finding.standing().word());
            properties.putArray("tags").add(finding.concern().word());
        }
        return all;
    }

    private static String source(ReportedFinding finding) {
        return finding.citation().source().title()
                + finding.citation().clause().map(clause -> ", " + clause).orElse("");
    }

    private static String level(Obligation obligation) {
        return switch (obligation) {
            case SHALL -> "error";
            case SHOULD -> "warning";
            case MAY -> "note";
        };
    }

    private ObjectNode result(ReportedFinding finding) {
        boolean fails = finding.determination() == Determination.DOES_NOT_COMPLY;
        ObjectNode result = MAPPER.createObjectNode();
        result.put("ruleId", finding.provision());
        result.put("ruleIndex", rules.get(finding.provision()));
        result.put("kind", fails ? "fail" : "open");
        result.put("level", fails ? level(finding.obligation()) : "none");
        result.putObject("message").put("text", message(finding));
        ReportedSubject subject = finding.subject();
        result.putArray("locations").add(location(subject.label(), subject.pointer()));
        if (!subject.also().isEmpty()) {
            ArrayNode others = result.putArray("relatedLocations");
            subject.also().forEach(also -> others.add(location(also.label(), also.pointer())));
        }
        result.putObject("partialFingerprints").put("provisionAndSubject/v1", fingerprint(finding));
        ObjectNode properties = result.putObject("properties");
        properties.put("determination", finding.determination().word());
        finding.utilisation().ifPresent(u -> properties.put("utilisation", u));
        finding.calculated().flatMap(ReportedCalculation::utilisation).ifPresent(u -> properties.put("calculated", u));
        return result;
    }

    private static String message(ReportedFinding finding) {
        String needs = finding.needs().stream()
                .map(SarifRendering::need)
                .collect(Collectors.joining("; ", " Still to be told: ", "."));
        return plain(finding.subject().label() + ": " + finding.sentence()
                + (finding.needs().isEmpty() ? "" : needs)
                + finding.advice().map(advice -> " " + advice).orElse(""));
    }

    private static String need(Need need) {
        return need.what() + " at " + need.pointer().value();
    }

    /** Braces would be placeholders and brackets links: sections 3.11.5 and 3.11.6 of SARIF 2.1.0. */
    private static String plain(String text) {
        return PlainText.of(text)
                .replace("{", "{{")
                .replace("}", "}}")
                .replace("\\", "\\\\")
                .replace("[", "\\[")
                .replace("]", "\\]");
    }

    private ObjectNode location(String label, Pointer pointer) {
        ObjectNode location = MAPPER.createObjectNode();
        ObjectNode physical = location.putObject("physicalLocation");
        physical.putObject("artifactLocation").put("uri", file).put("index", 0);
        places.of(pointer.value())
                .ifPresent(place -> physical.putObject("region")
                        .put("startLine", place.line())
                        .put("startColumn", place.column()));
        ObjectNode logical = location.putArray("logicalLocations").addObject();
        logical.put("name", PlainText.of(label));
        logical.put("fullyQualifiedName", pointer.value());
        return location;
    }

    /** The same finding of a changed submission keeps it as long as its subject stays in its place. */
    private static String fingerprint(ReportedFinding finding) {
        return hex(Digest.sha256(
                (finding.provision() + "\n" + finding.subject().pointer().value()).getBytes(StandardCharsets.UTF_8)));
    }
}
