package org.neckgeom.examples;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/**
 * A Chromium without a window, driven as a hand drives it (WebDriver); where it or its driver is not installed (Debian:
 * {@code apt-get install chromium-driver}) the tests are skipped, and say so. It takes seconds to start: all tests of a JVM share
 * one of each kind.
 */
final class Browser {

    /** What it is like. */
    enum Kind {
        /** A phone's width and page, light colours. */
        PHONE(390, 844),
        /** A desk's width, dark colours. */
        DESK(1280, 900),
        /** Room for pages in frames of any width, light colours. */
        FRAMES(1400, 3000);

        private final int width;
        private final int height;

        Kind(int width, int height) {
            this.width = width;
            this.height = height;
        }
    }

    /** Rules of WCAG 2.2 A and AA, and what its makers hold to be good practice. */
    private static final String AXE = """
            const done = arguments[0];
            axe.run(document, {resultTypes: ['violations'], runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']})
              .then(found => done([String(found.passes.length)].concat(found.violations.flatMap(one =>
                one.nodes.map(node => one.id + ': ' + node.html.slice(0, 160))))), failed => done(['0', String(failed)]));
            """;

    /** The report of a page in a frame, once it is there. */
    private static final String REPORT = """
            const done = arguments[0];
            const look = () => { const e = document.getElementById('report'); e ? done(e.textContent) : setTimeout(look, 20); };
            look();
            """;

    private static final Map<Kind, Browser> STARTED = new EnumMap<>(Kind.class);

    private final ChromeDriver driver;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
        Runtime.getRuntime().addShutdownHook(new Thread(driver::quit));
    }

    /** The one of a kind. */
    static synchronized Browser of(Kind kind) {
        return STARTED.computeIfAbsent(kind, Browser::started);
    }

    private static Browser started(Kind kind) {
        Optional<Path> browser = found("chromium", "chromium-browser", "google-chrome");
        Optional<Path> control = found("chromedriver");
        if (browser.isEmpty() || control.isEmpty()) {
            System.err.println("SKIPPED: pages were not opened in a browser, no Chromium with its driver is installed");
        }
        Assumptions.assumeTrue(
                browser.isPresent() && control.isPresent(),
                "no Chromium with its driver installed: pages were not opened in it");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(browser.orElseThrow().toString());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--window-size=" + Math.max(500, kind.width) + "," + kind.height);
        if (kind == Kind.PHONE) {
            options.setExperimentalOption(
                    "mobileEmulation",
                    Map.of("deviceMetrics", Map.of("width", kind.width, "height", kind.height, "pixelRatio", 2.0)));
        }
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(control.orElseThrow().toFile())
                .usingAnyFreePort()
                .build();
        ChromeDriver driver = new ChromeDriver(service, options);
        driver.manage().timeouts().scriptTimeout(Duration.ofSeconds(60));
        if (kind == Kind.DESK) {
            driver.executeCdpCommand(
                    "Emulation.setEmulatedMedia",
                    Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", "dark"))));
        }
        return new Browser(driver);
    }

    /** The first program of some names on the path. */
    private static Optional<Path> found(String... names) {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(":"))
                .flatMap(folder -> Stream.of(names).map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** Opens a page in a frame of a width, as windows can't be narrower than 500 pixels; what its script reports. */
    static String opened(Path folder, String page, int width, String script) throws IOException {
        String inner = page.replace("</body>", script + "</body>");
        String frame = "<!DOCTYPE html><html><body><iframe width=\"" + width + "\" height=\"3000\" style=\"border:0\""
                + " srcdoc=\"" + inner.replace("&", "&amp;").replace("\"", "&quot;") + "\"></iframe></body></html>";
        Browser browser = of(Kind.FRAMES);
        browser.open(Files.writeString(Files.createTempFile(folder, "frame", ".html"), frame)
                .toUri()
                .toString());
        return String.valueOf(browser.driver.executeAsyncScript(REPORT));
    }

    /** A page as it is printed to a PDF: on the paper that it asks for. */
    static byte[] printed(Path folder, String page) throws IOException {
        Browser browser = of(Kind.FRAMES);
        browser.open(
                Files.writeString(folder.resolve("printed.html"), page).toUri().toString());
        Map<String, Object> pdf = browser.driver.executeCdpCommand(
                "Page.printToPDF", Map.of("preferCSSPageSize", true, "printBackground", true));
        return Base64.getDecoder().decode(String.valueOf(pdf.get("data")));
    }

    void open(String address) {
        driver.get(address);
    }

    Object run(String script) {
        return Objects.requireNonNull(driver.executeScript(script));
    }

    /** What axe holds against the page as it is now; first how many rules it passed. */
    List<?> axe() throws IOException {
        try (InputStream script =
                Objects.requireNonNull(Browser.class.getResourceAsStream("/axe.min.js"), "axe.min.js")) {
            driver.executeScript(new String(script.readAllBytes(), StandardCharsets.UTF_8));
        }
        return (List<?>) Objects.requireNonNull(driver.executeAsyncScript(AXE));
    }

    String text(String id) {
        return driver.findElement(By.id(id)).getText();
    }

    String body() {
        return driver.findElement(By.tagName("body")).getText();
    }

    /** Presses keys where the keyboard is. */
    void type(CharSequence... keys) {
        driver.switchTo().activeElement().sendKeys(keys);
    }

    /** Presses ENTER in a form and waits for the page that answers it. */
    void send() throws InterruptedException {
        driver.executeScript("window.isBefore = true");
        type(Keys.ENTER);
        for (int i = 0; i < 1000; i++) {
            if (Boolean.TRUE.equals(
                    driver.executeScript("return !window.isBefore && document.readyState === 'complete'"))) {
                return;
            }
            Thread.sleep(20);
        }
        throw new AssertionError("no page answers the form");
    }

    /** Presses TAB until it is at an element that is found by a selector. */
    void tabTo(String selector) {
        for (int i = 0; i < 60; i++) {
            type(Keys.TAB);
            WebElement at = driver.switchTo().activeElement();
            if (Boolean.TRUE.equals(driver.executeScript("return arguments[0].matches(arguments[1])", at, selector))) {
                return;
            }
        }
        throw new AssertionError("the keyboard does not come to " + selector);
    }
}
