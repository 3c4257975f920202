package sternwright.app.files.packed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import sternwright.app.demo.InventedFolder;
import sternwright.app.demo.InventedYard;
import sternwright.boat.Boat;
import sternwright.boat.PartRef;
import sternwright.boat.Winter;
import sternwright.history.BoatHistory;

/** What is packed comes out equal, whatever it is. */
class PackingTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-10-01");
    private static final Packing PACKING = new Packing(List.of("engine", "drive"), List.of(PartRef.class));

    record Everything(
            @Nullable String text,
            @Nullable LocalDate day,
            double figure,
            @Nullable Double perhaps,
            int whole,
            boolean flag,
            @Nullable Winter choice,
            List<PartRef> parts,
            Set<String> names,
            Map<String, Double> table,
            @Nullable PartRef part) {}

    @Test
    void anyRecordComesOutEqual() {
        Random random = new Random(11);
        for (int i = 0; i < 2000; i++) {
            Everything one = everything(random);
            assertEquals(one, PACKING.unpack(Everything.class, PACKING.pack(Everything.class, one), null));
        }
    }

    private static Everything everything(Random random) {
        PartRef part = new PartRef(word(random), word(random));
        return new Everything(
                random.nextInt(4) == 0 ? null : word(random),
                random.nextInt(4) == 0 ? null : LocalDate.ofEpochDay(random.nextInt(200_000) - 100_000),
                figure(random),
                random.nextInt(4) == 0 ? null : figure(random),
                random.nextInt(),
                random.nextBoolean(),
                random.nextInt(4) == 0 ? null : Winter.values()[random.nextInt(Winter.values().length)],
                List.of(part, new PartRef(word(random), "p"), part),
                Set.of("a" + random.nextInt(), word(random)),
                Map.of("k", figure(random), "l", figure(random)),
                random.nextBoolean() ? part : null);
    }

    private static String word(Random random) {
        return List.of("engine", "drive", "", "\u00e9\u4e2d\uD83D\uDEA2", "w" + random.nextInt(20), "x".repeat(300))
                .get(random.nextInt(6));
    }

    private static double figure(Random random) {
        return switch (random.nextInt(7)) {
            case 0 -> random.nextInt(1000);
            case 1 -> random.nextInt(100_000) / 100.0;
            case 2 -> -0.0;
            case 3 -> Double.longBitsToDouble(random.nextLong());
            case 4 -> Double.POSITIVE_INFINITY;
            case 5 -> random.nextGaussian() * 1e15;
            default -> random.nextDouble();
        };
    }

    @Test
    void boatsAndHistoriesComeOutEqualAndSmall() {
        InventedYard made = new InventedFolder(InventedFolder.Where.NORTH).make(8, TODAY, 3);
        for (Boat boat : made.boats()) {
            assertEquals(boat, PACKING.unpack(Boat.class, PACKING.pack(Boat.class, boat), new HashMap<>()));
            BoatHistory history = Objects.requireNonNull(made.histories().get(boat.id()));
            byte[] packed = PACKING.pack(BoatHistory.class, history);
            assertEquals(history, PACKING.unpack(BoatHistory.class, packed, null));
            int lines = history.entries().size() + history.meter().size();
            assertTrue(packed.length < 3000 + 25 * lines, packed.length + " bytes for " + lines + " lines");
        }
    }

    @Test
    void whatIsEqualIsSharedThroughAPool() {
        byte[] one = PACKING.pack(PartRef.class, new PartRef("port", "shaft"));
        Map<Object, Object> pool = new HashMap<>();
        assertSame(PACKING.unpack(PartRef.class, one, pool), PACKING.unpack(PartRef.class, one, pool));
    }

    @Test
    void anAlteredByteIsSeen() {
        byte[] packed = PACKING.pack(PartRef.class, new PartRef("port", "shaft"));
        assertTrue(Packing.sound(packed));
        for (int i = 0; i < packed.length; i++) {
            byte[] altered = packed.clone();
            altered[i] ^= 0x10;
            assertFalse(Packing.sound(altered));
        }
        assertFalse(Packing.sound(new byte[0]));
    }
}
