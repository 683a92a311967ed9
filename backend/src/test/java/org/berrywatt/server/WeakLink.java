package org.berrywatt.server;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of bad network before the server: loses requests, loses answers, delays both, and brings some requests a second
 * time, later than what was sent after them. What happens to the next request is drawn from a seed.
 */
@SuppressWarnings("FutureReturnValueIgnored") // whoever asked hears nothing, as over a lost line
final class WeakLink implements AutoCloseable {

    private static final int MOST_DELAY_MS = 200;

    private enum Fate {
        ARRIVES,
        LATE,
        LOST,
        ANSWER_LOST,
        TWICE
    }

    private final HttpServer door;
    private final ExecutorService carriers = Executors.newCachedThreadPool();
    private final HttpClient onwards = HttpClient.newHttpClient();
    private final Random chance;
    private final String server;
    private final AtomicInteger faults = new AtomicInteger();

    WeakLink(int serverPort, long seed) throws IOException {
        server = "http://localhost:" + serverPort;
        chance = new Random(seed);
        door = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 100);
        door.setExecutor(carriers);
        door.createContext("/", this::carry);
        door.start();
    }

    String address() {
        return "http://localhost:" + door.getAddress().getPort();
    }

    /** How many requests did not just arrive and get their answer. */
    int faults() {
        return faults.get();
    }

    private void carry(HttpExchange exchange) throws IOException {
        var request = onwards(exchange);
        Fate fate = draw();
        faults.addAndGet(fate == Fate.ARRIVES ? 0 : 1);
        if (fate == Fate.LOST) {
            exchange.close();
            return;
        }
        if (fate == Fate.TWICE) {
            after(delayMs()).execute(() -> onwards.sendAsync(request, HttpResponse.BodyHandlers.discarding()));
        }
        long delayMs = fate == Fate.LATE ? delayMs() : 0;
        CompletableFuture.supplyAsync(() -> request, after(delayMs))
                .thenCompose(late -> onwards.sendAsync(late, HttpResponse.BodyHandlers.ofByteArray()))
                .whenComplete((answer, failed) -> answer(exchange, fate == Fate.ANSWER_LOST ? null : answer));
    }

    private HttpRequest onwards(HttpExchange exchange) throws IOException {
        var request = HttpRequest.newBuilder(URI.create(server + exchange.getRequestURI()))
                .method(
                        exchange.getRequestMethod(),
                        HttpRequest.BodyPublishers.ofByteArray(
                                exchange.getRequestBody().readAllBytes()));
        for (String name : new String[] {"Content-Type", "Cookie", "X-XSRF-TOKEN"}) {
            var value = exchange.getRequestHeaders().getFirst(name);
            if (value != null) {
                request.header(name, value);
            }
        }
        return request.build();
    }

    private synchronized Fate draw() {
        int percent = chance.nextInt(100);
        if (percent < 15) {
            return Fate.LOST;
        }
        if (percent < 30) {
            return Fate.ANSWER_LOST;
        }
        if (percent < 45) {
            return Fate.TWICE;
        }
        return percent < 65 ? Fate.LATE : Fate.ARRIVES;
    }

    private synchronized long delayMs() {
        return chance.nextInt(MOST_DELAY_MS);
    }

    private Executor after(long delayMs) {
        return CompletableFuture.delayedExecutor(delayMs, TimeUnit.MILLISECONDS, carriers);
    }

    private static void answer(HttpExchange exchange, @Nullable HttpResponse<byte[]> answer) {
        try (exchange) {
            if (answer != null) {
                exchange.sendResponseHeaders(
                        answer.statusCode(), answer.body().length == 0 ? -1 : answer.body().length);
                exchange.getResponseBody().write(answer.body());
            }
        } catch (IOException phoneHungUp) {
            // it will ask again
        }
    }

    @Override
    public void close() {
        door.stop(0);
        carriers.shutdownNow();
    }
}
