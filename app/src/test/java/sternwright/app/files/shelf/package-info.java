/** What every keeper of texts does, and the folder as one of them. */
@NullMarked
package sternwright.app.files.shelf;

import org.jspecify.annotations.NullMarked;
