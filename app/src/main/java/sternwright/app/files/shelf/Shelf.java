package sternwright.app.files.shelf;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The texts of one yard by name. Names are relative, with slashes: {@code yard.yaml}, {@code boats/heron.yaml}. */
public interface Shelf {
    /**
     * Where it is, as a person knows it.
     *
     * @return a folder, or words for a store
     */
    String place();

    /**
     * The texts that stand directly in a folder.
     *
     * @param folder such as {@code boats}; empty for the top
     * @return their whole names in order; none if there is no such folder
     * @throws IOException if the keeper cannot be read
     */
    List<String> names(String folder) throws IOException;

    /**
     * A text with its version.
     *
     * @param name of the text
     * @return the text; empty if there is none of this name
     * @throws java.nio.charset.CharacterCodingException if it is not UTF-8 text
     * @throws IOException if the keeper cannot be read
     */
    Optional<Kept> kept(String name) throws IOException;

    /**
     * What a text says.
     *
     * @param name of the text
     * @return the text; empty if there is none of this name
     * @throws java.nio.charset.CharacterCodingException if it is not UTF-8 text
     * @throws IOException if the keeper cannot be read
     */
    default Optional<String> text(String name) throws IOException {
        return kept(name).map(Kept::text);
    }

    /**
     * Whether there is a text of this name.
     *
     * @param name of the text
     * @return true if there is
     * @throws IOException if the keeper cannot be read
     */
    boolean holds(String name) throws IOException;

    /**
     * The shelf as it is now, for readers that look at many texts: what others write meanwhile does not show, where the keeper
     * can do that. A folder cannot; there a deed is never half seen, but two deeds may be.
     *
     * @return a shelf to read from
     * @throws IOException if the keeper cannot be read
     */
    Shelf still() throws IOException;

    /**
     * What changes whenever any text changes, whoever changes it.
     *
     * @return a word to compare with an earlier one
     * @throws IOException if the keeper cannot be read
     */
    String state() throws IOException;

    /**
     * All texts in all folders, each with what changes whenever it changes; cheaper than reading them.
     *
     * @return marks by name, in order of names
     * @throws IOException if the keeper cannot be read
     */
    Map<String, String> marks() throws IOException;

    /**
     * Begins a change. Nobody else writes on this shelf until the change is closed, so that what a deed has read is still so
     * when it writes.
     *
     * @param why what is done, in a few words; a store keeps it beside the texts
     * @return the change; close it when all is written
     * @throws IOException if another program keeps the shelf too long, or the keeper cannot be written
     */
    Writing write(String why) throws IOException;

    /**
     * What was worked out from these texts and is kept beside them.
     *
     * @return empty where nothing but texts is kept
     * @throws IOException if the keeper cannot be read
     */
    default Optional<WorkedOut> workedOut() throws IOException {
        return Optional.empty();
    }
}
