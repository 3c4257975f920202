package sternwright.season;

import java.util.List;

/**
 * One person of the workshop.
 *
 * @param name the person's name
 * @param skills indices of the skills the person has
 * @param awayDays working days the person is not there
 */
public record Technician(String name, List<Integer> skills, List<Integer> awayDays) {
    /** Copies the lists. */
    public Technician {
        skills = List.copyOf(skills);
        awayDays = List.copyOf(awayDays);
    }
}
