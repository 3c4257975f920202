package sternwright.app.web.crew;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.Role;
import sternwright.app.web.access.ForManager;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.entry.Entered;
import sternwright.app.web.entry.KeepSettings;
import sternwright.app.web.page.Page;
import sternwright.yard.resource.Resources;
import sternwright.yard.resource.StandingClass;

/** Places on hard standing of one length. */
@Controller
@ForOffice
public class PlacesPage {
    private static final String PATH = "/settings/places";
    private static final Member<StandingClass> PLACES = new Member<>(
            "places",
            PATH,
            Resources::standing,
            r -> places -> new Resources(r.hoists(), places, r.crew(), r.times(), r.prices()),
            StandingClass::id,
            Map.of("name", "name", "up-to-length-m", "upTo", "places", "count"));

    private final KeepSettings keep;

    PlacesPage(KeepSettings keep) {
        this.keep = keep;
    }

    @GetMapping(PATH + "/{id}")
    ModelAndView show(Page page, @PathVariable("id") String id) throws IOException {
        return PLACES.show(page, keep, id, PlacesPage::stands, PlacesPage::view);
    }

    @ForManager
    @PostMapping(PATH + "/{id}")
    ModelAndView change(Page page, @PathVariable("id") String id) throws IOException {
        return PLACES.change(
                page,
                keep,
                id,
                (form, placeId, before) ->
                        new StandingClass(placeId, form.text("name"), form.figure("upTo"), form.count("count")),
                PlacesPage::view);
    }

    private static Map<String, String> stands(Optional<StandingClass> there) {
        Map<String, String> values = new LinkedHashMap<>();
        there.ifPresent(p -> {
            values.put("name", p.name());
            values.put("upTo", Entered.plain(p.upToLengthM()));
            values.put("count", Entered.plain(p.places()));
        });
        return values;
    }

    private static MemberView view(Page page, Entered form, String id, String version) {
        List<MemberView.Group> groups = new ArrayList<>(List.of(MemberView.Group.of(
                "",
                "",
                List.of(
                        form.field("name"),
                        form.field("upTo").as("number").in("m"),
                        form.field("count").as("number")))));
        if (!id.equals(Member.NEW)) {
            groups.add(MemberView.Group.of(
                    page.say("places.leaves"), "", List.of(form.field("gone").as("check"))));
        }
        String title = id.equals(Member.NEW) ? page.say("places.new") : page.say("places.of", form.text("name"));
        return new MemberView(
                title, page.say("places.lead"), PATH + "/" + id, groups, form, version, page.may(Role.MANAGER));
    }
}
