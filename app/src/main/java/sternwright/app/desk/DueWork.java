package sternwright.app.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sternwright.app.files.YardFiles;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.due.BoatCase;
import sternwright.due.Due;
import sternwright.due.YardDueList;
import sternwright.history.BoatHistory;
import sternwright.service.RuleBook;
import sternwright.yard.Use;

/** Works out what is due on the boats of a yard. */
public final class DueWork {
    private DueWork() {}

    /**
     * What is due.
     *
     * @param files what the yard's folder says
     * @param today the day asked for
     * @return every work on every part of every boat read, the soonest first
     */
    public static List<Due> of(YardFiles files, java.time.LocalDate today) {
        RuleBook book = RuleBook.of(files.generic(), files.programmes(), files.catalogue());
        List<BoatCase> cases =
                files.boats().values().stream().map(b -> boatCase(files, b)).toList();
        List<Due> all = new ArrayList<>();
        YardDueList.of(cases, files.yard().season(), book::forPart, today).forEach(all::addAll);
        all.sort(Comparator.comparing(Due::dueOn).thenComparing(Due::boatId));
        return List.copyOf(all);
    }

    /**
     * A boat with all that its due list is made from.
     *
     * @param files what the yard's folder says
     * @param boat one of its boats
     * @return the case
     */
    public static BoatCase boatCase(YardFiles files, Boat boat) {
        return new BoatCase(
                boat,
                there(files.berths(), boat.berthId()),
                use(files, boat),
                Optional.ofNullable(files.histories().get(boat.id())).orElseGet(() -> BoatHistory.empty(boat.id())),
                Map.of());
    }

    private static Berth there(Map<String, Berth> berths, String id) {
        return Optional.ofNullable(berths.get(id))
                .orElseThrow(() -> new IllegalStateException("berth " + id + " was checked and is not there"));
    }

    private static Use use(YardFiles files, Boat boat) {
        return files.yard()
                .use(boat.use())
                .orElseThrow(() -> new IllegalStateException("use " + boat.use() + " was checked and is not there"));
    }
}
