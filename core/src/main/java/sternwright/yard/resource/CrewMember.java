package sternwright.yard.resource;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;

/**
 * A person who works on boats.
 *
 * @param id short name
 * @param name the person's name
 * @param skills what the person can do, in the words of the programme's rules
 * @param workingDays days of the week on which the person works
 * @param away holidays and other absences
 * @param overtimeHoursAWeek most hours beyond the usual in one week
 * @param overtimePerHour what such an hour costs the yard beyond the usual wage, in its currency
 */
public record CrewMember(
        String id,
        String name,
        Set<String> skills,
        Set<DayOfWeek> workingDays,
        List<Absence> away,
        double overtimeHoursAWeek,
        double overtimePerHour) {
    /** Copies the collections. */
    public CrewMember {
        skills = Set.copyOf(skills);
        workingDays = Set.copyOf(workingDays);
        away = List.copyOf(away);
    }

    /**
     * Whether the person works on a day on which the yard works.
     *
     * @param day a working day of the yard
     * @return true if it is the person's working day and no absence covers it
     */
    public boolean there(LocalDate day) {
        return workingDays.contains(day.getDayOfWeek()) && away.stream().noneMatch(a -> a.covers(day));
    }

    /**
     * The same person away on further days.
     *
     * @param absence the days
     * @return a new record
     */
    public CrewMember away(Absence absence) {
        List<Absence> all = new java.util.ArrayList<>(away);
        all.add(absence);
        return new CrewMember(id, name, skills, workingDays, all, overtimeHoursAWeek, overtimePerHour);
    }
}
