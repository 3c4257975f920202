package sternwright.app.demo;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import sternwright.app.files.Shipped;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.due.DueList;
import sternwright.due.Reasons;
import sternwright.history.BoatHistory;
import sternwright.service.RuleBook;
import sternwright.visit.BoatQuestion;
import sternwright.yard.Use;
import sternwright.yard.Yard;

/** Invented boats of a hemisphere, with the question of their visits under the shipped programme. */
final class AskedBoats {
    private static final RuleBook BOOK = RuleBook.of(Shipped.genericProgramme(), List.of(), Shipped.catalogue());

    private final LocalDate today;
    private final Yard yard;
    private final List<Berth> berths;
    final InventedYard made;

    AskedBoats(InventedFolder.Where where, int boats, LocalDate today) {
        InventedFolder folder = new InventedFolder(where);
        this.today = today;
        this.yard = folder.yard(today);
        this.berths = folder.berths(today);
        this.made = folder.make(boats, today, 1);
    }

    Berth berth(Boat boat) {
        return berths.stream()
                .filter(b -> b.id().equals(boat.berthId()))
                .findFirst()
                .orElseThrow();
    }

    BoatQuestion question(Boat boat) {
        return question(boat, Objects.requireNonNull(made.histories().get(boat.id())));
    }

    BoatQuestion question(Boat boat, BoatHistory history) {
        Use use = yard.use(boat.use()).orElseThrow();
        List<Due> dues = DueList.of(boat, berth(boat), use, yard.season(), BOOK::forPart, history, Map.of(), today);
        return new BoatQuestion(
                boat,
                berth(boat),
                use,
                yard,
                Shipped.catalogue(),
                BOOK::forPart,
                history,
                dues,
                new Reasons(Locale.ENGLISH),
                today,
                24);
    }
}
