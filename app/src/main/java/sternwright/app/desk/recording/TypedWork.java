package sternwright.app.desk.recording;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.due.DueWork;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.KnownNames;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.sheet.HistorySheet;
import sternwright.app.files.sheet.ReadingsShape;
import sternwright.app.files.sheet.Sheet;
import sternwright.app.files.sheet.TableFile;
import sternwright.app.files.shelf.Shelf;
import sternwright.boat.Boat;
import sternwright.boat.PartRef;
import sternwright.history.HistoryLine;
import sternwright.history.MeterReading;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.history.TakenReading;

/** Turns what a person typed of a visit into lines for the history. */
public final class TypedWork {
    /**
     * What was typed.
     *
     * @param works ids of rules
     * @param part installation/part, null if it follows from the rule
     * @param day when
     * @param hours what the meter showed, null if not read
     * @param who who did it
     * @param readings as name=value, with or without unit
     * @param note free text
     * @param seen only looked at
     * @param refusedBy who signed a refusal, null for none
     * @param happened what happened, null for nothing
     */
    public record Typed(
            List<String> works,
            @Nullable String part,
            LocalDate day,
            @Nullable Double hours,
            String who,
            List<String> readings,
            String note,
            boolean seen,
            @Nullable String refusedBy,
            @Nullable String happened) {
        /** Copies the lists. */
        public Typed {
            works = List.copyOf(works);
            readings = List.copyOf(readings);
        }
    }

    private static final String SOURCE = "command line";

    private final Boat boat;
    private final DueWork work;
    private final Typed typed;

    private TypedWork(Boat boat, DueWork work, Typed typed) {
        this.boat = boat;
        this.work = work;
        this.typed = typed;
    }

    /**
     * A visit kept as a table.
     *
     * @param csv the table, columns of a boat's history
     * @param latest the last day on which anything can have happened
     * @return what to record
     * @throws BadInput with every row that is wrong
     */
    public static RecordWork.Said said(TableFile csv, LocalDate latest) {
        List<Problem> problems = new ArrayList<>();
        List<Sheet.Row<ServiceEntry>> rows = new ArrayList<>();
        for (Sheet.Row<HistoryLine> row : csv.read(HistorySheet.ONE_BOAT, latest, problems)) {
            rows.add(new Sheet.Row<>(row.line(), row.value().entry()));
            if (row.value().strike() != null) {
                problems.add(new Problem(
                        csv.name(),
                        row.line(),
                        "struck-on",
                        "this line strikes an earlier one",
                        "work that was done",
                        "Say it with \"sternwright strike\", or take the table in with \"import history\"."));
            }
        }
        if (problems.isEmpty() && rows.isEmpty()) {
            throw BadInput.of(csv.name(), "there is no row in it", "a line for each work done", "");
        }
        if (!problems.isEmpty()) {
            throw new BadInput(problems);
        }
        return new RecordWork.Said(csv.name(), rows, List.of());
    }

    /**
     * What was typed, with parts found from the rules and units from what they ask.
     *
     * @param shelf where the yard's texts are kept
     * @param boatId the boat
     * @param typed what was typed
     * @param latest the last day on which anything can have happened
     * @return what to record
     */
    public static RecordWork.Said said(Shelf shelf, String boatId, Typed typed, LocalDate latest) {
        YardFiles files = YardFolder.only(shelf, List.of(boatId), latest);
        Boat boat = files.boats().values().iterator().next();
        return new TypedWork(boat, new DueWork(files), typed).said();
    }

    private RecordWork.Said said() {
        List<ServiceEntry> entries = new ArrayList<>();
        if (typed.happened() != null) {
            places().forEach(p -> entries.add(entry(p, String.valueOf(typed.happened()), Outcome.HAPPENED)));
        }
        Outcome outcome = typed.refusedBy() != null ? Outcome.REFUSED : typed.seen() ? Outcome.SEEN : Outcome.DONE;
        typed.works().forEach(rule -> entries.add(entry(part(rule), rule, outcome)));
        List<MeterReading> meter = new ArrayList<>();
        if (typed.hours() != null) {
            entries.stream()
                    .map(e -> e.part().installationId())
                    .distinct()
                    .forEach(i -> meter.add(new MeterReading(typed.day(), i, typed.hours(), null, typed.who())));
            if (meter.size() > 1) {
                throw BadInput.of(
                        "--hours",
                        "the works are on " + meter.size() + " engines, each with a meter of its own",
                        "",
                        "Record them one engine at a time with --part.");
            }
        }
        return new RecordWork.Said(
                SOURCE, entries.stream().map(e -> new Sheet.Row<>(0, e)).toList(), meter);
    }

    private ServiceEntry entry(PartRef part, String rule, Outcome outcome) {
        String who = typed.refusedBy() == null ? typed.who() : typed.refusedBy();
        return new ServiceEntry(typed.day(), part, rule, outcome, null, who, readings(), typed.note());
    }

    /** What happens to a boat happens to each of her installations, unless a part is named. */
    private List<PartRef> places() {
        if (!String.valueOf(typed.happened()).matches("[a-z0-9][a-z0-9._-]*")) {
            throw BadInput.of(
                    "--happened", "found \"" + typed.happened() + "\"", "a short name such as grounding", "No spaces.");
        }
        if (typed.part() != null) {
            return List.of(ref(typed.part()));
        }
        return boat.installations().stream()
                .map(i -> new PartRef(i.id(), i.parts().get(0).id()))
                .toList();
    }

    private PartRef part(String rule) {
        if (typed.part() != null) {
            return ref(typed.part());
        }
        List<PartRef> on = work.partsOf(boat, rule);
        if (on.size() == 1) {
            return on.get(0);
        }
        if (on.isEmpty()) {
            throw BadInput.of(
                    "--work",
                    "no part of boat " + boat.id() + " has a rule \"" + rule + "\" in force",
                    "",
                    KnownNames.advice(rule, work.rulesOn(boat)));
        }
        throw BadInput.of(
                "--part",
                "rule \"" + rule + "\" is in force on several parts",
                "one of " + String.join(", ", on.stream().map(PartRef::toString).toList()),
                "Say which with --part.");
    }

    private static PartRef ref(String text) {
        int slash = text.indexOf('/');
        if (slash <= 0 || slash == text.length() - 1) {
            throw BadInput.of("--part", "found \"" + text + "\"", "installation/part, such as main/engine", "");
        }
        return new PartRef(text.substring(0, slash), text.substring(slash + 1));
    }

    private List<TakenReading> readings() {
        List<TakenReading> taken = new ArrayList<>();
        for (String text : typed.readings()) {
            TakenReading reading = ReadingsShape.parse(text.strip());
            if (reading == null) {
                throw BadInput.of(
                        "--reading",
                        "found \"" + text + "\"",
                        "name=value, such as drips=3, oil-pressure=55psi or water-in-oil=no",
                        "Use a decimal point.");
            }
            taken.add(reading);
        }
        return taken;
    }
}
