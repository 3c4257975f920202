package sternwright.app.web.access;

import org.springframework.security.authentication.LockedException;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UserDetailsChecker;

/** Refuses a locked account after its password was right. */
final class StillOpen implements UserDetailsChecker {
    @Override
    public void check(UserDetails account) {
        if (!account.isAccountNonLocked()) {
            throw new LockedException("locked");
        }
    }
}
