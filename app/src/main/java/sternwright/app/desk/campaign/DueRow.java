package sternwright.app.desk.campaign;

import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.due.Due;

/**
 * One work of the yard's due list with all around it.
 *
 * @param due the work
 * @param boat the boat, with her owner
 * @param berthName her berth as people say it
 * @param installation the installation
 * @param part the part as registered
 * @param kindName its kind as people say it
 */
public record DueRow(Due due, Boat boat, String berthName, Installation installation, Part part, String kindName) {
    /** The same part with another work. */
    DueRow with(Due other) {
        return new DueRow(other, boat, berthName, installation, part, kindName);
    }
}
