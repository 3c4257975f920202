/**
 * Shapes: one description of a file kind from which it is read, written, published as JSON Schema and documented.
 *
 * <p>Comes in: YAML 1.2 composed to nodes with their lines (snakeyaml-engine), or records to write. Goes out: records and
 * every problem with line and field path; trees to write; JSON Schema 2020-12; pages of documentation. A shape is a small
 * value; nothing here knows what a boat is. That the published schema and the reader agree is kept by tests that ask an
 * independent validator (docs/decisions/0010).
 */
@NullMarked
package sternwright.app.files.shape;

import org.jspecify.annotations.NullMarked;
