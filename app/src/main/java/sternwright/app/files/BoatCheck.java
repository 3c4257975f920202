package sternwright.app.files;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.kind.BoatShape;
import sternwright.app.files.problem.KnownNames;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shape.Reading;
import sternwright.app.files.shape.Yaml;
import sternwright.app.files.sheet.Sheet;
import sternwright.boat.Boat;
import sternwright.boat.Bond;
import sternwright.boat.HullSense;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.PartCatalogue;
import sternwright.boat.PartRef;
import sternwright.history.HistoryLine;
import sternwright.history.MeterReading;
import sternwright.history.MeterRemark;
import sternwright.history.Outcome;
import sternwright.history.RunningHours;
import sternwright.history.ServiceEntry;
import sternwright.history.StruckLines;
import sternwright.protection.metal.Metal;
import sternwright.protection.metal.MetalCatalogue;
import sternwright.service.Programme;
import sternwright.service.Rule;
import sternwright.yard.LengthBand;
import sternwright.yard.Use;
import sternwright.yard.Yard;

/** Whether what a boat refers to is there. What could not be read itself is not asked for. */
final class BoatCheck {
    private final @Nullable Yard yard;
    private final @Nullable Set<String> berths;
    private final boolean allProgrammesRead;
    private final @Nullable Set<String> kinds;
    private final Set<String> metals;
    private final Set<String> programmes = new HashSet<>();
    private final Set<String> rules = new HashSet<>();

    BoatCheck(
            @Nullable Yard yard,
            @Nullable Set<String> berths,
            @Nullable PartCatalogue catalogue,
            Programme generic,
            List<Programme> own,
            boolean allProgrammesRead) {
        this.allProgrammesRead = allProgrammesRead;
        this.yard = yard;
        this.berths = berths;
        this.kinds = catalogue == null ? null : YardFolder.kindIds(catalogue);
        this.metals = MetalCatalogue.standard().metals().stream().map(Metal::id).collect(Collectors.toSet());
        List<Programme> all = new ArrayList<>(own);
        all.add(generic);
        all.forEach(p -> {
            programmes.add(p.id());
            p.rules().stream().map(Rule::id).forEach(rules::add);
        });
    }

    /**
     * All that a boat is checked against, in one order. Boats that were right stay so while it is the same, whatever else changes in
     * the texts that hold for all of them.
     */
    record Grounds(
            @Nullable List<Double> lifts,
            @Nullable Set<String> uses,
            @Nullable Set<String> berths,
            @Nullable Set<String> kinds,
            @Nullable Set<String> programmes,
            Set<String> rules) {}

    /** What this check looks at. */
    Grounds grounds() {
        return new Grounds(
                yard == null
                        ? null
                        : yard.tariff().lifts().stream()
                                .map(LengthBand::upToLengthM)
                                .toList(),
                yard == null ? null : yard.uses().stream().map(Use::id).collect(Collectors.toCollection(TreeSet::new)),
                sorted(berths),
                sorted(kinds),
                sorted(allProgrammesRead ? programmes : null),
                new TreeSet<>(rules));
    }

    private static @Nullable Set<String> sorted(@Nullable Set<String> names) {
        return names == null ? null : new TreeSet<>(names);
    }

    /** Names of things in other files that are not there; told even if other fields of the file are wrong. */
    List<Problem> references(Reading reading) {
        Map<String, Set<String>> known = new HashMap<>();
        if (kinds != null) {
            known.put(BoatShape.KINDS, kinds);
        }
        known.put(BoatShape.METALS, metals);
        if (berths != null) {
            known.put(BoatShape.BERTHS, berths);
        }
        if (yard != null) {
            known.put(BoatShape.USES, yard.uses().stream().map(Use::id).collect(Collectors.toSet()));
        }
        if (allProgrammesRead) {
            known.put(BoatShape.PROGRAMMES, programmes);
        }
        List<Problem> wrong = new ArrayList<>();
        for (Reading.Referred r : reading.referred()) {
            Set<String> there = known.get(r.what());
            if (there != null && !there.contains(r.written())) {
                wrong.add(unknown(reading.file(), r.line(), r.path(), r.written(), r.what(), there));
            }
        }
        return wrong;
    }

    /** Everything else in a boat's file that cannot be. */
    List<Problem> problems(String file, String id, Yaml.Read<Boat> read) {
        Boat boat = read.value();
        Asking ask = new Asking(file, read, new ArrayList<>());
        if (!boat.id().equals(id)) {
            ask.note(
                    "\"" + boat.id() + "\"",
                    "\"" + id + "\" as the file is named",
                    "Rename the file or the boat.",
                    "id");
        }
        if (yard != null) {
            tariff(boat, yard, ask);
        }
        HullSense.of(boat.hull()).stream()
                .filter(HullSense.Odd::impossible)
                .forEach(o ->
                        ask.note(o.found(), o.expected(), "By " + o.source().line() + ".", "hull", o.field()));
        for (int i = 0; i < boat.installations().size(); i++) {
            parts(boat.installations().get(i), i, ask);
        }
        for (int i = 0; i < boat.bonds().size(); i++) {
            Bond bond = boat.bonds().get(i);
            ask.known(bond.from().toString(), refs(boat), "part of this boat", "bonds", i, "from");
            ask.known(bond.to().toString(), refs(boat), "part of this boat", "bonds", i, "to");
        }
        return ask.problems;
    }

    /** Figures of the hull that are unusual together; they do not stop the work. */
    static List<Problem> unusual(String file, Yaml.Read<Boat> read) {
        return HullSense.of(read.value().hull()).stream()
                .filter(o -> !o.impossible())
                .map(o -> new Problem(
                        file,
                        read.line("hull", o.field()),
                        read.path("hull", o.field()),
                        o.found(),
                        "",
                        "It is " + o.expected() + " (" + o.source().standing().words()
                                + "); look whether a figure slipped."))
                .toList();
    }

    private static void tariff(Boat boat, Yard yard, Asking ask) {
        if (yard.tariff().lift(boat.hull().lengthM()).isEmpty()) {
            ask.note(
                    boat.hull().lengthM() + " m is longer than the longest band of lifts in yard.yaml",
                    "a band that reaches as far",
                    "Add a band to tariff.lifts in yard.yaml, or correct the length.",
                    "hull",
                    "length-m");
        }
    }

    private static void parts(Installation installation, int at, Asking ask) {
        Set<String> before = new HashSet<>();
        for (int i = 0; i < installation.parts().size(); i++) {
            Part part = installation.parts().get(i);
            if (part.parentId() != null) {
                String what = "part further up in this installation";
                ask.known(part.parentId(), before, what, "installations", at, "parts", i, "parent");
            }
            before.add(part.id());
        }
    }

    private static Set<String> refs(Boat boat) {
        return boat.installations().stream()
                .flatMap(i -> i.parts().stream().map(p -> new PartRef(i.id(), p.id()).toString()))
                .collect(Collectors.toSet());
    }

    /** Lines of history and hours that no rule, part or engine answers to; they are kept and said. */
    List<Problem> history(Boat boat, List<Sheet.Row<HistoryLine>> lines, List<Sheet.Row<MeterReading>> hours) {
        List<Problem> remarks = new ArrayList<>();
        Set<String> refs = refs(boat);
        String history = FolderLayout.history(boat.id());
        List<HistoryLine> stray =
                StruckLines.of(lines.stream().map(Sheet.Row::value).toList()).stray();
        for (Sheet.Row<HistoryLine> row : lines) {
            if (row.value().strike() != null) {
                strays(history, row, stray, remarks);
                continue;
            }
            ServiceEntry e = row.value().entry();
            if (!refs.contains(e.part().toString())) {
                remarks.add(unknown(history, row.line(), "part", e.part().toString(), "part of this boat", refs));
            }
            if (e.outcome() != Outcome.HAPPENED && !rules.contains(e.ruleId())) {
                remarks.add(unknown(history, row.line(), "rule", e.ruleId(), "rule", rules));
            }
        }
        Set<String> engines =
                boat.installations().stream().map(Installation::id).collect(Collectors.toSet());
        String meter = FolderLayout.hours(boat.id());
        for (Sheet.Row<MeterReading> row : hours) {
            String engine = row.value().installationId();
            if (!engines.contains(engine)) {
                remarks.add(unknown(meter, row.line(), "installation", engine, "installation of this boat", engines));
            }
        }
        engines.forEach(e -> remarks.addAll(meter(meter, e, hours)));
        return remarks;
    }

    /** A strike that strikes nothing changes nothing; whoever wrote it should know. */
    private static void strays(
            String file, Sheet.Row<HistoryLine> row, List<HistoryLine> stray, List<Problem> remarks) {
        if (stray.contains(row.value())) {
            remarks.add(new Problem(
                    file,
                    row.line(),
                    "struck-on",
                    "no line above says the same, so nothing is struck",
                    "",
                    "Repeat the wrong line in all its columns."));
        }
    }

    /** Readings of one engine's meter that are passed over or taken for a new meter. */
    private static List<Problem> meter(String file, String engine, List<Sheet.Row<MeterReading>> hours) {
        List<Sheet.Row<MeterReading>> own = hours.stream()
                .filter(r -> r.value().installationId().equals(engine))
                .toList();
        return RunningHours.of(own.stream().map(Sheet.Row::value).toList()).remarks().stream()
                .map(m -> new Problem(file, line(own, m), engine, "", "", m.text()))
                .toList();
    }

    private static int line(List<Sheet.Row<MeterReading>> rows, MeterRemark remark) {
        return rows.stream()
                .filter(r -> r.value().date().equals(remark.date()) && r.value().hours() == remark.hours())
                .mapToInt(Sheet.Row::line)
                .findFirst()
                .orElse(0);
    }

    /** The problem that a name leads nowhere. */
    static Problem unknown(String file, int line, String field, String written, String what, Collection<String> known) {
        return new Problem(
                file,
                line,
                field,
                "there is no " + what + " \"" + written + "\"",
                "",
                KnownNames.advice(written, known));
    }

    /** A file being asked what it refers to. */
    private record Asking(String file, Yaml.Read<Boat> read, List<Problem> problems) {
        void known(String written, Collection<String> known, String what, Object... steps) {
            if (!known.contains(written)) {
                problems.add(unknown(file, read.line(steps), read.path(steps), written, what, known));
            }
        }

        void note(String found, String expected, String advice, Object... steps) {
            problems.add(new Problem(file, read.line(steps), read.path(steps), "found " + found, expected, advice));
        }
    }
}
