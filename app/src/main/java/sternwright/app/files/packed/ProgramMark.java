package sternwright.app.files.packed;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import sternwright.boat.Boat;

/** What tells this build of the program from every other: what one has worked out is not for another to use. */
public final class ProgramMark {
    private static final String MARK = mark(List.of(ProgramMark.class, Boat.class));

    private ProgramMark() {}

    /**
     * The mark of this program.
     *
     * @return SHA-256 over its parts, in hexadecimal
     */
    public static String text() {
        return MARK;
    }

    private static String mark(List<Class<?>> kinds) {
        try {
            StringBuilder parts = new StringBuilder();
            for (Class<?> kind : kinds) {
                Path place = Path.of(
                        kind.getProtectionDomain().getCodeSource().getLocation().toURI());
                if (Files.isDirectory(place)) {
                    folder(place, parts);
                } else {
                    jar(place, parts);
                }
            }
            return sha256(parts.toString());
        } catch (URISyntaxException e) {
            throw new IllegalStateException("the program does not know where it is", e);
        } catch (IOException e) {
            throw new UncheckedIOException("the program cannot be read", e);
        }
    }

    /** The checksums stand in the list at the end of the file: nothing is unpacked. */
    private static void jar(Path place, StringBuilder parts) throws IOException {
        try (ZipFile jar = new ZipFile(place.toFile())) {
            jar.stream()
                    .forEach(e -> parts.append(e.getName())
                            .append(' ')
                            .append(e.getCrc())
                            .append('\n'));
        }
    }

    private static void folder(Path place, StringBuilder parts) throws IOException {
        try (Stream<Path> files = Files.walk(place)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                parts.append(place.relativize(file))
                        .append(' ')
                        .append(Files.size(file))
                        .append(' ')
                        .append(Files.getLastModifiedTime(file).toMillis())
                        .append('\n');
            }
        }
    }

    /**
     * SHA-256 of a text.
     *
     * @param text the text
     * @return in hexadecimal
     */
    public static String sha256(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
