package sternwright.app.desk.protect;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sternwright.app.desk.InventedDesk;
import sternwright.app.files.YardFiles;
import sternwright.boat.Boat;
import sternwright.boat.PartRef;
import sternwright.history.BoatHistory;
import sternwright.history.HistoryLine;
import sternwright.history.ServiceEntry;

/** A report holds until what it rests on changes, and no longer. */
class KeptReportsTest {
    private final YardFiles yard = InventedDesk.yard();
    private final List<Boat> boats = List.copyOf(yard.boats().values());
    private final ProtectRequest plain = ProtectRequest.on(InventedDesk.TODAY);
    private final KeptReports reports = new KeptReports();

    @Test
    void itIsTheSameUntilTheBoatsOwnHistoryIsAnother() {
        Boat boat = boats.get(0);
        KeptReports.Answer first = reports.of(yard, boat, plain);
        assertSame(first, reports.of(yard, boat, plain));
        assertSame(first, reports.of(written(boats.get(1)), boat, plain));
        KeptReports.Answer after = reports.of(written(boat), boat, plain);
        assertNotSame(first, after);
        assertEquals(first.problems(), after.problems());
    }

    @Test
    void theShoreLeadAndTheDayAreOtherQuestions() {
        Boat boat = boats.get(0);
        KeptReports.Answer in = reports.of(yard, boat, plain);
        assertNotSame(in, reports.of(yard, boat, plain.withShoreLead(false)));
        assertSame(in, reports.of(yard, boat, plain));
        assertNotSame(in, reports.of(yard, boat, ProtectRequest.on(InventedDesk.TODAY.plusDays(1))));
    }

    @Test
    void whatIsKeptIsWhatIsWorkedOut() {
        for (Boat boat : boats.subList(0, 6)) {
            KeptReports.Answer kept = reports.of(yard, boat, plain);
            var problems = new ProtectBoat(yard).problems(boat, plain);
            assertEquals(problems, kept.problems());
            var report = kept.report();
            assertEquals(problems.isEmpty(), report != null);
            if (report != null) {
                assertEquals(new ProtectBoat(yard).report(boat, plain).owner(), report.owner());
            }
        }
        assertTrue(boats.size() >= 6);
    }

    /** The same yard after something was written of a boat. */
    private YardFiles written(Boat of) {
        Map<String, BoatHistory> histories = new HashMap<>(yard.histories());
        BoatHistory before = yard.history(of.id());
        var engine = of.installations().get(0);
        List<HistoryLine> lines = new ArrayList<>(before.lines());
        lines.add(HistoryLine.of(ServiceEntry.done(
                InventedDesk.TODAY,
                new PartRef(engine.id(), engine.parts().get(0).id()),
                "change-engine-oil",
                null)));
        histories.put(of.id(), BoatHistory.of(of.id(), lines, before.meter()));
        return new YardFiles(
                yard.yard(),
                yard.berths(),
                yard.catalogue(),
                yard.generic(),
                yard.programmes(),
                yard.boats(),
                histories,
                List.of());
    }
}
