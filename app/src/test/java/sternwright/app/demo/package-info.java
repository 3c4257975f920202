/** Tests of the invented yard. */
@NullMarked
package sternwright.app.demo;

import org.jspecify.annotations.NullMarked;
