package sternwright.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import sternwright.boat.PartRef;

class StruckLinesPropertyTest {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 3);

    /** From 0: an entry of that number; below: a strike of the entry of that number. */
    private static List<HistoryLine> lines(List<Integer> written) {
        return written.stream()
                .map(n -> new HistoryLine(
                        ServiceEntry.done(DAY.plusDays(Math.abs(n)), new PartRef("main", "engine"), "oil", null),
                        n > 0 ? null : new Strike(DAY, "AB", "twice")))
                .toList();
    }

    private static List<Integer> written(RepetitionInfo run) {
        Random random = new Random(run.getCurrentRepetition());
        return IntStream.range(0, random.nextInt(30))
                .mapToObj(i -> random.nextInt(9) - 4)
                .toList();
    }

    @RepeatedTest(50)
    void everyStrikeTakesOneLineOrIsStray(RepetitionInfo run) {
        List<Integer> written = written(run);
        StruckLines parted = StruckLines.of(lines(written));
        long strikes = written.stream().filter(n -> n <= 0).count();
        assertEquals(strikes, parted.struck().size() + parted.stray().size());
        assertEquals(
                written.size() - strikes,
                parted.standing().size() + parted.struck().size());
    }

    @RepeatedTest(50)
    void whatIsWrittenOutIsReadBack(RepetitionInfo run) {
        List<Integer> written = written(run);
        BoatHistory history = BoatHistory.of("tern", lines(written), List.of());
        assertEquals(history, BoatHistory.of("tern", history.lines(), List.of()));
        List<HistoryLine> again = new ArrayList<>(history.lines());
        again.addAll(lines(List.of(1)));
        BoatHistory longer = BoatHistory.of("tern", again, List.of());
        assertEquals(history.entries().size() + 1, longer.entries().size(), "a line after all strikes holds");
    }
}
