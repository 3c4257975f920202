package sternwright.app.files.safe;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** One file written whole or not at all. */
public final class SafeFile {
    private SafeFile() {}

    /**
     * Writes a file: beside its place, forced to disk, renamed over it, the folder forced.
     *
     * @param file the file; its folder is made if missing
     * @param text what it shall say, UTF-8
     * @throws IOException if the disk refuses; the file is then as it was
     */
    public static void write(Path file, String text) throws IOException {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Writes a file of any kind in the same way.
     *
     * @param file the file; its folder is made if missing
     * @param content what it shall hold
     * @throws IOException if the disk refuses; the file is then as it was
     */
    public static void write(Path file, byte[] content) throws IOException {
        Path folder = folder(file);
        Files.createDirectories(folder);
        Path beside = Files.createTempFile(folder, "." + file.getFileName(), ".new");
        try {
            writeForced(beside, content);
            move(beside, file);
        } finally {
            Files.deleteIfExists(beside);
        }
        force(folder);
    }

    static Path folder(Path file) {
        Path parent = file.toAbsolutePath().getParent();
        return parent == null ? file.toAbsolutePath() : parent;
    }

    static void writeForced(Path file, String text) throws IOException {
        writeForced(file, text.getBytes(StandardCharsets.UTF_8));
    }

    private static void writeForced(Path file, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(
                file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
            ByteBuffer bytes = ByteBuffer.wrap(content);
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
    }

    static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            throw new IOException(
                    "this disk cannot rename " + from + " to " + to
                            + " in one step: keep the yard's folder on a local disk",
                    e);
        }
    }

    /** Forces the names in a folder to disk; a folder cannot be opened on every system, then the rename must do. */
    static void force(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException cannotOpenFolders) {
            return;
        }
    }
}
