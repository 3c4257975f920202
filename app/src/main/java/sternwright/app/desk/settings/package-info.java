/**
 * The yard's settings changed in their own files: rates, season, units, people, hoists, places, tides, and the yard's or makers'
 * figures over those of the programmes.
 *
 * <p>In comes what a text shall say and the version its editor had read; out goes the same text changed where it means something
 * else, proved with all that refers to it before it is written. What a change would do is worked out on a shelf that might be.
 */
@NullMarked
package sternwright.app.desk.settings;

import org.jspecify.annotations.NullMarked;
