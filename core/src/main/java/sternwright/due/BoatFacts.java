package sternwright.due;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.PartRef;
import sternwright.due.hours.GammaForecast;
import sternwright.due.hours.HoursForecast;
import sternwright.history.BoatHistory;
import sternwright.history.MeterReading;
import sternwright.history.RunningHours;
import sternwright.measure.MonthlyShare;
import sternwright.yard.Use;

/** One boat on one day, its parts named and its history indexed once, so that sixty rules on forty parts ask it cheaply. */
final class BoatFacts {
    final Boat boat;
    final Berth berth;
    final Use use;
    final MonthlyShare months;
    final AskedDay day;
    final LocalDate today;
    final List<PartRef> parts;
    final HistoryIndex history;
    private final BoatHistory written;
    private final @Nullable Engine[] engines;

    BoatFacts(Boat boat, Berth berth, Use use, BoatHistory history, AskedDay day) {
        this.boat = boat;
        this.berth = berth;
        this.use = use;
        this.months = berth.southern() ? use.months().shiftedHalfAYear() : use.months();
        this.day = day;
        this.today = day.today;
        this.written = history;
        this.engines = new Engine[boat.installations().size()];
        this.parts = new ArrayList<>();
        for (Installation i : boat.installations()) {
            for (Part p : i.parts()) {
                parts.add(new PartRef(i.id(), p.id()));
            }
        }
        this.history = new HistoryIndex(parts, history.entries(), today);
    }

    /** The hours of the engine at a place in the boat's list of installations: what it has run and what to expect. */
    Engine engine(int installation) {
        Engine known = engines[installation];
        if (known == null) {
            RunningHours running = hours(boat.installations().get(installation).id());
            known = new Engine(running, new GammaForecast(use, months, running));
            engines[installation] = known;
        }
        return known;
    }

    private RunningHours hours(String installationId) {
        List<MeterReading> own = new ArrayList<>();
        for (MeterReading r : written.meter()) {
            if (!r.date().isAfter(today) && r.installationId().equals(installationId)) {
                own.add(r);
            }
        }
        return RunningHours.of(own);
    }

    /** What an engine has run and what it will. */
    record Engine(RunningHours running, HoursForecast forecast) {}
}
