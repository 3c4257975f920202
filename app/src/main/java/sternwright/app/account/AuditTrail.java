package sternwright.app.account;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Repository;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;

/** Who changed what, and when; lines are added and never changed. */
@Repository
public class AuditTrail {
    private static final int LONGEST = 2000;

    private final JdbcClient jdbc;
    private final Clock clock;

    AuditTrail(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /**
     * One line of the audit.
     *
     * @param at when
     * @param who the person's name then; empty if nobody had signed in
     * @param address where from
     * @param deed what was done, such as {@code boat.registered}; the page words it
     * @param subject what it was done to, such as the id of a boat
     * @param detail more, never a secret; may be empty
     */
    public record Line(Instant at, String who, String address, String deed, String subject, String detail) {}

    /**
     * Adds a line for the person and the address of the request at hand.
     *
     * @param deed what was done, such as {@code boat.registered}
     * @param subject what it was done to
     * @param detail more; never a password, a link or a code
     */
    public void note(String deed, String subject, String detail) {
        Optional<SignedIn> person = signedIn();
        note(person.map(SignedIn::id).orElse(""), person.map(SignedIn::fullName).orElse(""), deed, subject, detail);
    }

    /**
     * Adds a line for a person who is not signed in yet.
     *
     * @param account whose line it is
     * @param deed what was done
     * @param subject what it was done to
     * @param detail more; never a secret
     */
    public void note(Account account, String deed, String subject, String detail) {
        note(account.id(), account.fullName(), deed, subject, detail);
    }

    private void note(String id, String who, String deed, String subject, String detail) {
        jdbc.sql("insert into audit (id, at, account_id, who, address, deed, subject, detail)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?)")
                .params(
                        UUID.randomUUID().toString(),
                        clock.millis(),
                        id,
                        who,
                        address(),
                        deed,
                        cut(subject, 200),
                        cut(detail, LONGEST))
                .update();
    }

    /**
     * How many lines there are.
     *
     * @return at least 0
     */
    public long count() {
        return jdbc.sql("select count(*) from audit").query(Long.class).single();
    }

    /**
     * Some lines, the newest first.
     *
     * @param from how many newer ones to leave out
     * @param most how many at most
     * @return the lines
     */
    public List<Line> lines(int from, int most) {
        return jdbc.sql(
                        "select at, who, address, deed, subject, detail from audit order by at desc, id limit ? offset ?")
                .params(most, from)
                .query((row, n) -> new Line(
                        Instant.ofEpochMilli(row.getLong(1)),
                        row.getString(2),
                        row.getString(3),
                        row.getString(4),
                        row.getString(5),
                        row.getString(6)))
                .list();
    }

    private static Optional<SignedIn> signedIn() {
        return Optional.ofNullable(SecurityContextHolder.getContext().getAuthentication())
                .map(a -> a.getPrincipal())
                .filter(SignedIn.class::isInstance)
                .map(SignedIn.class::cast);
    }

    private static String address() {
        return RequestContextHolder.getRequestAttributes() instanceof ServletRequestAttributes request
                ? Optional.ofNullable(request.getRequest().getRemoteAddr()).orElse("")
                : "";
    }

    private static String cut(String text, int most) {
        return text.length() <= most ? text : text.substring(0, most - 1) + "\u2026";
    }
}
