/** The store on both of its databases: one contract, and what only one of them can show. */
@NullMarked
package sternwright.app.store;

import org.jspecify.annotations.NullMarked;
