package sternwright.app.desk.documents;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Kinds of file that are kept, each known by its content. */
public enum FileKind {
    /** A document. */
    PDF("application/pdf", "pdf", false),
    /** A photo. */
    JPEG("image/jpeg", "jpg", true),
    /** A picture. */
    PNG("image/png", "png", true),
    /** A picture. */
    WEBP("image/webp", "webp", true),
    /** A photo as some telephones take it; not every browser shows it. */
    HEIC("image/heic", "heic", false),
    /** Plain text. */
    TEXT("text/plain;charset=UTF-8", "txt", false),
    /** What came in with a folder and is none of these; only handed over. */
    OTHER("application/octet-stream", "bin", false);

    private final String contentType;
    private final String ending;
    private final boolean shown;

    FileKind(String contentType, String ending, boolean shown) {
        this.contentType = contentType;
        this.ending = ending;
        this.shown = shown;
    }

    /**
     * Its name in the language of the web.
     *
     * @return as RFC 6838 writes it
     */
    public String contentType() {
        return contentType;
    }

    /**
     * Ending of its file names.
     *
     * @return without a dot
     */
    public String ending() {
        return ending;
    }

    /**
     * Whether browsers show it as a picture.
     *
     * @return false for what is only handed over
     */
    public boolean shown() {
        return shown;
    }

    /**
     * The kind of a content.
     *
     * @param content the bytes
     * @return empty if it is none of these
     */
    public static Optional<FileKind> of(byte[] content) {
        if (begins(content, 0, "%PDF-")) {
            return Optional.of(PDF);
        }
        if (begins(content, 0, "\u00ff\u00d8\u00ff")) {
            return Optional.of(JPEG);
        }
        if (begins(content, 0, "\u0089PNG\r\n\u001a\n")) {
            return Optional.of(PNG);
        }
        if (begins(content, 0, "RIFF") && begins(content, 8, "WEBP")) {
            return Optional.of(WEBP);
        }
        if (begins(content, 4, "ftyphei") || begins(content, 4, "ftypmif1")) {
            return Optional.of(HEIC);
        }
        return text(content) ? Optional.of(TEXT) : Optional.empty();
    }

    private static boolean begins(byte[] content, int at, String sign) {
        byte[] bytes = sign.getBytes(StandardCharsets.ISO_8859_1);
        if (content.length < at + bytes.length) {
            return false;
        }
        for (int i = 0; i < bytes.length; i++) {
            if (content[at + i] != bytes[i]) {
                return false;
            }
        }
        return true;
    }

    private static boolean text(byte[] content) {
        if (content.length == 0) {
            return false;
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(content))
                    .chars()
                    .noneMatch(c -> c < ' ' && c != '\n' && c != '\r' && c != '\t' && c != '\f');
        } catch (CharacterCodingException notText) {
            return false;
        }
    }
}
