package sternwright.app.desk.today;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import sternwright.app.desk.today.DayAtYard.HoistJob;
import sternwright.app.desk.today.DayAtYard.Job;
import sternwright.app.desk.today.DayAtYard.PersonDay;
import sternwright.app.desk.today.DayAtYard.Tide;
import sternwright.app.files.SeasonFiles;
import sternwright.app.files.YardFiles;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.season.dated.Published;
import sternwright.yard.resource.Absence;
import sternwright.yard.resource.CrewMember;
import sternwright.yard.resource.Hoist;
import sternwright.yard.resource.TidalDock;

/** Tells the yard's day from what is published, promised and due. */
public final class TodayAtYard {
    private final YardFiles yard;
    private final SeasonFiles season;
    private final LocalDate day;

    private TodayAtYard(YardFiles yard, SeasonFiles season, LocalDate day) {
        this.yard = yard;
        this.season = season;
        this.day = day;
    }

    /**
     * The day.
     *
     * @param yard the yard's files
     * @param season what they say of the season
     * @param dues the due list of the day called today
     * @param day the day asked for
     * @return all that the page of the day shows
     */
    public static DayAtYard of(YardFiles yard, SeasonFiles season, List<Due> dues, LocalDate day) {
        TodayAtYard today = new TodayAtYard(yard, season, day);
        Ashore ashore = Ashore.on(yard, season, day);
        AtRisk risk = new AtRisk(yard, season, dues, day);
        return new DayAtYard(
                day,
                yard.yard().calendar().works(day),
                season.published().stream()
                        .map(Published::plannedOn)
                        .min(Comparator.naturalOrder())
                        .orElse(null),
                today.people(),
                today.hoist(),
                ashore.boats(),
                ashore.loads(season.resources()),
                risk.parts(),
                risk.promises(),
                risk.dues(),
                today.tides());
    }

    private List<Published> onDay() {
        return season.published().stream()
                .filter(p -> !p.date().isAfter(day) && !p.until().isBefore(day))
                .sorted(Comparator.comparing(Published::date)
                        .thenComparingInt(Published::quarter)
                        .thenComparing(Published::name))
                .toList();
    }

    private List<PersonDay> people() {
        Map<String, List<Job>> jobs = new LinkedHashMap<>();
        season.resources().crew().forEach(c -> jobs.put(c.name(), new ArrayList<>()));
        for (Published p : onDay()) {
            if (!p.hoist().isEmpty() && p.people().isBlank()
                    || p.name().operation().equals("stands ashore")) {
                continue;
            }
            for (String person : p.people().isBlank() ? List.of("") : names(p)) {
                jobs.computeIfAbsent(person, n -> new ArrayList<>()).add(job(p));
            }
        }
        List<PersonDay> people = new ArrayList<>();
        jobs.forEach((name, own) -> people.add(person(name, own)));
        return people;
    }

    private static List<String> names(Published p) {
        return Arrays.stream(p.people().split(","))
                .map(String::strip)
                .filter(n -> !n.isEmpty())
                .toList();
    }

    private PersonDay person(String name, List<Job> jobs) {
        CrewMember member = season.resources().crew().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElse(null);
        boolean there = member == null || member.there(day);
        String why = member == null
                ? ""
                : member.away().stream()
                        .filter(a -> a.covers(day))
                        .map(Absence::why)
                        .findFirst()
                        .orElse("");
        return new PersonDay(name, there, why, jobs);
    }

    private Job job(Published p) {
        Boat boat = yard.boats().get(p.name().boatId());
        Berth berth = boat == null ? null : yard.berths().get(boat.berthId());
        return new Job(
                p.name().boatId(),
                boat == null ? p.name().boatId() : boat.name(),
                berth == null ? "" : berth.name(),
                p.name().visit(),
                p.name().operation(),
                p.date(),
                p.quarter(),
                p.until(),
                p.reason());
    }

    private List<HoistJob> hoist() {
        List<HoistJob> jobs = new ArrayList<>();
        for (Published p : onDay()) {
            Boat boat = yard.boats().get(p.name().boatId());
            if (!p.hoist().isEmpty() && boat != null) {
                TidalDock dock = season.resources().hoists().stream()
                        .filter(h -> h.name().equals(p.hoist()))
                        .map(Hoist::tidal)
                        .filter(Objects::nonNull)
                        .findFirst()
                        .orElse(null);
                jobs.add(new HoistJob(
                        job(p),
                        p.hoist(),
                        boat.hull().lengthM(),
                        boat.hull().massKg(),
                        dock == null ? null : dock.heightNeededM(boat.hull().draughtM())));
            }
        }
        return jobs;
    }

    private List<Tide> tides() {
        List<Tide> tides = new ArrayList<>();
        for (Hoist hoist : season.resources().hoists()) {
            TidalDock dock = hoist.tidal();
            if (dock != null) {
                season.tides().highWaters().stream()
                        .filter(h -> h.at().toLocalDate().equals(day))
                        .forEach(h -> tides.add(
                                new Tide(h.at(), h.heightM(), hoist.name(), h.heightM() - dock.heightNeededM(0))));
            }
        }
        tides.sort(Comparator.comparing(Tide::at));
        return tides;
    }
}
