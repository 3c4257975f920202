package sternwright.app.files.shelf;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sternwright.app.files.safe.StagedFiles;
import sternwright.app.files.safe.YardLock;

/**
 * A yard's folder on a disk. A text's version is the SHA-256 of what it says, so an editor of files by hand is noticed too.
 *
 * @param root the folder
 */
public record FolderShelf(Path root) implements Shelf {
    @Override
    public String place() {
        return root.toString();
    }

    @Override
    public List<String> names(String folder) throws IOException {
        Path in = folder.isEmpty() ? root : file(folder);
        if (!Files.isDirectory(in)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(in)) {
            return files.filter(f -> !String.valueOf(f.getFileName()).startsWith(".") && Files.isRegularFile(f))
                    .map(f -> ShelfName.in(folder, String.valueOf(f.getFileName())))
                    .sorted()
                    .toList();
        }
    }

    @Override
    public Optional<Kept> kept(String name) throws IOException {
        Path file = file(name);
        try {
            byte[] bytes = Files.readAllBytes(file);
            return Optional.of(new Kept(
                    name,
                    decoded(bytes),
                    hash(bytes),
                    "",
                    Files.getLastModifiedTime(file).toInstant()));
        } catch (NoSuchFileException missing) {
            return Optional.empty();
        }
    }

    @Override
    public Optional<String> text(String name) throws IOException {
        try {
            return Optional.of(Files.readString(file(name)));
        } catch (NoSuchFileException missing) {
            return Optional.empty();
        }
    }

    private static String decoded(byte[] bytes) throws IOException {
        return StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(bytes))
                .toString();
    }

    @Override
    public boolean holds(String name) throws IOException {
        return Files.exists(file(name));
    }

    /** Finishes what a crash may have left; a folder cannot be held still otherwise. */
    @Override
    public Shelf still() throws IOException {
        if (StagedFiles.unfinished(root)) {
            YardLock.take(root).close();
        }
        return this;
    }

    @Override
    public String state() throws IOException {
        return Integer.toHexString(marks().hashCode());
    }

    @Override
    public Map<String, String> marks() throws IOException {
        return FolderMarks.of(root);
    }

    @Override
    public Writing write(String why) throws IOException {
        return new FolderWriting(this, YardLock.take(root));
    }

    /** The file of a text. */
    Path file(String name) {
        return root.resolve(ShelfName.require(name));
    }

    private static String hash(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
