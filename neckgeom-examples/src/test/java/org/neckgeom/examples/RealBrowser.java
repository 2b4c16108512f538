package org.neckgeom.examples;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/**
 * A Chromium that is driven as a hand drives it (WebDriver), as wide as a phone or a desk's screen; where it or its driver is not
 * installed (Debian: {@code apt-get install chromium-driver}) the tests are skipped, and say so.
 */
final class RealBrowser implements AutoCloseable {

    /** Rules of WCAG 2.2 A and AA, and what its makers hold to be good practice. */
    private static final String AXE = """
            const done = arguments[0];
            axe.run(document, {resultTypes: ['violations'], runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']})
              .then(found => done([String(found.passes.length)].concat(found.violations.flatMap(one =>
                one.nodes.map(node => one.id + ': ' + node.html.slice(0, 160))))), failed => done(['0', String(failed)]));
            """;

    private final ChromeDriver driver;

    private RealBrowser(ChromeDriver driver) {
        this.driver = driver;
    }

    /** Opens one of a width: a phone's, laid out as on a phone, in light colours, or a desk's in dark ones. */
    static RealBrowser ofWidth(int width, Path profile) {
        Optional<Path> browser = Browser.chromium();
        Optional<Path> control = Browser.found(List.of("chromedriver"));
        Assumptions.assumeTrue(
                browser.isPresent() && control.isPresent(),
                "no Chromium with its driver installed: pages were not opened in it");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(browser.orElseThrow().toString());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--user-data-dir=" + profile,
                "--window-size=" + Math.max(500, width) + ",900");
        if (width < 500) {
            options.setExperimentalOption(
                    "mobileEmulation",
                    Map.of("deviceMetrics", Map.of("width", width, "height", 844, "pixelRatio", 2.0)));
        }
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(control.orElseThrow().toFile())
                .usingAnyFreePort()
                .build();
        ChromeDriver driver = new ChromeDriver(service, options);
        driver.manage().timeouts().scriptTimeout(Duration.ofSeconds(60));
        if (width >= 500) {
            driver.executeCdpCommand(
                    "Emulation.setEmulatedMedia",
                    Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", "dark"))));
        }
        return new RealBrowser(driver);
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
                Objects.requireNonNull(RealBrowser.class.getResourceAsStream("/axe.min.js"), "axe.min.js")) {
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

    @Override
    public void close() {
        driver.quit();
    }
}
