/**
 * The deeds of the desk for other programs, as JSON under {@code /api}, and calendars under {@code /calendar}.
 *
 * <p>In come requests with a person's token; out go the same records the command line prints with {@code --json}, names in lower
 * case with hyphens, dates as ISO 8601, long lists in stretches. What cannot be taken is answered as RFC 9457 problem details with every
 * problem listed. Changes of a text are conditional (RFC 9110, If-Match). The description by OpenAPI 3.1 stands at {@code
 * /api/openapi}.
 */
@NullMarked
package sternwright.app.api;

import org.jspecify.annotations.NullMarked;
