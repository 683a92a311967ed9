package org.berrywatt.server.platform;

import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;

/** A request whose body ends in an {@link Oversize} when it is longer than its limit. */
final class LimitedRequest extends HttpServletRequestWrapper {

    private final BodySize limit;

    LimitedRequest(HttpServletRequest request, BodySize limit) {
        super(request);
        this.limit = limit;
    }

    @Override
    public ServletInputStream getInputStream() throws IOException {
        return new Limited(super.getInputStream());
    }

    @Override
    public BufferedReader getReader() throws IOException {
        return new BufferedReader(new InputStreamReader(getInputStream(), StandardCharsets.UTF_8));
    }

    private final class Limited extends ServletInputStream {

        private final ServletInputStream body;
        private int taken;

        Limited(ServletInputStream body) {
            this.body = body;
        }

        @Override
        public int read() throws IOException {
            int read = body.read();
            count(read < 0 ? 0 : 1);
            return read;
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
            int read = body.read(into, offset, length);
            count(read);
            return read;
        }

        private void count(int read) throws IOException {
            taken += Math.max(0, read);
            if (taken > limit.bytes()) {
                Oversize.takeRest(body);
                throw new Oversize(limit);
            }
        }

        @Override
        public boolean isFinished() {
            return body.isFinished();
        }

        @Override
        public boolean isReady() {
            return body.isReady();
        }

        @Override
        public void setReadListener(ReadListener listener) {
            body.setReadListener(listener);
        }
    }
}
