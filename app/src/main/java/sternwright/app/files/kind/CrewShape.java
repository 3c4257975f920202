package sternwright.app.files.kind;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Many;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Shapes;
import sternwright.yard.resource.Absence;
import sternwright.yard.resource.CrewMember;

/** People who work on boats, as the resources' file says them. */
final class CrewShape {
    private static final Set<DayOfWeek> MONDAY_TO_FRIDAY = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);

    private static final Field<Absence, LocalDate> FROM =
            Field.required("from", Shapes.date(), Absence::from, "first day");
    private static final Field<Absence, LocalDate> TO = Field.required("to", Shapes.date(), Absence::to, "last day");
    private static final Field<Absence, String> WHY =
            Field.or("why", Shapes.anyText(), "", Absence::why, "holiday, course, illness");
    private static final Block<Absence> ABSENCE = Block.of(
            "an absence",
            "days on which a person is not there",
            v -> new Absence(v.get(FROM), v.get(TO), v.get(WHY)),
            FROM,
            TO,
            WHY);

    private static final Field<CrewMember, String> ID = Field.required("id", Shapes.id(), CrewMember::id, "short name");
    private static final Field<CrewMember, String> NAME =
            Field.required("name", Shapes.text(), CrewMember::name, "the person's name");
    private static final Field<CrewMember, Set<String>> SKILLS = Field.required(
            "skills",
            Many.set(Shapes.id()),
            CrewMember::skills,
            "what the person can do, in the words of the programme's rules, and what wash and inspect needs");
    private static final Field<CrewMember, Set<DayOfWeek>> DAYS = Field.or(
            "working-days",
            Many.set(Shapes.oneOf(DayOfWeek.class)).between(1, 7),
            MONDAY_TO_FRIDAY,
            CrewMember::workingDays,
            "days of the week on which the person works");
    private static final Field<CrewMember, List<Absence>> AWAY =
            Field.or("away", Many.list(ABSENCE), List.of(), CrewMember::away, "holidays and other absences");
    private static final Field<CrewMember, Double> OVERTIME = Field.or(
            "overtime-hours-a-week",
            Numbers.notNegative().atMost(60),
            0.0,
            CrewMember::overtimeHoursAWeek,
            "most hours beyond the usual in one week");
    private static final Field<CrewMember, Double> OVERTIME_PRICE = Field.or(
            "overtime-per-hour",
            Numbers.notNegative(),
            0.0,
            CrewMember::overtimePerHour,
            "what such an hour costs the yard beyond the usual wage");

    static final Block<CrewMember> MEMBER = Block.of(
            "one of the crew",
            "a person who works on boats",
            v -> new CrewMember(
                    v.get(ID),
                    v.get(NAME),
                    v.get(SKILLS),
                    v.get(DAYS),
                    v.get(AWAY),
                    v.get(OVERTIME),
                    v.get(OVERTIME_PRICE)),
            ID,
            NAME,
            SKILLS,
            DAYS,
            AWAY,
            OVERTIME,
            OVERTIME_PRICE);

    private CrewShape() {}
}
