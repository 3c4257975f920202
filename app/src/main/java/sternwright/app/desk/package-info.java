/**
 * What a person does at the desk, one class for each deed.
 *
 * <p>Comes in: a plain request with a day called today. A deed loads facts, asks the pure core, appends facts; it prints
 * nothing and reads no clock. Goes out: records to show. Commands, pages and programs all call the same deeds.
 */
@NullMarked
package sternwright.app.desk;

import org.jspecify.annotations.NullMarked;
