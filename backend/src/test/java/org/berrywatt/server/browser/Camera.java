package org.berrywatt.server.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Map;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.chrome.ChromeDriver;

/** Keeps pictures of what a browser shows in {@code target/pictures}, if people will look at them. */
final class Camera {

    /** Whether people will look. */
    static final boolean IS_WANTED = Boolean.getBoolean("berrywatt.pictures");

    private final ChromeDriver driver;

    Camera(ChromeDriver driver) {
        this.driver = driver;
    }

    /** What the screen shows. */
    void picture(String name) {
        if (IS_WANTED) {
            keep(name, driver.getScreenshotAs(OutputType.BYTES));
        }
    }

    /** The page from its top to its end. */
    void wholePicture(String name) {
        if (IS_WANTED) {
            keep(name, whole());
        }
    }

    private byte[] whole() {
        var shot = driver.executeCdpCommand(
                "Page.captureScreenshot", Map.of("captureBeyondViewport", true, "clip", extent()));
        return Base64.getDecoder().decode(String.valueOf(shot.get("data")));
    }

    private Map<String, Object> extent() {
        var size = (Map<?, ?>)
                driver.executeCdpCommand("Page.getLayoutMetrics", Map.of()).get("cssContentSize");
        return Map.of("x", 0, "y", 0, "width", size.get("width"), "height", size.get("height"), "scale", 1);
    }

    private static void keep(String name, byte[] picture) {
        try {
            var folder = Files.createDirectories(Path.of("target", "pictures"));
            Files.write(folder.resolve(name + ".png"), picture);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
