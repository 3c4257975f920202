/**
 * Photos and documents of boats.
 *
 * <p>In come bytes and the name they had; out goes what is kept. What a file is, its content tells, never its name: the first bytes
 * of each kind are those its standard gives (ISO 32000 for PDF, ISO/IEC 10918-1 for JPEG, ISO/IEC 15948 for PNG, RFC 9649 for WebP,
 * ISO/IEC 23008-12 for HEIC).
 */
@NullMarked
package sternwright.app.desk.documents;

import org.jspecify.annotations.NullMarked;
