package sternwright.app.files.shelf;

import java.io.IOException;
import java.nio.file.Files;
import java.util.LinkedHashSet;
import java.util.Set;
import sternwright.app.files.safe.StagedFiles;
import sternwright.app.files.safe.YardLock;

/** A change of a yard's folder, which is locked meanwhile. */
final class FolderWriting implements Writing {
    private final FolderShelf shelf;
    private final YardLock lock;
    private final StagedFiles staged;
    private final Set<String> removed = new LinkedHashSet<>();

    FolderWriting(FolderShelf shelf, YardLock lock) {
        this.shelf = shelf;
        this.lock = lock;
        this.staged = new StagedFiles(shelf.root());
    }

    @Override
    public void put(String name, String text) {
        staged.put(shelf.file(name), text);
        removed.remove(name);
    }

    @Override
    public void put(String name, String text, String versionRead) throws IOException {
        Kept now = shelf.kept(name).orElse(null);
        if (!versionRead.equals(now == null ? "" : now.version())) {
            throw new EditConflict(name, text, now);
        }
        put(name, text);
    }

    @Override
    public void remove(String name) {
        removed.add(ShelfName.require(name));
    }

    /** A file to be taken away goes after all others are written: a crash in between leaves too much, never too little. */
    @Override
    public void commit() throws IOException {
        staged.commit();
        for (String name : removed) {
            Files.deleteIfExists(shelf.file(name));
        }
    }

    @Override
    public void close() throws IOException {
        lock.close();
    }
}
