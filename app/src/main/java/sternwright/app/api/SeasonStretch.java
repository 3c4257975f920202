package sternwright.app.api;

import sternwright.app.desk.season.SeasonLine;
import sternwright.app.desk.season.SeasonView;

/**
 * A planned season with one stretch of its operations: a large yard's are many megabytes.
 *
 * @param season the season; its operations are those of the stretch
 * @param page which stretch, from 1
 * @param size how long a stretch is
 * @param total how many operations there are
 */
public record SeasonStretch(SeasonView season, int page, int size, int total) {
    /** Cuts a stretch out. */
    static SeasonStretch of(SeasonView all, int page, int size) {
        Stretch<SeasonLine> some = Stretch.of(all.operations(), page, size, o -> o);
        return new SeasonStretch(all.with(some.items()), page, size, some.total());
    }
}
