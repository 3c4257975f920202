package sternwright.job;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.PartKind;
import sternwright.boat.PartRef;
import sternwright.history.MeterReading;
import sternwright.history.RunningHours;
import sternwright.history.ServiceEntry;
import sternwright.history.TakenReading;
import sternwright.service.Place;
import sternwright.service.ReadingAsked;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PlannedWork;
import sternwright.visit.planned.SupplyLine;

/** Writes job cards from planned visits. */
public final class JobCards {
    /** Kinds of part with this tag are openings below water. */
    private static final String OPENING = "hull-opening";

    /** Of these kinds of opening one notes open or shut; of the others dry or weeping. */
    private static final String SEACOCK = "seacock";

    private final PlannedVisit visit;
    private final CardFacts facts;
    private final Set<String> toSettle = new LinkedHashSet<>();

    private JobCards(PlannedVisit visit, CardFacts facts) {
        this.visit = visit;
        this.facts = facts;
    }

    /**
     * The job card of a visit.
     *
     * @param visit the visit as planned
     * @param facts boat, berth, yard, cautions, history and the day of writing
     * @return the card
     * @throws IllegalArgumentException if the visit belongs to another boat
     */
    public static JobCard of(PlannedVisit visit, CardFacts facts) {
        if (!visit.boatId().equals(facts.boat().id())) {
            throw new IllegalArgumentException("the visit is for boat " + visit.boatId() + ", not for "
                    + facts.boat().id() + ": take visit and boat from the same plan");
        }
        return new JobCards(visit, facts).card();
    }

    /**
     * The number that card and estimate of a visit share.
     *
     * @param visit the visit
     * @return boat id and first day
     */
    public static String number(PlannedVisit visit) {
        return visit.boatId() + "-" + visit.from();
    }

    private JobCard card() {
        List<WorkingOrder.Group> groups = WorkingOrder.of(visit.works());
        CautionSheet sheet = new CautionSheet(VisitCautions.of(visit, facts), facts.cautions(), groups);
        sheet.missing()
                .forEach(id -> toSettle.add("A rule names the caution \"" + id
                        + "\", but the programme has no text for it: ask before that work."));
        List<CardEngine> engines = engines();
        List<CardPoint> points = points(groups, sheet);
        visit.supplies().stream().filter(s -> !s.note().isBlank()).forEach(s -> toSettle.add(noteOf(s)));
        double working =
                visit.works().stream().mapToDouble(PlannedWork::minutes).sum();
        return new JobCard(
                number(visit),
                facts.yard().name(),
                facts.yard().invented(),
                facts.issuedOn(),
                facts.boat(),
                facts.berth(),
                visit.from(),
                visit.to(),
                visit.place(),
                visit.lifts(),
                engines,
                sheet.head(),
                openings(),
                points,
                visit.supplies(),
                Math.max(0, visit.minutes() - working),
                visit.minutes(),
                List.copyOf(toSettle));
    }

    private static String noteOf(SupplyLine s) {
        String note = s.note().strip();
        return sentence(s.name()) + ": " + note + (note.endsWith(".") ? "" : ".");
    }

    private static String sentence(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private List<CardEngine> engines() {
        Set<String> ids =
                visit.works().stream().map(w -> w.part().installationId()).collect(Collectors.toSet());
        List<CardEngine> engines = new ArrayList<>();
        for (Installation i : facts.boat().installations()) {
            if (ids.contains(i.id())) {
                MeterReading last = lastMeter(i.id());
                engines.add(new CardEngine(i, last));
                if (last == null) {
                    toSettle.add(engineName(i) + ": no hour-meter reading on record. Note the meter on arrival.");
                }
                if (i.engineModel() == null) {
                    toSettle.add(
                            engineName(i) + ": model not known. Copy it from the plate; the maker's figures lead.");
                }
            }
        }
        return engines;
    }

    /** The newest reading that fits the meter's course; one that does not is a slip and would mislead on board. */
    private @Nullable MeterReading lastMeter(String installationId) {
        List<MeterReading> readings = facts.history().meter().stream()
                .filter(r ->
                        r.installationId().equals(installationId) && !r.date().isAfter(facts.issuedOn()))
                .toList();
        RunningHours running = RunningHours.of(readings);
        MeterReading last = null;
        for (MeterReading r : readings) {
            boolean counted = running.points().stream().anyMatch(p -> p.date().equals(r.date()));
            boolean slip = running.remarks().stream().anyMatch(m -> m.isOf(r));
            if (counted && (!slip || last == null || !last.date().equals(r.date()))) {
                last = r;
            }
        }
        return last;
    }

    private List<CardPoint> points(List<WorkingOrder.Group> groups, CautionSheet sheet) {
        List<CardPoint> points = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        int number = 1;
        for (int g = 0; g < groups.size(); g++) {
            WorkingOrder.Group group = groups.get(g);
            List<CardWork> works = new ArrayList<>();
            for (PlannedWork planned : group.works()) {
                works.add(work(number++, planned, sheet));
            }
            boolean again = !seen.add(group.installationId() + "/" + group.point());
            points.add(new CardPoint(group.installationId(), pointName(group), again, sheet.of(g), works));
        }
        return points;
    }

    private CardWork work(int number, PlannedWork planned, CautionSheet sheet) {
        if (planned.inForce().rule().steps().isEmpty()) {
            toSettle.add("Work " + number + " (" + planned.inForce().rule().work()
                    + ") has no steps in the programme: follow the maker's manual.");
        }
        List<CardReading> readings = planned.inForce().rule().readings().stream()
                .map(r -> reading(planned.part(), r))
                .toList();
        boolean diver =
                visit.place() == Place.AFLOAT && planned.inForce().rule().place() == Place.ASHORE;
        return new CardWork(
                number, planned, register(planned.part()).orElse(null), sheet.keys(planned), readings, diver);
    }

    private Optional<Part> register(PartRef ref) {
        return facts.boat().installation(ref.installationId()).flatMap(i -> i.part(ref.partId()));
    }

    /** The newest reading of the name on the part; one in another unit cannot stand beside the limit and is left out. */
    private CardReading reading(PartRef part, ReadingAsked asked) {
        List<ServiceEntry> entries = facts.history().entries();
        for (int i = entries.size() - 1; i >= 0; i--) {
            ServiceEntry e = entries.get(i);
            if (e.part().equals(part) && !e.date().isAfter(facts.issuedOn())) {
                for (TakenReading r : e.readings()) {
                    if (r.name().equals(asked.name()) && r.unit().equals(asked.unit())) {
                        return new CardReading(asked, r, e.date());
                    }
                }
            }
        }
        return new CardReading(asked, null, null);
    }

    private List<HullOpening> openings() {
        List<HullOpening> found = new ArrayList<>();
        for (Installation i : facts.boat().installations()) {
            for (Part p : i.parts()) {
                PartKind kind = facts.catalogue().find(p.kind()).orElse(null);
                if (kind != null && kind.tags().contains(OPENING)) {
                    boolean shuts = kind.id().contains(SEACOCK) || kind.tags().contains(SEACOCK);
                    found.add(new HullOpening(new PartRef(i.id(), p.id()), withSide(kind.name(), i.id()), shuts));
                }
            }
        }
        return found;
    }

    private String pointName(WorkingOrder.Group group) {
        return withSide(group.point().replace('-', ' '), group.installationId());
    }

    private String withSide(String name, String installationId) {
        if (facts.boat().installations().size() < 2) {
            return name;
        }
        return name
                + facts.boat()
                        .installation(installationId)
                        .map(i -> ", " + side(i))
                        .orElse("");
    }

    private String engineName(Installation i) {
        return facts.boat().installations().size() < 2 ? "Engine" : sentence(side(i)) + " engine";
    }

    private static String side(Installation i) {
        return i.side().name().toLowerCase(Locale.ROOT);
    }
}
