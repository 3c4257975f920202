package sternwright.app.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shape.Yaml;
import sternwright.boat.Boat;
import sternwright.boat.PartCatalogue;
import sternwright.service.Programme;
import sternwright.service.check.ProgrammeCheck;
import sternwright.service.check.ProgrammeFault;
import sternwright.service.check.Spot;

/** Tells in which line of which file a programme refers to something that is not there. */
final class ProgrammeReferences {
    private final FolderLayout layout;
    private final Programme generic;
    private final Map<String, Yaml.Read<Programme>> own;
    private final PartCatalogue catalogue;

    ProgrammeReferences(
            FolderLayout layout, Programme generic, Map<String, Yaml.Read<Programme>> own, PartCatalogue catalogue) {
        this.layout = layout;
        this.generic = generic;
        this.own = own;
        this.catalogue = catalogue;
    }

    /** The faults of all programmes; targets that are boats not read this time are only asked for by name. */
    List<Problem> check(List<Boat> boats) {
        List<Programme> all = new ArrayList<>();
        all.add(generic);
        own.values().forEach(r -> all.add(r.value()));
        List<String> read = boats.stream().map(Boat::id).toList();
        List<String> ids = layout.boatIds();
        return ProgrammeCheck.faults(all, catalogue, boats).stream()
                .filter(f -> !ofBoatNotRead(f, read, ids))
                .map(this::problem)
                .toList();
    }

    private static boolean ofBoatNotRead(ProgrammeFault fault, List<String> read, List<String> ids) {
        String boat = fault.written().split("/", 2)[0];
        return fault.spot().field().equals("target") && ids.contains(boat) && !read.contains(boat);
    }

    private Problem problem(ProgrammeFault fault) {
        Spot spot = fault.spot();
        String advice = Optional.ofNullable(fault.nearest())
                .map(n -> "Perhaps \"" + n + "\" is meant.")
                .orElse("");
        for (Map.Entry<String, Yaml.Read<Programme>> file : own.entrySet()) {
            if (file.getValue().value().id().equals(spot.programme())) {
                Object[] steps = steps(spot);
                return new Problem(
                        file.getKey(),
                        file.getValue().line(steps),
                        file.getValue().path(steps),
                        "\"" + fault.written() + "\": " + fault.expected(),
                        "",
                        advice);
            }
        }
        return new Problem("programme " + spot.programme(), 0, spot.words(), fault.written(), fault.expected(), advice);
    }

    private static Object[] steps(Spot spot) {
        List<Object> steps = new ArrayList<>(List.of(spot.list(), spot.index()));
        steps.addAll(List.of(spot.field().split("\\.")));
        return steps.toArray();
    }
}
