package sternwright.app.web.today;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.today.DayAtYard;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Pager;
import sternwright.app.web.page.State;

/** What the page of the day shows, in the words and formats of its reader. */
public final class TodaySheet {
    private static final int MOST = 25;
    private static final int STRETCH = 50;

    private TodaySheet() {}

    /**
     * A job.
     *
     * @param boatId the boat
     * @param boat her name
     * @param berth where she lies
     * @param what visit and operation
     * @param when from which part of the day, and until which day
     * @param why why on this date
     */
    public record Job(String boatId, String boat, String berth, String what, String when, String why) {}

    /**
     * A person's day.
     *
     * @param name the person, or that nobody is named
     * @param away why the person is not there, empty if there
     * @param jobs in order of time
     */
    public record Person(String name, String away, List<Job> jobs) {}

    /**
     * A lift or launch.
     *
     * @param job the operation
     * @param hoist the hoist
     * @param size length and mass
     * @param water high water needed, empty if no tide matters
     */
    public record Lift(Job job, String hoist, String size, String water) {}

    /**
     * A boat on hard standing.
     *
     * @param boatId the boat
     * @param boat her name
     * @param since since when, empty if not known
     * @param launch when she is launched, empty if not planned
     * @param place which class of places
     */
    public record Ashore(String boatId, String boat, String since, String launch, String place) {}

    /**
     * Something at risk, or a part awaited.
     *
     * @param boatId the boat
     * @param boat her name
     * @param what what it is about
     * @param day the day that counts
     * @param other the other day, empty if there is none
     * @param state how it stands
     */
    public record Risk(String boatId, String boat, String what, String day, String other, State state) {}

    /**
     * The day.
     *
     * @param lead the day in words
     * @param plan when the plan was made, or that none is published
     * @param people everyone with the day's jobs
     * @param free people who are there and have no job, as one text
     * @param lifts boats in the hoist
     * @param tides high waters
     * @param ashore boats on hard standing, a stretch of them
     * @param standing which stretch
     * @param loads how full it is
     * @param parts parts not here
     * @param promises promises at risk
     * @param dues works past their last sensible day, a line a boat
     * @param moreDues boats more than the lines show
     */
    public record View(
            String lead,
            String plan,
            List<Person> people,
            String free,
            List<Lift> lifts,
            List<String> tides,
            List<Ashore> ashore,
            Pager standing,
            List<String> loads,
            List<Risk> parts,
            List<Risk> promises,
            List<Risk> dues,
            int moreDues) {}

    static View of(Page page, DayAtYard day, int boats, int stretch) {
        Pager standing = new Pager(stretch, STRETCH, day.ashore().size());
        List<Person> people = day.people().stream()
                .filter(p -> !p.jobs().isEmpty() || !p.there())
                .map(p -> person(page, p))
                .toList();
        String free = String.join(
                ", ",
                day.people().stream()
                        .filter(p ->
                                p.there() && p.jobs().isEmpty() && !p.person().isEmpty())
                        .map(DayAtYard.PersonDay::person)
                        .toList());
        LocalDate planned = day.plannedOn();
        return new View(
                page.say(
                        day.works() ? "today.lead" : "today.lead.off",
                        page.figures().date(day.day()),
                        boats),
                planned == null
                        ? page.say("today.plan.none")
                        : page.say("today.plan", page.figures().shortDate(planned)),
                people,
                free,
                day.hoist().stream().map(h -> lift(page, h)).toList(),
                day.tides().stream().map(t -> tide(page, t)).toList(),
                standing.cut(day.ashore()).stream().map(a -> ashore(page, a)).toList(),
                standing,
                day.standing().stream()
                        .map(s -> page.say("today.standing", s.place(), s.boats(), s.places()))
                        .toList(),
                day.parts().stream().map(p -> part(page, p)).toList(),
                day.promises().stream().map(p -> promise(page, p)).toList(),
                day.dues().stream().limit(MOST).map(d -> due(page, d)).toList(),
                Math.max(0, day.dues().size() - MOST));
    }

    private static Person person(Page page, DayAtYard.PersonDay p) {
        String away = p.there() ? "" : p.why().isEmpty() ? page.say("today.away") : page.say("today.away.why", p.why());
        return new Person(
                p.person().isEmpty() ? page.say("today.nobody") : p.person(),
                away,
                p.jobs().stream().map(j -> job(page, j)).toList());
    }

    private static Job job(Page page, DayAtYard.Job j) {
        String quarter = page.say("today.quarter." + j.quarter());
        String when = j.from().equals(j.until())
                ? quarter
                : page.say("today.until", quarter, page.figures().shortDate(j.until()));
        return new Job(
                j.boatId(),
                j.boat(),
                j.berth(),
                page.say("today.what", page.figures().dated(j.visit()), j.operation()),
                when,
                page.figures().dated(j.reason()));
    }

    private static Lift lift(Page page, DayAtYard.HoistJob h) {
        Double water = h.highWaterNeededM();
        return new Lift(
                job(page, h.job()),
                h.hoist(),
                page.say(
                        "today.size",
                        page.figures().quantity(h.lengthM(), "m"),
                        page.figures().quantity(h.massKg(), "kg")),
                water == null ? "" : page.figures().quantity(Math.rint(water * 100) / 100, "m"));
    }

    private static String tide(Page page, DayAtYard.Tide t) {
        LocalTime at = t.at().toLocalTime();
        String time = DateTimeFormatter.ofLocalizedTime(FormatStyle.SHORT)
                .withLocale(page.locale())
                .format(at);
        return page.say(
                "today.tide",
                time,
                page.figures().quantity(t.heightM(), "m"),
                t.hoist(),
                page.figures().quantity(Math.rint(Math.max(0, t.draughtM()) * 10) / 10, "m"));
    }

    private static Ashore ashore(Page page, DayAtYard.StandsAshore a) {
        return new Ashore(a.boatId(), a.boat(), day(page, a.since()), day(page, a.launch()), a.place());
    }

    private static String day(Page page, @Nullable LocalDate day) {
        return day == null ? "" : page.figures().shortDate(day);
    }

    private static Risk part(Page page, DayAtYard.PartAwaited p) {
        State state = p.late()
                ? new State(page.say("today.part.late"), State.Mark.TRIANGLE, State.Tone.ACT)
                : new State(page.say("today.part.coming"), State.Mark.RING, State.Tone.PLAIN);
        String what = p.note().isEmpty() ? p.work() : page.say("today.part.note", p.work(), p.note());
        return new Risk(p.boatId(), p.boat(), what, day(page, p.here()), day(page, p.neededBy()), state);
    }

    private static Risk promise(Page page, DayAtYard.PromiseAtRisk p) {
        String why =
                page.say("today.risk." + p.why().name().toLowerCase(Locale.ROOT).replace('_', '-'), p.daysLate());
        State state = new State(why, State.Mark.TRIANGLE, State.Tone.ACT);
        String what = page.say(
                p.firm() ? "today.what.firm" : "today.what", page.figures().dated(p.visit()), p.operation());
        return new Risk(p.boatId(), p.boat(), what, day(page, p.promised()), day(page, p.planned()), state);
    }

    private static Risk due(Page page, DayAtYard.DueAtRisk d) {
        State state = d.safety()
                ? new State(page.say("today.due.safety"), State.Mark.TRIANGLE, State.Tone.ACT)
                : new State(page.say("today.due.overdue"), State.Mark.TRIANGLE, State.Tone.WATCH);
        String what = d.more() == 0 ? d.work() : page.say("today.due.more", d.work(), d.more());
        return new Risk(d.boatId(), d.boat(), what, day(page, d.lastSensible()), day(page, d.nextOnBoard()), state);
    }
}
