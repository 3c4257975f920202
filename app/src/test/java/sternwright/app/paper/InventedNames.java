package sternwright.app.paper;

import java.util.List;
import java.util.stream.Stream;
import sternwright.boat.Boat;
import sternwright.boat.Owner;
import sternwright.job.CardFacts;
import sternwright.job.InventedVisits;

/** The invented boat under names that would break a careless page. */
final class InventedNames {
    private InventedNames() {}

    static List<Boat> boats() {
        return Stream.of("Salt & Pepper", "<b>Bold</b> \"Quote\"", "Ægir Ünlü Łódź", "O'Grady; } body{", "\\ back")
                .map(InventedNames::named)
                .toList();
    }

    static CardFacts facts(Boat boat) {
        CardFacts f = InventedVisits.facts();
        return new CardFacts(f.yard(), boat, f.berth(), f.catalogue(), f.cautions(), f.history(), f.issuedOn());
    }

    private static Boat named(String name) {
        Boat b = InventedVisits.boat();
        return new Boat(
                b.id(),
                name,
                new Owner(name, null),
                b.berthId(),
                b.use(),
                b.winter(),
                b.hull(),
                b.installations(),
                b.bonds(),
                b.programme(),
                name);
    }
}
