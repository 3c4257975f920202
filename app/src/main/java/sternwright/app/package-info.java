/** The one program: files, paper, desk and commands around the pure core. */
@NullMarked
package sternwright.app;

import org.jspecify.annotations.NullMarked;
