package sternwright.season.dated.make;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import sternwright.boat.Winter;
import sternwright.season.Due;
import sternwright.season.Operation;
import sternwright.season.dated.SeasonBoat;
import sternwright.service.Place;
import sternwright.visit.planned.PlannedVisit;

/** The operations of one boat: its visits one after the other, the winter ashore as one stay from lift to launch. */
final class BoatOperations {
    private final OperationMaker make;
    private final SeasonBoat boat;
    private final Winterings winter;
    private final StayOperations stays;
    private final AfloatOperations afloat;
    private final int firstOfBoat;
    private int firstOfVisit;
    private List<Integer> before = List.of();
    private final List<Integer> emergencies = new ArrayList<>();

    BoatOperations(OperationMaker make, SeasonBoat boat, Winterings winter) {
        this.make = make;
        this.boat = boat;
        this.winter = winter;
        firstOfBoat = make.lean.operations.size();
        firstOfVisit = firstOfBoat;
        stays = new StayOperations(make, boat, winter);
        afloat = new AfloatOperations(make, boat, winter);
    }

    /**
     * The operations of a visit that others of the boat lie before or after.
     *
     * @param first nothing of the visit begins before these
     * @param last nothing of the visit ends after these
     */
    record Ends(List<Integer> first, List<Integer> last) {}

    void all() {
        new Emergencies(make, boat.boat(), winter).afloat().forEach(day -> {
            Ends emergency = stays.emergency(day);
            then(emergency);
            emergencies.addAll(emergency.first);
        });
        if (boat.boat().winter() == Winter.ASHORE) {
            winterAshore();
        } else {
            boat.visits().forEach(this::single);
        }
    }

    private void winterAshore() {
        List<PlannedVisit> autumn = new ArrayList<>();
        List<PlannedVisit> spring = new ArrayList<>();
        List<PlannedVisit> later = new ArrayList<>();
        for (PlannedVisit visit : boat.visits()) {
            switch (winter.part(visit.from(), visit.to())) {
                case BEFORE -> single(visit);
                case AUTUMN -> {
                    if (visit.place() == Place.ASHORE) {
                        autumn.add(visit);
                    } else {
                        single(visit);
                    }
                }
                case SPRING -> spring.add(visit);
                case AFTER -> later.add(visit);
            }
        }
        then(stays.winter(autumn, spring));
        later.forEach(this::single);
    }

    private void single(PlannedVisit visit) {
        if (visit.from().isAfter(make.time.last())) {
            return;
        }
        then(visit.place() == Place.ASHORE ? stays.shortStay(visit) : afloat.visit(visit));
    }

    /** Visits of a boat follow each other; one that has begun is not put behind an emergency that came later. */
    private void then(Ends ends) {
        if (ends.first.stream().anyMatch(make::hasBegun)
                && !emergencies.isEmpty()
                && emergencies.stream().noneMatch(make::hasBegun)) {
            emergencies.forEach(emergency -> ends.last.forEach(last -> make.lean.after(last, emergency)));
            firstOfVisit = make.lean.operations.size();
            return;
        }
        for (int earlier : before) {
            ends.first.forEach(later -> make.lean.after(earlier, later));
        }
        if (!ends.last.isEmpty()) {
            before = ends.last;
        }
        hurryEarlierVisits();
        firstOfVisit = make.lean.operations.size();
    }

    /**
     * A visit that stands before another should be over when the other must begin to keep its own date; otherwise a plan that places
     * the nearest date first finds no room for the visit before it.
     */
    private void hurryEarlierVisits() {
        List<Operation> operations = make.lean.operations;
        int begin = operations.subList(firstOfVisit, operations.size()).stream()
                .filter(o -> o.due().latePerQ() > 0)
                .mapToInt(o -> o.due().byQ() - o.lengthQ())
                .min()
                .orElse(Integer.MAX_VALUE);
        for (int i = firstOfBoat; i < firstOfVisit; i++) {
            Operation o = operations.get(i);
            int by = Math.max(begin, o.earliestQ() + o.lengthQ());
            if (o.due().latePerQ() > 0
                    && o.due().earlyPerQ() == 0
                    && by < o.due().byQ()) {
                operations.set(i, o.due(new Due(o.due().kind(), by, o.due().latePerQ(), 0)));
                make.lean.meanings.set(i, make.lean.meanings.get(i).dueWith("before her next visit"));
            }
        }
    }

    /** The date of a visit's name. */
    static String month(LocalDate date) {
        return date.toString().substring(0, 7);
    }
}
