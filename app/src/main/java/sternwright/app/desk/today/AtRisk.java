package sternwright.app.desk.today;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.today.DayAtYard.DueAtRisk;
import sternwright.app.desk.today.DayAtYard.PartAwaited;
import sternwright.app.desk.today.DayAtYard.PromiseAtRisk;
import sternwright.app.desk.today.DayAtYard.Risk;
import sternwright.app.files.SeasonFiles;
import sternwright.app.files.YardFiles;
import sternwright.app.files.sheet.Sheet;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.due.DueState;
import sternwright.season.dated.OperationName;
import sternwright.season.dated.OwnerDate;
import sternwright.season.dated.PromisedDate;
import sternwright.season.dated.Published;
import sternwright.service.Programme;
import sternwright.service.Rule;

/** What a yard should look at before an owner asks. */
final class AtRisk {
    private final YardFiles yard;
    private final SeasonFiles season;
    private final LocalDate day;
    private final Map<String, List<Due>> dues = new HashMap<>();
    private final Map<OperationName, Published> plan = new HashMap<>();
    private final Map<String, LocalDate> nextOnBoard = new HashMap<>();
    private final Map<String, String> works = new HashMap<>();

    AtRisk(YardFiles yard, SeasonFiles season, List<Due> all, LocalDate day) {
        this.yard = yard;
        this.season = season;
        this.day = day;
        all.forEach(
                d -> dues.computeIfAbsent(d.boatId(), b -> new ArrayList<>()).add(d));
        for (Published p : season.published()) {
            plan.put(p.name(), p);
            if (!p.date().isBefore(day) && !p.people().isBlank()) {
                nextOnBoard.merge(p.name().boatId(), p.date(), (a, b) -> a.isBefore(b) ? a : b);
            }
        }
        Stream.concat(Stream.of(yard.generic()), yard.programmes().stream())
                .map(Programme::rules)
                .flatMap(List::stream)
                .forEach((Rule r) -> works.put(r.id(), r.work()));
    }

    private String name(String boatId) {
        Boat boat = yard.boats().get(boatId);
        return boat == null ? boatId : boat.name();
    }

    List<PartAwaited> parts() {
        return season.dates().stream()
                .map(Sheet.Row::value)
                .filter(d -> d.kind() == OwnerDate.Kind.PART_IN && d.date().isAfter(day))
                .map(this::part)
                .sorted(Comparator.comparing((PartAwaited p) -> !p.late())
                        .thenComparing(
                                PartAwaited::neededBy, Comparator.nullsLast(Comparator.<LocalDate>naturalOrder()))
                        .thenComparing(PartAwaited::here))
                .toList();
    }

    private PartAwaited part(OwnerDate date) {
        LocalDate sensible = dues.getOrDefault(date.boatId(), List.of()).stream()
                .filter(d -> d.rule().id().equals(date.work()) && d.state() != DueState.REFUSED)
                .map(Due::lastSensible)
                .min(Comparator.naturalOrder())
                .orElse(null);
        LocalDate onBoard = nextOnBoard.get(date.boatId());
        LocalDate needed = first(sensible, onBoard);
        return new PartAwaited(
                date.boatId(),
                name(date.boatId()),
                date.work(),
                Optional.ofNullable(works.get(date.work())).orElse(date.work()),
                date.date(),
                needed,
                needed != null && date.date().isAfter(needed),
                date.note());
    }

    @Nullable
    private static LocalDate first(@Nullable LocalDate a, @Nullable LocalDate b) {
        return a == null || b != null && b.isBefore(a) ? b : a;
    }

    List<PromiseAtRisk> promises() {
        List<PromiseAtRisk> risks = new ArrayList<>();
        for (Sheet.Row<PromisedDate> row : season.promises()) {
            PromisedDate promise = row.value();
            if (!promise.date().isBefore(day)) {
                risk(promise).ifPresent(risks::add);
            }
        }
        risks.sort(Comparator.comparing(PromiseAtRisk::firm)
                .thenComparing(PromiseAtRisk::daysLate)
                .reversed()
                .thenComparing(PromiseAtRisk::promised));
        return risks;
    }

    private Optional<PromiseAtRisk> risk(PromisedDate promise) {
        Published planned = plan.get(promise.name());
        if (planned == null) {
            return season.published().isEmpty() ? Optional.empty() : Optional.of(at(promise, null, Risk.NOT_PLANNED));
        }
        if (planned.date().isAfter(promise.date())) {
            return Optional.of(at(promise, planned.date(), Risk.PLANNED_LATER));
        }
        String boatId = promise.name().boatId();
        boolean waits = season.dates().stream()
                .map(Sheet.Row::value)
                .anyMatch(d -> d.boatId().equals(boatId)
                        && d.kind() == OwnerDate.Kind.PART_IN
                        && d.date().isAfter(promise.date()));
        if (waits && promise.name().operation().startsWith("launch")) {
            return Optional.of(at(promise, planned.date(), Risk.PART_LATE));
        }
        boolean unsafe = dues.getOrDefault(boatId, List.of()).stream()
                .anyMatch(d -> d.rule().safety()
                        && d.state() == DueState.OVERDUE
                        && promise.name().operation().startsWith("launch")
                        && !worked(boatId, promise));
        return unsafe ? Optional.of(at(promise, planned.date(), Risk.SAFETY_OVERDUE)) : Optional.empty();
    }

    /** Whether the plan has somebody on board before the promised day. */
    private boolean worked(String boatId, PromisedDate promise) {
        LocalDate next = nextOnBoard.get(boatId);
        return next != null && !next.isAfter(promise.date());
    }

    private PromiseAtRisk at(PromisedDate promise, @Nullable LocalDate planned, Risk why) {
        long late = planned == null ? 0 : Math.max(0, ChronoUnit.DAYS.between(promise.date(), planned));
        return new PromiseAtRisk(
                promise.name().boatId(),
                name(promise.name().boatId()),
                promise.name().visit(),
                promise.name().operation(),
                promise.date(),
                planned,
                late,
                promise.firm(),
                why);
    }

    List<DueAtRisk> dues() {
        List<DueAtRisk> risks = new ArrayList<>();
        Comparator<Due> worst =
                Comparator.comparing((Due d) -> !d.rule().safety()).thenComparing(Due::lastSensible);
        dues.forEach((boatId, own) -> {
            List<Due> past = own.stream()
                    .filter(d -> d.state() == DueState.OVERDUE)
                    .sorted(worst)
                    .toList();
            if (!past.isEmpty()) {
                Due due = past.get(0);
                risks.add(new DueAtRisk(
                        boatId,
                        name(boatId),
                        due.rule().work(),
                        due.part().toString(),
                        due.lastSensible(),
                        due.rule().safety(),
                        past.size() - 1,
                        nextOnBoard.get(boatId)));
            }
        });
        risks.sort(Comparator.comparing((DueAtRisk d) -> !d.safety())
                .thenComparing(DueAtRisk::lastSensible)
                .thenComparing(DueAtRisk::boat));
        return risks;
    }
}
