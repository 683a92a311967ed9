package org.berrywatt.server;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.awaitility.Awaitility;
import org.awaitility.core.ConditionTimeoutException;
import org.awaitility.core.TerminalFailureException;

/**
 * The jar as a person starts it: {@code java -jar berrywatt.jar}, with a port and a home of its own. It compiles less
 * than a person's, since it does not live long enough for that to pay.
 */
public final class ServerProcess implements AutoCloseable {

    private static final Duration PATIENCE = Duration.ofMinutes(6);
    private static final Path TARGET = Path.of("target").toAbsolutePath();

    /** The server as the build leaves it, its libraries in {@code lib/} beside it. */
    static final Path JAR = TARGET.resolve("berrywatt.jar");

    private final List<String> command;
    private final Process process;
    private final int port;
    private final Path output;
    private final Path errors;

    private ServerProcess(List<String> command, Process process, int port, Path output, Path errors) {
        this.command = command;
        this.process = process;
        this.port = port;
        this.output = output;
        this.errors = errors;
    }

    /** Starts without waiting, beside database programs that are unpacked once for all tests. */
    public static ServerProcess start(Path home, String... arguments) throws IOException {
        var all = new ArrayList<>(List.of(arguments));
        all.add("--berrywatt.programs=" + TARGET.resolve("database-programs"));
        return start(List.of(), JAR, freePort(), home, all.toArray(String[]::new));
    }

    static ServerProcess start(List<String> before, Path jar, int port, Path home, String... arguments)
            throws IOException {
        var command = new ArrayList<>(before);
        command.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xlog:all=error", // says nothing of an archive that is of another jar
                "-XX:SharedArchiveFile=" + TARGET.resolve("classes.jsa"),
                "-jar",
                jar.toString(),
                "--berrywatt.home=" + home,
                "--server.port=" + port));
        command.addAll(List.of(arguments));
        return run(command, port);
    }

    /** The same server once more, for one that has ended. */
    ServerProcess again() throws IOException {
        return run(command, port);
    }

    /** The server of the classes that run now, without a jar. */
    static ServerProcess ofClasses(Path home, String forJava) throws IOException {
        int port = freePort();
        var command = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                forJava,
                "-cp",
                System.getProperty("java.class.path"),
                Berrywatt.class.getName(),
                "--berrywatt.home=" + home,
                "--berrywatt.programs=" + TARGET.resolve("database-programs"),
                "--server.port=" + port);
        return run(command, port);
    }

    private static ServerProcess run(List<String> command, int port) throws IOException {
        var logs = Files.createDirectories(TARGET.resolve("processes"));
        var output = Files.createTempFile(logs, "server", ".out");
        var errors = Files.createTempFile(logs, "server", ".err");
        var process = new ProcessBuilder(command)
                .redirectOutput(output.toFile())
                .redirectError(errors.toFile())
                .start();
        return new ServerProcess(command, process, port, output, errors);
    }

    /** A home under the build's folder that nothing else uses. */
    public static Path newHome() throws IOException {
        return Files.createTempDirectory(Files.createDirectories(TARGET.resolve("homes")), "process")
                .resolve("home");
    }

    static int freePort() throws IOException {
        try (var socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    /** Waits until the server answers that it is healthy; one that does not is ended. */
    public ServerProcess ready() {
        try {
            awaitHealth();
        } catch (ConditionTimeoutException | TerminalFailureException failed) {
            kill();
            throw failed;
        }
        return this;
    }

    private void awaitHealth() {
        Awaitility.await("ready, or the reason why not: " + errors)
                .atMost(PATIENCE)
                .pollInterval(Duration.ofMillis(200))
                .failFast("the server ended: " + errors, () -> !process.isAlive())
                .ignoreExceptions()
                .until(() -> get("/actuator/health").statusCode() == 200);
    }

    public HttpResponse<String> get(String address) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(baseUrl() + address)).build(),
                        HttpResponse.BodyHandlers.ofString());
    }

    public String baseUrl() {
        return "http://localhost:" + port;
    }

    public int port() {
        return port;
    }

    public ProcessHandle handle() {
        return process.toHandle();
    }

    /** Waits until the process has ended. */
    public int exitCode() throws InterruptedException {
        if (!process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)) {
            throw new AssertionError("the server is still running: " + errors);
        }
        return process.exitValue();
    }

    public String output() throws IOException {
        return Files.readString(output);
    }

    public String errors() throws IOException {
        return Files.readString(errors);
    }

    /** The one-time key for the first teacher, read off the console. */
    String setupKey() throws IOException {
        Awaitility.await().until(() -> output().contains("key once"));
        return Pattern.compile("[a-z2-9]{4}(-[a-z2-9]{4}){3}")
                .matcher(output())
                .results()
                .findFirst()
                .orElseThrow()
                .group();
    }

    /** The database that a server started in this home. */
    static ProcessHandle databaseOf(Path home) throws IOException {
        var pid = Files.readAllLines(home.resolve("database/postmaster.pid")).get(0);
        return ProcessHandle.of(Long.parseLong(pid.strip())).orElseThrow();
    }

    /** What {@code kill -9} does. */
    public void kill() {
        process.destroyForcibly().onExit().join();
    }

    /** What {@code Ctrl-C} does. */
    public void end() {
        process.destroy();
        process.onExit().completeOnTimeout(process, 30, TimeUnit.SECONDS).join();
    }

    @Override
    public void close() {
        end();
        kill();
    }
}
