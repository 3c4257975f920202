package sternwright.app.desk.register;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.Shipped;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.Writing;
import sternwright.app.files.template.BoatTemplate;
import sternwright.app.files.template.BoatText;
import sternwright.boat.Boat;
import sternwright.boat.HullSense;

/** Writes the file of a new boat. */
public final class NewBoat {
    /**
     * What came of it.
     *
     * @param file name of the text written
     * @param unusual what of her hull is unusual
     */
    public record Made(String file, List<HullSense.Odd> unusual) {
        /** Copies the list. */
        public Made {
            unusual = List.copyOf(unusual);
        }
    }

    private NewBoat() {}

    /**
     * Writes a complete, commented file from the arrangement's template; never over a file that is there.
     *
     * @param shelf where the yard's texts are kept
     * @param latest the last day on which anything can have happened
     * @param known makes what is known from the yard, so that berth and use can be the yard's first
     * @return the text written, and what of her is unusual
     * @throws IOException if the disk refuses
     */
    public static Made make(Shelf shelf, LocalDate latest, Function<YardFiles, BoatTemplate.Known> known)
            throws IOException {
        return make(shelf, latest, known, boat -> boat);
    }

    /**
     * The same, with what else is known of her parts.
     *
     * @param shelf where the yard's texts are kept
     * @param latest the last day on which anything can have happened
     * @param known makes what is known from the yard
     * @param more puts what else is known into the boat made from the template, such as days on which parts were fitted
     * @return the text written, and what of her is unusual
     * @throws IOException if the disk refuses
     */
    public static Made make(
            Shelf shelf, LocalDate latest, Function<YardFiles, BoatTemplate.Known> known, UnaryOperator<Boat> more)
            throws IOException {
        YardFiles yard = YardFolder.only(shelf, List.of(), latest);
        BoatTemplate.Known asked = known.apply(yard);
        String name = FolderLayout.boat(asked.id());
        Boat usual = new BoatTemplate(Shipped.arrangements(), yard.catalogue()).boat(asked);
        String text = BoatText.commented(more.apply(usual), asked);
        try (Writing writing = shelf.write("new boat " + asked.id())) {
            if (shelf.holds(name)) {
                throw BadInput.of(
                        name, "this boat is there already", "", "Choose another --id, or change its file by hand.");
            }
            Boat boat = YardFolder.proveBoat(yard, asked.id(), text, latest);
            writing.put(name, text, "");
            writing.commit();
            return new Made(name, HullSense.of(boat.hull()));
        }
    }
}
