package sternwright.app.paper.drawing;

/**
 * What is said about one part on a picture of its installation.
 *
 * @param partId the part
 * @param key its letter, the same as in the table
 * @param sign how it stands
 * @param words what a reader aloud says, such as "raw-water pump: overdue"
 * @param href where the mark leads, such as {@code #part-port-raw-water-pump}
 */
public record PartMark(String partId, String key, Sign sign, String words, String href) {
    /** Signs that differ without colour, drawn in a square of twelve. */
    public enum Sign {
        /** A filled triangle: past its last sensible day. */
        OVERDUE("M6 1 11.2 10.5H.8Z", "var(--accent)"),
        /** A filled disc: due. */
        DUE("M6 1.5a4.5 4.5 0 1 0 .01 0Z", "var(--ink)"),
        /** A ring with a gap: nobody knows when it was last done. */
        UNKNOWN("M6 1.5A4.5 4.5 0 1 0 10.5 6H9A3 3 0 1 1 6 3Z", "var(--ink)"),
        /** A bar: refused by the owner. */
        REFUSED("M1.500 4.900h9v2.200h-9Z", "var(--ink)"),
        /** A ring: to come. */
        COMING("M6 1.500a4.500 4.500 0 1 0 .01 0ZM6 3a3 3 0 1 1-.01 0Z", "var(--soft)");

        private final String outline;
        private final String ink;

        Sign(String outline, String ink) {
            this.outline = outline;
            this.ink = ink;
        }

        /** An SVG path in a square of twelve. */
        public String outline() {
            return outline;
        }

        String ink() {
            return ink;
        }
    }
}
