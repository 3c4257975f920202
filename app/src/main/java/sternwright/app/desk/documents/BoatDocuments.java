package sternwright.app.desk.documents;

import java.io.IOException;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import sternwright.app.files.problem.BadInput;
import sternwright.app.store.Attachments;

/**
 * Photos and documents of boats, kept in the yard's store and backed up with it. A name never becomes a path of the disk, and what
 * is asked for is looked up among those of its boat.
 *
 * @param attachments where the store keeps them
 */
public record BoatDocuments(Attachments attachments) {
    /** Largest content, bytes. */
    public static final int LARGEST = 20 * 1024 * 1024;

    private static final int LONGEST_NAME = 80;

    /**
     * Those of a boat.
     *
     * @param boatId the boat
     * @return the newest first
     */
    public List<Document> list(String boatId) {
        return attachments.of(boatId).stream().map(BoatDocuments::document).toList();
    }

    private static Document document(Attachments.Attachment a) {
        FileKind kind = Arrays.stream(FileKind.values())
                .filter(k -> k.contentType().equals(a.contentType()))
                .findFirst()
                .orElse(FileKind.OTHER);
        return new Document(
                a.id(), a.name().substring(a.name().lastIndexOf('/') + 1), kind, a.size(), a.by(), a.at(), a.about());
    }

    /**
     * Those of a job card.
     *
     * @param boatId the boat
     * @param cardId the card
     * @return the newest first
     */
    public List<Document> ofCard(String boatId, String cardId) {
        return list(boatId).stream().filter(d -> d.cardId().equals(cardId)).toList();
    }

    /**
     * One of a boat.
     *
     * @param boatId the boat
     * @param id its id
     * @return empty if this boat has none of this id
     */
    public Optional<Document> one(String boatId, String id) {
        return attachments.one(id).filter(a -> a.boatId().equals(boatId)).map(BoatDocuments::document);
    }

    /**
     * The content of one.
     *
     * @param document one of a boat
     * @return the bytes; empty if it was taken away meanwhile
     */
    public Optional<byte[]> content(Document document) {
        return attachments.content(document.id());
    }

    /**
     * Puts one in.
     *
     * @param boatId the boat
     * @param cardId the job card it is put on; empty for none
     * @param fileName as it was called
     * @param content the bytes
     * @param by who puts it in
     * @return what is kept
     * @throws BadInput if it is too large, empty, or of a kind that is not kept
     * @throws IOException if the store refuses; nothing was kept
     */
    public Document put(String boatId, String cardId, String fileName, byte[] content, String by) throws IOException {
        if (content.length > LARGEST) {
            throw BadInput.of("file", "the file is larger than 20 MB", "", "Make it smaller and send it again.");
        }
        FileKind kind = FileKind.of(content)
                .orElseThrow(() -> BadInput.of(
                        "file",
                        content.length == 0 ? "the file is empty" : "its content is none of the kinds kept",
                        "PDF, JPEG, PNG, WebP, HEIC or plain text",
                        "What it is called does not matter."));
        String name = plain(fileName) + "." + kind.ending();
        return document(attachments.put(boatId, cardId, name, kind.contentType(), content, by));
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
     * Takes one away from the list; the store still keeps it, with who and when.
     *
     * @param document one of a boat
     * @param by who takes it away
     * @throws IOException if the store refuses
     */
    public void takeAway(Document document, String by) throws IOException {
        attachments.takeAway(document.id(), by);
    }
}
