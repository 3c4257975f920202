/** The pages measured from outside: the real process, a real sign-in, requests at a steady rate. */
@NullMarked
package sternwright.bench.serve;

import org.jspecify.annotations.NullMarked;
