package sternwright.app.api;

import jakarta.annotation.security.RolesAllowed;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import sternwright.app.desk.campaign.DueFilter;
import sternwright.app.desk.campaign.DueRow;
import sternwright.app.desk.campaign.DueTable;
import sternwright.app.desk.campaign.Facet;
import sternwright.app.desk.derived.OfYard;
import sternwright.app.desk.due.DueLine;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.KnownNames;
import sternwright.due.Reasons;

/** The yard's due list, narrowed. */
@RestController
@RolesAllowed({"MANAGER", "OFFICE", "TECHNICIAN", "SURVEYOR"})
public class DueApi {
    private static final Set<String> OWN = Set.of("due-by", "boat", "page", "size");

    private final Asked asked;
    private final OfYard<DueTable> table;

    DueApi(Asked asked) {
        this.asked = asked;
        this.table = new OfYard<>(asked.yard(), y -> DueTable.of(y.files(), y.dues()));
    }

    /** Works that are due, the soonest first; narrowed by the facets of the list, by boat and by day. */
    @GetMapping("/api/due")
    Stretch<DueLine> due(
            @RequestParam MultiValueMap<String, String> all,
            @RequestParam(name = "due-by", required = false) @Nullable LocalDate dueBy,
            @RequestParam(name = "boat", required = false) @Nullable String boat,
            @RequestParam(name = "page", defaultValue = "1") int page,
            @RequestParam(name = "size", defaultValue = "100") int size,
            Locale reader) {
        all.keySet().forEach(DueApi::known);
        DueFilter filter = DueFilter.of(all, dueBy);
        DueFilter narrow =
                boat == null ? filter : filter.ofBoat(asked.boat(boat).id());
        Reasons reasons = new Reasons(reader);
        if (narrow.equals(DueFilter.ALL)) {
            // The whole list is there sooner than a table to narrow it by.
            return Stretch.of(asked.yard().dues(), page, size, d -> DueLine.of(d, reasons));
        }
        List<DueRow> rows = boat == null
                ? table.get().rows(filter)
                : DueTable.of(asked.yard().files(), asked.yard().dues(boat)).rows(narrow);
        return Stretch.of(rows, page, size, r -> DueLine.of(r.due(), reasons));
    }

    private static void known(String name) {
        if (!OWN.contains(name) && Facet.of(name).isEmpty()) {
            Set<String> names = new TreeSet<>(OWN);
            for (Facet facet : Facet.values()) {
                names.add(facet.key());
            }
            throw BadInput.of(name, "unknown parameter", "", KnownNames.advice(name, names));
        }
    }
}
