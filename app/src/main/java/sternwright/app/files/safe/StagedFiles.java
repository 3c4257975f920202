package sternwright.app.files.safe;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Several files of one folder that change together: all or none, whatever happens in between. */
public final class StagedFiles {
    private static final String STAGE = ".staged";
    private static final String LIST = "list";
    private static final String READY = "ready";

    private final Path root;
    private final Map<Path, String> texts = new LinkedHashMap<>();
    private final Step step;

    /** Told after each step; tests stop here as a crash would. */
    @FunctionalInterface
    interface Step {
        /** The step that was just done. */
        void done(String what) throws IOException;
    }

    /**
     * Starts a deed on a folder.
     *
     * @param root the yard's folder
     */
    public StagedFiles(Path root) {
        this(root, what -> {});
    }

    StagedFiles(Path root, Step step) {
        this.root = root;
        this.step = step;
    }

    /**
     * Says what a file shall hold; a later text of the same file replaces the earlier.
     *
     * @param file inside the folder
     * @param text what it shall say
     */
    public void put(Path file, String text) {
        texts.put(root.relativize(file), text);
    }

    /**
     * Writes all files.
     *
     * @throws IOException if the disk refuses; then no file has changed, or the next who opens the yard finishes
     */
    public void commit() throws IOException {
        finish(root);
        if (texts.isEmpty()) {
            return;
        }
        if (texts.size() == 1) {
            for (Map.Entry<Path, String> one : texts.entrySet()) {
                SafeFile.write(root.resolve(one.getKey()), one.getValue());
            }
            return;
        }
        stage();
        finish(root, step);
    }

    private void stage() throws IOException {
        Path stage = Files.createDirectories(root.resolve(STAGE));
        List<String> names = new ArrayList<>();
        for (Map.Entry<Path, String> one : texts.entrySet()) {
            SafeFile.writeForced(stage.resolve(Integer.toString(names.size())), one.getValue());
            names.add(one.getKey().toString());
            step.done("staged " + one.getKey());
        }
        SafeFile.writeForced(stage.resolve(LIST), String.join("\n", names));
        SafeFile.force(stage);
        SafeFile.move(stage.resolve(LIST), stage.resolve(READY));
        SafeFile.force(stage);
        SafeFile.force(root);
        step.done("ready");
    }

    /**
     * Finishes or clears away what a crash left behind. Called with the yard locked, before anything is read.
     *
     * @param root the yard's folder
     * @throws IOException if the disk refuses
     */
    public static void finish(Path root) throws IOException {
        finish(root, what -> {});
    }

    /**
     * Whether a crash left something to finish.
     *
     * @param root the yard's folder
     * @return true if {@link #finish} has something to do
     */
    public static boolean unfinished(Path root) {
        return Files.exists(root.resolve(STAGE));
    }

    private static void finish(Path root, Step step) throws IOException {
        Path stage = root.resolve(STAGE);
        Path ready = stage.resolve(READY);
        if (Files.exists(ready)) {
            int i = 0;
            for (String name : Files.readAllLines(ready)) {
                Path from = stage.resolve(Integer.toString(i++));
                Path to = root.resolve(name);
                if (Files.exists(from)) {
                    Files.createDirectories(SafeFile.folder(to));
                    SafeFile.move(from, to);
                    SafeFile.force(SafeFile.folder(to));
                    step.done("moved " + name);
                }
            }
        }
        if (Files.exists(stage)) {
            clear(stage);
        }
    }

    /** The list goes last but one, so that a crash in here is finished again and finds nothing left to move. */
    private static void clear(Path stage) throws IOException {
        try (Stream<Path> files = Files.list(stage)) {
            for (Path file :
                    files.sorted(Comparator.comparing(f -> f.endsWith(READY))).toList()) {
                Files.delete(file);
            }
        }
        Files.delete(stage);
    }
}
