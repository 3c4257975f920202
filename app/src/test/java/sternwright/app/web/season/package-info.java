/** The season's pages: what is read together. */
@NullMarked
package sternwright.app.web.season;

import org.jspecify.annotations.NullMarked;
