package sternwright.app.files.shelf;

import sternwright.app.files.problem.BadInput;

/** Names of texts: relative, with slashes, nothing hidden, nothing that leads out of the yard. */
public final class ShelfName {
    private static final String PART = "[^./\\\\\\p{Cntrl}:][^/\\\\\\p{Cntrl}:]*";
    private static final String WHOLE = PART + "(/" + PART + ")*";
    private static final int LONGEST = 200;

    private ShelfName() {}

    /**
     * Refuses a name that leads anywhere else.
     *
     * @param name the name
     * @return the same name
     * @throws BadInput if it is no name of a text
     */
    public static String require(String name) {
        if (name.length() > LONGEST || !name.matches(WHOLE)) {
            throw BadInput.of(
                    "name",
                    "found \"" + name + "\"",
                    "a name such as boats/heron.yaml inside the yard",
                    "No dots in front, no backslash, at most " + LONGEST + " letters.");
        }
        return name;
    }

    /**
     * A name in a folder.
     *
     * @param folder the folder; empty for the top
     * @param name in it
     * @return the whole name
     */
    public static String in(String folder, String name) {
        return folder.isEmpty() ? name : folder + "/" + name;
    }
}
