package sternwright.app.files.template;

import sternwright.app.files.kind.BoatShape;
import sternwright.app.files.shape.YamlText;
import sternwright.boat.Boat;

/** Boats as text of their files. */
public final class BoatText {
    private BoatText() {}

    /**
     * A new boat with comments.
     *
     * @param boat the boat made by {@link BoatTemplate}
     * @param known what was known of it; the rest is marked as assumed
     * @return the text of its file
     */
    public static String commented(Boat boat, BoatTemplate.Known known) {
        return YamlText.of(BoatShape.BOAT.write(boat), new BoatComments(known));
    }

    /**
     * A boat without comments.
     *
     * @param boat the boat
     * @return the text of its file
     */
    public static String plain(Boat boat) {
        return YamlText.of(BoatShape.BOAT.write(boat), YamlText.NONE);
    }
}
