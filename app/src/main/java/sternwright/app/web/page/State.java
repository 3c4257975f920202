package sternwright.app.web.page;

import java.util.Locale;

/**
 * How something stands: a word first, a mark beside it, and a tone of the ink. Never by tone alone.
 *
 * @param word the word
 * @param mark the mark
 * @param tone the tone
 */
public record State(String word, Mark mark, Tone tone) {
    /** Shapes that differ without colour. */
    public enum Mark {
        /** A filled triangle: past its time, or unsafe. */
        TRIANGLE,
        /** A filled disc: to be done now. */
        DISC,
        /** A ring: to come. */
        RING,
        /** A ring with a gap: not known. */
        GAP,
        /** A tick: done or fine. */
        TICK,
        /** A bar: refused, locked or stopped. */
        BAR
    }

    /** How strong the ink is. */
    public enum Tone {
        /** Asks for something to be done: the accent. */
        ACT,
        /** Worth a look: full ink, bold. */
        WATCH,
        /** Plain. */
        PLAIN,
        /** Behind the rest. */
        SOFT;

        /**
         * Name of the tone in the style sheet.
         *
         * @return such as {@code act}
         */
        public String css() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Outline of the mark in a square of twelve.
     *
     * @return an SVG path
     */
    public String outline() {
        return switch (mark) {
            case TRIANGLE -> "M6 1 11.2 10.5H.8Z";
            case DISC -> "M6 1.5a4.5 4.5 0 1 0 .01 0Z";
            case RING -> "M6 1.5a4.5 4.5 0 1 0 .01 0ZM6 3a3 3 0 1 1-.01 0Z";
            case GAP -> "M6 1.5A4.5 4.5 0 1 0 10.5 6H9A3 3 0 1 1 6 3Z";
            case TICK -> "M1 6.4 2.3 5 4.8 7.6 9.8 2l1.3 1.2L4.9 10.2Z";
            case BAR -> "M1.5 4.9h9v2.2h-9Z";
        };
    }
}
