package sternwright.app.web.register;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sternwright.app.files.Shipped;
import sternwright.app.files.YardFiles;
import sternwright.app.files.template.BoatTemplate;
import sternwright.app.paper.drawing.InstallationPicture;
import sternwright.app.web.page.Page;
import sternwright.boat.Arrangement;
import sternwright.boat.Boat;
import sternwright.boat.Cooling;
import sternwright.boat.HullMaterial;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.PartCatalogue;
import sternwright.boat.PartKind;
import sternwright.boat.Winter;
import sternwright.service.Rule;
import sternwright.service.RuleBook;

/** What a boat of an arrangement usually has, before anything is known of her. */
final class UsualBoat {
    private static final double MONTHS_A_YEAR = 12;

    private UsualBoat() {}

    static Boat of(PartCatalogue catalogue, Arrangement arrangement) {
        return new BoatTemplate(Shipped.arrangements(), catalogue)
                .boat(new BoatTemplate.Known(
                        "usual",
                        "usual",
                        null,
                        "",
                        "",
                        Winter.ASHORE,
                        null,
                        null,
                        null,
                        null,
                        HullMaterial.GRP,
                        arrangement,
                        Cooling.FRESH_WATER,
                        false,
                        null,
                        null));
    }

    static String drawing(PartCatalogue catalogue, Arrangement arrangement, String alt) {
        return InstallationPicture.of(of(catalogue, arrangement).installations().get(0), List.of(), alt)
                .wide();
    }

    /** Parts that are renewed by their age: the day they were fitted decides when. */
    static List<NewBoatForm.Ageing> ageing(Page page, YardFiles files, Arrangement arrangement) {
        Boat boat = of(files.catalogue(), arrangement);
        Installation installation = boat.installations().get(0);
        RuleBook book = RuleBook.of(files.generic(), files.programmes(), files.catalogue());
        List<NewBoatForm.Ageing> ageing = new ArrayList<>();
        for (Part part : installation.parts()) {
            book.forPart(boat, installation, part).stream()
                    .map(r -> r.rule())
                    .filter(r -> r.renews() && life(r).isPresent())
                    .findFirst()
                    .ifPresent(r -> ageing.add(new NewBoatForm.Ageing(
                            part.id(),
                            files.catalogue()
                                    .find(part.kind())
                                    .map(PartKind::name)
                                    .orElse(part.id()),
                            page.figures().number(life(r).orElseThrow() / MONTHS_A_YEAR))));
        }
        return ageing;
    }

    private static Optional<Integer> life(Rule rule) {
        return Optional.ofNullable(rule.interval().lifeMonths());
    }

    /** The boat with the days on which parts were fitted; each of two engines has the same. */
    static Boat fitted(Boat boat, Map<String, LocalDate> days) {
        List<Installation> installations = boat.installations().stream()
                .map(i -> new Installation(
                        i.id(),
                        i.side(),
                        i.arrangement(),
                        i.cooling(),
                        i.engineModel(),
                        i.powerKw(),
                        i.parts().stream().map(p -> fitted(p, days)).toList()))
                .toList();
        return new Boat(
                boat.id(),
                boat.name(),
                boat.owner(),
                boat.berthId(),
                boat.use(),
                boat.winter(),
                boat.hull(),
                installations,
                boat.bonds(),
                boat.programme(),
                boat.note());
    }

    private static Part fitted(Part part, Map<String, LocalDate> days) {
        LocalDate day = days.get(part.id());
        return day == null ? part : part.fitted(day, null);
    }
}
