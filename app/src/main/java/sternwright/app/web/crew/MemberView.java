package sternwright.app.web.crew;

import java.util.List;
import sternwright.app.web.entry.Entered;
import sternwright.app.web.page.Field;

/**
 * The page of one engineer, hoist, kind of place, or of the yard's steps.
 *
 * @param title its heading
 * @param lead what to know
 * @param action where it is sent
 * @param groups its fields
 * @param form what is wrong with them
 * @param version the version of the file it was read in
 * @param writes whether the reader changes it
 */
public record MemberView(
        String title, String lead, String action, List<Group> groups, Entered form, String version, boolean writes) {
    /** Copies the list. */
    public MemberView {
        groups = List.copyOf(groups);
    }

    /**
     * Fields under a heading.
     *
     * @param heading the heading; empty for none
     * @param hint what to know
     * @param rows fields that stand beside each other
     */
    public record Group(String heading, String hint, List<List<Field>> rows) {
        /** Copies the lists. */
        public Group {
            rows = rows.stream().map(List::copyOf).toList();
        }

        static Group of(String heading, String hint, List<Field> fields) {
            return new Group(heading, hint, fields.stream().map(List::of).toList());
        }
    }
}
