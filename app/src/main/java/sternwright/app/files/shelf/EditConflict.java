package sternwright.app.files.shelf;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;

/** Somebody else has changed a text since its editor read it. Neither text is lost: this carries both. */
public final class EditConflict extends BadInput {
    private static final long serialVersionUID = 1;

    private final transient String name;
    private final transient String yours;

    @Nullable
    private final transient Kept theirs;

    /**
     * Tells the second editor.
     *
     * @param name of the text
     * @param yours what the second editor wanted to write
     * @param theirs what stands there now; null if it was taken away
     */
    public EditConflict(String name, String yours, @Nullable Kept theirs) {
        super(List.of(new Problem(
                name,
                0,
                "",
                theirs == null ? "it was taken away since you opened it" : changed(theirs),
                "",
                "Look at what is there now, then save again.")));
        this.name = name;
        this.yours = yours;
        this.theirs = theirs;
    }

    private static String changed(Kept theirs) {
        String who = theirs.by().isEmpty() ? "somebody" : theirs.by();
        return "changed by " + who + " at " + theirs.at() + ", after you opened it";
    }

    /**
     * Which text.
     *
     * @return its name
     */
    public String name() {
        return name;
    }

    /**
     * What the second editor wanted to write.
     *
     * @return the whole text
     */
    public String yours() {
        return yours;
    }

    /**
     * What stands there now, by whom and since when.
     *
     * @return the text with its version; empty if it was taken away
     */
    public Optional<Kept> theirs() {
        return Optional.ofNullable(theirs);
    }
}
