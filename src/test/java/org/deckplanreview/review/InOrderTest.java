package org.deckplanreview.review;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Work on many at once whose results come in the order of input. */
class InOrderTest {
    private static final int MOST = 4;

    private final ExecutorService threads = Executors.newFixedThreadPool(MOST);
    private final InOrder inOrder = new InOrder(threads, MOST);

    @AfterEach
    void stop() {
        threads.shutdownNow();
    }

    private static SubmissionLines lines(int count) {
        String text =
                IntStream.rangeClosed(1, count).mapToObj(Integer::toString).collect(Collectors.joining("\n"));
        return new SubmissionLines(new ByteArrayInputStream(text.getBytes(UTF_8)), 100);
    }

    @Test
    void results_come_in_the_order_of_input_though_the_first_is_done_last() throws IOException {
        CountDownLatch othersDone = new CountDownLatch(MOST - 1);
        List<Long> taken = new ArrayList<>();

        inOrder.run(
                lines(1000),
                received -> {
                    if (received.number() == 1) {
                        await(othersDone);
                    }
                    othersDone.countDown();
                    return received.number();
                },
                taken::add);

        assertThat(taken)
                .isEqualTo(
                        IntStream.rangeClosed(1, 1000).mapToObj(i -> (long) i).toList());
    }

    @Test
    void no_more_than_so_many_are_held() throws IOException {
        AtomicInteger read = new AtomicInteger();
        AtomicInteger taken = new AtomicInteger();
        SubmissionLines lines = lines(1000);
        List<Integer> held = new ArrayList<>();
        SubmissionSource counted = () -> {
            Optional<SubmissionSource.Received> next = lines.next();
            next.ifPresent(r -> held.add(read.incrementAndGet() - taken.get()));
            return next;
        };

        inOrder.run(counted, SubmissionSource.Received::number, n -> taken.incrementAndGet());

        assertThat(held).hasSize(1000).allMatch(n -> n <= MOST);
        assertThat(taken).hasValue(1000);
    }

    @Test
    void when_the_taker_is_gone_nothing_more_is_read() {
        AtomicInteger read = new AtomicInteger();
        SubmissionLines lines = lines(1000);
        SubmissionSource counted = () -> {
            read.incrementAndGet();
            return lines.next();
        };

        assertThatThrownBy(() -> inOrder.run(counted, SubmissionSource.Received::number, n -> {
                    throw new IOException("Gone");
                }))
                .isInstanceOf(IOException.class)
                .hasMessage("Gone");
        assertThat(read.get()).isLessThanOrEqualTo(MOST);
    }

    @Test
    void a_failure_of_the_work_is_told_with_its_cause() {
        IllegalStateException failure = new IllegalStateException("broken");

        assertThatThrownBy(() -> inOrder.run(
                        lines(3),
                        received -> {
                            throw failure;
                        },
                        result -> {}))
                .hasCause(failure);
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
