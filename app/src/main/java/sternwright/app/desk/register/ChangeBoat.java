package sternwright.app.desk.register;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.Writing;

/** Puts another text in the place of a boat's file. */
public final class ChangeBoat {
    private ChangeBoat() {}

    /**
     * Proves the new text and writes it, if nobody has changed the file since its editor read it.
     *
     * @param shelf where the yard's texts are kept
     * @param boatId the boat
     * @param text what her file shall say
     * @param versionRead the version the editor had read
     * @param latest the last day on which anything can have happened
     * @throws sternwright.app.files.shelf.EditConflict if somebody has changed it since; nothing is written
     * @throws sternwright.app.files.problem.BadInput with every line that is wrong; nothing is written
     * @throws IOException if what keeps the yard refuses
     */
    public static void change(Shelf shelf, String boatId, String text, String versionRead, LocalDate latest)
            throws IOException {
        YardFiles yard = YardFolder.only(shelf, List.of(), latest);
        String whole = text.replace("\r\n", "\n");
        try (Writing writing = shelf.write("file of boat " + boatId + " changed")) {
            writing.put(FolderLayout.boat(boatId), whole, versionRead);
            YardFolder.proveBoat(yard, boatId, whole, latest);
            writing.commit();
        }
    }
}
