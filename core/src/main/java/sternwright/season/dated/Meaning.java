package sternwright.season.dated;

import java.util.List;
import java.util.Set;
import sternwright.visit.planned.PlannedWork;

/**
 * What one operation of the lean season is.
 *
 * @param boatId the boat
 * @param boatName as painted on the stern
 * @param visit name of the visit, unique for the boat
 * @param operation name of the operation, unique in the visit
 * @param step what it is in the life of the visit
 * @param works works done in it, empty for the yard's own steps
 * @param minutes working minutes
 * @param skills what the people must be able to do
 * @param dueWords why it should be done by its date, as a phrase; empty if it has none
 */
public record Meaning(
        String boatId,
        String boatName,
        String visit,
        String operation,
        Step step,
        List<PlannedWork> works,
        double minutes,
        Set<String> skills,
        String dueWords) {
    /** Copies the collections. */
    public Meaning {
        works = List.copyOf(works);
        skills = Set.copyOf(skills);
    }

    /** The same with a further word on its date. */
    public Meaning dueWith(String words) {
        String all = dueWords.isEmpty() ? words : dueWords + ", " + words;
        return dueWords.contains(words)
                ? this
                : new Meaning(boatId, boatName, visit, operation, step, works, minutes, skills, all);
    }

    /** The operation's name in the whole season. */
    public OperationName name() {
        return new OperationName(boatId, visit, operation);
    }
}
