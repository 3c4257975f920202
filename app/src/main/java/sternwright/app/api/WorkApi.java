package sternwright.app.api;

import jakarta.annotation.security.RolesAllowed;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import sternwright.app.account.AuditTrail;
import sternwright.app.desk.recording.ReadMeter;
import sternwright.app.desk.recording.RecordWork;
import sternwright.app.desk.recording.StrikeEntry;
import sternwright.app.desk.recording.TypedWork;
import sternwright.app.files.problem.BadInput;
import sternwright.history.MeterReading;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.history.Strike;
import sternwright.history.StruckEntry;

/** Work that was done, hours that were read, and wrong lines that are struck. */
@RestController
@RolesAllowed({"MANAGER", "OFFICE", "TECHNICIAN"})
public class WorkApi {
    private final Asked asked;
    private final AuditTrail audit;

    WorkApi(Asked asked, AuditTrail audit) {
        this.asked = asked;
        this.audit = audit;
    }

    /**
     * An hour meter as it was read.
     *
     * @param installation the engine
     * @param hours what it showed, h
     * @param newMeter what the new meter showed when it was fitted, h; null if it was not replaced
     * @param date the day, today if missing
     * @param asRead true to keep a reading that is out of line
     */
    public record Hours(
            @Nullable String installation,
            @Nullable Double hours,
            @Nullable Double newMeter,
            @Nullable LocalDate date,
            @Nullable Boolean asRead) {}

    /**
     * Work as it was done.
     *
     * @param works ids of rules
     * @param part installation/part, where the rule is not for one part alone
     * @param date the day, today if missing
     * @param hours what the meter showed, h
     * @param readings as name=value, with a unit where it is not the one asked
     * @param note free text
     * @param seen true if it was only looked at or measured
     * @param refusedBy who signed that it is not to be done
     * @param happened what happened, such as grounding
     * @param asRead true to keep a meter reading that is out of line
     */
    public record Work(
            @Nullable List<String> works,
            @Nullable String part,
            @Nullable LocalDate date,
            @Nullable Double hours,
            @Nullable List<String> readings,
            @Nullable String note,
            @Nullable Boolean seen,
            @Nullable String refusedBy,
            @Nullable String happened,
            @Nullable Boolean asRead) {}

    /**
     * What was written.
     *
     * @param entries lines of the history, readings judged
     * @param meter meter readings
     * @param remarks what a person should know
     */
    public record Written(List<ServiceEntry> entries, List<MeterReading> meter, List<String> remarks) {
        /** Copies the lists. */
        public Written {
            entries = List.copyOf(entries);
            meter = List.copyOf(meter);
            remarks = List.copyOf(remarks);
        }
    }

    /** Writes an hour meter down. */
    @PostMapping("/api/boats/{id}/hours")
    @ResponseStatus(HttpStatus.CREATED)
    Written hours(@PathVariable("id") String id, @RequestBody Hours said) throws IOException {
        String boat = asked.boat(id).id();
        if (said.installation() == null || said.hours() == null) {
            throw BadInput.of("body", "installation or hours is missing", "both", "");
        }
        LocalDate day = day(said.date());
        MeterReading reading = new MeterReading(
                day,
                Objects.requireNonNull(said.installation()),
                Objects.requireNonNull(said.hours()),
                said.newMeter(),
                Asked.person().fullName());
        LocalDate today = asked.yard().today();
        return written(
                id,
                "hours.read",
                ReadMeter.read(asked.shelf(), boat, reading, today, today, Boolean.TRUE.equals(said.asRead())));
    }

    /** Writes work down. */
    @PostMapping("/api/boats/{id}/works")
    @ResponseStatus(HttpStatus.CREATED)
    Written works(@PathVariable("id") String id, @RequestBody Work said) throws IOException {
        String boat = asked.boat(id).id();
        TypedWork.Typed typed = new TypedWork.Typed(
                Objects.requireNonNullElse(said.works(), List.of()),
                said.part(),
                day(said.date()),
                said.hours(),
                Asked.person().fullName(),
                Objects.requireNonNullElse(said.readings(), List.of()),
                Objects.requireNonNullElse(said.note(), ""),
                Boolean.TRUE.equals(said.seen()),
                said.refusedBy(),
                said.happened());
        LocalDate today = asked.yard().today();
        RecordWork.Said work = TypedWork.said(asked.shelf(), boat, typed, today);
        return written(
                id,
                "work.recorded",
                RecordWork.record(asked.shelf(), boat, work, today, today, Boolean.TRUE.equals(said.asRead())));
    }

    /**
     * A line of history to strike.
     *
     * @param rule id of its rule, or what happened
     * @param date its day
     * @param part installation/part, where several lines could be meant
     * @param outcome DONE, SEEN, REFUSED or HAPPENED, where several lines could be meant
     * @param hours its engine hours, where several lines could be meant
     * @param why what is wrong with it
     */
    public record Wrong(
            @Nullable String rule,
            @Nullable LocalDate date,
            @Nullable String part,
            @Nullable Outcome outcome,
            @Nullable Double hours,
            @Nullable String why) {
        boolean means(ServiceEntry e) {
            return e.ruleId().equals(rule)
                    && e.date().equals(date)
                    && (part == null || e.part().toString().equals(part))
                    && (outcome == null || e.outcome() == outcome)
                    && (hours == null || hours.equals(e.hours()));
        }
    }

    /** Strikes a wrong line of the history; it stays to be seen and counts no more. */
    @PostMapping("/api/boats/{id}/history/strike")
    @RolesAllowed({"MANAGER", "OFFICE"})
    StruckEntry strike(@PathVariable("id") String id, @RequestBody Wrong said) throws IOException {
        String boat = asked.boat(id).id();
        String why = Objects.requireNonNullElse(said.why(), "");
        if (said.rule() == null || said.date() == null || why.isBlank()) {
            throw BadInput.of("body", "rule, date or why is missing", "all three", "");
        }
        LocalDate today = asked.yard().today();
        Strike strike = new Strike(today, Asked.person().fullName(), why.strip());
        StruckEntry struck = StrikeEntry.strike(asked.shelf(), boat, said::means, strike, today)
                .struck();
        asked.yard().changed();
        ServiceEntry e = struck.entry();
        audit.note("history.struck", id, e.date() + " " + e.part() + " " + e.ruleId() + ": " + strike.why());
        return struck;
    }

    private Written written(String id, String deed, RecordWork.Recorded recorded) {
        asked.yard().changed();
        audit.note(deed, id, "");
        return new Written(recorded.entries(), recorded.meter(), recorded.remarks());
    }

    private LocalDate day(@Nullable LocalDate said) {
        LocalDate today = asked.yard().today();
        LocalDate day = Objects.requireNonNullElse(said, today);
        if (day.isAfter(today)) {
            throw BadInput.of("date", day + " lies in the future", "a date up to " + today, "");
        }
        return day;
    }
}
