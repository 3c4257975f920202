package sternwright.app.web.entry;

import java.io.IOException;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.SentOnce;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.settings.Difference;
import sternwright.app.desk.settings.SettingsText;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.shelf.EditConflict;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;

/** Keeps what was typed of settings: once, proved, and told in the audit. */
@Component
public class KeepSettings {
    private final OpenYard yard;
    private final AuditTrail audit;
    private final SentOnce once;

    KeepSettings(OpenYard yard, AuditTrail audit, SentOnce once) {
        this.yard = yard;
        this.audit = audit;
        this.once = once;
    }

    /**
     * A change to keep.
     *
     * @param <T> what the text is read to
     * @param text the text
     * @param before what it says
     * @param after what it shall say
     * @param path where to go afterwards
     * @param name what is changed, in words
     */
    public record Change<T>(SettingsText<T> text, T before, T after, String path, String name) {}

    /**
     * What a text of settings says.
     *
     * @param <T> what it is read to
     * @param text the text
     * @return what it says, with its version
     * @throws Missing if there is no such text
     * @throws BadInput with every line that is wrong
     * @throws IOException if what keeps the yard cannot be read
     */
    public <T> SettingsText.Opened<T> open(SettingsText<T> text) throws IOException {
        return text.open(yard.shelf(""), yard.today()).orElseThrow(() -> new Missing("settings.text"));
    }

    /**
     * Keeps a change; the form sends {@code version} and {@code once} along.
     *
     * @param <T> what the text is read to
     * @param page the page
     * @param change the change
     * @return where to go, or that somebody else was faster
     * @throws BadInput with everything that is wrong; nothing was written
     * @throws IOException if what keeps the yard refuses
     */
    public <T> ModelAndView keep(Page page, Change<T> change) throws IOException {
        String version = Optional.ofNullable(page.typed("version")).orElse("");
        String key = Optional.ofNullable(page.typed("once")).orElse("");
        try {
            Optional<Boolean> kept = once.take(key, page.whoId(), () -> {
                change.text().change(yard.shelf(page.who()), change.after(), version, yard.today());
                yard.changed();
                String what = Difference.of(change.text().shape(), change.before(), change.after());
                audit.note("settings.changed", change.name(), what);
                return true;
            });
            return page.go(change.path(), kept.isEmpty() ? "settings.again" : "settings.kept", change.name());
        } catch (EditConflict conflict) {
            return page.conflict(Section.SETTINGS, change.path(), change.name());
        }
    }
}
