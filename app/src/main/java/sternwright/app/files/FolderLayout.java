package sternwright.app.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.problem.Problems;

/**
 * Which file of a yard's folder holds what.
 *
 * @param root the folder
 */
public record FolderLayout(Path root) {
    private static final String YAML = ".yaml";

    /**
     * The folder of a yard that is there.
     *
     * @param root the folder
     * @return its layout
     * @throws BadInput if the folder is not a yard
     */
    public static FolderLayout of(Path root) {
        FolderLayout layout = new FolderLayout(root);
        if (!Files.isDirectory(root)) {
            throw BadInput.of(root.toString(), "there is no such folder", "a yard's folder", MAKE_ONE);
        }
        if (!Files.isRegularFile(layout.yard())) {
            throw BadInput.of(root.toString(), "this folder is not a yard: it has no yard.yaml", "", MAKE_ONE);
        }
        return layout;
    }

    private static final String MAKE_ONE =
            "Name the yard with --yard FOLDER, or make one with \"sternwright new yard FOLDER\".";

    /**
     * The yard itself.
     *
     * @return {@code yard.yaml}
     */
    public Path yard() {
        return root.resolve("yard.yaml");
    }

    /**
     * The berths.
     *
     * @return {@code berths.yaml}
     */
    public Path berths() {
        return root.resolve("berths.yaml");
    }

    /**
     * The yard's own kinds of part; may be missing.
     *
     * @return {@code catalogue.yaml}
     */
    public Path catalogue() {
        return root.resolve("catalogue.yaml");
    }

    /**
     * The file of a boat.
     *
     * @param id the boat
     * @return {@code boats/ID.yaml}
     */
    public Path boat(String id) {
        return root.resolve("boats").resolve(id + YAML);
    }

    /**
     * The history of a boat; may be missing.
     *
     * @param id the boat
     * @return {@code history/ID.csv}
     */
    public Path history(String id) {
        return root.resolve("history").resolve(id + ".csv");
    }

    /**
     * The meter readings of a boat; may be missing.
     *
     * @param id the boat
     * @return {@code hours/ID.csv}
     */
    public Path hours(String id) {
        return root.resolve("hours").resolve(id + ".csv");
    }

    /**
     * The yard's own programmes.
     *
     * @return files in the order of their names
     */
    public List<Path> programmes() {
        return list(root.resolve("programmes"));
    }

    /**
     * The boats there are files of.
     *
     * @return ids in order
     */
    public List<String> boatIds() {
        return list(root.resolve("boats")).stream().map(FolderLayout::bareName).toList();
    }

    /**
     * A file as the person knows it.
     *
     * @param file a file in the folder
     * @return its name relative to the folder
     */
    public String name(Path file) {
        return root.relativize(file).toString();
    }

    private static String bareName(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.substring(0, name.length() - YAML.length());
    }

    private static List<Path> list(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(YAML)
                            && !String.valueOf(f.getFileName()).startsWith("."))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot list " + folder, e);
        }
    }

    /**
     * Reads a file whole.
     *
     * @param file the file
     * @param problems takes what is wrong
     * @return its text, null if it is missing or not UTF-8
     */
    @Nullable
    String text(Path file, Problems problems) {
        try {
            return Files.readString(file);
        } catch (java.nio.file.NoSuchFileException missing) {
            problems.note(new Problem(
                    name(file), 0, "", "the file is missing", "", "Write it; docs/file-formats.md says how."));
        } catch (MalformedInputException notText) {
            problems.note(new Problem(name(file), 0, "", "not UTF-8 text", "", "Save it as UTF-8."));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + file, e);
        }
        return null;
    }
}
