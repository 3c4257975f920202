package sternwright.app.paper.calendar;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Date;
import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;
import sternwright.season.dated.Published;

/** The plan the yard works by as one calendar, for programs that fetch it again and again. */
public final class PublishedCalendar {
    private static final int QUARTERS_PER_DAY = 4;

    private final String yardName;
    private final LocalTime begins;
    private final Duration day;
    private final LocalDateTime stamp;

    /**
     * Calendars of a yard.
     *
     * @param yardName name of the yard, said in every calendar
     * @param begins when a working day begins
     * @param day how long it is
     * @param stamp when the calendar is written
     */
    public PublishedCalendar(String yardName, LocalTime begins, Duration day, LocalDateTime stamp) {
        this.yardName = yardName;
        this.begins = begins;
        this.day = day;
        this.stamp = stamp;
    }

    /**
     * Writes a calendar.
     *
     * @param title whose or of what
     * @param operations what it holds
     * @param boatName name of a boat by her id
     * @return the text in the iCalendar format
     */
    public String text(String title, List<Published> operations, UnaryOperator<String> boatName) {
        ICalendar calendar = new ICalendar();
        calendar.setProductId("-//Sternwright//Season//EN");
        calendar.setName(yardName + ": " + title);
        calendar.getTimezoneInfo().setGlobalFloatingTime(true);
        for (Published o : operations) {
            calendar.addEvent(event(o, boatName.apply(o.name().boatId())));
        }
        return Biweekly.write(calendar).go();
    }

    /** A published plan says on which day an operation ends, not at which hour: it ends with that working day at the latest. */
    private VEvent event(Published o, String boat) {
        VEvent event = new VEvent();
        event.setUid(UUID.nameUUIDFromBytes(o.name().toString().getBytes(StandardCharsets.UTF_8)) + "@sternwright");
        event.setDateTimeStamp(date(stamp));
        event.setSummary(boat + ": " + o.name().operation());
        event.setDateStart(
                date(o.date().atTime(begins.plus(day.multipliedBy(o.quarter()).dividedBy(QUARTERS_PER_DAY)))));
        event.setDateEnd(date(o.until().atTime(begins.plus(day))));
        String by = o.people().isEmpty() ? "" : "By " + o.people() + ".\n";
        event.setDescription(by + o.reason());
        if (!o.hoist().isEmpty()) {
            event.setLocation(o.hoist());
        }
        return event;
    }

    private static Date date(LocalDateTime at) {
        return Date.from(at.atZone(ZoneId.systemDefault()).toInstant());
    }
}
