package sternwright.app.desk.keeping;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.safe.SafeFile;
import sternwright.app.files.shelf.FolderShelf;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.ShelfCopy;
import sternwright.app.store.Attachments;
import sternwright.app.store.Store;

/**
 * Moves a yard between a folder and a store, byte for byte.
 *
 * @param texts texts moved
 * @param documents photos and documents moved
 * @param leftOut files that are neither, and were left where they are
 */
public record MoveYard(int texts, int documents, List<String> leftOut) {
    private static final String DOCUMENTS = "documents/";
    private static final long LONGEST_DOCUMENT = 50L * 1024 * 1024;

    /** Copies the list. */
    public MoveYard {
        leftOut = List.copyOf(leftOut);
    }

    /**
     * Takes a folder into a store.
     *
     * @param folder the yard's folder
     * @param store the store
     * @param replace true if the yard in the store may be replaced; it keeps what it said before
     * @param by who does it
     * @param latest the last day on which anything can have happened
     * @return what was moved
     * @throws BadInput with everything that is wrong in the folder, or if the store holds a yard; nothing was written then
     * @throws IOException if disk or store refuses
     */
    public static MoveYard in(Path folder, Store store, boolean replace, String by, LocalDate latest)
            throws IOException {
        YardFolder.all(folder, latest);
        Shelf to = store.shelf(by);
        if (!replace && !to.marks().isEmpty()) {
            throw BadInput.of(
                    store.place(),
                    "there is a yard in it already",
                    "an empty store",
                    "Say --replace to put this folder in its place; the store keeps what it said before.");
        }
        ShelfCopy copied = ShelfCopy.all(new FolderShelf(folder), to, "taken in from " + folder);
        List<String> leftOut = new ArrayList<>();
        int documents = 0;
        for (String name : copied.leftOut()) {
            if (name.startsWith(DOCUMENTS) && Files.size(folder.resolve(name)) <= LONGEST_DOCUMENT) {
                document(folder, name, store, by);
                documents++;
            } else {
                leftOut.add(name);
            }
        }
        return new MoveYard(copied.texts(), documents, leftOut);
    }

    /** A document that is there already, with the same content, is not put in twice. */
    private static void document(Path folder, String name, Store store, String by) throws IOException {
        Path file = folder.resolve(name);
        String[] steps = name.split("/");
        String boat = steps.length == 3 || steps.length == 4 ? steps[1] : "";
        String about = steps.length == 4 ? steps[2] : "";
        byte[] content = Files.readAllBytes(file);
        Attachments attachments = store.attachments();
        boolean there = attachments.of(boat).stream()
                .filter(a -> a.name().equals(name) && a.size() == content.length)
                .anyMatch(
                        a -> java.util.Arrays.equals(attachments.content(a.id()).orElse(new byte[0]), content));
        if (!there) {
            String type = Files.probeContentType(file);
            String known = type == null ? "application/octet-stream" : type;
            attachments.put(boat, about, steps[steps.length - 1], known, content, by);
        }
    }

    /**
     * Writes a yard into a folder.
     *
     * @param place where the yard is kept
     * @param folder missing or empty
     * @return what was moved
     * @throws BadInput if something is in the folder already
     * @throws IOException if disk or store refuses
     */
    public static MoveYard out(YardPlace place, Path folder) throws IOException {
        refuseFilled(folder);
        Files.createDirectories(folder);
        ShelfCopy copied = ShelfCopy.all(place.shelf(""), new FolderShelf(folder), "");
        int documents = 0;
        if (place.store().isPresent()) {
            Attachments attachments = place.store().get().attachments();
            for (Attachments.Attachment a : attachments.all()) {
                SafeFile.write(
                        free(folder, a.name()), attachments.content(a.id()).orElse(new byte[0]));
                documents++;
            }
        }
        return new MoveYard(copied.texts(), documents, copied.leftOut());
    }

    /** Two documents of one name: the later gets a number. */
    private static Path free(Path folder, String name) {
        Path file = folder.resolve(name);
        int dot = name.lastIndexOf('.');
        for (int i = 2; Files.exists(file); i++) {
            file = folder.resolve(dot < 0 ? name + "-" + i : name.substring(0, dot) + "-" + i + name.substring(dot));
        }
        return file;
    }

    static void refuseFilled(Path folder) throws IOException {
        boolean filled = Files.exists(folder) && !Files.isDirectory(folder);
        if (Files.isDirectory(folder)) {
            try (Stream<Path> inside = Files.list(folder)) {
                filled = inside.findAny().isPresent();
            }
        }
        if (filled) {
            throw BadInput.of(
                    folder.toString(),
                    "there is something here already, and it is left as it is",
                    "a folder that is missing or empty",
                    "Name another one.");
        }
    }
}
