package sternwright.app.files.shelf;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.TreeMap;

/** Looks at the files of a folder without reading them: when each was written and how long it is. */
final class FolderMarks extends SimpleFileVisitor<Path> {
    private final Path root;
    private final Map<String, String> marks = new TreeMap<>();

    private FolderMarks(Path root) {
        this.root = root;
    }

    static Map<String, String> of(Path root) throws IOException {
        FolderMarks look = new FolderMarks(root);
        Files.walkFileTree(root, look);
        return look.marks;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes attributes) {
        return !dir.equals(root) && hidden(dir) ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes a) {
        if (!hidden(file)) {
            String name = root.relativize(file).toString().replace('\\', '/');
            marks.put(name, a.lastModifiedTime() + " " + a.size() + " " + a.fileKey());
        }
        return FileVisitResult.CONTINUE;
    }

    private static boolean hidden(Path file) {
        return String.valueOf(file.getFileName()).startsWith(".");
    }
}
