package sternwright.app.desk.register;

import java.time.LocalDate;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problems;
import sternwright.app.files.shelf.Shelf;

/** Reads a whole yard, its season included, to find everything that is wrong with it. */
public final class CheckYard {
    private CheckYard() {}

    /**
     * Checks a yard.
     *
     * @param shelf where the yard's texts are kept
     * @param latest the last day on which anything can have happened
     * @return all that it says, with remarks on what does not stop the work
     * @throws sternwright.app.files.problem.BadInput with every problem of every file
     */
    public static YardFiles check(Shelf shelf, LocalDate latest) {
        Problems problems = new Problems();
        YardFiles yard = null;
        try {
            yard = YardFolder.all(shelf, latest);
        } catch (BadInput wrong) {
            problems.noteAll(wrong.problems());
        }
        problems.noteAll(SeasonFolder.problems(shelf, latest, yard));
        if (yard == null || !problems.none()) {
            throw new BadInput(problems.inOrder());
        }
        return yard;
    }
}
