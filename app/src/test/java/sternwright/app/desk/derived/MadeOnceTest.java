package sternwright.app.desk.derived;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What takes long is made once, kept in bounded room, and never half. */
class MadeOnceTest {
    private final AtomicInteger made = new AtomicInteger();

    @Test
    void whatIsAskedForAtOnceOrAgainIsMadeOnce() throws IOException {
        try (MadeOnce once = new MadeOnce(1000, 10)) {
            List<byte[]> all = IntStream.range(0, 16)
                    .parallel()
                    .mapToObj(i -> once.of("a paper", () -> text("its letters")))
                    .toList();
            all.forEach(a -> assertArrayEquals("its letters".getBytes(StandardCharsets.UTF_8), a));
            assertEquals(1, made.get());
            once.of("a paper for another day", () -> text("other letters"));
            once.of("a paper", () -> text("never"));
            assertEquals(2, made.get());
        }
    }

    @Test
    void oneMemoryServesAllReadersOfOnePaper() throws IOException {
        try (ScratchPad pad = new ScratchPad(1000)) {
            pad.put("a paper", text("its letters"));
            byte[] one = pad.get("a paper");
            assertArrayEquals(text("its letters"), one);
            assertSame(one, pad.get("a paper"));
        }
    }

    @Test
    void whatFailsIsToldAsItIsAndMadeAgain() throws IOException {
        try (MadeOnce once = new MadeOnce(1000, 10)) {
            IllegalArgumentException own = new IllegalArgumentException("no such work");
            assertSame(
                    own,
                    assertThrows(
                            IllegalArgumentException.class,
                            () -> once.of("a paper", () -> {
                                throw own;
                            })));
            assertArrayEquals(text("now"), once.of("a paper", () -> text("now")));
        }
    }

    @Test
    void whoeverWouldOnlyWaitIsToldSo() throws IOException, InterruptedException, ExecutionException {
        CountDownLatch goOn = new CountDownLatch(1);
        try (MadeOnce once = new MadeOnce(1000, 1)) {
            List<CompletableFuture<byte[]>> waiting = new ArrayList<>();
            AtomicInteger refused = new AtomicInteger();
            for (int i = 0; i < 9; i++) {
                String what = "paper " + i;
                waiting.add(CompletableFuture.supplyAsync(
                        () -> {
                            try {
                                return once.of(what, () -> {
                                    await(goOn);
                                    return text(what);
                                });
                            } catch (Busy busy) {
                                refused.incrementAndGet();
                                return new byte[0];
                            }
                        },
                        task -> new Thread(task).start()));
            }
            while (refused.get() < 6) {
                Thread.sleep(5);
            }
            goOn.countDown();
            int answered = 0;
            for (CompletableFuture<byte[]> each : waiting) {
                answered += each.get().length > 0 ? 1 : 0;
            }
            assertEquals(9, answered + refused.get());
        }
    }

    @Test
    void theOldestIsForgottenWhereRoomEnds() throws IOException {
        try (ScratchPad pad = new ScratchPad(100)) {
            for (int i = 0; i < 7; i++) {
                pad.put("p" + i, bytes(30, i));
            }
            assertNull(pad.get("p3"));
            for (int i = 4; i < 7; i++) {
                assertArrayEquals(bytes(30, i), pad.get("p" + i), "p" + i);
            }
            pad.put("long", bytes(101, 1));
            assertNull(pad.get("long"));
            pad.put("p6", bytes(50, 9));
            assertArrayEquals(bytes(50, 9), pad.get("p6"));
            assertNull(pad.get("p4"), "it stood where the longer one stands now");
        }
    }

    private byte[] text(String letters) {
        made.incrementAndGet();
        return letters.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] bytes(int length, int value) {
        byte[] bytes = new byte[length];
        java.util.Arrays.fill(bytes, (byte) value);
        return bytes;
    }

    private static void await(CountDownLatch goOn) {
        try {
            goOn.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
