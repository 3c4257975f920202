package sternwright.boat;

import org.jspecify.annotations.Nullable;

/**
 * The person whose boat it is.
 *
 * @param name as written on estimates
 * @param contact telephone or e-mail, null if not known
 */
public record Owner(String name, @Nullable String contact) {}
