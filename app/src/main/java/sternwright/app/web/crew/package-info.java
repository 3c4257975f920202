/**
 * Settings of what the yard works with: engineers with skills, days and absences, hoists, hard standing, steps, and the tide table.
 *
 * <p>In comes what the manager types; out go {@code resources.yaml} changed where it means something else, and {@code tides.csv}. The
 * office reads.
 */
@NullMarked
package sternwright.app.web.crew;

import org.jspecify.annotations.NullMarked;
