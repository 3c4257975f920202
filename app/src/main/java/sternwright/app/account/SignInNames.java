package sternwright.app.account;

import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.stereotype.Component;

/** Finds the account of a name that somebody typed. */
@Component
class SignInNames implements UserDetailsService {
    private final Accounts accounts;

    SignInNames(Accounts accounts) {
        this.accounts = accounts;
    }

    @Override
    public UserDetails loadUserByUsername(String name) {
        Account account = accounts.byName(name).orElseThrow(() -> new UsernameNotFoundException("no such account"));
        String hash = accounts.passwordHash(account.id())
                .orElseThrow(() -> new UsernameNotFoundException("no password was set yet"));
        return new SignedIn(account, hash);
    }
}
