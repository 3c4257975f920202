package sternwright.app.web.boat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sternwright.app.paper.Figures;
import sternwright.app.web.page.Page;
import sternwright.boat.Part;

/** What a part holds and what its maker says of it, in the units the yard works in. */
final class PartFigures {
    /** Units that stand at the end of a figure's name, as the names of all figures in files do. */
    private static final Map<String, String> UNITS = units();

    private PartFigures() {}

    private static Map<String, String> units() {
        Map<String, String> units = new LinkedHashMap<>();
        units.put("-nm", "N m");
        units.put("-kw", "kW");
        units.put("-bar", "bar");
        units.put("-mm", "mm");
        units.put("-kg", "kg");
        units.put("-rpm", "1/min");
        units.put("-l", "L");
        units.put("-c", "°C");
        units.put("-v", "V");
        units.put("-h", "h");
        return units;
    }

    /** Such as "holds 7.5 L; drain plug torque 45 N m"; empty if nothing is known. */
    static String of(Page page, Part part) {
        List<String> said = new ArrayList<>();
        Double holds = part.capacityL();
        if (holds != null) {
            said.add(page.say("boat.part.holds", page.figures().quantity(holds, "L")));
        }
        new TreeMap<>(part.makerFigures()).forEach((name, value) -> said.add(figure(page.figures(), name, value)));
        return String.join("; ", said);
    }

    private static String figure(Figures figures, String name, double value) {
        for (Map.Entry<String, String> unit : UNITS.entrySet()) {
            if (name.endsWith(unit.getKey())) {
                String what = name.substring(0, name.length() - unit.getKey().length());
                return what.replace('-', ' ') + " " + figures.quantity(value, unit.getValue());
            }
        }
        return name.replace('-', ' ') + " " + figures.number(value);
    }
}
