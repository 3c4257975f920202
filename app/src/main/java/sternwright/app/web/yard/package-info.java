/**
 * Settings of the yard itself: rates and tariff, the year and the days it works, the units it works in.
 *
 * <p>In comes what the manager types; out goes {@code yard.yaml} changed where it means something else. The office reads.
 */
@NullMarked
package sternwright.app.web.yard;

import org.jspecify.annotations.NullMarked;
