package sternwright.app.serve;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.HotSpotDiagnosticMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sternwright.app.serve.GivingBack.Deed;
import sternwright.app.serve.GivingBack.Look;

/** When the heap is given back: only while nobody asks for anything, for everybody waits while it is collected. */
class GivingBackTest {
    private static final long MIB = 1L << 20;

    @Test
    void whatTheProgramItselfNeedsWhileItWaitsIsQuiet() {
        assertThat(new Look(101 * MIB, 7).quietSince(new Look(100 * MIB, 7))).isTrue();
    }

    @Test
    void whoeverAsksMakesItGrow() {
        assertThat(new Look(103 * MIB, 7).quietSince(new Look(100 * MIB, 7))).isFalse();
    }

    @Test
    void asFullAsBeforeAfterACollectionIsNotQuiet() {
        assertThat(new Look(100 * MIB, 8).quietSince(new Look(100 * MIB, 7))).isFalse();
    }

    @Test
    void itIsCutAtOnceAndAgainWhenItWasQuietForLong() {
        GivingBack.Quiet quiet = new GivingBack.Quiet(new Look(300 * MIB, 7));
        assertThat(quiet.deed(new Look(400 * MIB, 8))).as("somebody asks").isEqualTo(Deed.NONE);
        assertThat(quiet.deed(new Look(400 * MIB, 8))).as("nobody any more").isEqualTo(Deed.CUT);
        quiet.done(Deed.CUT, new Look(250 * MIB, 9));
        assertThat(quiet.deed(new Look(250 * MIB, 9))).as("still nobody").isEqualTo(Deed.MAKE_ROOM);
        quiet.done(Deed.MAKE_ROOM, new Look(250 * MIB, 10));
        for (int look = 3; look < GivingBack.Quiet.LONG_LOOKS; look++) {
            assertThat(quiet.deed(new Look(250 * MIB, 10))).as("look " + look).isEqualTo(Deed.NONE);
        }
        assertThat(quiet.deed(new Look(250 * MIB, 10))).as("quiet for long").isEqualTo(Deed.CUT);
        quiet.done(Deed.CUT, new Look(90 * MIB, 11));
        for (int look = GivingBack.Quiet.LONG_LOOKS + 1; look <= 9 * GivingBack.Quiet.LONG_LOOKS; look++) {
            boolean again = look % GivingBack.Quiet.LONG_LOOKS == 0 && look <= 4 * GivingBack.Quiet.LONG_LOOKS;
            Deed deed = quiet.deed(new Look(90 * MIB, 11));
            assertThat(deed == Deed.CUT).as("look " + look).isEqualTo(again);
            if (deed != Deed.NONE) {
                quiet.done(deed, new Look(90 * MIB, 11));
            }
        }
        assertThat(quiet.deed(new Look(120 * MIB, 11)))
                .as("somebody asks: it grows by itself")
                .isEqualTo(Deed.NONE);
        assertThat(quiet.deed(new Look(120 * MIB, 11))).isEqualTo(Deed.CUT);
    }

    @Test
    void aCollectionIsSeen() {
        Look before = Look.now();
        List<byte[]> taken =
                IntStream.range(0, 64).mapToObj(i -> new byte[1 << 16]).toList();
        System.gc();
        assertThat(taken).hasSize(64);
        assertThat(Look.now().collections()).isGreaterThan(before.collections());
    }

    @Test
    void givingBackCutsTheHeapAndLeavesItFreeToGrow() {
        String before = freeRatios();
        long full = filled();
        // Without the launcher's option the machine shrinks the heap in four steps.
        for (int step = 0; step < 4; step++) {
            GivingBack.collect(10);
        }
        assertThat(Runtime.getRuntime().totalMemory()).isLessThan(full);
        assertThat(freeRatios()).isEqualTo(before);
    }

    @Test
    void whoeverAsksNextFindsRoom() {
        List<byte[]> used =
                IntStream.range(0, 256).mapToObj(i -> new byte[1 << 20]).toList();
        GivingBack.collect(10);
        long cut = Runtime.getRuntime().totalMemory();
        GivingBack.collect(50);
        assertThat(Runtime.getRuntime().totalMemory()).isGreaterThan(cut);
        assertThat(used).hasSize(256);
    }

    /** Fills the heap until it has grown by an eighth of a gigabyte, lets go of it, and says how large it was. */
    private static long filled() {
        long grown = Runtime.getRuntime().totalMemory() + 128 * MIB;
        List<byte[]> taken = new ArrayList<>();
        while (Runtime.getRuntime().totalMemory() < grown) {
            taken.add(new byte[1 << 20]);
        }
        return Runtime.getRuntime().totalMemory();
    }

    private static String freeRatios() {
        HotSpotDiagnosticMXBean machine = ManagementFactory.getPlatformMXBean(HotSpotDiagnosticMXBean.class);
        return machine.getVMOption("MinHeapFreeRatio").getValue() + " to "
                + machine.getVMOption("MaxHeapFreeRatio").getValue();
    }
}
