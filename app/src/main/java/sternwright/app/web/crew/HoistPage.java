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
import sternwright.yard.resource.Hoist;
import sternwright.yard.resource.Resources;
import sternwright.yard.resource.TidalDock;

/** One hoist, crane or slip: what it takes, how often a day, and whether it needs the tide. */
@Controller
@ForOffice
public class HoistPage {
    private static final String PATH = "/settings/hoists";
    private static final double USUAL_CLEARANCE_M = 0.3;
    private static final Member<Hoist> HOISTS = new Member<>(
            "hoists",
            PATH,
            Resources::hoists,
            r -> hoists -> new Resources(hoists, r.standing(), r.crew(), r.times(), r.prices()),
            Hoist::id,
            Map.of(
                    "name", "name",
                    "max-mass-kg", "mass",
                    "max-beam-m", "beam",
                    "lifts-a-day", "lifts",
                    "depth-m", "depth",
                    "clearance-m", "clearance"));

    private final KeepSettings keep;

    HoistPage(KeepSettings keep) {
        this.keep = keep;
    }

    @GetMapping(PATH + "/{id}")
    ModelAndView show(Page page, @PathVariable("id") String id) throws IOException {
        return HOISTS.show(page, keep, id, HoistPage::stands, HoistPage::view);
    }

    @ForManager
    @PostMapping(PATH + "/{id}")
    ModelAndView change(Page page, @PathVariable("id") String id) throws IOException {
        return HOISTS.change(page, keep, id, (form, hoistId, before) -> typed(form, hoistId), HoistPage::view);
    }

    private static Map<String, String> stands(Optional<Hoist> there) {
        Map<String, String> values = new LinkedHashMap<>();
        there.ifPresent(h -> {
            values.put("name", h.name());
            values.put("mass", Entered.plain(h.maxMassKg()));
            values.put("beam", Entered.plain(h.maxBeamM()));
            values.put("lifts", Entered.plain(h.liftsADay()));
            TidalDock dock = h.tidal();
            values.put("depth", dock == null ? "" : Entered.plain(dock.depthM()));
            values.put("clearance", dock == null ? "" : Entered.plain(dock.clearanceM()));
        });
        return values;
    }

    private static MemberView view(Page page, Entered form, String id, String version) {
        List<MemberView.Group> groups = new ArrayList<>(List.of(
                MemberView.Group.of(
                        "",
                        "",
                        List.of(
                                form.field("name"),
                                form.field("mass").as("number").in("kg"),
                                form.field("beam").as("number").in("m"),
                                form.field("lifts").as("number"))),
                MemberView.Group.of(
                        page.say("hoists.tide"),
                        page.say("hoists.tide.hint"),
                        List.of(
                                form.field("depth").as("number").in("m").optional(),
                                form.field("clearance").as("number").in("m").optional()))));
        if (!id.equals(Member.NEW)) {
            groups.add(MemberView.Group.of(
                    page.say("hoists.leaves"), "", List.of(form.field("gone").as("check"))));
        }
        String title = id.equals(Member.NEW) ? page.say("hoists.new") : page.say("hoists.of", form.text("name"));
        return new MemberView(
                title, page.say("hoists.lead"), PATH + "/" + id, groups, form, version, page.may(Role.MANAGER));
    }

    private static Hoist typed(Entered form, String id) {
        Double depth = form.number("depth");
        Double clearance = form.number("clearance");
        TidalDock dock = depth == null ? null : new TidalDock(depth, clearance == null ? USUAL_CLEARANCE_M : clearance);
        return new Hoist(id, form.text("name"), form.figure("mass"), form.figure("beam"), form.count("lifts"), dock);
    }
}
