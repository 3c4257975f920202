package sternwright.app.serve;

import com.sun.management.HotSpotDiagnosticMXBean;
import java.lang.management.ManagementFactory;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.ApplicationListener;

/**
 * Gives memory back to the machine when nobody asks for anything: the program runs for months beside others, and its collector
 * gives back only what a whole collection frees. Nobody waits for it, for it is done in quiet moments alone.
 */
final class GivingBack implements ApplicationListener<ApplicationReadyEvent>, AutoCloseable {
    private static final long LOOK_EVERY_S = 4;

    /** Less is not worth a collection. */
    private static final long WORTH_BYTES = 16L << 20;

    /** Free of the heap after a collection, per cent of it; both can be changed while the program runs. */
    private static final String LEAST_FREE = "MinHeapFreeRatio";

    private static final String MOST_FREE = "MaxHeapFreeRatio";
    private static final int CLOSE_PERCENT = 10;
    private static final int ROOMY_PERCENT = 50;

    private final CountDownLatch closed = new CountDownLatch(1);

    /**
     * The heap at one moment.
     *
     * @param usedBytes what is taken of it, what nobody needs any more included
     * @param collections how often it was collected so far
     */
    record Look(long usedBytes, long collections) {
        /** What the program itself needs while it waits. */
        private static final long QUIET_BYTES = 2L << 20;

        static Look now() {
            Runtime machine = Runtime.getRuntime();
            long collections = ManagementFactory.getGarbageCollectorMXBeans().stream()
                    .mapToLong(collector -> collector.getCollectionCount())
                    .sum();
            return new Look(machine.totalMemory() - machine.freeMemory(), collections);
        }

        /**
         * Nothing was asked for since {@code before}. Under load the heap fills and empties and is now and then as full as it was: a
         * whole collection then would keep everybody waiting.
         */
        boolean quietSince(Look before) {
            return collections == before.collections && usedBytes - before.usedBytes < QUIET_BYTES;
        }
    }

    /** What is done in a quiet moment. */
    enum Deed {
        /** Nothing is worth a collection. */
        NONE,
        /** The heap is cut to what is in use: the machine gets back what lay behind it. */
        CUT,
        /** A heap that was cut gets room again, which takes no memory until it is used: whoever asks next would wait for it. */
        MAKE_ROOM
    }

    /** For how long nobody has asked for anything, and what is worth a collection. */
    static final class Quiet {
        /**
         * After so many quiet looks what can be worked out again may be given up too. The machine keeps it the longer the more of the
         * heap is free, half a second a megabyte, so it is looked at more than once.
         */
        static final int LONG_LOOKS = 150 / (int) LOOK_EVERY_S;

        static final int LONG_TIMES = 4;

        private Look before;
        private long leftBytes;
        private int looks;
        private boolean cut;

        Quiet(Look first) {
            before = first;
        }

        Deed deed(Look now) {
            looks = now.quietSince(before) ? looks + 1 : 0;
            before = now;
            boolean longQuiet = looks > 0 && looks % LONG_LOOKS == 0 && looks <= LONG_TIMES * LONG_LOOKS;
            if (longQuiet || looks > 0 && now.usedBytes > leftBytes + WORTH_BYTES) {
                return Deed.CUT;
            }
            return looks > 0 && cut ? Deed.MAKE_ROOM : Deed.NONE;
        }

        /** The collection itself does not end the quiet. */
        void done(Deed deed, Look after) {
            before = after;
            leftBytes = after.usedBytes;
            cut = deed == Deed.CUT;
        }
    }

    @Override
    public void onApplicationEvent(ApplicationReadyEvent open) {
        Thread watch = new Thread(this::watch, "giving-back");
        watch.setDaemon(true);
        watch.setPriority(Thread.MIN_PRIORITY);
        watch.start();
    }

    private void watch() {
        Quiet quiet = new Quiet(Look.now());
        try {
            while (!closed.await(LOOK_EVERY_S, TimeUnit.SECONDS)) {
                Deed deed = quiet.deed(Look.now());
                if (deed != Deed.NONE) {
                    collect(deed == Deed.CUT ? CLOSE_PERCENT : ROOMY_PERCENT);
                    quiet.done(deed, Look.now());
                }
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    /** Collects and leaves so much of the heap free for once; every later collection leaves as much as before. */
    static void collect(int freePercent) {
        HotSpotDiagnosticMXBean machine = machine();
        if (machine == null) {
            System.gc();
            return;
        }
        String least = machine.getVMOption(LEAST_FREE).getValue();
        String most = machine.getVMOption(MOST_FREE).getValue();
        // The least may never be above the most.
        machine.setVMOption(LEAST_FREE, "0");
        machine.setVMOption(MOST_FREE, Integer.toString(freePercent));
        machine.setVMOption(LEAST_FREE, Integer.toString(freePercent));
        System.gc();
        machine.setVMOption(LEAST_FREE, "0");
        machine.setVMOption(MOST_FREE, most);
        machine.setVMOption(LEAST_FREE, least);
    }

    /** Null where the virtual machine is another; the heap is then cut as far as that one does. */
    private static @Nullable HotSpotDiagnosticMXBean machine() {
        try {
            return ManagementFactory.getPlatformMXBean(HotSpotDiagnosticMXBean.class);
        } catch (IllegalArgumentException another) {
            return null;
        }
    }

    @Override
    public void close() {
        closed.countDown();
    }
}
