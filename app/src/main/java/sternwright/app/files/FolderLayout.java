package sternwright.app.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.problem.Problems;
import sternwright.app.files.shelf.FolderShelf;
import sternwright.app.files.shelf.Shelf;

/**
 * Which text of a yard holds what.
 *
 * @param shelf where the texts are kept
 */
public record FolderLayout(Shelf shelf) {
    /** The yard itself. */
    public static final String YARD = "yard.yaml";
    /** The berths. */
    public static final String BERTHS = "berths.yaml";
    /** The yard's own kinds of part; may be missing. */
    public static final String CATALOGUE = "catalogue.yaml";
    /** Where the yard's own programmes stand. */
    public static final String PROGRAMMES = "programmes";

    private static final String BOATS = "boats";
    private static final String YAML = ".yaml";
    private static final String MAKE_ONE =
            "Name the yard with --yard FOLDER, or make one with \"sternwright new yard FOLDER\".";

    /**
     * The folder of a yard that is there.
     *
     * @param root the folder
     * @return its layout
     * @throws BadInput if the folder is not a yard
     */
    public static FolderLayout of(Path root) {
        return of(new FolderShelf(root));
    }

    /**
     * A yard that is there.
     *
     * @param shelf where its texts are kept
     * @return its layout
     * @throws BadInput if it is not a yard
     */
    public static FolderLayout of(Shelf shelf) {
        if (shelf instanceof FolderShelf folder && !Files.isDirectory(folder.root())) {
            throw BadInput.of(shelf.place(), "there is no such folder", "a yard's folder", MAKE_ONE);
        }
        FolderLayout layout = new FolderLayout(shelf);
        if (!layout.holds(YARD)) {
            throw BadInput.of(shelf.place(), "this folder is not a yard: it has no yard.yaml", "", MAKE_ONE);
        }
        return layout;
    }

    /**
     * The text of a boat.
     *
     * @param id the boat
     * @return {@code boats/ID.yaml}
     */
    public static String boat(String id) {
        return BOATS + "/" + id + YAML;
    }

    /**
     * The history of a boat; may be missing.
     *
     * @param id the boat
     * @return {@code history/ID.csv}
     */
    public static String history(String id) {
        return "history/" + id + ".csv";
    }

    /**
     * The meter readings of a boat; may be missing.
     *
     * @param id the boat
     * @return {@code hours/ID.csv}
     */
    public static String hours(String id) {
        return "hours/" + id + ".csv";
    }

    /**
     * The yard's own programmes.
     *
     * @return names of texts in order
     */
    public List<String> programmes() {
        return list(PROGRAMMES);
    }

    /**
     * The boats there are texts of.
     *
     * @return ids in order
     */
    public List<String> boatIds() {
        return list(BOATS).stream()
                .map(n -> n.substring(BOATS.length() + 1, n.length() - YAML.length()))
                .toList();
    }

    private List<String> list(String folder) {
        try {
            return shelf.names(folder).stream().filter(n -> n.endsWith(YAML)).toList();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot list " + folder + " of " + shelf.place(), e);
        }
    }

    /**
     * Whether there is a text of this name.
     *
     * @param name of the text
     * @return true if there is
     */
    boolean holds(String name) {
        try {
            return shelf.holds(name);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot look for " + name + " in " + shelf.place(), e);
        }
    }

    /**
     * Reads a text whole.
     *
     * @param name of the text
     * @param problems takes what is wrong
     * @return its text, null if it is missing or not UTF-8
     */
    @Nullable
    String text(String name, Problems problems) {
        try {
            String text = shelf.text(name).orElse(null);
            if (text == null) {
                problems.note(new Problem(
                        name, 0, "", "the file is missing", "", "Write it; docs/file-formats.md says how."));
            }
            return text;
        } catch (CharacterCodingException notText) {
            problems.note(new Problem(name, 0, "", "not UTF-8 text", "", "Save it as UTF-8."));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name + " in " + shelf.place(), e);
        }
        return null;
    }
}
