package sternwright.app.web.yard;

import java.io.IOException;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.Role;
import sternwright.app.desk.due.DueMove;
import sternwright.app.desk.due.DueWork;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.settings.SettingsText;
import sternwright.app.files.problem.BadInput;
import sternwright.app.web.access.ForManager;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.boat.Effect;
import sternwright.app.web.entry.Entered;
import sternwright.app.web.entry.KeepSettings;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.app.web.page.TypedDay;
import sternwright.yard.SeasonDates;
import sternwright.yard.WorkCalendar;
import sternwright.yard.Yard;

/** When the yard works: its week, its holidays, and the two halves of its year. */
@Controller
@ForOffice
public class CalendarPage {
    private static final String PATH = "/settings/calendar";
    private static final String TEMPLATE = "yard/calendar";
    private static final List<String> ENDS = List.of("layUpFrom", "layUpTo", "recommissionFrom", "recommissionTo");
    private static final Map<String, String> FIELDS = Map.of(
            "working-days", "monday",
            "holidays", "holidays",
            "lay-up-from", "layUpFrom",
            "lay-up-to", "layUpTo",
            "recommission-from", "recommissionFrom",
            "recommission-to", "recommissionTo");

    private final KeepSettings keep;
    private final OpenYard yard;

    CalendarPage(KeepSettings keep, OpenYard yard) {
        this.keep = keep;
        this.yard = yard;
    }

    /**
     * The page.
     *
     * @param form the fields
     * @param days a box for each day of the week
     * @param effect what the change would do, if it was asked
     * @param version the version it was read in
     * @param writes whether the reader changes it
     */
    public record View(Entered form, List<Field> days, Effect effect, String version, boolean writes) {
        /** Copies the list. */
        public View {
            days = List.copyOf(days);
        }
    }

    @GetMapping(PATH)
    ModelAndView show(Page page) throws IOException {
        SettingsText.Opened<Yard> opened = keep.open(SettingsText.YARD);
        Entered form = Entered.stands(page, "calendar", stands(opened.value()));
        return page.show(Section.SETTINGS, TEMPLATE, view(page, form, Effect.NONE, opened.version()));
    }

    private static View view(Page page, Entered form, Effect effect, String version) {
        List<Field> days = new ArrayList<>();
        for (DayOfWeek day : DayOfWeek.values()) {
            form.label(name(day), day.getDisplayName(TextStyle.FULL_STANDALONE, page.locale()));
            days.add(form.field(name(day)).as("check"));
        }
        return new View(form, days, effect, version, page.may(Role.MANAGER));
    }

    private static String name(DayOfWeek day) {
        return day.name().toLowerCase(Locale.ROOT);
    }

    private static Map<String, String> stands(Yard yard) {
        Map<String, String> values = new LinkedHashMap<>();
        yard.calendar().workingDays().forEach(d -> values.put(name(d), "true"));
        values.put(
                "holidays",
                yard.calendar().holidays().stream()
                        .sorted()
                        .map(LocalDate::toString)
                        .collect(Collectors.joining("\n")));
        SeasonDates s = yard.season();
        values.put("layUpFrom", text(s.layUpFrom()));
        values.put("layUpTo", text(s.layUpTo()));
        values.put("recommissionFrom", text(s.recommissionFrom()));
        values.put("recommissionTo", text(s.recommissionTo()));
        return values;
    }

    private static String text(MonthDay day) {
        return day.toString().substring(2);
    }

    @ForManager
    @PostMapping(PATH)
    ModelAndView change(Page page) throws IOException {
        Yard before = keep.open(SettingsText.YARD).value();
        Entered form = Entered.sent(page, "calendar");
        String version = form.text("version");
        view(page, form, Effect.NONE, version);
        Yard after = typed(page, form, before);
        if (!form.good()) {
            return page.wrong(Section.SETTINGS, TEMPLATE, view(page, form, Effect.NONE, version));
        }
        if (!form.text("look").isEmpty()) {
            return page.show(Section.SETTINGS, TEMPLATE, view(page, form, effect(page, after), version));
        }
        try {
            return keep.keep(
                    page,
                    new KeepSettings.Change<>(SettingsText.YARD, before, after, PATH, page.say("settings.calendar")));
        } catch (BadInput bad) {
            form.refused(bad, FIELDS);
            return page.wrong(Section.SETTINGS, TEMPLATE, view(page, form, Effect.NONE, version));
        }
    }

    private Effect effect(Page page, Yard after) {
        var files = SettingsText.with(yard.files(), after);
        return Effect.of(page, files, DueMove.between(yard.dues(), new DueWork(files).all(yard.today())));
    }

    private static Yard typed(Page page, Entered form, Yard y) {
        Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            if (form.ticked(name(day))) {
                days.add(day);
            }
        }
        if (days.isEmpty()) {
            form.wrong("monday", page.say("calendar.days.none"));
        }
        Set<LocalDate> holidays = new TreeSet<>();
        form.text("holidays")
                .lines()
                .map(String::strip)
                .filter(l -> !l.isEmpty())
                .forEach(line -> TypedDay.of(line)
                        .filter(d -> line.matches("\\d{4}-\\d{1,2}-\\d{1,2}"))
                        .ifPresentOrElse(
                                holidays::add,
                                () -> form.wrong("holidays", page.say("calendar.holidays.wrong", line))));
        List<MonthDay> ends = ENDS.stream().map(e -> monthDay(page, form, e)).toList();
        SeasonDates halves = new SeasonDates(ends.get(0), ends.get(1), ends.get(2), ends.get(3));
        if (form.good() && halves.overlap()) {
            form.wrong("recommissionFrom", page.say("calendar.overlap"));
        }
        return y.year(halves, new WorkCalendar(days, holidays));
    }

    private static MonthDay monthDay(Page page, Entered form, String name) {
        try {
            return MonthDay.parse("--" + form.needed(name));
        } catch (DateTimeException none) {
            form.wrong(name, page.say("calendar.day.wrong"));
            return MonthDay.of(1, 1);
        }
    }
}
