package sternwright.app.web.settings;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.validation.BindingResult;
import sternwright.app.account.Account;
import sternwright.app.account.Role;
import sternwright.app.web.page.Field.Choice;
import sternwright.app.web.page.Form;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.State;

/** What the pages about people show and what they are sent. */
public final class PersonForm {
    private PersonForm() {}

    /**
     * A person as sent for the first time.
     *
     * @param fullName the name others read
     * @param name what is typed to sign in
     * @param role what the person may do
     */
    record Added(
            @NotBlank @Size(max = 120) String fullName,

            @NotBlank @Size(max = 80) @Pattern(regexp = "[\\p{L}\\p{N}][\\p{L}\\p{N}._@-]*")
            String name,

            @NotNull Role role) {}

    /**
     * A person as changed.
     *
     * @param fullName the name others read
     * @param role what the person may do
     * @param locked whether signing in is refused
     * @param version the version that was on the page
     */
    record Changed(
            @NotBlank @Size(max = 120) String fullName,
            @NotNull Role role,
            boolean locked,
            int version) {}

    /**
     * One line of the list.
     *
     * @param id the account
     * @param fullName the name others read
     * @param name what is typed to sign in
     * @param role in words
     * @param state how it stands
     */
    public record Person(String id, String fullName, String name, String role, State state) {}

    /**
     * The list.
     *
     * @param people the people
     */
    public record People(List<Person> people) {}

    /**
     * The page that adds a person.
     *
     * @param form the form
     * @param roles the roles to choose from
     */
    public record NewPerson(Form form, List<Choice> roles) {}

    /**
     * The page of one person.
     *
     * @param person the person
     * @param version the version shown
     * @param form the form
     * @param roles the roles to choose from
     */
    public record OnePerson(Person person, int version, Form form, List<Choice> roles) {}

    /**
     * A link to hand over.
     *
     * @param fullName whose
     * @param name what is typed to sign in
     * @param link the link
     * @param days how long it works
     */
    public record Link(String fullName, String name, String link, long days) {}

    static OnePerson view(Page page, Account account, Optional<BindingResult> errors) {
        Form form = errors.map(e -> Form.typed(page, "people", e))
                .orElseGet(() -> Form.of(
                        page,
                        "people",
                        new Changed(account.fullName(), account.role(), account.locked(), account.version())));
        return new OnePerson(person(page, account), account.version(), form, roles(page));
    }

    static Person person(Page page, Account account) {
        return new Person(
                account.id(), account.fullName(), account.name(), role(page, account.role()), state(page, account));
    }

    private static State state(Page page, Account account) {
        if (account.locked()) {
            return new State(page.say("people.state.locked"), State.Mark.BAR, State.Tone.WATCH);
        }
        return account.hasPassword()
                ? new State(page.say("people.state.open"), State.Mark.TICK, State.Tone.PLAIN)
                : new State(page.say("people.state.waiting"), State.Mark.GAP, State.Tone.WATCH);
    }

    static List<Choice> roles(Page page) {
        return Arrays.stream(Role.values())
                .map(r -> new Choice(r.name(), role(page, r)))
                .toList();
    }

    private static String role(Page page, Role role) {
        return page.say("desk.role." + role.name().toLowerCase(Locale.ROOT));
    }

    /** What changed, for the audit. */
    static String difference(Account before, Changed after) {
        StringBuilder said = new StringBuilder();
        if (!before.fullName().equals(after.fullName().strip())) {
            said.append("name ")
                    .append(before.fullName())
                    .append(" \u2192 ")
                    .append(after.fullName().strip())
                    .append("; ");
        }
        if (before.role() != after.role()) {
            said.append("role ")
                    .append(before.role())
                    .append(" \u2192 ")
                    .append(after.role())
                    .append("; ");
        }
        if (before.locked() != after.locked()) {
            said.append(after.locked() ? "locked" : "opened").append("; ");
        }
        return said.toString();
    }
}
