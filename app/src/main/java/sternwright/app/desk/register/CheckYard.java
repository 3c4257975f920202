package sternwright.app.desk.register;

import java.nio.file.Path;
import java.time.LocalDate;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;

/** Reads a whole yard to find everything that is wrong with it. */
public final class CheckYard {
    private CheckYard() {}

    /**
     * Checks a yard.
     *
     * @param root the yard's folder
     * @param latest the last day on which anything can have happened
     * @return all that it says, with remarks on what does not stop the work
     * @throws sternwright.app.files.problem.BadInput with every problem of every file
     */
    public static YardFiles check(Path root, LocalDate latest) {
        return YardFolder.all(root, latest);
    }
}
