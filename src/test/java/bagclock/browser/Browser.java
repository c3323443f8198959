package bagclock.browser;

import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.PlaywrightException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * The browser of the journeys: one that is installed, else Playwright's own, else (as root on Debian) the
 * distribution's, installed here. Without any of them the journeys fail; they are never skipped.
 */
public final class Browser implements AutoCloseable {
    private static final List<String> NAMES =
            List.of("chromium", "chromium-browser", "google-chrome-stable", "google-chrome", "chrome");
    private static final List<Path> OTHER_PLACES = List.of(
            Path.of("/Applications/Google Chrome.app/Contents/MacOS/Google Chrome"),
            Path.of("/Applications/Chromium.app/Contents/MacOS/Chromium"),
            Path.of("C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe"));
    private static final long INSTALLATION_MINUTES = 10;

    private final Playwright playwright;
    private final com.microsoft.playwright.Browser browser;

    private Browser(Playwright playwright, com.microsoft.playwright.Browser browser) {
        this.playwright = playwright;
        this.browser = browser;
    }

    /** Starts one without a window. */
    public static Browser start() {
        Optional<Path> installed = installed();
        if (installed.isPresent()) {
            return launch(installed);
        }
        try {
            return launch(Optional.empty());
        } catch (PlaywrightException noDownload) {
            installFromDebian(noDownload);
            return launch(installed());
        }
    }

    /** The running browser; open a context of its own for each test. */
    public com.microsoft.playwright.Browser browser() {
        return browser;
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }

    private static Browser launch(Optional<Path> executable) {
        Map<String, String> environment =
                executable.isPresent() ? Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1") : Map.of();
        Playwright playwright = Playwright.create(new Playwright.CreateOptions().setEnv(environment));
        BrowserType.LaunchOptions options = new BrowserType.LaunchOptions();
        executable.ifPresent(options::setExecutablePath);
        if (isRoot()) {
            options.setArgs(List.of("--no-sandbox"));
        }
        try {
            return new Browser(playwright, playwright.chromium().launch(options));
        } catch (PlaywrightException failure) {
            playwright.close();
            throw failure;
        }
    }

    private static Optional<Path> installed() {
        Stream<Path> onThePath = Stream.of(
                        System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)));
        return Stream.concat(onThePath, OTHER_PLACES.stream())
                .filter(Files::isExecutable)
                .findFirst();
    }

    private static void installFromDebian(PlaywrightException otherwise) {
        if (!isRoot() || !Files.isExecutable(Path.of("/usr/bin/apt-get"))) {
            throw new IllegalStateException("The journeys need Chromium or Chrome; install one.", otherwise);
        }
        run("apt-get", "update");
        run("apt-get", "install", "-y", "--no-install-recommends", "chromium");
    }

    private static void run(String... command) {
        try {
            ProcessBuilder builder = new ProcessBuilder(command).inheritIO();
            builder.environment().put("DEBIAN_FRONTEND", "noninteractive");
            Process process = builder.start();
            if (!process.waitFor(INSTALLATION_MINUTES, TimeUnit.MINUTES) || process.exitValue() != 0) {
                process.destroy();
                throw new IllegalStateException("failed: " + String.join(" ", command));
            }
        } catch (IOException | InterruptedException failure) {
            throw new IllegalStateException("failed: " + String.join(" ", command), failure);
        }
    }

    private static boolean isRoot() {
        return "root".equals(System.getProperty("user.name"));
    }
}
