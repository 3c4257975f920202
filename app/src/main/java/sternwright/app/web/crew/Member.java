package sternwright.app.web.crew;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.desk.register.ShortName;
import sternwright.app.desk.settings.SettingsText;
import sternwright.app.files.problem.BadInput;
import sternwright.app.web.entry.Entered;
import sternwright.app.web.entry.KeepSettings;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.yard.resource.Resources;

/**
 * A list of what the yard works with, one page for each member of it.
 *
 * @param <T> a member
 * @param prefix prefix of its words
 * @param path address of its pages
 * @param all the list
 * @param with the resources with another list
 * @param id of a member
 * @param fields form fields by the end of the path in the file
 */
record Member<T>(
        String prefix,
        String path,
        Function<Resources, List<T>> all,
        Function<Resources, Function<List<T>, Resources>> with,
        Function<T, String> id,
        Map<String, String> fields) {
    /** Part of an address for one that is not there yet. */
    static final String NEW = "new";

    /** Shows a form. */
    interface Show {
        /** The page with a form. */
        MemberView view(Page page, Entered form, String memberId, String version);
    }

    /** Reads a form. */
    interface Read<T> {
        /** What was typed, with an id; use it only if nothing is wrong. */
        T typed(Entered form, String memberId, @Nullable T before);
    }

    Optional<T> one(Resources resources, String memberId) {
        if (memberId.equals(NEW)) {
            return Optional.empty();
        }
        return Optional.of(all.apply(resources).stream()
                .filter(m -> id.apply(m).equals(memberId))
                .findFirst()
                .orElseThrow(() -> new Missing(prefix + ".one")));
    }

    ModelAndView show(
            Page page, KeepSettings keep, String memberId, Function<Optional<T>, Map<String, String>> stands, Show show)
            throws IOException {
        SettingsText.Opened<Resources> opened = keep.open(SettingsText.RESOURCES);
        Entered form = Entered.stands(page, prefix, stands.apply(one(opened.value(), memberId)));
        return page.show(Section.SETTINGS, "crew/member", show.view(page, form, memberId, opened.version()));
    }

    ModelAndView change(Page page, KeepSettings keep, String memberId, Read<T> read, Show show) throws IOException {
        Resources before = keep.open(SettingsText.RESOURCES).value();
        T member = one(before, memberId).orElse(null);
        Entered form = Entered.sent(page, prefix);
        MemberView view = show.view(page, form, memberId, form.text("version"));
        String name = form.needed("name");
        T typed = read.typed(form, member == null ? free(before, name) : memberId, member);
        if (form.good()) {
            UnaryOperator<List<T>> how = list -> changed(list, member, typed, form.ticked("gone"));
            Resources after = with.apply(before).apply(how.apply(all.apply(before)));
            try {
                return keep.keep(
                        page,
                        new KeepSettings.Change<>(SettingsText.RESOURCES, before, after, "/settings/resources", name));
            } catch (BadInput bad) {
                form.refused(bad, fields);
            }
        }
        return page.wrong(Section.SETTINGS, "crew/member", show.view(page, form, memberId, view.version()));
    }

    private String free(Resources resources, String name) {
        Set<String> taken = new HashSet<>(all.apply(resources).stream().map(id).collect(Collectors.toSet()));
        taken.add(NEW);
        return ShortName.free(name.isEmpty() ? NEW : name, taken);
    }

    private List<T> changed(List<T> list, @Nullable T before, T after, boolean gone) {
        List<T> changed = new ArrayList<>(list);
        if (before == null) {
            changed.add(after);
        } else if (gone) {
            changed.remove(before);
        } else {
            changed.replaceAll(m -> Objects.equals(m, before) ? after : m);
        }
        return changed;
    }
}
