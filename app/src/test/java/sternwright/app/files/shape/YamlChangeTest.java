package sternwright.app.files.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import sternwright.app.files.kind.ProgrammeShape;
import sternwright.app.files.kind.ResourcesShape;
import sternwright.app.files.problem.Problem;
import sternwright.finding.Source;
import sternwright.finding.Standing;
import sternwright.service.Overriding;
import sternwright.service.Programme;
import sternwright.service.Scope;
import sternwright.yard.resource.Absence;
import sternwright.yard.resource.CrewMember;
import sternwright.yard.resource.Resources;

/** A change of settings touches the lines it means and no other. */
class YamlChangeTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final String OWN = """
            # our own figures, agreed in spring
            id: own
            name: "Our own figures"   # as on the wall
            overridings:
              # the whole yard
              - {rule: change-engine-oil, hours: 150}    # says the boss
              - rule: change-engine-oil
                scope: engine-model        # K-40
                target: K-40
                hours: 250
                source: {title: Manual K-40, place: section 7, standing: maker}

              # one boat
              - {rule: change-engine-oil, scope: boat, target: tern, months: 6}
            # the end
            """;
    private static final String YARD = """
            crew:
              - id: first        # since 2019
                name: First
                skills:
                  - mechanical   # papers in the drawer
                  - drive
              # the apprentice
              - id: second
                name: Second
                skills: [yard]
                overtime-hours-a-week: 4   # not on Fridays
            """;

    private static <T> T read(String text, Shape<T> shape) {
        List<Problem> problems = new ArrayList<>();
        Yaml.Read<T> read = Yaml.read(text, shape, new Reading("a.yaml", TODAY), problems);
        assertEquals(List.of(), problems, text);
        return java.util.Objects.requireNonNull(read).value();
    }

    private static Programme with(Programme p, List<Overriding> overridings) {
        return new Programme(p.id(), p.name(), p.onlyIfNamed(), p.rules(), overridings, p.cautions());
    }

    private static Overriding hours(Overriding o, double hours) {
        return new Overriding(
                o.ruleId(),
                o.scope(),
                o.target(),
                o.months(),
                hours,
                o.lifeMonths(),
                o.nth(),
                o.drop(),
                o.half(),
                o.place(),
                o.minutes(),
                o.applies(),
                o.source());
    }

    private static String changed(String text, Programme after) {
        return YamlChange.of(text, ProgrammeShape.PROGRAMME, after).orElseThrow();
    }

    @Test
    void aFigureChangesInItsPlace() {
        Programme before = read(OWN, ProgrammeShape.PROGRAMME);
        List<Overriding> list = new ArrayList<>(before.overridings());
        list.set(0, hours(list.get(0), 120));
        list.set(1, hours(list.get(1), 300));
        String after = changed(OWN, with(before, list));
        assertEquals(OWN.replace("hours: 150", "hours: 120").replace("hours: 250", "hours: 300"), after);
        assertEquals(OWN, changed(after, before), "and back again, letter by letter");
        assertEquals(OWN, changed(OWN, before));
    }

    @Test
    void aMemberIsTakenOutAndPutIn() {
        Programme before = read(OWN, ProgrammeShape.PROGRAMME);
        List<Overriding> list = new ArrayList<>(before.overridings());
        list.remove(1);
        String without = changed(OWN, with(before, list));
        assertEquals(
                OWN.lines()
                        .filter(l ->
                                !l.contains("K-40") && !l.contains("250") && !l.equals("  - rule: change-engine-oil"))
                        .collect(Collectors.joining("\n", "", "\n")),
                without);
        Overriding part = new Overriding(
                "renew-diaphragm-seal",
                Scope.PART,
                "tern/main/seal",
                null,
                null,
                60,
                null,
                Set.of(),
                null,
                null,
                null,
                true,
                new Source("Manual: part 3", "#7", Standing.MAKER));
        list.add(part);
        String more = changed(without, with(before, list));
        assertTrue(more.startsWith(without.replace("# the end\n", "")), more);
        assertTrue(more.endsWith("# the end\n"), more);
        assertEquals(list, read(more, ProgrammeShape.PROGRAMME).overridings());
        String none = changed(more, with(before, List.of()));
        assertTrue(none.contains("# our own figures, agreed in spring") && none.contains("# the end"), none);
        assertEquals(List.of(), read(none, ProgrammeShape.PROGRAMME).overridings());
        assertEquals(
                list,
                read(changed(none, with(before, list)), ProgrammeShape.PROGRAMME)
                        .overridings());
    }

    @Test
    void peopleKeepTheCommentsBesideThem() {
        Resources before = read(YARD, ResourcesShape.RESOURCES);
        CrewMember first = before.crew().get(0);
        CrewMember second = before.crew().get(1);
        CrewMember more = new CrewMember(
                first.id(),
                "Erste, die",
                Set.of("mechanical", "electrical"),
                Set.of(DayOfWeek.MONDAY),
                List.of(new Absence(TODAY, TODAY.plusDays(3), "course")),
                0,
                0);
        CrewMember less =
                new CrewMember(second.id(), second.name(), second.skills(), second.workingDays(), List.of(), 0, 0);
        CrewMember third = new CrewMember("third", "Third", Set.of(), first.workingDays(), List.of(), 0, 0);
        String after = YamlChange.of(YARD, ResourcesShape.RESOURCES, before.crew(List.of(third, more, less)))
                .orElseThrow();
        assertEquals(
                List.of(third, more, less),
                read(after, ResourcesShape.RESOURCES).crew());
        for (String comment :
                List.of("# since 2019", "# papers in the drawer", "# the apprentice", "# not on Fridays")) {
            assertTrue(after.contains(comment), after);
        }
        String crlf = YARD.replace("\n", "\r\n");
        String changed = YamlChange.of(crlf, ResourcesShape.RESOURCES, before.crew(List.of(second)))
                .orElseThrow();
        assertEquals(
                0, changed.replace("\r\n", "").chars().filter(c -> c == '\n').count());
        assertEquals(List.of(second), read(changed, ResourcesShape.RESOURCES).crew());
    }

    @Test
    void whatCannotBeIsWrittenForItsReaderToJudgeAndAnAnchorIsLeftToAPerson() {
        Programme before = read(OWN, ProgrammeShape.PROGRAMME);
        List<Overriding> list = List.of(hours(before.overridings().get(0), -3));
        assertTrue(changed(OWN, with(before, list)).contains("hours: -3"));
        String anchored = "id: own\nname: Own\noverridings:\n  - &a {rule: b, hours: 2}\n  - *a\n";
        Programme two = read(anchored, ProgrammeShape.PROGRAMME);
        List<Overriding> one =
                List.of(hours(two.overridings().get(0), 5), two.overridings().get(1));
        assertTrue(YamlChange.of(anchored, ProgrammeShape.PROGRAMME, with(two, one))
                .isEmpty());
    }
}
