package sternwright.app.desk.register;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.kind.BoatShape;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.shape.YamlChange;
import sternwright.app.files.shelf.Kept;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.Writing;
import sternwright.boat.Boat;

/** Puts another text in the place of a boat's file, or changes what it says of her. */
public final class ChangeBoat {
    /** What a template writes behind a figure that nobody has measured. */
    private static final Pattern ASSUMED = Pattern.compile("\\s+# assumed\\b.*$");

    private ChangeBoat() {}

    /**
     * Changes what her file says of her, and nothing else in it, if nobody has changed the file since its editor read it. A figure
     * that was assumed and is now said is marked as assumed no more.
     *
     * @param shelf where the yard's texts are kept
     * @param after the boat as she shall be
     * @param versionRead the version the editor had read
     * @param latest the last day on which anything can have happened
     * @throws sternwright.app.files.shelf.EditConflict if somebody has changed it since; nothing is written
     * @throws BadInput with everything that is wrong; nothing is written
     * @throws IOException if what keeps the yard refuses
     */
    public static void facts(Shelf shelf, Boat after, String versionRead, LocalDate latest) throws IOException {
        String name = FolderLayout.boat(after.id());
        String before = shelf.kept(name)
                .map(Kept::text)
                .orElseThrow(() -> BadInput.of(name, "the file is missing", "", "Register the boat."));
        String text = YamlChange.of(before, BoatShape.BOAT, after)
                .orElseThrow(() -> BadInput.of(
                        name,
                        "the file is written in a way that only a person can change",
                        "each field on a line of its own, without anchors",
                        "Change it in the file itself."));
        change(shelf, after.id(), said(before, text), versionRead, latest);
    }

    private static String said(String before, String after) {
        List<String> was = before.lines().toList();
        List<String> is = new ArrayList<>(after.lines().toList());
        for (int i = 0; i < is.size() && was.size() == is.size(); i++) {
            if (!is.get(i).equals(was.get(i))) {
                is.set(i, ASSUMED.matcher(is.get(i)).replaceFirst(""));
            }
        }
        return String.join("\n", is) + "\n";
    }

    /**
     * Proves the new text and writes it, if nobody has changed the file since its editor read it.
     *
     * @param shelf where the yard's texts are kept
     * @param boatId the boat
     * @param text what her file shall say
     * @param versionRead the version the editor had read
     * @param latest the last day on which anything can have happened
     * @throws sternwright.app.files.shelf.EditConflict if somebody has changed it since; nothing is written
     * @throws BadInput with every line that is wrong; nothing is written
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
