package org.berrywatt.server.malformed;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketException;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;

/** The server's port as anybody can write to it: bytes in, bytes out, whatever they are. */
public record RawDoor(int port) {

    /** Much longer than any answer takes, also on a busy machine: beyond it the server hangs. */
    static final Duration HANGS_AFTER = Duration.ofSeconds(20);

    /**
     * Sends bytes, then nothing more, and takes in all that comes back.
     *
     * @param from a loopback address, so that guesses count against nobody else
     * @throws AssertionError when the server keeps the connection without a word
     */
    public Answer send(String from, byte[] bytes) throws IOException {
        var start = System.nanoTime();
        try (var socket = new Socket()) {
            socket.bind(new InetSocketAddress(InetAddress.getAllByName(from)[0], 0));
            socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
            socket.setSoTimeout((int) HANGS_AFTER.toMillis());
            write(socket, bytes);
            return new Answer(read(socket), System.nanoTime() - start);
        }
    }

    /** A server that has refused already need not take the rest. */
    private static void write(Socket socket, byte[] bytes) throws IOException {
        try {
            socket.getOutputStream().write(bytes);
            socket.shutdownOutput();
        } catch (SocketException refused) {
            // what it answered is read all the same
        }
    }

    private static String read(Socket socket) throws IOException {
        var all = new ByteArrayOutputStream();
        try {
            socket.getInputStream().transferTo(all);
        } catch (SocketTimeoutException silence) {
            throw new AssertionError("no end of the answer after " + HANGS_AFTER, silence);
        } catch (SocketException cut) {
            // what came before counts
        }
        return all.toString(StandardCharsets.ISO_8859_1);
    }
}
