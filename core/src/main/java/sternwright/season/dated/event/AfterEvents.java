package sternwright.season.dated.event;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sternwright.season.dated.OperationName;
import sternwright.season.dated.OwnerDate;
import sternwright.season.dated.PromisedDate;
import sternwright.season.dated.SeasonRequest;
import sternwright.season.dated.SeasonRequest.HoistDown;

/** Turns a request and what happened into the request after it. */
public final class AfterEvents {
    private final List<OwnerDate> dates;
    private final List<HoistDown> down;
    private final Map<OperationName, LocalDate> set = new LinkedHashMap<>();
    private SeasonRequest now;

    private AfterEvents(SeasonRequest before) {
        now = before;
        dates = new ArrayList<>(before.dates());
        down = new ArrayList<>(before.hoistsDown());
    }

    /**
     * The request after some events.
     *
     * @param before the request
     * @param events what happened; ids that do not exist change nothing
     * @return the request after them
     */
    public static SeasonRequest of(SeasonRequest before, List<SeasonEvent> events) {
        AfterEvents after = new AfterEvents(before);
        events.forEach(after::apply);
        List<PromisedDate> kept = new ArrayList<>();
        before.promises().stream()
                .filter(p -> !after.set.containsKey(p.name()))
                .map(p -> released(p, events) ? p.released() : p)
                .forEach(kept::add);
        after.set.forEach((name, day) -> kept.add(promised(name, day, before.today())));
        return after.now.dates(after.dates).hoistsDown(after.down).promising(kept, before.begun());
    }

    /** Whether an owner who has asked for another day has released a promise by it. */
    public static boolean released(PromisedDate promise, List<SeasonEvent> events) {
        return !promise.firm()
                && isSpring(promise)
                && events.stream()
                        .anyMatch(e -> e instanceof SeasonEvent.OwnerWants wants
                                && wants.boat().equals(promise.name().boatId()));
    }

    /** An operation set on a day is promised for it and not moved. */
    public static PromisedDate promised(OperationName name, LocalDate day, LocalDate on) {
        return new PromisedDate(name, day, 0, on, true);
    }

    /** An owner who asks for another day releases the launch and what belongs to it, not the lay-up. */
    private static boolean isSpring(PromisedDate promise) {
        String operation = promise.name().operation();
        return operation.startsWith("launch")
                || operation.startsWith("recommission")
                || operation.startsWith("sea trial")
                || operation.startsWith("settled");
    }

    private void apply(SeasonEvent event) {
        if (event instanceof SeasonEvent.PersonAway away) {
            now = now.resources(now.resources()
                    .crew(now.resources().crew().stream()
                            .map(c -> c.id().equals(away.person()) ? c.away(away.days()) : c)
                            .toList()));
        } else if (event instanceof SeasonEvent.HoistDown hoist) {
            down.add(new HoistDown(hoist.hoist(), hoist.days()));
        } else if (event instanceof SeasonEvent.PartLate part) {
            dates.add(new OwnerDate(part.boat(), OwnerDate.Kind.PART_IN, part.work(), part.here(), ""));
        } else if (event instanceof SeasonEvent.Emergency emergency) {
            dates.add(new OwnerDate(emergency.boat(), OwnerDate.Kind.EMERGENCY, "", emergency.from(), ""));
        } else if (event instanceof SeasonEvent.OwnerWants wants) {
            dates.removeIf(
                    d -> d.kind() == OwnerDate.Kind.AFLOAT_BY && d.boatId().equals(wants.boat()));
            dates.add(new OwnerDate(wants.boat(), OwnerDate.Kind.AFLOAT_BY, "", wants.by(), ""));
        } else if (event instanceof SeasonEvent.Moved moved) {
            set.put(moved.name(), moved.to());
        }
    }

    /** The dates after the events, as they would be written down. */
    public static List<OwnerDate> datesAfter(SeasonRequest before, List<SeasonEvent> events) {
        return of(before, events).dates();
    }
}
