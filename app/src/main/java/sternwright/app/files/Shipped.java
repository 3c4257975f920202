package sternwright.app.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import sternwright.app.files.kind.CatalogueShape;
import sternwright.app.files.kind.ProgrammeShape;
import sternwright.app.files.kind.StoresShape;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shape.Reading;
import sternwright.app.files.shape.Shape;
import sternwright.app.files.shape.Yaml;
import sternwright.app.files.template.Arrangements;
import sternwright.boat.PartCatalogue;
import sternwright.service.Programme;
import sternwright.yard.StoreItem;

/** What is shipped inside the program: the generic programme and the catalogue of kinds of part. */
public final class Shipped {
    private static final String FOLDER = "/sternwright/";

    private static final CompletableFuture<Programme> GENERIC =
            CompletableFuture.supplyAsync(() -> read("programmes/generic.yaml", ProgrammeShape.PROGRAMME));

    private Shipped() {}

    /** Starts to read the generic programme in the background, so that it is there when it is asked for. */
    public static void readAhead() {
        // Loading this class has started it.
    }

    /**
     * The generic service programme.
     *
     * @return the programme
     */
    public static Programme genericProgramme() {
        try {
            return GENERIC.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof BadInput wrong ? wrong : e;
        }
    }

    /**
     * The shipped kinds of part.
     *
     * @return the catalogue
     */
    public static PartCatalogue catalogue() {
        return read("catalogue.yaml", CatalogueShape.CATALOGUE);
    }

    /**
     * Everything the generic programme takes from the stores, with invented example prices.
     *
     * @return the items
     */
    public static List<StoreItem> stores() {
        return read("stores.yaml", StoresShape.STORES).items();
    }

    /**
     * What each arrangement usually consists of.
     *
     * @return usual parts and bonds
     */
    public static Arrangements arrangements() {
        return read("arrangements.yaml", Arrangements.SHAPE);
    }

    /**
     * What a season is planned with, to start from: the text of {@code resources.yaml} with invented example figures.
     *
     * @return YAML with comments
     */
    public static String seasonResources() {
        return text("/sternwright/season/resources.yaml");
    }

    private static <T> T read(String name, Shape<T> shape) {
        String text = text(FOLDER + name);
        List<Problem> problems = new ArrayList<>();
        Yaml.Read<T> read = Yaml.read(text, shape, new Reading("shipped " + name, LocalDate.MAX), problems);
        if (read == null) {
            throw new BadInput(problems);
        }
        return read.value();
    }

    private static String text(String resource) {
        try (InputStream in = Shipped.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException(
                        "the program is incomplete: " + resource + " is missing. Build it again.");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + resource + " inside the program", e);
        }
    }
}
