package sternwright.app.demo;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.PartRef;
import sternwright.boat.Winter;
import sternwright.due.Due;
import sternwright.due.DueList;
import sternwright.due.DueState;
import sternwright.history.BoatHistory;
import sternwright.history.MeterReading;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.history.TakenReading;
import sternwright.service.Half;
import sternwright.service.Occasion;
import sternwright.service.Place;
import sternwright.service.Rule;
import sternwright.service.RuleBook;
import sternwright.yard.SeasonDates;
import sternwright.yard.SeasonDates.Window;
import sternwright.yard.Use;

/**
 * One invented boat's past: season by season the due list is asked, and what its owner's care lets happen is written down.
 */
final class InventedPast {
    private static final List<String> PEOPLE = List.of("Ash", "Fen", "Rill", "Tarn");
    private static final double BIG_WORK_MINUTES = 200;
    private static final double HOURS_BETWEEN_VISITS = 190;

    private final Boat boat;
    private final Berth berth;
    private final Use use;
    private final SeasonDates season;
    private final RuleBook book;
    private final Care care;
    private final SplittableRandom random;
    private final InventedReadings readings;
    private final Map<String, InventedHours> hours;
    private final List<ServiceEntry> entries = new ArrayList<>();

    InventedPast(
            Boat boat,
            Berth berth,
            Use use,
            SeasonDates season,
            RuleBook book,
            Care care,
            Map<String, InventedHours> hours,
            SplittableRandom random) {
        this.boat = boat;
        this.berth = berth;
        this.use = use;
        this.season = season;
        this.book = book;
        this.care = care;
        this.hours = new HashMap<>(hours);
        this.random = random;
        double loss = (berth.hotMarina() ? 85 : 38) * (0.7 + 0.6 * random.nextDouble());
        boolean notConnected = random.nextDouble() < 0.04;
        this.readings = new InventedReadings(random.split(), notConnected ? 1.5 : loss);
    }

    /** Everything written down from one day to another. */
    BoatHistory between(LocalDate from, LocalDate today) {
        for (LocalDate at = from; at.isBefore(today); ) {
            Window layUp = season.layUpEndingFrom(at);
            Window recommission = season.recommissionEndingFrom(at);
            boolean autumnNext = layUp.to().isBefore(recommission.to());
            Window next = autumnNext ? layUp : recommission;
            LocalDate day = dayIn(next, autumnNext);
            if (day.isBefore(at)) {
                day = at;
            }
            mishaps(at, next.from());
            if (!day.isBefore(today)) {
                break;
            }
            if (random.nextDouble() < care.visits()) {
                visit(day, autumnNext ? Half.LAY_UP : Half.RECOMMISSION);
            }
            if (autumnNext) {
                againstFrost(day);
            }
            if (boat.winter() == Winter.IN_USE || !autumnNext) {
                Window after = autumnNext ? season.recommissionEndingFrom(day) : season.layUpEndingFrom(day);
                summer(day, after.from(), today);
            }
            at = next.to().plusDays(1);
        }
        return history();
    }

    private LocalDate dayIn(Window window, boolean layUp) {
        LocalDate last = window.to();
        if (layUp && berth.firstFrost() != null) {
            LocalDate frost = berth.firstFrost().atYear(window.from().getYear());
            last = frost.isBefore(window.from()) || frost.isAfter(last) ? last : frost.minusDays(3);
        }
        LocalDate day = (layUp ? Triangular.RELEASED : Triangular.WANTED).day(window.from(), window.to(), random);
        return day.isBefore(last) ? day : last;
    }

    /** A boat that runs much is served between lay-ups too, afloat, about every so many hours. */
    private void summer(LocalDate from, LocalDate to, LocalDate today) {
        LocalDate last = from;
        for (LocalDate day = from; day.isBefore(to) && day.isBefore(today); day = day.plusDays(7)) {
            double runs = hours.values().iterator().next().on(day)
                    - hours.values().iterator().next().on(last);
            if (runs >= HOURS_BETWEEN_VISITS) {
                last = day;
                if (random.nextDouble() < care.visits()) {
                    visit(day, Half.ANY);
                }
            }
        }
    }

    /** Whatever else an owner puts off, the yard does not let an engine freeze. */
    private void againstFrost(LocalDate day) {
        String who = PEOPLE.get(random.nextInt(PEOPLE.size()));
        dues(day).stream()
                .filter(d -> d.state() != DueState.REFUSED && !day.equals(d.lastDone()))
                .filter(d -> d.rule().interval().occasion() == Occasion.EVERY_LAY_UP_BEFORE_FROST)
                .forEach(d -> add(day, d.part(), d.rule().id(), Outcome.DONE, who, ""));
    }

    private void visit(LocalDate day, Half half) {
        String who = PEOPLE.get(random.nextInt(PEOPLE.size()));
        boolean ashore = half != Half.ANY && boat.winter() == Winter.ASHORE
                || half == Half.RECOMMISSION && random.nextDouble() < care.works();
        for (InventedHours meter : hours.values()) {
            if (random.nextDouble() < 0.015) {
                meter.replace(day, who);
            } else if (random.nextDouble() < Math.max(0.5, care.written())) {
                meter.read(day, who);
            }
            if (random.nextDouble() < 0.03) {
                meter.misread(day, random.nextBoolean());
            }
        }
        // The second round finds what the first has led to: an anode half gone, isolation to prove after engine work.
        for (int round = 0; round < 2; round++) {
            for (Due due : dues(day)) {
                if (ripe(due, day, half, ashore)) {
                    doOrLeave(due, day, who);
                }
            }
        }
    }

    private List<Due> dues(LocalDate day) {
        return DueList.of(boat, berth, use, season, book::forPart, history(), Map.of(), day);
    }

    private boolean ripe(Due due, LocalDate day, Half half, boolean ashore) {
        Rule rule = due.rule();
        boolean late = due.dueOn().isBefore(day.minusMonths(4));
        boolean rightHalf = rule.half() == Half.ANY || rule.half() == half || late;
        boolean rightPlace = rule.place() != Place.ASHORE || ashore || (rule.diver() && random.nextDouble() < 0.5);
        boolean doneToday = day.equals(due.lastDone());
        return due.state() != DueState.REFUSED
                && !doneToday
                && rightHalf
                && rightPlace
                && due.dueOn().isBefore(day.plusDays(75));
    }

    private void doOrLeave(Due due, LocalDate day, String who) {
        Rule rule = due.rule();
        boolean big = rule.minutes() > BIG_WORK_MINUTES;
        if (big && random.nextDouble() < care.refuses()) {
            if (rule.safety()) {
                add(day, due.part(), rule.id(), Outcome.REFUSED, boat.owner().name(), "signed: not this season");
            }
            return;
        }
        if (random.nextDouble() >= care.works()) {
            return;
        }
        Double written = random.nextDouble() < care.written() ? hoursOn(due.part(), day) : null;
        Part part = part(due.part());
        List<TakenReading> taken = readings.take(rule, part, newSince(due.part(), part), day);
        entries.add(new ServiceEntry(day, due.part(), rule.id(), Outcome.DONE, written, who, taken, ""));
        if (taken.stream().anyMatch(r -> r.name().equals("mount-contamination") && r.value() == 1)) {
            add(day, due.part(), "contaminated", Outcome.HAPPENED, who, "found at the inspection");
        }
    }

    /** Between two visits something may happen: a grounding, fuel on the mounts. */
    private void mishaps(LocalDate from, LocalDate to) {
        long days = ChronoUnit.DAYS.between(from, to);
        if (days < 10) {
            return;
        }
        for (Installation installation : boat.installations()) {
            for (Part part : installation.parts()) {
                LocalDate day = from.plusDays(random.nextLong(days));
                PartRef ref = new PartRef(installation.id(), part.id());
                if (part.kind().startsWith("mounts") && random.nextDouble() < 0.02) {
                    add(
                            day,
                            ref,
                            "contaminated",
                            Outcome.HAPPENED,
                            "owner",
                            "fuel from a weeping filter on the mounts");
                }
                if (struck(part) && random.nextDouble() < 0.02) {
                    add(day, ref, "grounding", Outcome.HAPPENED, "owner", "touched bottom");
                }
            }
        }
    }

    private static boolean struck(Part part) {
        return List.of("propeller", "folding-propeller", "leg", "pod-seals").contains(part.kind());
    }

    private void add(LocalDate day, PartRef ref, String what, Outcome outcome, String who, String note) {
        entries.add(new ServiceEntry(day, ref, what, outcome, null, who, List.of(), note));
    }

    private @Nullable LocalDate newSince(PartRef ref, Part part) {
        for (int i = entries.size() - 1; i >= 0; i--) {
            ServiceEntry e = entries.get(i);
            if (e.part().equals(ref)
                    && e.outcome() == Outcome.DONE
                    && book.rule(e.ruleId()).map(Rule::renews).orElse(false)) {
                return e.date();
            }
        }
        return part.fittedOn();
    }

    private Part part(PartRef ref) {
        return boat.installation(ref.installationId())
                .flatMap(i -> i.part(ref.partId()))
                .orElseThrow();
    }

    private Double hoursOn(PartRef ref, LocalDate day) {
        InventedHours of = hours.get(ref.installationId());
        return of == null ? 0.0 : (Double) of.on(day);
    }

    private BoatHistory history() {
        List<MeterReading> meter =
                hours.values().stream().flatMap(h -> h.meter().stream()).toList();
        return new BoatHistory(boat.id(), entries, meter);
    }
}
