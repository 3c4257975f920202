package sternwright.app.desk.register;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.Shipped;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.safe.SafeFile;
import sternwright.app.files.safe.YardLock;
import sternwright.app.files.template.BoatTemplate;
import sternwright.app.files.template.BoatText;

/** Writes the file of a new boat. */
public final class NewBoat {
    private NewBoat() {}

    /**
     * Writes a complete, commented file from the arrangement's template; never over a file that is there.
     *
     * @param root the yard's folder
     * @param latest the last day on which anything can have happened
     * @param known makes what is known from the yard, so that berth and use can be the yard's first
     * @return the file written
     * @throws IOException if the disk refuses
     */
    public static Path make(
            Path root, LocalDate latest, java.util.function.Function<YardFiles, BoatTemplate.Known> known)
            throws IOException {
        YardFiles yard = YardFolder.only(root, java.util.List.of(), latest);
        BoatTemplate.Known asked = known.apply(yard);
        FolderLayout layout = FolderLayout.of(root);
        Path file = layout.boat(asked.id());
        String text = BoatText.commented(new BoatTemplate(Shipped.arrangements(), yard.catalogue()).boat(asked), asked);
        try (YardLock lock = YardLock.take(root)) {
            if (Files.exists(file)) {
                throw BadInput.of(
                        layout.name(file),
                        "this boat is there already",
                        "",
                        "Choose another --id, or change its file by hand.");
            }
            YardFolder.proveBoat(layout, yard, asked.id(), text, latest);
            SafeFile.write(file, text);
            return file;
        }
    }
}
