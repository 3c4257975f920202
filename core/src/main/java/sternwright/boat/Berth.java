package sternwright.boat;

import java.time.MonthDay;
import org.jspecify.annotations.Nullable;

/**
 * Where a boat lies.
 *
 * @param id short name
 * @param name as people say it
 * @param latitudeDeg latitude, north positive, −90 to 90; its sign tells the hemisphere
 * @param water the water
 * @param firstFrost first night of frost to be ready for, null where it never freezes
 * @param lastFrost last night of frost in spring, null where it never freezes
 * @param hotMarina anodes go unusually fast here
 * @param shorePower what boats here are plugged into
 */
public record Berth(
        String id,
        String name,
        double latitudeDeg,
        Water water,
        @Nullable MonthDay firstFrost,
        @Nullable MonthDay lastFrost,
        boolean hotMarina,
        ShorePower shorePower) {
    /**
     * Whether the year is turned round.
     *
     * @return true south of the equator
     */
    public boolean southern() {
        return latitudeDeg < 0;
    }
}
