package sternwright.app.desk.season.board;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.SeasonFiles;
import sternwright.app.files.YardFiles;
import sternwright.app.files.sheet.Sheet;
import sternwright.boat.Boat;
import sternwright.season.dated.Meaning;
import sternwright.season.dated.OperationName;
import sternwright.season.dated.PromisedDate;
import sternwright.season.dated.Published;
import sternwright.season.dated.Step;
import sternwright.season.dated.WorkingTime;
import sternwright.season.dated.answer.CostSplit;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.DatedSeason;
import sternwright.season.dated.answer.DatedVisit;
import sternwright.yard.resource.Resources;
import sternwright.yard.resource.StayTimes;

/** A season from nothing but the lines of its published plan: at once, without costs and without how full anything is. */
final class RowsSeason {
    private final YardFiles yard;
    private final Resources resources;
    private final Map<OperationName, LocalDate> promised = new HashMap<>();

    private RowsSeason(YardFiles yard, SeasonFiles files) {
        this.yard = yard;
        this.resources = files.resources();
        files.promises().stream().map(Sheet.Row::value).forEach((PromisedDate p) -> promised.put(p.name(), p.date()));
    }

    /** The season of a plan that is not empty. */
    static DatedSeason of(YardFiles yard, SeasonFiles files) {
        return new RowsSeason(yard, files).season(files.published());
    }

    private DatedSeason season(List<Published> plan) {
        LocalDate from = plan.stream()
                .map(Published::date)
                .min(Comparator.naturalOrder())
                .orElseThrow();
        LocalDate to = plan.stream()
                .map(Published::until)
                .max(Comparator.naturalOrder())
                .orElseThrow();
        StayTimes times = resources.times();
        WorkingTime time = WorkingTime.of(yard.yard().calendar(), from, to, times.begins(), times.hoursADay());
        Map<String, List<Published>> visits = new LinkedHashMap<>();
        plan.forEach(
                p -> visits.computeIfAbsent(p.name().boatId() + "\n" + p.name().visit(), v -> new ArrayList<>())
                        .add(p));
        return new DatedSeason(
                time.first(),
                time.last(),
                IntStream.range(0, time.axis().weeks()).mapToObj(time::weekFrom).toList(),
                visits.values().stream()
                        .map(this::visit)
                        .sorted(Comparator.comparing(DatedVisit::from).thenComparing(DatedVisit::boatName))
                        .toList(),
                new CostSplit(0, 0, 0, 0, 0, 0, 0),
                0,
                0,
                "",
                List.of(),
                List.of(),
                List.of());
    }

    private DatedVisit visit(List<Published> rows) {
        List<DatedOperation> operations = rows.stream().map(this::operation).toList();
        Meaning first = operations.get(0).meaning();
        LocalDateTime out = at(operations, Step.LIFT, Step.STANDS);
        LocalDateTime in = at(operations, Step.LAUNCH, Step.LAUNCH);
        boolean ashore = out != null && in != null;
        return new DatedVisit(
                first.boatId(),
                first.boatName(),
                first.visit(),
                ashore ? place(first.boatId()) : "",
                ashore ? out : null,
                ashore ? in : null,
                operations);
    }

    private static @Nullable LocalDateTime at(List<DatedOperation> operations, Step one, Step other) {
        return operations.stream()
                .filter(o -> o.meaning().step() == one || o.meaning().step() == other)
                .map(DatedOperation::from)
                .findFirst()
                .orElse(null);
    }

    private String place(String boatId) {
        Boat boat = yard.boats().get(boatId);
        return boat == null
                ? ""
                : resources
                        .classFor(boat.hull().lengthM())
                        .map(c -> resources.standing().get(c).name())
                        .orElse("");
    }

    private DatedOperation operation(Published row) {
        StayTimes times = resources.times();
        Duration quarter = Duration.ofMinutes(Math.round(times.hoursADay() * 60 / WorkingTime.QUARTERS_PER_DAY));
        LocalDateTime from = row.date().atTime(times.begins()).plus(quarter.multipliedBy(row.quarter()));
        LocalDateTime end = row.until().atTime(times.begins()).plus(quarter.multipliedBy(WorkingTime.QUARTERS_PER_DAY));
        boolean moment = !row.hoist().isEmpty() && row.until().equals(row.date());
        LocalDate day = promised.get(row.name());
        DatedOperation.State state = day == null
                ? DatedOperation.State.IN_TIME
                : day.equals(row.date()) ? DatedOperation.State.PROMISED : DatedOperation.State.MOVED;
        return new DatedOperation(
                meaning(row.name()),
                from,
                moment ? from.plus(quarter) : end,
                row.quarter(),
                people(row.people()),
                row.hoist(),
                state,
                0,
                row.reason());
    }

    static List<String> people(String names) {
        return Arrays.stream(names.split(","))
                .map(String::strip)
                .filter(n -> !n.isEmpty())
                .toList();
    }

    private Meaning meaning(OperationName name) {
        Boat boat = yard.boats().get(name.boatId());
        return new Meaning(
                name.boatId(),
                boat == null ? name.boatId() : boat.name(),
                name.visit(),
                name.operation(),
                step(name.operation()),
                List.of(),
                0,
                Set.of(),
                "");
    }

    /** An operation is called by its step first. */
    private static Step step(String operation) {
        return Arrays.stream(Step.values())
                .filter(s -> operation.startsWith(s.words()))
                .findFirst()
                .orElse(Step.WORK);
    }
}
