package sternwright.app.account;

import java.io.Serial;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.CredentialsContainer;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.userdetails.UserDetails;

/** The person of a session, as Spring Security carries it; kept in the session without the hash of the password. */
public final class SignedIn implements UserDetails, CredentialsContainer {
    @Serial
    private static final long serialVersionUID = 1;

    private final String id;
    private final String name;
    private final String fullName;
    private final Role role;
    private final boolean locked;

    @Nullable
    private String hash;

    SignedIn(Account account, @Nullable String hash) {
        this.id = account.id();
        this.name = account.name();
        this.fullName = account.fullName();
        this.role = account.role();
        this.locked = account.locked();
        this.hash = hash;
    }

    /**
     * Id of the account.
     *
     * @return never changes
     */
    public String id() {
        return id;
    }

    /**
     * The person's name as others read it.
     *
     * @return such as Ada Invented
     */
    public String fullName() {
        return fullName;
    }

    /**
     * What the person may do.
     *
     * @return the role when the session began
     */
    public Role role() {
        return role;
    }

    @Override
    public Collection<? extends GrantedAuthority> getAuthorities() {
        return List.of(new SimpleGrantedAuthority(role.authority()));
    }

    @Override
    public @Nullable String getPassword() {
        return hash;
    }

    /** Sessions are found by it when an account is locked, so it is the id, which never changes. */
    @Override
    public String getUsername() {
        return id;
    }

    @Override
    public boolean isAccountNonLocked() {
        return !locked;
    }

    @Override
    public void eraseCredentials() {
        hash = null;
    }

    @Override
    public String toString() {
        return name;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SignedIn o && o.id.equals(id);
    }

    @Override
    public int hashCode() {
        return id.hashCode();
    }
}
