package sternwright.app.desk.register;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Currency;
import java.util.List;
import java.util.stream.Stream;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.Shipped;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.shelf.FolderShelf;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.Writing;
import sternwright.app.files.template.YardTemplate;

/** Makes a new yard's folder. */
public final class NewYard {
    private NewYard() {}

    /**
     * Writes a yard to start from, with comments and invented example prices.
     *
     * @param folder not there yet, or empty
     * @param name as on the letterhead
     * @param currency of every price
     * @param latitudeDeg of the first berth, north positive
     * @throws BadInput if something is there already
     * @throws IOException if the disk refuses
     */
    public static void make(Path folder, String name, Currency currency, double latitudeDeg) throws IOException {
        if (Files.exists(folder) && !(Files.isDirectory(folder) && empty(folder))) {
            throw BadInput.of(
                    folder.toString(), "there is something already", "a new or empty folder", "Name another folder.");
        }
        for (String part : List.of("boats", "history", "hours", "programmes")) {
            Files.createDirectories(folder.resolve(part));
        }
        make(new FolderShelf(folder), name, currency, latitudeDeg);
    }

    /**
     * Writes a yard to start from on a shelf that holds none.
     *
     * @param shelf where the yard's texts are kept
     * @param name as on the letterhead
     * @param currency of every price
     * @param latitudeDeg of the first berth, north positive
     * @throws BadInput if there is a yard already
     * @throws IOException if the keeper refuses
     */
    public static void make(Shelf shelf, String name, Currency currency, double latitudeDeg) throws IOException {
        try (Writing writing = shelf.write("new yard")) {
            if (shelf.holds(FolderLayout.YARD)) {
                throw BadInput.of(shelf.place(), "there is a yard already", "a place without one", "Use that one.");
            }
            write(writing, name, currency, latitudeDeg);
            writing.commit();
        }
    }

    private static void write(Writing files, String name, Currency currency, double latitudeDeg) {
        files.put(
                FolderLayout.YARD,
                YardTemplate.text(YardTemplate.yard(name, currency, latitudeDeg < 0, Shipped.stores())));
        files.put(FolderLayout.BERTHS, YardTemplate.text(List.of(YardTemplate.berth(latitudeDeg))));
        files.put(SeasonFolder.RESOURCES, Shipped.seasonResources());
    }

    private static boolean empty(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.findAny().isEmpty();
        }
    }
}
