package org.berrywatt.server.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * A stretch of network between one device and the server that can be cut and mended. While it is cut, open connections
 * are gone and new ones are closed at once.
 */
final class WeakWifi implements AutoCloseable {

    private final ServerSocket door;
    private final int serverPort;
    private final List<Socket> open = new CopyOnWriteArrayList<>();
    private final ExecutorService carriers = Executors.newCachedThreadPool();
    private volatile boolean cut;

    WeakWifi(int serverPort) {
        this.serverPort = serverPort;
        try {
            door = new ServerSocket(0, 100, InetAddress.getLoopbackAddress());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        carriers.execute(this::welcome);
    }

    /** The server's address as a device behind this network sees it. */
    String address() {
        return "http://127.0.0.1:" + door.getLocalPort();
    }

    void cut() {
        cut = true;
        open.forEach(WeakWifi::shut);
        open.clear();
    }

    void mend() {
        cut = false;
    }

    @Override
    public void close() throws IOException {
        door.close();
        cut();
        carriers.shutdownNow();
    }

    private void welcome() {
        try {
            while (true) {
                connect(door.accept());
            }
        } catch (IOException closed) {
            cut();
        }
    }

    private void connect(Socket device) {
        if (cut) {
            shut(device);
            return;
        }
        try {
            var server = new Socket(InetAddress.getLoopbackAddress(), serverPort);
            open.addAll(List.of(device, server));
            carriers.execute(() -> carry(device, server));
            carriers.execute(() -> carry(server, device));
        } catch (IOException noServer) {
            shut(device);
        }
    }

    private static void carry(Socket from, Socket to) {
        try (from;
                to) {
            from.getInputStream().transferTo(to.getOutputStream());
        } catch (IOException gone) {
            shut(to);
        }
    }

    private static void shut(Socket socket) {
        try {
            socket.close();
        } catch (IOException e) {
            throw new UncheckedIOException("a socket cannot be closed", e);
        }
    }
}
