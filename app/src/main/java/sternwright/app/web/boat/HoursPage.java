package sternwright.app.web.boat;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.Role;
import sternwright.app.account.SentOnce;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.recording.ReadMeter;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.paper.Words;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.access.ForCrew;
import sternwright.app.web.page.Field.Choice;
import sternwright.app.web.page.Form;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.app.web.page.TypedNumber;
import sternwright.boat.Installation;
import sternwright.history.BoatHistory;
import sternwright.history.MeterReading;
import sternwright.history.RunningHours;

/** Engine hours: what the meters showed, and one field for what they show now. */
@Controller
@ForAll
public class HoursPage {
    private final OpenYard yard;
    private final AuditTrail audit;
    private final SentOnce once;

    HoursPage(OpenYard yard, AuditTrail audit, SentOnce once) {
        this.yard = yard;
        this.audit = audit;
        this.once = once;
    }

    /**
     * A reading as typed.
     *
     * @param engine which engine
     * @param hours what the meter shows; of a replaced meter the last figure of the old one
     * @param day when, empty for today
     * @param newMeter where a new meter begins, empty if it was not replaced
     * @param asRead true if a reading out of line is to be kept
     */
    public record Typed(
            @Nullable String engine,
            @Nullable String hours,
            @Nullable String day,
            @Nullable String newMeter,
            @Nullable Boolean asRead) {}

    /**
     * One reading of a meter.
     *
     * @param day when
     * @param engine of which engine
     * @param hours what it showed
     * @param renewed what the new meter began at, empty if it was not replaced
     * @param who who read it
     */
    public record Line(String day, String engine, String hours, String renewed, String who) {}

    /**
     * The page.
     *
     * @param head head of the boat's pages
     * @param form the fields
     * @param engines engines to choose from, none if there is only one
     * @param only the only engine, empty if there are several
     * @param odd whether a reading out of line may be kept as read
     * @param lines what was read, the newest first
     * @param remarks what does not fit
     * @param writes whether the reader may write
     */
    public record View(
            BoatSheet.Head head,
            Form form,
            List<Choice> engines,
            String only,
            boolean odd,
            List<Line> lines,
            List<String> remarks,
            boolean writes) {}

    @GetMapping("/boats/{id}/hours")
    ModelAndView show(Page page, @PathVariable("id") String id) {
        OneBoat one = OneBoat.of(yard.files(), id);
        Typed blank = new Typed("", "", yard.today().toString(), "", false);
        return page.show(Section.BOATS, "boat/hours", view(page, one, Form.of(page, "hours", blank), false));
    }

    @ForCrew
    @PostMapping("/boats/{id}/hours")
    ModelAndView write(
            Page page,
            @PathVariable("id") String id,
            @ModelAttribute("typed") Typed typed,
            BindingResult errors,
            @RequestParam(name = "once", defaultValue = "") String key)
            throws IOException {
        OneBoat one = OneBoat.of(yard.files(), id);
        Optional<MeterReading> reading = errors.hasErrors() ? Optional.empty() : reading(page, one, typed, errors);
        if (reading.isEmpty()) {
            return wrong(page, one, errors, false);
        }
        MeterReading read = reading.get();
        try {
            Optional<Integer> moved = once.take(key, page.whoId(), () -> {
                var recorded = ReadMeter.read(
                        yard.shelf(page.who()),
                        id,
                        read,
                        yard.today(),
                        yard.today(),
                        Boolean.TRUE.equals(typed.asRead()));
                yard.changed();
                audit.note("hours.read", id, read.installationId() + " " + read.hours() + " h");
                return moved(recorded.before(), recorded.after());
            });
            String path = "/boats/" + id;
            return moved.isEmpty()
                    ? page.go(path, "hours.again")
                    : page.go(path, "hours.done", page.figures().quantity(read.hours(), "h"), moved(page, moved.get()));
        } catch (BadInput bad) {
            for (Problem problem : bad.problems()) {
                errors.rejectValue(
                        "hours",
                        "odd",
                        new Object[] {
                            Words.sentence(page.figures()
                                    .dated(problem.found().replace(" for " + read.installationId() + ",", ",")))
                        },
                        null);
            }
            return wrong(page, one, errors, true);
        }
    }

    private static String moved(Page page, int works) {
        return page.say("hours.moved", works);
    }

    private static int moved(List<sternwright.due.Due> before, List<sternwright.due.Due> after) {
        int moved = 0;
        for (var due : after) {
            boolean same = before.stream()
                    .anyMatch(b -> b.part().equals(due.part())
                            && b.rule().id().equals(due.rule().id())
                            && b.state() == due.state()
                            && b.dueOn().equals(due.dueOn()));
            moved += same ? 0 : 1;
        }
        return moved;
    }

    private Optional<MeterReading> reading(Page page, OneBoat one, Typed typed, BindingResult errors) {
        List<Installation> engines = one.boat().installations();
        String engine = text(typed.engine());
        if (engine.isEmpty() && engines.size() == 1) {
            engine = engines.get(0).id();
        }
        if (one.boat().installation(engine).isEmpty()) {
            errors.rejectValue("engine", "NotBlank");
        }
        OptionalDouble hours = figure(typed.hours(), "hours", errors);
        if (text(typed.hours()).isEmpty()) {
            errors.rejectValue("hours", "NotBlank");
        }
        OptionalDouble fresh = figure(typed.newMeter(), "newMeter", errors);
        LocalDate day = day(typed, errors);
        if (errors.hasErrors()) {
            return Optional.empty();
        }
        Double begins = fresh.isPresent() ? fresh.getAsDouble() : null;
        return Optional.of(new MeterReading(day, engine, hours.orElseThrow(), begins, page.who()));
    }

    private static OptionalDouble figure(@Nullable String typed, String field, BindingResult errors) {
        String text = text(typed).toLowerCase(Locale.ROOT).replaceAll("\\s*h$", "");
        OptionalDouble number = TypedNumber.of(text);
        if (!text.isEmpty() && number.isEmpty()) {
            errors.rejectValue(field, "number");
        } else if (number.isPresent() && number.getAsDouble() < 0) {
            errors.rejectValue(field, "PositiveOrZero");
        }
        return number;
    }

    private LocalDate day(Typed typed, BindingResult errors) {
        String text = text(typed.day());
        LocalDate day = yard.today();
        if (!text.isEmpty()) {
            try {
                day = LocalDate.parse(text);
            } catch (java.time.format.DateTimeParseException none) {
                errors.rejectValue("day", "day");
            }
        }
        if (day.isAfter(yard.today())) {
            errors.rejectValue("day", "PastOrPresent");
        }
        return day;
    }

    private static String text(@Nullable String typed) {
        return typed == null ? "" : typed.strip();
    }

    private ModelAndView wrong(Page page, OneBoat one, BindingResult errors, boolean odd) {
        return page.wrong(Section.BOATS, "boat/hours", view(page, one, Form.typed(page, "hours", errors), odd));
    }

    private View view(Page page, OneBoat one, Form form, boolean odd) {
        List<Installation> engines = one.boat().installations();
        BoatHistory history = one.files().history(one.boat().id());
        List<Line> lines = new ArrayList<>();
        history.meter().forEach(r -> lines.add(0, line(page, one, r)));
        List<String> remarks = engines.stream()
                .flatMap(i -> RunningHours.of(history.meter().stream()
                                .filter(r -> r.installationId().equals(i.id()))
                                .toList())
                        .remarks()
                        .stream())
                .map(r -> r.text())
                .toList();
        return new View(
                one.head(page, "hours"),
                form,
                engines.size() == 1
                        ? List.of()
                        : engines.stream()
                                .map(i -> new Choice(i.id(), one.name(page, i)))
                                .toList(),
                engines.size() == 1 ? engines.get(0).id() : "",
                odd,
                lines,
                remarks,
                page.may(Role.MANAGER, Role.OFFICE, Role.TECHNICIAN));
    }

    private static Line line(Page page, OneBoat one, MeterReading r) {
        Double fresh = r.newMeterHours();
        return new Line(
                page.figures().shortDate(r.date()),
                one.boat()
                        .installation(r.installationId())
                        .map(i -> one.name(page, i))
                        .orElse(r.installationId()),
                page.figures().quantity(r.hours(), "h"),
                fresh == null ? "" : page.figures().quantity(fresh, "h"),
                r.who());
    }
}
