package sternwright.app.account;

import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.stereotype.Component;

/** Finds the account of a name that somebody typed. */
@Component
public class SignInNames {
    private final Accounts accounts;

    SignInNames(Accounts accounts) {
        this.accounts = accounts;
    }

    /**
     * The account of a name, with the hash of its password.
     *
     * @param name as typed
     * @return the account as Spring Security carries it
     * @throws UsernameNotFoundException if there is none, or it has no password yet
     */
    public UserDetails of(String name) {
        Account account = accounts.byName(name).orElseThrow(() -> new UsernameNotFoundException("no such account"));
        String hash = accounts.passwordHash(account.id())
                .orElseThrow(() -> new UsernameNotFoundException("no password was set yet"));
        return new SignedIn(account, hash);
    }
}
