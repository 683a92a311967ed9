package org.berrywatt.server;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;

/** What stands before several servers: hands each connection to the next of them that answers. */
final class LoopbackProxy implements AutoCloseable {

    private final List<Integer> targets;
    private final ServerSocket door;
    private final ExecutorService hands = Executors.newCachedThreadPool(LoopbackProxy::thread);
    private final AtomicInteger turn = new AtomicInteger();

    /** @param targets ports of the servers */
    LoopbackProxy(List<Integer> targets) throws IOException {
        this.targets = targets;
        this.door = new ServerSocket(0, 200, InetAddress.getLoopbackAddress());
        hands.execute(this::receive);
    }

    private static Thread thread(Runnable work) {
        var thread = new Thread(work, "proxy");
        thread.setDaemon(true);
        return thread;
    }

    int port() {
        return door.getLocalPort();
    }

    String baseUrl() {
        return "http://localhost:" + port();
    }

    private void receive() {
        while (!door.isClosed()) {
            try {
                var guest = door.accept();
                hands.execute(() -> serve(guest));
            } catch (IOException closed) {
                return;
            }
        }
    }

    private void serve(Socket guest) {
        try (guest;
                var server = next()) {
            var back = hands.submit(() -> pipe(server, guest));
            pipe(guest, server);
            back.get();
        } catch (Exception nobodyAnswers) {
            // the guest's connection is closed, as a proxy's would be
        }
    }

    private Socket next() throws IOException {
        int first = turn.getAndIncrement();
        for (int tried = 0; tried < targets.size(); tried++) {
            try {
                return new Socket(
                        InetAddress.getLoopbackAddress(), targets.get(Math.floorMod(first + tried, targets.size())));
            } catch (IOException away) {
                // the next one
            }
        }
        throw new IOException("no server answers");
    }

    /** Until one side ends; then the other hears of it at once. */
    private static void pipe(Socket from, Socket to) {
        try (to) {
            copy(from.getInputStream(), to.getOutputStream());
        } catch (IOException ended) {
            // closing is all there is to do
        }
    }

    private static void copy(InputStream in, OutputStream out) throws IOException {
        byte[] some = new byte[8192];
        for (int read = in.read(some); read >= 0; read = in.read(some)) {
            out.write(some, 0, read);
            out.flush();
        }
    }

    @Override
    public void close() throws IOException {
        door.close();
        hands.shutdownNow();
    }
}
