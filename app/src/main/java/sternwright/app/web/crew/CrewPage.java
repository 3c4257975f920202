package sternwright.app.web.crew;

import java.io.IOException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.Role;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.files.YardFiles;
import sternwright.app.web.access.ForManager;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.entry.Entered;
import sternwright.app.web.entry.KeepSettings;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Page;
import sternwright.yard.resource.Absence;
import sternwright.yard.resource.CrewMember;
import sternwright.yard.resource.Resources;

/** One engineer: what he or she can do, on which days, when away, and what more hours cost. */
@Controller
@ForOffice
public class CrewPage {
    private static final String PATH = "/settings/crew";
    private static final int BLANK_ROWS = 2;
    private static final Member<CrewMember> CREW = new Member<>(
            "crew",
            PATH,
            Resources::crew,
            r -> r::crew,
            CrewMember::id,
            Map.of(
                    "name", "name",
                    "skills", "otherSkills",
                    "working-days", "monday",
                    "overtime-hours-a-week", "overtime",
                    "overtime-per-hour", "overtimePrice"));

    private final KeepSettings keep;
    private final OpenYard yard;

    CrewPage(KeepSettings keep, OpenYard yard) {
        this.keep = keep;
        this.yard = yard;
    }

    @GetMapping(PATH + "/{id}")
    ModelAndView show(Page page, @PathVariable("id") String id) throws IOException {
        return CREW.show(page, keep, id, this::stands, this::view);
    }

    @ForManager
    @PostMapping(PATH + "/{id}")
    ModelAndView change(Page page, @PathVariable("id") String id) throws IOException {
        return CREW.change(page, keep, id, (form, memberId, before) -> typed(page, form, memberId), this::view);
    }

    /** What rules ask for, and what washing needs. */
    private Set<String> skills() {
        YardFiles files = yard.files();
        Set<String> skills = new TreeSet<>(Set.of("yard"));
        Stream.concat(Stream.of(files.generic()), files.programmes().stream())
                .flatMap(p -> p.rules().stream())
                .forEach(r -> skills.addAll(r.skills()));
        return skills;
    }

    private Map<String, String> stands(Optional<CrewMember> there) {
        Map<String, String> values = new LinkedHashMap<>();
        if (there.isEmpty()) {
            EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY).forEach(d -> values.put(word(d), "true"));
            values.put("overtime", "0");
            values.put("overtimePrice", "0");
        }
        there.ifPresent(m -> {
            values.put("name", m.name());
            m.workingDays().forEach(d -> values.put(word(d), "true"));
            Set<String> known = skills();
            m.skills().stream().filter(known::contains).forEach(s -> values.put("skill-" + s, "true"));
            values.put(
                    "otherSkills",
                    m.skills().stream().filter(s -> !known.contains(s)).sorted().collect(Collectors.joining(", ")));
            values.put("overtime", Entered.plain(m.overtimeHoursAWeek()));
            values.put("overtimePrice", Entered.plain(m.overtimePerHour()));
            for (int i = 0; i < m.away().size(); i++) {
                values.put("from-" + i, m.away().get(i).from().toString());
                values.put("to-" + i, m.away().get(i).to().toString());
                values.put("why-" + i, m.away().get(i).why());
            }
        });
        return values;
    }

    private static String word(DayOfWeek day) {
        return day.name().toLowerCase(Locale.ROOT);
    }

    private MemberView view(Page page, Entered form, String id, String version) {
        List<Field> skills = new ArrayList<>();
        for (String skill : skills()) {
            form.label("skill-" + skill, skill.replace('-', ' '));
            skills.add(form.field("skill-" + skill).as("check"));
        }
        skills.add(form.field("otherSkills").optional());
        List<Field> days = Arrays.stream(DayOfWeek.values())
                .map(d -> {
                    form.label(word(d), d.getDisplayName(TextStyle.FULL_STANDALONE, page.locale()));
                    return form.field(word(d)).as("check");
                })
                .toList();
        String currency = yard.files().yard().currency().getCurrencyCode();
        List<MemberView.Group> groups = new ArrayList<>(List.of(
                MemberView.Group.of("", "", List.of(form.field("name"))),
                MemberView.Group.of(page.say("crew.skills"), page.say("crew.skills.hint"), skills),
                MemberView.Group.of(page.say("crew.days"), "", days),
                away(page, form),
                MemberView.Group.of(
                        page.say("crew.overtime"),
                        page.say("crew.overtime.what"),
                        List.of(
                                form.field("overtime").as("number").in("h"),
                                form.field("overtimePrice").as("number").in(currency)))));
        if (!id.equals(Member.NEW)) {
            groups.add(MemberView.Group.of(
                    page.say("crew.leaves"), "", List.of(form.field("gone").as("check"))));
        }
        String title = id.equals(Member.NEW) ? page.say("crew.new") : page.say("crew.of", form.text("name"));
        return new MemberView(
                title, page.say("crew.lead"), PATH + "/" + id, groups, form, version, page.may(Role.MANAGER));
    }

    private static MemberView.Group away(Page page, Entered form) {
        List<List<Field>> rows = new ArrayList<>();
        int count = form.rows("from-", BLANK_ROWS);
        for (int i = 0; i < count; i++) {
            form.label("from-" + i, page.say("crew.away.from", i + 1));
            form.label("to-" + i, page.say("crew.away.to", i + 1));
            form.label("why-" + i, page.say("crew.away.why", i + 1));
            rows.add(List.of(
                    form.field("from-" + i).as("date").optional(),
                    form.field("to-" + i).as("date").optional(),
                    form.field("why-" + i).optional()));
        }
        return new MemberView.Group(page.say("crew.away"), page.say("crew.away.hint"), rows);
    }

    private CrewMember typed(Page page, Entered form, String id) {
        Set<String> skills =
                skills().stream().filter(s -> form.ticked("skill-" + s)).collect(Collectors.toCollection(TreeSet::new));
        Arrays.stream(form.text("otherSkills").split(","))
                .map(s -> s.strip().toLowerCase(Locale.ROOT).replace(' ', '-'))
                .filter(s -> !s.isEmpty())
                .forEach(skills::add);
        Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        Arrays.stream(DayOfWeek.values()).filter(d -> form.ticked(word(d))).forEach(days::add);
        if (days.isEmpty()) {
            form.wrong("monday", page.say("crew.days.none"));
        }
        return new CrewMember(
                id,
                form.text("name"),
                skills,
                days,
                absences(page, form),
                form.figure("overtime"),
                form.figure("overtimePrice"));
    }

    /** A row left empty is no absence; one day away needs its first day alone. */
    private static List<Absence> absences(Page page, Entered form) {
        List<Absence> away = new ArrayList<>();
        for (int i = 0; i < form.rows("from-", 0); i++) {
            LocalDate from = form.day("from-" + i);
            LocalDate to = form.text("to-" + i).isEmpty() ? from : form.day("to-" + i);
            if (from == null && !(form.text("to-" + i) + form.text("why-" + i)).isEmpty()) {
                form.wrong("from-" + i, page.say("field.NotBlank"));
            } else if (from != null && to != null && to.isBefore(from)) {
                form.wrong("to-" + i, page.say("crew.away.before"));
            } else if (from != null && to != null) {
                away.add(new Absence(from, to, form.text("why-" + i)));
            }
        }
        return away;
    }
}
