package sternwright.due;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.PartRef;
import sternwright.history.BoatHistory;
import sternwright.history.MeterReading;
import sternwright.history.Outcome;
import sternwright.history.RunningHours;
import sternwright.history.ServiceEntry;
import sternwright.history.TakenReading;
import sternwright.measure.MonthlyShare;
import sternwright.service.Rule;
import sternwright.yard.SeasonDates;
import sternwright.yard.Use;

/** One boat's history indexed once, so that sixty rules on forty parts ask it cheaply. */
final class BoatFacts {
    final Boat boat;
    final Berth berth;
    final Use use;
    final MonthlyShare months;
    final SeasonDates season;
    final LocalDate today;
    private final Map<PartRef, List<ServiceEntry>> byPart = new HashMap<>();
    private final Map<String, List<ServiceEntry>> byInstallation = new HashMap<>();
    private final Map<String, RunningHours> hours = new HashMap<>();
    private final Map<String, GammaForecast> forecasts = new HashMap<>();

    BoatFacts(Boat boat, Berth berth, Use use, SeasonDates season, BoatHistory history, LocalDate today) {
        this.boat = boat;
        this.berth = berth;
        this.use = use;
        this.months = berth.southern() ? use.months().shiftedHalfAYear() : use.months();
        this.season = season;
        this.today = today;
        for (ServiceEntry entry : history.entries()) {
            if (!entry.date().isAfter(today)) {
                byPart.computeIfAbsent(entry.part(), k -> new ArrayList<>()).add(entry);
                byInstallation
                        .computeIfAbsent(entry.part().installationId(), k -> new ArrayList<>())
                        .add(entry);
            }
        }
        Map<String, List<MeterReading>> meters = new HashMap<>();
        for (MeterReading r : history.meter()) {
            if (!r.date().isAfter(today)) {
                meters.computeIfAbsent(r.installationId(), k -> new ArrayList<>())
                        .add(r);
            }
        }
        for (Installation i : boat.installations()) {
            RunningHours running = RunningHours.of(meters.getOrDefault(i.id(), List.of()));
            hours.put(i.id(), running);
            forecasts.put(i.id(), new GammaForecast(use, months, running));
        }
    }

    RunningHours hours(String installationId) {
        RunningHours found = hours.get(installationId);
        return found == null ? RunningHours.of(List.of()) : found;
    }

    Optional<GammaForecast> forecast(String installationId) {
        return Optional.ofNullable(forecasts.get(installationId));
    }

    List<ServiceEntry> entries(PartRef part) {
        return byPart.getOrDefault(part, List.of());
    }

    List<ServiceEntry> installationEntries(String installationId) {
        return byInstallation.getOrDefault(installationId, List.of());
    }

    /** The last time one of some works was done on a part, null if never. */
    @Nullable
    ServiceEntry lastDone(PartRef part, java.util.Set<String> ruleIds) {
        List<ServiceEntry> all = entries(part);
        for (int i = all.size() - 1; i >= 0; i--) {
            ServiceEntry e = all.get(i);
            if (e.outcome() == Outcome.DONE && ruleIds.contains(e.ruleId())) {
                return e;
            }
        }
        return null;
    }

    /** How often a work was done on a part after a day; the day null for always. */
    int timesDone(PartRef part, java.util.Set<String> ruleIds, @Nullable LocalDate after) {
        int n = 0;
        for (ServiceEntry e : entries(part)) {
            if (e.outcome() == Outcome.DONE
                    && ruleIds.contains(e.ruleId())
                    && (after == null || e.date().isAfter(after))) {
                n++;
            }
        }
        return n;
    }

    /** Whether the owner's signed refusal is newer than the last time the work was done. */
    boolean refused(PartRef part, Rule rule, @Nullable LocalDate lastDone) {
        for (ServiceEntry e : entries(part)) {
            if (e.outcome() == Outcome.REFUSED
                    && e.ruleId().equals(rule.id())
                    && (lastDone == null || e.date().isAfter(lastDone))) {
                return true;
            }
        }
        return false;
    }

    /** The newest reading of a name on a part, null if there is none. */
    @Nullable
    Taken lastReading(PartRef part, String name) {
        List<ServiceEntry> all = entries(part);
        for (int i = all.size() - 1; i >= 0; i--) {
            for (TakenReading r : all.get(i).readings()) {
                if (r.name().equals(name)) {
                    return new Taken(all.get(i).date(), r);
                }
            }
        }
        return null;
    }

    /** When the part was fitted or last renewed, null if not known. */
    @Nullable
    LocalDate bornOn(PartRef ref, Part part, java.util.Set<String> renewing) {
        ServiceEntry renewed = lastDone(ref, renewing);
        LocalDate fitted = part.fittedOn();
        if (renewed == null) {
            return fitted;
        }
        return fitted != null && fitted.isAfter(renewed.date()) ? fitted : renewed.date();
    }

    /** A reading with its date. */
    record Taken(LocalDate date, TakenReading reading) {}
}
