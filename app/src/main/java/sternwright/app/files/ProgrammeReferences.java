package sternwright.app.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shape.Yaml;
import sternwright.boat.Boat;
import sternwright.boat.PartCatalogue;
import sternwright.service.Programme;
import sternwright.service.Rule;
import sternwright.service.check.ProgrammeCheck;
import sternwright.service.check.ProgrammeFault;

/** Tells in which line of which file a programme refers to something that is not there. */
final class ProgrammeReferences {
    private static final Pattern RULE = Pattern.compile("rule ([^,]+), (.+)");
    private static final Pattern OVERRIDING = Pattern.compile("overriding ([0-9]+) \\(rule [^)]*\\), (.+)");

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
        return fault.where().endsWith(", target") && ids.contains(boat) && !read.contains(boat);
    }

    private Problem problem(ProgrammeFault fault) {
        String advice = Optional.ofNullable(fault.nearest())
                .map(n -> "Perhaps \"" + n + "\" is meant.")
                .orElse("");
        for (Map.Entry<String, Yaml.Read<Programme>> file : own.entrySet()) {
            if (file.getValue().value().id().equals(fault.programme())) {
                Object[] steps = steps(fault.where(), file.getValue().value());
                return new Problem(
                        file.getKey(),
                        file.getValue().line(steps),
                        file.getValue().path(steps),
                        "\"" + fault.written() + "\": " + fault.expected(),
                        "",
                        advice);
            }
        }
        return new Problem(
                "programme " + fault.programme(), 0, fault.where(), fault.written(), fault.expected(), advice);
    }

    private static Object[] steps(String where, Programme programme) {
        Matcher rule = RULE.matcher(where);
        if (rule.matches()) {
            List<String> ids = programme.rules().stream().map(Rule::id).toList();
            return steps("rules", ids.indexOf(rule.group(1)), rule.group(2));
        }
        Matcher overriding = OVERRIDING.matcher(where);
        return overriding.matches()
                ? steps("overridings", Integer.parseInt(overriding.group(1)) - 1, overriding.group(2))
                : new Object[0];
    }

    private static Object[] steps(String list, int index, String fields) {
        List<Object> steps = new ArrayList<>(List.of(list, index));
        steps.addAll(List.of(fields.split("\\.")));
        return steps.toArray();
    }
}
