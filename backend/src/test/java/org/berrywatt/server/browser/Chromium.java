package org.berrywatt.server.browser;

import java.io.File;
import java.util.List;
import java.util.logging.Level;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** The system's own Chromium, without a window and without what no test needs. */
final class Chromium {

    private static final List<String> FLAGS = List.of(
            "--headless=new",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-dev-shm-usage",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--disable-quic",
            "--disable-extensions",
            "--disable-default-apps",
            "--process-per-site",
            "--renderer-process-limit=1");

    private Chromium() {}

    static ChromeDriver start() {
        return new ChromeDriver(service(), options());
    }

    private static ChromeDriverService service() {
        return new ChromeDriverService.Builder()
                .usingDriverExecutable(program("chromedriver", "chromium-driver"))
                .build();
    }

    private static ChromeOptions options() {
        var console = new LoggingPreferences();
        console.enable(LogType.BROWSER, Level.ALL);
        var options = new ChromeOptions();
        options.setBinary(binary());
        options.addArguments(FLAGS);
        options.setCapability("goog:loggingPrefs", console);
        return options;
    }

    /**
     * The edition without windows where it is installed: a page costs it a third less. The program itself, since its
     * script in {@code /usr/bin} would end without it.
     */
    private static File binary() {
        var lean = new File("/usr/lib/chromium/chromium-headless-shell");
        return lean.canExecute() ? lean : program("chromium", "chromium");
    }

    /** The drivers are named outright, so that nothing is fetched from elsewhere. */
    private static File program(String name, String debianPackage) {
        var file = new File("/usr/bin/" + name);
        if (!file.canExecute()) {
            throw new IllegalStateException("browser tests need /usr/bin/" + name + ": install the package "
                    + debianPackage + ", or run deploy/check.sh, which does");
        }
        return file;
    }
}
