package org.berrywatt.server;

import io.netty.bootstrap.Bootstrap;
import io.netty.channel.Channel;
import io.netty.channel.ChannelHandlerContext;
import io.netty.channel.ChannelInitializer;
import io.netty.channel.EventLoopGroup;
import io.netty.channel.MultiThreadIoEventLoopGroup;
import io.netty.channel.SimpleChannelInboundHandler;
import io.netty.channel.nio.NioIoHandler;
import io.netty.channel.socket.nio.NioSocketChannel;
import io.netty.handler.codec.http.FullHttpRequest;
import io.netty.handler.codec.http.FullHttpResponse;
import io.netty.handler.codec.http.HttpClientCodec;
import io.netty.handler.codec.http.HttpObjectAggregator;
import io.netty.handler.codec.http.HttpResponseStatus;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * Phones that each keep a connection and ask again as soon as they are answered. They share one thread and make as little work
 * as they can, since they take it from the cores of the server that is measured.
 */
final class Crowd implements AutoCloseable {

    private static final int LONGEST_ANSWER_BYTES = 1 << 20;
    private final EventLoopGroup loop = new MultiThreadIoEventLoopGroup(1, NioIoHandler.newFactory());
    private final List<Channel> phones;

    Crowd(int port, int count) {
        var bootstrap = new Bootstrap()
                .group(loop)
                .channel(NioSocketChannel.class)
                .handler(new ChannelInitializer<>() {
                    @Override
                    protected void initChannel(Channel phone) {
                        phone.pipeline().addLast(new HttpClientCodec(), new HttpObjectAggregator(LONGEST_ANSWER_BYTES));
                    }
                });
        phones = IntStream.range(0, count)
                .mapToObj(each -> bootstrap
                        .connect("localhost", port)
                        .syncUninterruptibly()
                        .channel())
                .toList();
    }

    /** Requests a second that were all answered 200, from the first question to the last answer. */
    double perSecond(int requests, Question question) {
        var work = new Work(requests, question);
        long start = System.nanoTime();
        for (int phone = 0; phone < phones.size(); phone++) {
            phones.get(phone).pipeline().addLast("phone", new Phone(phone, work));
        }
        work.done.join();
        double seconds = (System.nanoTime() - start) / 1e9;
        phones.forEach(phone -> phone.pipeline().remove("phone"));
        return requests / seconds;
    }

    /** What a phone sends as the request of a number. */
    interface Question {
        FullHttpRequest of(int phone, int number);
    }

    private static final class Work {

        private final int requests;
        private final Question question;
        private final AtomicInteger asked = new AtomicInteger();
        private final AtomicInteger answered = new AtomicInteger();
        private final CompletableFuture<Boolean> done = new CompletableFuture<>();

        Work(int requests, Question question) {
            this.requests = requests;
            this.question = question;
        }

        void ask(int phone, ChannelHandlerContext connection) {
            int number = asked.getAndIncrement();
            if (number < requests) {
                var channel = connection.channel();
                // A void promise tells of a failure by exceptionCaught.
                var unused = channel.writeAndFlush(question.of(phone, number), channel.voidPromise());
            }
        }

        void hear(FullHttpResponse answer) {
            if (!answer.status().equals(HttpResponseStatus.OK)) {
                done.completeExceptionally(new IllegalStateException(
                        answer.status() + answer.content().toString(StandardCharsets.UTF_8)));
            } else if (answered.incrementAndGet() == requests) {
                done.complete(true);
            }
        }
    }

    private static final class Phone extends SimpleChannelInboundHandler<FullHttpResponse> {

        private final int number;
        private final Work work;

        Phone(int number, Work work) {
            this.number = number;
            this.work = work;
        }

        @Override
        public void handlerAdded(ChannelHandlerContext connection) {
            work.ask(number, connection);
        }

        @Override
        protected void channelRead0(ChannelHandlerContext connection, FullHttpResponse answer) {
            work.hear(answer);
            work.ask(number, connection);
        }

        @Override
        public void channelInactive(ChannelHandlerContext connection) {
            work.done.completeExceptionally(
                    new IllegalStateException("the server closed the connection of phone " + number));
        }

        @Override
        public void exceptionCaught(ChannelHandlerContext connection, Throwable cause) {
            work.done.completeExceptionally(cause);
        }
    }

    @Override
    public void close() {
        loop.shutdownGracefully(0, 1, TimeUnit.SECONDS).awaitUninterruptibly(10, TimeUnit.SECONDS);
    }
}
