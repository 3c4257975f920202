/** The pages as a stranger meets them, over the wire: https, proxies, hostile words, other people's things. See docs/security.md. */
@NullMarked
package sternwright.app.guard;

import org.jspecify.annotations.NullMarked;
