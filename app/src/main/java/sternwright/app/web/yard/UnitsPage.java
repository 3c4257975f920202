package sternwright.app.web.yard;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.Role;
import sternwright.app.desk.settings.SettingsText;
import sternwright.app.files.problem.BadInput;
import sternwright.app.web.access.ForManager;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.entry.Entered;
import sternwright.app.web.entry.KeepSettings;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.measure.unit.Quantity;
import sternwright.measure.unit.Unit;
import sternwright.measure.unit.YardUnits;
import sternwright.yard.Yard;

/** The units the yard works in: figures are shown in them, and meant in them where none is typed. */
@Controller
@ForOffice
public class UnitsPage {
    private static final String PATH = "/settings/units";
    private static final String TEMPLATE = "yard/units";
    private static final Map<String, Quantity> QUANTITIES = quantities();

    private final KeepSettings keep;

    UnitsPage(KeepSettings keep) {
        this.keep = keep;
    }

    private static Map<String, Quantity> quantities() {
        Map<String, Quantity> all = new LinkedHashMap<>();
        all.put("temperature", Quantity.TEMPERATURE);
        all.put("volume", Quantity.VOLUME);
        all.put("pressure", Quantity.PRESSURE);
        all.put("clearance", Quantity.LENGTH);
        all.put("torque", Quantity.TORQUE);
        all.put("power", Quantity.POWER);
        return all;
    }

    /**
     * The page.
     *
     * @param form the form
     * @param fields a choice for each quantity
     * @param version the version it was read in
     * @param writes whether the reader changes it
     */
    public record View(Entered form, List<Field> fields, String version, boolean writes) {
        /** Copies the list. */
        public View {
            fields = List.copyOf(fields);
        }
    }

    @GetMapping(PATH)
    ModelAndView show(Page page) throws IOException {
        SettingsText.Opened<Yard> opened = keep.open(SettingsText.YARD);
        YardUnits u = opened.value().units();
        Map<String, String> values = Map.of(
                "temperature", u.temperature().symbol(),
                "volume", u.volume().symbol(),
                "pressure", u.pressure().symbol(),
                "clearance", u.length().symbol(),
                "torque", u.torque().symbol(),
                "power", u.power().symbol());
        return page.show(
                Section.SETTINGS, TEMPLATE, view(page, Entered.stands(page, "units", values), opened.version()));
    }

    private static View view(Page page, Entered form, String version) {
        List<Field> fields = QUANTITIES.entrySet().stream()
                .map(q -> form.field(q.getKey())
                        .of(Unit.of(q.getValue()).stream()
                                .map(u -> new Field.Choice(u.symbol(), u.symbol()))
                                .toList()))
                .toList();
        return new View(form, fields, version, page.may(Role.MANAGER));
    }

    @ForManager
    @PostMapping(PATH)
    ModelAndView change(Page page) throws IOException {
        Yard y = keep.open(SettingsText.YARD).value();
        Entered form = Entered.sent(page, "units");
        Yard after = y.in(chosen(page, form));
        if (!form.good()) {
            return page.wrong(Section.SETTINGS, TEMPLATE, view(page, form, form.text("version")));
        }
        try {
            return keep.keep(
                    page, new KeepSettings.Change<>(SettingsText.YARD, y, after, PATH, page.say("settings.units")));
        } catch (BadInput bad) {
            form.refused(bad, Map.of());
            return page.wrong(Section.SETTINGS, TEMPLATE, view(page, form, form.text("version")));
        }
    }

    private static YardUnits chosen(Page page, Entered form) {
        return new YardUnits(
                chosen(page, form, "temperature"),
                chosen(page, form, "volume"),
                chosen(page, form, "pressure"),
                chosen(page, form, "clearance"),
                chosen(page, form, "torque"),
                chosen(page, form, "power"));
    }

    private static Unit chosen(Page page, Entered form, String name) {
        List<Unit> offered = Unit.of(Objects.requireNonNull(QUANTITIES.get(name)));
        return offered.stream()
                .filter(u -> u.symbol().equals(form.text(name)))
                .findFirst()
                .orElseGet(() -> {
                    form.wrong(name, page.say("field.NotBlank"));
                    return offered.get(0);
                });
    }
}
