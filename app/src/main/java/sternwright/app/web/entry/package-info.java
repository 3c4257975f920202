/**
 * What was typed into forms that write settings.
 *
 * <p>In come the fields of a request and how things stand; out go values, and for each field what is wrong with it. What a file's
 * reader finds wrong with the text that would be written comes back to the field it was typed into.
 */
@NullMarked
package sternwright.app.web.entry;

import org.jspecify.annotations.NullMarked;
