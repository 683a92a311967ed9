package org.berrywatt.server.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.berrywatt.contract.LiveMessage;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;

/**
 * A page that follows a leaderboard as the browser's pages do: it takes the next number from the socket, heals a gap by a
 * snapshot, and dials again when the line is lost.
 */
@SuppressWarnings("FutureReturnValueIgnored") // what the page does later tells of itself by what it shows
public final class FollowingPage implements AutoCloseable {

    private static final long PATIENCE_MS = 200;
    private final JsonMapper json = new JsonMapper();
    private final HttpClient http = HttpClient.newHttpClient();
    private final ScheduledExecutorService page = Executors.newSingleThreadScheduledExecutor();
    private final List<LiveMessage> taken = new CopyOnWriteArrayList<>();
    private final int port;
    private final UUID labDayId;
    private @Nullable ListeningPage line;
    private final AtomicInteger dials = new AtomicInteger();

    private FollowingPage(int port, UUID labDayId) {
        this.port = port;
        this.labDayId = labDayId;
    }

    public static FollowingPage at(int port, UUID labDayId) {
        var follower = new FollowingPage(port, labDayId);
        follower.page.execute(follower::dial);
        return follower;
    }

    /** Every picture that was shown, in order. */
    public List<LiveMessage> taken() {
        return List.copyOf(taken);
    }

    /** The picture shown now, as JSON. */
    public String shown() {
        return json.writeValueAsString(taken.get(taken.size() - 1));
    }

    /** How often the line was made. */
    public int dials() {
        return dials.get();
    }

    private void dial() {
        try {
            var dialled = ListeningPage.at(port);
            dialled.whenHeard(message -> page.execute(() -> hear(message)));
            dialled.whenLost(() -> page.execute(() -> lose(dialled)));
            line = dialled.listenTo(labDayId);
            dials.incrementAndGet();
            heal();
        } catch (Exception nobodyThere) {
            page.schedule(this::dial, PATIENCE_MS, TimeUnit.MILLISECONDS);
        }
    }

    private void lose(ListeningPage lost) {
        if (lost == line) {
            lost.close();
            line = null;
            dial();
        }
    }

    private void hear(LiveMessage message) {
        LiveMessage shown = taken.isEmpty() ? null : taken.get(taken.size() - 1);
        boolean beat = message.kind().equals("beat");
        if (shown == null || !shown.epoch().equals(message.epoch()) || message.seq() > shown.seq() + (beat ? 0 : 1)) {
            heal();
        } else if (message.seq() == shown.seq() + 1) {
            taken.add(message);
        }
    }

    private void heal() {
        try {
            var address = URI.create("http://localhost:" + port + "/api/labdays/" + labDayId + "/leaderboard");
            var answer = http.send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
            assertThat(answer.statusCode()).isEqualTo(200);
            take(json.readValue(answer.body(), LiveMessage.class));
        } catch (Exception | AssertionError noAnswer) {
            page.schedule(this::heal, PATIENCE_MS, TimeUnit.MILLISECONDS);
        }
    }

    private void take(LiveMessage snapshot) {
        LiveMessage shown = taken.isEmpty() ? null : taken.get(taken.size() - 1);
        if (shown == null || !shown.epoch().equals(snapshot.epoch()) || snapshot.seq() > shown.seq()) {
            taken.add(snapshot);
        }
    }

    @Override
    public void close() {
        page.shutdownNow();
        if (line != null) {
            line.close();
        }
    }
}
