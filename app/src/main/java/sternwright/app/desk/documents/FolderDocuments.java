package sternwright.app.desk.documents;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.text.Normalizer;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sternwright.app.files.problem.BadInput;

/**
 * Photos and documents of boats as files of the yard's folder, in {@code documents/BOAT}. A name that is asked for is looked up
 * among those that are there and never made into a path.
 *
 * @param folder the yard's folder
 */
public record FolderDocuments(Path folder) {
    /** Largest content, bytes. */
    public static final int LARGEST = 20 * 1024 * 1024;

    private static final int LONGEST_NAME = 80;
    private static final int SIGN_BYTES = 4096;

    private Path of(String boatId) {
        if (!boatId.matches("[a-z0-9][a-z0-9._-]*")) {
            throw BadInput.of("boat", "found \"" + boatId + "\"", "id of a boat", "");
        }
        return folder.resolve("documents").resolve(boatId);
    }

    /**
     * Those of a boat.
     *
     * @param boatId the boat
     * @return the newest first
     * @throws IOException if the disk refuses
     */
    public List<Document> list(String boatId) throws IOException {
        Path of = of(boatId);
        if (!Files.isDirectory(of)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(of)) {
            List<Path> all = files.filter(f -> !name(f).startsWith(".") && Files.isRegularFile(f))
                    .toList();
            List<Document> documents = new java.util.ArrayList<>();
            for (Path file : all) {
                kind(file)
                        .ifPresent(k -> documents.add(
                                new Document(name(file), k, file.toFile().length(), changed(file))));
            }
            documents.sort(Comparator.comparing(Document::at).reversed().thenComparing(Document::name));
            return List.copyOf(documents);
        }
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    private static Instant changed(Path file) {
        return Instant.ofEpochMilli(file.toFile().lastModified());
    }

    private static Optional<FileKind> kind(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] first = in.readNBytes(SIGN_BYTES);
            Optional<FileKind> kind = FileKind.of(first);
            boolean cutText =
                    kind.isEmpty() && first.length == SIGN_BYTES && name(file).endsWith(".txt");
            return cutText ? Optional.of(FileKind.TEXT) : kind;
        }
    }

    /**
     * The content of one.
     *
     * @param boatId the boat
     * @param name its name, as {@link #list} has it
     * @return the file; empty if the boat has none of this name
     * @throws IOException if the disk refuses
     */
    public Optional<Path> content(String boatId, String name) throws IOException {
        return list(boatId).stream()
                .filter(d -> d.name().equals(name))
                .findFirst()
                .map(d -> of(boatId).resolve(d.name()));
    }

    /**
     * Puts one in; one that is there is never written over.
     *
     * @param boatId the boat
     * @param fileName as it was called
     * @param content the bytes
     * @return what is kept
     * @throws BadInput if it is too large, empty, or of a kind that is not kept
     * @throws IOException if the disk refuses; nothing was kept
     */
    public Document put(String boatId, String fileName, byte[] content) throws IOException {
        if (content.length > LARGEST) {
            throw BadInput.of("file", "the file is larger than 20 MB", "", "Make it smaller and send it again.");
        }
        FileKind kind = FileKind.of(content)
                .orElseThrow(() -> BadInput.of(
                        "file",
                        content.length == 0 ? "the file is empty" : "its content is none of the kinds kept",
                        "PDF, JPEG, PNG, WebP, HEIC or plain text",
                        "What it is called does not matter."));
        Path of = Files.createDirectories(of(boatId));
        Path half = Files.createTempFile(of, ".half-", "");
        try {
            Files.write(half, content);
            Path kept = free(of, plain(fileName), kind.ending());
            Files.move(half, kept, StandardCopyOption.ATOMIC_MOVE);
            return new Document(name(kept), kind, content.length, changed(kept));
        } finally {
            Files.deleteIfExists(half);
        }
    }

    private static Path free(Path of, String plain, String ending) {
        Path file = of.resolve(plain + "." + ending);
        for (int n = 2; Files.exists(file); n++) {
            file = of.resolve(plain + "-" + n + "." + ending);
        }
        return file;
    }

    /** Letters and figures of a name, without its folders and its ending; whatever else is in it becomes a hyphen. */
    static String plain(String fileName) {
        String last = fileName.substring(Math.max(fileName.lastIndexOf('/'), fileName.lastIndexOf('\\')) + 1);
        int dot = last.lastIndexOf('.');
        String plain = Normalizer.normalize(dot > 0 ? last.substring(0, dot) : last, Normalizer.Form.NFC)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        return plain.isEmpty() ? "file" : plain.substring(0, Math.min(LONGEST_NAME, plain.length()));
    }

    /**
     * Takes one away from the list; its bytes are kept in {@code documents/.taken-away}.
     *
     * @param boatId the boat
     * @param name its name
     * @param at when
     * @return false if the boat has none of this name
     * @throws IOException if the disk refuses
     */
    public boolean takeAway(String boatId, String name, Instant at) throws IOException {
        Optional<Path> file = content(boatId, name);
        if (file.isEmpty()) {
            return false;
        }
        Path away = Files.createDirectories(
                folder.resolve("documents").resolve(".taken-away").resolve(boatId));
        Files.move(file.get(), away.resolve(at.toEpochMilli() + "-" + name));
        return true;
    }
}
