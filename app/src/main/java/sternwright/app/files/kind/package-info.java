/**
 * The kinds of file a yard's folder holds, each as one shape: yard, berths, boat, programme, catalogue.
 *
 * <p>Comes in: nothing; these are descriptions. Goes out: shapes that read and write the records of {@code core}, the
 * published JSON Schemas and the pages of docs/file-formats.md. Limits are those a sane file keeps (a boat is not 300 m
 * long); they guard against slips of the pen and carry no trade figure.
 */
@NullMarked
package sternwright.app.files.kind;

import org.jspecify.annotations.NullMarked;
