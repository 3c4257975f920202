package sternwright.protection.anode;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Boat;
import sternwright.boat.Part;
import sternwright.boat.PartRef;
import sternwright.history.BoatHistory;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.history.TakenReading;
import sternwright.protection.register.BoatBody;
import sternwright.protection.register.BoatCircuit;

/**
 * What a boat's history says of its anodes: renewals and readings of what was left.
 *
 * @param weighings spells between two known states
 * @param left last known share of each anode, by body
 * @param known the day of that
 */
public record AnodeLog(List<Weighing> weighings, Map<String, Double> left, Map<String, LocalDate> known) {
    /** Reading of the share left, %. */
    public static final String REMAINING = "anode-remaining";

    /** Reading of the mass left, kg or g. */
    public static final String MASS = "anode-mass";

    private static final int SHORTEST_SPELL_DAYS = 60;

    public AnodeLog {
        weighings = List.copyOf(weighings);
        left = Map.copyOf(left);
        known = Map.copyOf(known);
    }

    /**
     * Reads a history.
     *
     * @param boat the boat
     * @param circuit its circuit, which tells the anodes
     * @param history what is written down
     * @param today entries after this day are not looked at
     */
    public static AnodeLog of(Boat boat, BoatCircuit circuit, BoatHistory history, LocalDate today) {
        List<Weighing> weighings = new ArrayList<>();
        Map<String, Double> left = new HashMap<>();
        Map<String, LocalDate> known = new HashMap<>();
        for (BoatBody anode : circuit.anodes()) {
            Known last = fitted(boat, anode, today);
            for (ServiceEntry e : history.entries()) {
                if (!e.part().equals(anode.ref()) || e.date().isAfter(today)) {
                    continue;
                }
                Double share = share(anode, e);
                if (share != null) {
                    if (last != null
                            && e.date().isAfter(last.date.plusDays(SHORTEST_SPELL_DAYS))
                            && share <= last.share + 0.05) {
                        weighings.add(
                                new Weighing(anode.id(), last.date, last.share, e.date(), Math.min(share, last.share)));
                    }
                    last = new Known(e.date(), share);
                }
                if (e.outcome() == Outcome.DONE && e.ruleId().startsWith("renew")) {
                    last = new Known(e.date(), 1);
                }
            }
            if (last != null) {
                left.put(anode.id(), last.share);
                known.put(anode.id(), last.date);
            }
        }
        return new AnodeLog(weighings, left, known);
    }

    private static @Nullable Known fitted(Boat boat, BoatBody anode, LocalDate today) {
        PartRef ref = anode.ref();
        if (ref == null) {
            return null;
        }
        LocalDate date = boat.installation(ref.installationId())
                .flatMap(i -> i.part(ref.partId()))
                .map(Part::fittedOn)
                .orElse(null);
        return date == null || date.isAfter(today) ? null : new Known(date, 1);
    }

    private static @Nullable Double share(BoatBody anode, ServiceEntry entry) {
        for (TakenReading r : entry.readings()) {
            if (r.name().equals(REMAINING)) {
                double value = r.unit().equals("%") ? r.value() / 100 : r.value();
                return Math.max(0, Math.min(1, value));
            }
            Double mass = anode.massKg();
            if (r.name().equals(MASS) && mass != null) {
                double kg = r.unit().equals("g") ? r.value() / 1000 : r.value();
                return Math.max(0, Math.min(1, kg / mass));
            }
        }
        return null;
    }

    private record Known(LocalDate date, double share) {}
}
