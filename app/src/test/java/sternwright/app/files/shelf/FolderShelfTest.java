package sternwright.app.files.shelf;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

/** A folder keeps texts as every keeper does. */
class FolderShelfTest extends ShelfContract {
    @TempDir
    Path root;

    @Override
    protected Shelf shelf(String by) {
        return new FolderShelf(root);
    }
}
