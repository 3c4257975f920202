package sternwright.app.desk.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sternwright.app.files.problem.BadInput;

class EventWordsTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "away:p1:2026-10-12:2026-10-23",
                "hoist-down:travel-hoist:2026-10-12:2026-10-12",
                "late:heron:renew-bellows:2027-03-01",
                "emergency:heron:2026-12-01",
                "wanted:heron:2027-04-01",
                "set:heron:winter ashore 2026/27:launch:2027-04-01"
            })
    void whatIsWrittenIsReadAsTheSame(String word) {
        assertEquals(word, EventWords.text(EventWords.parse(word, TODAY, "events")));
    }

    @Test
    void whatBeginsTodayNeedsNoDay() {
        assertEquals(
                "emergency:heron:2026-11-25", EventWords.text(EventWords.parse("emergency:heron", TODAY, "events")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"awy:p1:2026-10-12:2026-10-23", "set:heron:launch:2027-04-01", "wanted:heron:spring"})
    void whatCannotBeReadSaysWhereAndHow(String word) {
        BadInput bad = assertThrows(BadInput.class, () -> EventWords.parse(word, TODAY, "events"));
        assertTrue(String.valueOf(bad.getMessage()).startsWith("events: found \"" + word), bad.getMessage());
    }
}
