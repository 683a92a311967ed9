package org.berrywatt.server;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CyclicBarrier;
import java.util.function.Supplier;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** Requests that start at the same moment. */
public final class AtOnce {

    private AtOnce() {}

    /** The statuses of all requests when each has waited for the others before it started. */
    public static List<Integer> statuses(List<Supplier<MvcTestResult>> requests) {
        var start = new CyclicBarrier(requests.size());
        var running = requests.stream()
                .map(request -> CompletableFuture.supplyAsync(() -> status(start, request)))
                .toList();
        return running.stream().map(CompletableFuture::join).toList();
    }

    private static int status(CyclicBarrier start, Supplier<MvcTestResult> request) {
        try {
            start.await();
        } catch (Exception broken) {
            throw new IllegalStateException(broken);
        }
        return request.get().getResponse().getStatus();
    }
}
