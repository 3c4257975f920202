package sternwright.season.project;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads the text form in which the project scheduling instances of PSPLIB are published (R. Kolisch, A. Sprecher, 'PSPLIB - a project
 * scheduling problem library', Eur. J. Oper. Res. 96, 1997, 205-216): single-mode files with renewable resources.
 */
public final class PspText {
    private PspText() {}

    /**
     * The project in {@code text}.
     *
     * @throws IllegalArgumentException if a section is missing
     */
    public static Project parse(String text) {
        List<String> lines = text.lines().map(String::strip).toList();
        List<int[]> precedence = numbers(lines, "PRECEDENCE RELATIONS");
        List<int[]> requests = numbers(lines, "REQUESTS/DURATIONS");
        List<int[]> units = numbers(lines, "RESOURCEAVAILABILITIES");
        List<List<Integer>> after = new ArrayList<>();
        for (int i = 0; i < precedence.size(); i++) {
            after.add(new ArrayList<>());
        }
        for (int[] row : precedence) {
            for (int s = 3; s < row.length; s++) {
                after.get(row[s] - 1).add(row[0] - 1);
            }
        }
        List<Project.Activity> activities = new ArrayList<>();
        for (int i = 0; i < requests.size(); i++) {
            int[] row = requests.get(i);
            List<Integer> demands = new ArrayList<>();
            for (int r = 3; r < row.length; r++) {
                demands.add(row[r]);
            }
            activities.add(new Project.Activity(row[2], demands, after.get(i)));
        }
        return new Project(
                activities, java.util.Arrays.stream(units.get(0)).boxed().toList());
    }

    /** The rows of whole numbers in the section that begins with {@code title}. */
    private static List<int[]> numbers(List<String> lines, String title) {
        List<int[]> rows = new ArrayList<>();
        int at = 0;
        while (at < lines.size() && !lines.get(at).startsWith(title)) {
            at++;
        }
        for (at++; at < lines.size() && !lines.get(at).startsWith("***"); at++) {
            if (lines.get(at).matches("[0-9 \t]+")) {
                rows.add(java.util.Arrays.stream(lines.get(at).split("\\s+"))
                        .mapToInt(Integer::parseInt)
                        .toArray());
            }
        }
        if (rows.isEmpty()) {
            throw new IllegalArgumentException(
                    "no section '" + title + "' in the project file; expected a single-mode file "
                            + "with precedence relations, requests and resource availabilities");
        }
        return rows;
    }
}
