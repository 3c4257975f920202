package sternwright.app.paper.calendar;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import sternwright.season.dated.Step;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.DatedSeason;

/** Writes calendar files. */
public final class SeasonCalendars {
    private final String yardName;
    private final LocalDateTime stamp;

    /**
     * Calendars of a yard.
     *
     * @param yardName name of the yard, said in every calendar
     * @param stamp when they are written
     */
    public SeasonCalendars(String yardName, LocalDateTime stamp) {
        this.yardName = yardName;
        this.stamp = stamp;
    }

    /**
     * One calendar for each person, with every operation that person does.
     *
     * @param season the season
     * @return text by person's name
     */
    public Map<String, String> people(DatedSeason season) {
        Map<String, List<DatedOperation>> byPerson = new TreeMap<>();
        for (DatedOperation o : season.operations()) {
            o.people()
                    .forEach(p ->
                            byPerson.computeIfAbsent(p, n -> new ArrayList<>()).add(o));
        }
        Map<String, String> texts = new TreeMap<>();
        byPerson.forEach((person, operations) -> texts.put(person, ofPerson(person, operations)));
        return texts;
    }

    /**
     * The calendar of one person.
     *
     * @param season the season
     * @param name the person's name
     * @return the same text as among those of all; empty if the season has nothing for this person
     */
    public Optional<String> person(DatedSeason season, String name) {
        List<DatedOperation> theirs = season.operations(o -> o.people().contains(name));
        return theirs.isEmpty() ? Optional.empty() : Optional.of(ofPerson(name, theirs));
    }

    private String ofPerson(String person, List<DatedOperation> operations) {
        return text(
                person,
                operations,
                o -> o.meaning().boatName() + ": " + o.meaning().operation());
    }

    /**
     * One calendar for each boat.
     *
     * @param season the season
     * @return text by boat's id
     */
    public Map<String, String> boats(DatedSeason season) {
        Map<String, List<DatedOperation>> byBoat = new TreeMap<>();
        for (DatedOperation o : season.operations()) {
            if (o.meaning().step() != Step.STANDS) {
                byBoat.computeIfAbsent(o.meaning().boatId(), b -> new ArrayList<>())
                        .add(o);
            }
        }
        Map<String, String> texts = new TreeMap<>();
        byBoat.forEach((boat, operations) -> texts.put(boat, ofBoat(operations)));
        return texts;
    }

    /**
     * The calendar of one boat.
     *
     * @param season the season
     * @param id the boat
     * @return the same text as among those of all; empty if the season has nothing for her
     */
    public Optional<String> boat(DatedSeason season, String id) {
        List<DatedOperation> hers = season.operations(
                o -> o.meaning().step() != Step.STANDS && o.meaning().boatId().equals(id));
        return hers.isEmpty() ? Optional.empty() : Optional.of(ofBoat(hers));
    }

    private String ofBoat(List<DatedOperation> operations) {
        return text(
                operations.get(0).meaning().boatName(),
                operations,
                o -> o.meaning().operation());
    }

    private String text(
            String name, List<DatedOperation> operations, java.util.function.Function<DatedOperation, String> summary) {
        ICalendar calendar = new ICalendar();
        calendar.setProductId("-//Sternwright//Season//EN");
        calendar.setName(yardName + ": " + name);
        calendar.getTimezoneInfo().setGlobalFloatingTime(true);
        for (DatedOperation o : operations) {
            calendar.addEvent(event(o, summary.apply(o), name));
        }
        return Biweekly.write(calendar).go();
    }

    private VEvent event(DatedOperation o, String summary, String name) {
        VEvent event = new VEvent();
        String id = name + "/" + o.meaning().name();
        event.setUid(UUID.nameUUIDFromBytes(id.getBytes(StandardCharsets.UTF_8)) + "@sternwright");
        event.setDateTimeStamp(date(stamp));
        event.setSummary(summary.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + summary.substring(1));
        event.setDateStart(date(o.from()));
        event.setDateEnd(date(o.until()));
        event.setDescription(description(o));
        if (!o.hoist().isEmpty()) {
            event.setLocation(o.hoist());
        }
        return event;
    }

    private static String description(DatedOperation o) {
        List<String> lines = new ArrayList<>();
        o.meaning().works().forEach(w -> lines.add("- " + w.words()));
        if (!o.people().isEmpty()) {
            lines.add("By " + String.join(", ", o.people()) + ".");
        }
        lines.add(o.reason());
        return String.join("\n", lines);
    }

    private static Date date(LocalDateTime at) {
        return Date.from(at.atZone(ZoneId.systemDefault()).toInstant());
    }
}
