package org.berrywatt.server.browser;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.logging.Level;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptException;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A headless Chromium with a profile of its own: a phone, a laptop or the projector. */
public final class Device implements AutoCloseable {

    private static final Duration PATIENCE = Duration.ofSeconds(40);
    private static final String SETTLED = """
            const done = arguments[0];
            const isDrawn = () => document.readyState === 'complete' && !document.body.innerText.includes('One moment.');
            const fetched = () => isDrawn() ? performance.getEntriesByType('resource').length : NaN;
            const look = (before, alike) => {
              const now = fetched();
              const calm = now === before ? alike + 1 : 0;
              if (calm === 3) done(true);
              else setTimeout(look, 50, now, calm);
            };
            look(NaN, 0);""";

    private final ChromeDriver driver;
    private final Camera camera;

    private Device(int width, int height, double scale, boolean touch) {
        driver = Chromium.start();
        camera = new Camera(driver);
        driver.executeCdpCommand("Emulation.setScrollbarsHidden", Map.of("hidden", true));
        show(width, height, scale, touch);
        prefer("light");
    }

    public static Device phone() {
        return new Device(390, 844, Camera.IS_WANTED ? 2 : 1, true);
    }

    public static Device laptop() {
        return new Device(1366, 768, 1, false);
    }

    public static Device projector() {
        return new Device(1920, 1080, 1, false);
    }

    /** Takes the size of another screen, in CSS pixels. */
    public void resize(int width, int height) {
        show(width, height, 1, false);
    }

    /** Wants the page in {@code light} or {@code dark}, and without motion. */
    public void prefer(String scheme) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of(
                        "features",
                        List.of(
                                Map.of("name", "prefers-color-scheme", "value", scheme),
                                Map.of("name", "prefers-reduced-motion", "value", "reduce"))));
    }

    /** Runs a script of the test's own in every page it opens from now on, before the page's. */
    public void bring(String script) {
        driver.executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", script));
    }

    /** Goes off the network, or comes back. */
    public void offline(boolean away) {
        driver.executeCdpCommand("Network.enable", Map.of());
        driver.executeCdpCommand(
                "Network.emulateNetworkConditions",
                Map.of("offline", away, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
    }

    /** Forgets who it is and all that pages kept in it. */
    public void forget(String origin) {
        open("about:blank");
        driver.executeCdpCommand("Storage.clearDataForOrigin", Map.of("origin", origin, "storageTypes", "all"));
    }

    /** Sends a body as a page of this origin would, with its CSRF token; the status of the answer. */
    public Object post(String path, String json) {
        return driver.executeAsyncScript("""
                const [path, body, done] = arguments;
                const token = () => document.cookie.match(/XSRF-TOKEN=([^;]+)/)[1];
                fetch('/api/access')
                  .then(() => fetch(path, { method: 'POST', body, headers: { 'Content-Type': 'application/json', 'X-XSRF-TOKEN': token() } }))
                  .then(it => done(it.status));""", path, json);
    }

    private void show(int width, int height, double scale, boolean touch) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", scale, "mobile", touch));
    }

    public ChromeDriver driver() {
        return driver;
    }

    public Device open(String url) {
        driver.get(url);
        return this;
    }

    /** Loads a page although it, or another view of it, may be open already. */
    public Device openAnew(String url) {
        boolean isOpen = page(url).equals(page(String.valueOf(driver.getCurrentUrl())));
        open(url);
        if (isOpen) {
            driver.navigate().refresh();
        }
        return this;
    }

    private static String page(String url) {
        return url.split("#", 2)[0];
    }

    /** The first element that matches and can be seen, awaited. */
    public WebElement shown(By what) {
        return waiting().until(ExpectedConditions.visibilityOfElementLocated(what));
    }

    /** Does something to an element that can be seen; once more when the page redraws in between. */
    public void act(By what, Consumer<WebElement> action) {
        waiting().ignoring(StaleElementReferenceException.class).until(it -> {
            action.accept(shown(what));
            return true;
        });
    }

    /** Waits until the page shows this text anywhere. */
    public void showsText(String text) {
        waiting()
                .ignoring(WebDriverException.class)
                .withMessage(() -> "'" + text + "' on a page that shows: " + visibleText())
                .until(it -> visibleText().contains(text));
    }

    /** Waits until the page has drawn itself: its placeholder is gone, and three looks in a row find nothing new fetched. */
    public void settled() {
        waiting().ignoring(JavascriptException.class).until(it -> driver.executeAsyncScript(SETTLED));
    }

    /** What a person could read, taken in one command, so that no redraw comes between; where a line may not break is no matter. */
    public String visibleText() {
        return String.valueOf(driver.executeScript("return document.body ? document.body.innerText : ''"))
                .replace('\u00a0', ' ');
    }

    /** Answers what a script of the page answers, awaited until it is neither null nor false. */
    public Object answers(String script) {
        return waiting().until(it -> ((JavascriptExecutor) it).executeScript(script));
    }

    public WebDriverWait waiting() {
        return new WebDriverWait(driver, PATIENCE, Duration.ofMillis(50));
    }

    /** What the browser's console complained about so far: refused scripts, failed requests, uncaught errors. */
    public List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(it -> it.getLevel().intValue() >= Level.SEVERE.intValue())
                .map(LogEntry::getMessage)
                .toList();
    }

    /** Keeps a picture of what the screen shows for people to look at, if pictures are wanted. */
    public void picture(String name) {
        camera.picture(name);
    }

    /** Keeps a picture of the page from its top to its end, if pictures are wanted. */
    public void wholePicture(String name) {
        camera.wholePicture(name);
    }

    @Override
    public void close() {
        driver.quit();
    }
}
