package sternwright.app.store;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import sternwright.app.files.shelf.ShelfName;

/** Photos and documents of boats. What was put in stays as it was; one that is taken away is hidden, with who and when. */
public final class Attachments {
    private static final String FOLDER = "documents";
    private static final String FACTS = "id, name, boat_id, content_type, size, sha256, by_whom, at";

    private final Store store;
    private final JdbcClient read;
    private final JdbcClient write;

    Attachments(Store store) {
        this.store = store;
        this.read = JdbcClient.create(store.reader());
        this.write = JdbcClient.create(store.writer());
    }

    /**
     * A photo or document.
     *
     * @param id by which it is asked for
     * @param name its place in the yard, such as {@code documents/heron/engine-plate.jpg}
     * @param boatId the boat it is of; empty for the yard
     * @param contentType as RFC 6838 writes it
     * @param size bytes
     * @param sha256 hash of its content
     * @param by who put it in
     * @param at when
     */
    public record Attachment(
            String id,
            String name,
            String boatId,
            String contentType,
            long size,
            String sha256,
            String by,
            Instant at) {
        private static final int STEPS_WITH_CARD = 4;

        /**
         * The job card it was taken for: the folder below that of its boat.
         *
         * @return its id; empty if it is of no card
         */
        public String about() {
            String[] steps = name.split("/");
            return !boatId.isEmpty() && steps.length == STEPS_WITH_CARD ? steps[2] : "";
        }
    }

    /**
     * Puts one in.
     *
     * @param boatId the boat; empty for the yard
     * @param about the job card it was taken for; empty for none
     * @param fileName as it was called; letters that no file name has become hyphens
     * @param contentType as RFC 6838 writes it, checked by the caller
     * @param content the bytes
     * @param by who puts it in
     * @return what is kept
     * @throws IOException if the store refuses; nothing was kept
     */
    public Attachment put(String boatId, String about, String fileName, String contentType, byte[] content, String by)
            throws IOException {
        String folder = FOLDER + "/" + (boatId.isEmpty() ? "" : boatId + "/") + (about.isEmpty() ? "" : about + "/");
        String name = folder + plain(fileName);
        return putAs(ShelfName.require(name), boatId, contentType, content, by);
    }

    private Attachment putAs(String name, String boatId, String contentType, byte[] content, String by)
            throws IOException {
        Attachment kept = new Attachment(
                UUID.randomUUID().toString(),
                name,
                boatId,
                contentType,
                content.length,
                Chain.of(content),
                by,
                Instant.ofEpochMilli(store.clock().millis()));
        try {
            write.sql("insert into attachment (" + FACTS + ", content) values (?, ?, ?, ?, ?, ?, ?, ?, ?)")
                    .params(
                            kept.id(),
                            kept.name(),
                            kept.boatId(),
                            kept.contentType(),
                            kept.size(),
                            kept.sha256(),
                            kept.by(),
                            kept.at().toEpochMilli(),
                            content)
                    .update();
            return kept;
        } catch (DataAccessException e) {
            throw StoreTrouble.of(store.place(), e);
        }
    }

    /**
     * Those of a boat, the newest first.
     *
     * @param boatId the boat; empty for those of the yard itself
     * @return what is kept, without the content
     */
    public List<Attachment> of(String boatId) {
        return read.sql("select " + FACTS
                        + " from attachment where boat_id = ? and taken_away_at is null order by at desc, name")
                .param(boatId)
                .query(Attachments::attachment)
                .list();
    }

    /**
     * All of them, in the order of their names.
     *
     * @return what is kept, without the content
     */
    public List<Attachment> all() {
        return read.sql("select " + FACTS + " from attachment where taken_away_at is null order by name, at")
                .query(Attachments::attachment)
                .list();
    }

    /**
     * One of them.
     *
     * @param id its id
     * @return what is kept, without the content; empty if there is none or it was taken away
     */
    public Optional<Attachment> one(String id) {
        return read.sql("select " + FACTS + " from attachment where id = ? and taken_away_at is null")
                .param(id)
                .query(Attachments::attachment)
                .optional();
    }

    /**
     * The content of one.
     *
     * @param id its id
     * @return the bytes; empty if there is none or it was taken away
     */
    public Optional<byte[]> content(String id) {
        return read.sql("select content from attachment where id = ? and taken_away_at is null")
                .param(id)
                .query((row, n) -> row.getBytes(1))
                .optional();
    }

    /**
     * Takes one away; the store still keeps it.
     *
     * @param id its id
     * @param by who takes it away
     * @throws IOException if the store refuses
     */
    public void takeAway(String id, String by) throws IOException {
        try {
            write.sql("update attachment set taken_away_by = ?, taken_away_at = ?"
                            + " where id = ? and taken_away_at is null")
                    .params(by, store.clock().millis(), id)
                    .update();
        } catch (DataAccessException e) {
            throw StoreTrouble.of(store.place(), e);
        }
    }

    private static Attachment attachment(java.sql.ResultSet row, int number) throws java.sql.SQLException {
        return new Attachment(
                row.getString(1),
                row.getString(2),
                row.getString(3),
                row.getString(4),
                row.getLong(5),
                row.getString(6),
                row.getString(7),
                Instant.ofEpochMilli(row.getLong(8)));
    }

    private static String plain(String fileName) {
        String last = fileName.substring(Math.max(fileName.lastIndexOf('/'), fileName.lastIndexOf('\\')) + 1);
        String plain = last.replaceAll("[^\\p{L}\\p{N}._ -]+", "-").replaceFirst("^[.]+", "");
        String cut = plain.length() > 100 ? plain.substring(plain.length() - 100) : plain;
        return cut.isBlank() || cut.startsWith(".") ? "document" + cut.strip() : cut;
    }
}
