package sternwright.app.web.crew;

import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.Role;
import sternwright.app.desk.settings.SettingsText;
import sternwright.app.files.problem.BadInput;
import sternwright.app.web.access.ForManager;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.entry.Entered;
import sternwright.app.web.entry.KeepSettings;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.yard.resource.Resources;
import sternwright.yard.resource.StayTimes;

/** The yard's working day and the steps of a stay ashore, as a season plans them. */
@Controller
@ForOffice
public class TimesPage {
    private static final String PATH = "/settings/times";
    private static final String TEMPLATE = "crew/member";
    private static final List<String> DAYS =
            List.of("washWithin", "beforeLaunch", "shortStay", "launchEarly", "settling", "trialWithin");
    private static final Map<String, String> FIELDS = Map.of(
            "begins", "begins",
            "hours-a-day", "hoursADay",
            "wash-and-inspect-minutes", "wash",
            "wash-skills", "washSkills",
            "wash-within-days", "washWithin",
            "before-launch-days", "beforeLaunch",
            "short-stay-days", "shortStay",
            "launch-early-days", "launchEarly",
            "settling-days", "settling",
            "trial-within-days", "trialWithin");

    private final KeepSettings keep;

    TimesPage(KeepSettings keep) {
        this.keep = keep;
    }

    @GetMapping(PATH)
    ModelAndView show(Page page) throws IOException {
        SettingsText.Opened<Resources> opened = keep.open(SettingsText.RESOURCES);
        Entered form = Entered.stands(page, "times", stands(opened.value().times()));
        return page.show(Section.SETTINGS, TEMPLATE, view(page, form, opened.version()));
    }

    private static Map<String, String> stands(StayTimes t) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put("begins", t.begins().toString());
        values.put("hoursADay", Entered.plain(t.hoursADay()));
        values.put("wash", Entered.plain(t.washMinutes()));
        values.put("washSkills", t.washSkills().stream().sorted().collect(Collectors.joining(", ")));
        values.put("washWithin", Entered.plain(t.washWithinDays()));
        values.put("beforeLaunch", Entered.plain(t.beforeLaunchDays()));
        values.put("shortStay", Entered.plain(t.shortStayDays()));
        values.put("launchEarly", Entered.plain(t.launchEarlyDays()));
        values.put("settling", Entered.plain(t.settlingDays()));
        values.put("trialWithin", Entered.plain(t.trialWithinDays()));
        return values;
    }

    private static MemberView view(Page page, Entered form, String version) {
        List<Field> days = DAYS.stream()
                .map(d -> form.field(d).as("number").in(page.say("times.unit.days")))
                .toList();
        List<MemberView.Group> groups = List.of(
                MemberView.Group.of(
                        page.say("times.day"),
                        "",
                        List.of(
                                form.field("begins"),
                                form.field("hoursADay").as("number").in("h"))),
                MemberView.Group.of(
                        page.say("times.wash"),
                        "",
                        List.of(
                                form.field("wash").as("number").in("min"),
                                form.field("washSkills").optional())),
                MemberView.Group.of(page.say("times.stay"), page.say("times.stay.what"), days));
        return new MemberView(
                page.say("times.title"), page.say("times.lead"), PATH, groups, form, version, page.may(Role.MANAGER));
    }

    @ForManager
    @PostMapping(PATH)
    ModelAndView change(Page page) throws IOException {
        Resources r = keep.open(SettingsText.RESOURCES).value();
        Entered form = Entered.sent(page, "times");
        StayTimes times = typed(page, form);
        if (form.good()) {
            try {
                Resources after = new Resources(r.hoists(), r.standing(), r.crew(), times, r.prices());
                return keep.keep(
                        page,
                        new KeepSettings.Change<>(
                                SettingsText.RESOURCES, r, after, "/settings/resources", page.say("times.title")));
            } catch (BadInput bad) {
                form.refused(bad, FIELDS);
            }
        }
        return page.wrong(Section.SETTINGS, TEMPLATE, view(page, form, form.text("version")));
    }

    private static StayTimes typed(Page page, Entered form) {
        Set<String> skills = Arrays.stream(form.text("washSkills").split(","))
                .map(s -> s.strip().toLowerCase(Locale.ROOT).replace(' ', '-'))
                .filter(s -> !s.isEmpty())
                .collect(Collectors.toSet());
        return new StayTimes(
                begins(page, form),
                form.figure("hoursADay"),
                form.figure("wash"),
                skills,
                form.count("washWithin"),
                form.count("beforeLaunch"),
                form.count("shortStay"),
                form.count("launchEarly"),
                form.count("settling"),
                form.count("trialWithin"));
    }

    private static LocalTime begins(Page page, Entered form) {
        try {
            return LocalTime.parse(form.needed("begins"));
        } catch (DateTimeException none) {
            form.wrong("begins", page.say("times.begins.wrong"));
            return StayTimes.USUAL.begins();
        }
    }
}
