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
import sternwright.app.files.safe.StagedFiles;
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
        FolderLayout layout = new FolderLayout(folder);
        for (String part : List.of("boats", "history", "hours", "programmes")) {
            Files.createDirectories(folder.resolve(part));
        }
        StagedFiles files = new StagedFiles(folder);
        files.put(
                layout.yard(), YardTemplate.text(YardTemplate.yard(name, currency, latitudeDeg < 0, Shipped.stores())));
        files.put(layout.berths(), YardTemplate.text(List.of(YardTemplate.berth(latitudeDeg))));
        files.put(folder.resolve(SeasonFolder.RESOURCES), Shipped.seasonResources());
        files.commit();
    }

    private static boolean empty(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.findAny().isEmpty();
        }
    }
}
