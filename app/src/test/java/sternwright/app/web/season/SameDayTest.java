package sternwright.app.web.season;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import sternwright.season.dated.Meaning;
import sternwright.season.dated.Step;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.DatedVisit;

class SameDayTest {
    private static final LocalDateTime MORNING = LocalDateTime.of(2027, 4, 14, 8, 0);

    @Test
    void twoVisitsAfloatOnOneDayAreReadAsOne() {
        List<SameDay> read = SameDay.of(List.of(
                afloat("heron", "recommission (2)", MORNING),
                afloat("heron", "recommission (3)", MORNING.plusHours(4))));
        assertEquals(1, read.size());
        DatedVisit one = read.get(0).asOne((a, b) -> a + " and " + b);
        assertEquals("recommission (2) and recommission (3)", one.visit());
        assertEquals(2, one.operations().size());
        assertEquals(MORNING, one.from());
        assertEquals(MORNING.plusHours(6), one.until());
    }

    @Test
    void otherDaysOtherBoatsAndStaysAshoreStayByThemselves() {
        List<DatedVisit> all = List.of(
                afloat("heron", "lay-up", MORNING),
                afloat("heron", "recommission", MORNING.plusDays(1)),
                afloat("teal", "lay-up", MORNING),
                visit("heron", "ashore", MORNING, MORNING));
        List<SameDay> read = SameDay.of(all);
        assertEquals(all, read.stream().map(s -> s.asOne((a, b) -> a)).toList());
    }

    private static DatedVisit afloat(String boat, String name, LocalDateTime from) {
        return visit(boat, name, from, null);
    }

    private static DatedVisit visit(String boat, String name, LocalDateTime from, @Nullable LocalDateTime ashore) {
        Meaning meaning = new Meaning(boat, boat, name, "works", Step.WORK, List.of(), 120, Set.of(), "");
        DatedOperation operation = new DatedOperation(
                meaning, from, from.plusHours(2), 0, List.of(), "", DatedOperation.State.IN_TIME, 0, "");
        return new DatedVisit(boat, boat, name, "", ashore, ashore, List.of(operation));
    }
}
