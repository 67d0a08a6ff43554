package org.deckplanreview.rendering.browser;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.print.PrintOptions;

/**
 * Chromium without a window and without a network, started once for a class of tests. Where Debian's packages chromium and
 * chromium-driver are not installed the tests are skipped; where the environment variable CI is true they fail.
 */
final class Browser implements BeforeAllCallback, AfterAllCallback {
    private static final Path PROGRAM = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
    private static final String ABSENT =
            "Needs the browser " + PROGRAM + " and its driver " + DRIVER + " (packages chromium, chromium-driver)";
    private static final String OVERLAPS = script("overlaps.js");

    /** What reaches beyond the right side of the window, if the page can be moved sideways. */
    private static final String SIDEWAYS = """
            const page = document.documentElement;
            if (page.scrollWidth <= page.clientWidth) return [];
            return [...document.querySelectorAll('body *')]
              .filter(e => !e.closest('svg') && e.getBoundingClientRect().right > page.clientWidth + 0.5)
              .map(e => page.scrollWidth + ' px wide: ' + e.outerHTML.slice(0, 200));
            """;

    private static final String REQUESTS = "return performance.getEntriesByType('resource').map(entry => entry.name)";
    private static final String SET_DETAILS =
            "document.querySelectorAll('details').forEach(details => details.open = arguments[0])";

    private static final String THIN = """
            document.querySelectorAll('section > details:nth-of-type(n+3), li:nth-of-type(n+3), tbody > tr:nth-of-type(n+3)')
              .forEach(repeated => repeated.remove());
            """;
    private static final int LONGEST_SECONDS = 240;

    private ChromeDriver driver;
    private Path page;

    private static String script(String name) {
        try (InputStream in = Browser.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Override
    public void beforeAll(ExtensionContext context) throws IOException {
        boolean isInstalled = Files.isExecutable(PROGRAM) && Files.isExecutable(DRIVER);
        if (!isInstalled && "true".equals(System.getenv("CI"))) {
            throw new AssertionError(ABSENT);
        }
        Assumptions.assumeTrue(isInstalled, ABSENT);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(DRIVER.toFile())
                .usingAnyFreePort()
                .withSilent(true)
                .build();
        driver = new ChromeDriver(service, options());
        page = Files.createTempFile("page-", ".html");
    }

    private static ChromeOptions options() {
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(PROGRAM.toFile());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--no-first-run",
                "--disable-background-networking",
                "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE localhost");
        options.setCapability("goog:loggingPrefs", logs);
        return options;
    }

    @Override
    public void afterAll(ExtensionContext context) throws IOException {
        if (driver != null) {
            driver.quit();
        }
        if (page != null) {
            Files.deleteIfExists(page);
        }
    }

    void open(String html, int widthPx) throws IOException {
        Files.writeString(page, html);
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", widthPx, "height", 844, "deviceScaleFactor", 1, "mobile", false));
        driver.manage().logs().get(LogType.BROWSER);
        driver.get(page.toUri().toString());
    }

    /** Opens or closes whatever can be opened. */
    void setDetails(boolean open) {
        driver.executeScript(SET_DETAILS, open);
    }

    String title() {
        return driver.getTitle();
    }

    /** Errors and warnings of the console since the page was opened. */
    List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(entry -> entry.getLevel() + " " + entry.getMessage())
                .toList();
    }

    /** What the page asked for besides itself. */
    List<String> requests() {
        return texts(REQUESTS);
    }

    List<String> sideways() {
        return texts(SIDEWAYS);
    }

    /** Pairs of texts of one drawing that cover each other. */
    List<String> overlaps() {
        return texts(OVERLAPS);
    }

    /** Leaves the first two of what repeats: findings of a group, steps of a working, rows of a table. */
    void thin() {
        driver.executeScript(THIN);
    }

    /** What axe-core holds against the page, with the element. The insides of drawings are left to tests of drawings. */
    List<String> barriers() {
        AxeRunOptions options = new AxeRunOptions();
        options.setResultTypes(List.of("violations"));
        return new AxeBuilder()
                        .setLegacyMode(true)
                        .setTimeout(LONGEST_SECONDS)
                        .withOptions(options)
                        .exclude("svg > *")
                        .analyze(driver)
                        .getViolations()
                        .stream()
                        .flatMap(rule -> rule.getNodes().stream()
                                .map(node -> rule.getId() + ": " + node.getHtml() + ": " + node.getFailureSummary()))
                        .toList();
    }

    /** The text of the page as it comes out on paper, with single blanks. */
    String printed() throws IOException {
        byte[] pdf = Base64.getDecoder().decode(driver.print(new PrintOptions()).getContent());
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    private List<String> texts(String script) {
        return ((List<?>) driver.executeScript(script))
                .stream().map(Object::toString).toList();
    }
}
