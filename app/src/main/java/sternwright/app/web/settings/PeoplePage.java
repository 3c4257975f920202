package sternwright.app.web.settings;

import jakarta.validation.Valid;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import sternwright.app.account.Account;
import sternwright.app.account.Accounts;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.OneTimeLinks;
import sternwright.app.account.Role;
import sternwright.app.web.access.ForManager;
import sternwright.app.web.access.Sessions;
import sternwright.app.web.page.Form;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;

/** The people who sign in: added, changed, locked, and given a link to set their password. */
@Controller
@ForManager
public class PeoplePage {
    private static final String PEOPLE = "/settings/people";

    private final Accounts accounts;
    private final OneTimeLinks links;
    private final Sessions sessions;
    private final AuditTrail audit;

    PeoplePage(Accounts accounts, OneTimeLinks links, Sessions sessions, AuditTrail audit) {
        this.accounts = accounts;
        this.links = links;
        this.sessions = sessions;
        this.audit = audit;
    }

    @GetMapping(PEOPLE)
    ModelAndView list(Page page) {
        return page.show(Section.SETTINGS, "settings/people", people(page));
    }

    @GetMapping(PEOPLE + "/new")
    ModelAndView blank(Page page) {
        PersonForm.NewPerson view = new PersonForm.NewPerson(Form.blank(page, "people"), PersonForm.roles(page));
        return page.show(Section.SETTINGS, "settings/person-new", view);
    }

    @PostMapping(PEOPLE + "/new")
    ModelAndView add(Page page, @Valid @ModelAttribute("typed") PersonForm.Added typed, BindingResult errors) {
        Optional<Account> made =
                errors.hasErrors() ? Optional.empty() : accounts.add(typed.name(), typed.fullName(), typed.role());
        if (made.isEmpty()) {
            if (!errors.hasErrors()) {
                errors.rejectValue("name", "taken");
            }
            Form form = Form.typed(page, "people", errors);
            return page.wrong(
                    Section.SETTINGS, "settings/person-new", new PersonForm.NewPerson(form, PersonForm.roles(page)));
        }
        Account person = made.get();
        audit.note("account.added", person.name(), person.role().name());
        return link(page, person);
    }

    @GetMapping(PEOPLE + "/{id}")
    ModelAndView one(Page page, @PathVariable("id") String id) {
        Account person = person(id);
        return page.show(Section.SETTINGS, "settings/person", PersonForm.view(page, person, Optional.empty()));
    }

    @PostMapping(PEOPLE + "/{id}")
    ModelAndView change(
            Page page,
            @PathVariable("id") String id,
            @Valid @ModelAttribute("typed") PersonForm.Changed typed,
            BindingResult errors) {
        Account before = person(id);
        boolean lastManager = before.role() == Role.MANAGER && !accounts.anotherManager(id);
        if (!errors.hasErrors() && lastManager && typed.role() != Role.MANAGER) {
            errors.rejectValue("role", "last");
        }
        if (!errors.hasErrors() && lastManager && typed.locked()) {
            errors.rejectValue("locked", "last");
        }
        if (errors.hasErrors()) {
            return page.wrong(Section.SETTINGS, "settings/person", PersonForm.view(page, before, Optional.of(errors)));
        }
        boolean changed = typed.version() == before.version()
                && accounts.change(before, typed.fullName(), typed.role(), typed.locked());
        if (!changed) {
            return page.conflict(Section.SETTINGS, PEOPLE + "/" + id, before.fullName());
        }
        if (typed.role() != before.role() || typed.locked()) {
            sessions.end(id);
        }
        audit.note("account.changed", before.name(), PersonForm.difference(before, typed));
        return page.go(PEOPLE, "people.saved", typed.fullName());
    }

    @PostMapping(PEOPLE + "/{id}/link")
    ModelAndView newLink(Page page, @PathVariable("id") String id) {
        Account person = person(id);
        audit.note("account.link", person.name(), "");
        return link(page, person);
    }

    /** The link is shown once, on the answer itself; it is in no address and no log. */
    private ModelAndView link(Page page, Account person) {
        String link = ServletUriComponentsBuilder.fromCurrentContextPath()
                .path("/password/" + links.make(person.id()))
                .toUriString();
        PersonForm.Link view = new PersonForm.Link(person.fullName(), person.name(), link, OneTimeLinks.LIFE.toDays());
        return page.show(Section.SETTINGS, "settings/person-link", view);
    }

    private Account person(String id) {
        return accounts.byId(id).orElseThrow(() -> new Missing("people.one"));
    }

    private PersonForm.People people(Page page) {
        List<PersonForm.Person> all =
                accounts.all().stream().map(a -> PersonForm.person(page, a)).toList();
        return new PersonForm.People(all);
    }
}
