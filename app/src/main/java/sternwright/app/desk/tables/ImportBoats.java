package sternwright.app.desk.tables;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sternwright.app.desk.recording.EntrySense;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.Shipped;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.sheet.BoatsSheet;
import sternwright.app.files.sheet.BoatsSheet.Line;
import sternwright.app.files.sheet.Sheet;
import sternwright.app.files.sheet.TableFile;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.Writing;
import sternwright.app.files.template.BoatTemplate;
import sternwright.app.files.template.BoatText;
import sternwright.boat.Boat;

/** Takes in a register kept in a spreadsheet: all of it, or, if any row is wrong, nothing. */
public final class ImportBoats {
    /**
     * What came of it.
     *
     * @param added boats that are new
     * @param changed boats whose file was written anew
     * @param same boats that were there already and say the same
     */
    public record Imported(int added, int changed, int same) {}

    private ImportBoats() {}

    /**
     * Takes in a table of boats. A new boat gets the parts of its arrangement's template; a boat that is there keeps hers.
     *
     * @param shelf where the yard's texts are kept
     * @param table a row for each installation
     * @param update true if boats that are there may be changed; their files lose their comments then
     * @param latest the last day on which anything can have happened
     * @return how many came in
     * @throws BadInput with every row that is wrong; nothing was written then
     * @throws IOException if the disk refuses
     */
    public static Imported take(Shelf shelf, TableFile table, boolean update, LocalDate latest) throws IOException {
        FolderLayout.of(shelf);
        List<Problem> problems = new ArrayList<>();
        try (Writing writing = shelf.write("boats taken in from " + table.name())) {
            YardFiles files = YardFolder.all(shelf, latest);
            String name = table.name();
            Map<String, List<Sheet.Row<Line>>> byBoat = new LinkedHashMap<>();
            table.read(BoatsSheet.SHEET, latest, problems)
                    .forEach(r -> byBoat.computeIfAbsent(r.value().boat(), b -> new ArrayList<>())
                            .add(r));
            BoatTemplate template = new BoatTemplate(Shipped.arrangements(), files.catalogue());
            int[] count = new int[3];
            byBoat.forEach((id, rows) -> {
                problems.addAll(BoatsSheet.disagreeing(name, rows));
                Boat before = files.boats().get(id);
                Boat after = BoatsSheet.boat(rows.stream().map(Sheet.Row::value).toList(), before, template);
                int first = rows.get(0).line();
                if (after.equals(before)) {
                    count[2]++;
                } else if (before != null && !update) {
                    problems.add(new Problem(
                            name,
                            first,
                            "boat",
                            "boat " + id + " is there already and says otherwise",
                            "",
                            "Say --update to change her file; comments in it are lost then."));
                } else {
                    count[before == null ? 0 : 1]++;
                    put(files, after, new EntrySense.Where(name, first), latest, writing, problems);
                }
            });
            if (!problems.isEmpty()) {
                throw new BadInput(problems.stream().sorted().toList());
            }
            writing.commit();
            return new Imported(count[0], count[1], count[2]);
        }
    }

    private static void put(
            YardFiles files,
            Boat boat,
            EntrySense.Where where,
            LocalDate latest,
            Writing writing,
            List<Problem> problems) {
        String text = BoatText.plain(boat);
        try {
            YardFolder.proveBoat(files, boat.id(), text, latest);
            writing.put(FolderLayout.boat(boat.id()), text);
        } catch (BadInput wrong) {
            wrong.problems().forEach(p -> problems.add(where.problem(p.field(), p.found(), p.expected(), p.advice())));
        }
    }
}
