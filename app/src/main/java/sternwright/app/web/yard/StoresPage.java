package sternwright.app.web.yard;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.Role;
import sternwright.app.desk.register.ShortName;
import sternwright.app.desk.settings.SettingsText;
import sternwright.app.files.problem.BadInput;
import sternwright.app.web.access.ForManager;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.entry.Entered;
import sternwright.app.web.entry.KeepSettings;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.yard.StoreItem;
import sternwright.yard.Yard;

/** What the stores sell: every price, and one more thing. */
@Controller
@ForOffice
public class StoresPage {
    private static final String PATH = "/settings/stores";
    private static final String TEMPLATE = "yard/stores";

    private final KeepSettings keep;

    StoresPage(KeepSettings keep) {
        this.keep = keep;
    }

    /**
     * The page.
     *
     * @param form the form
     * @param prices a price for each thing
     * @param currency of every price
     * @param version the version it was read in
     * @param writes whether the reader changes it
     */
    public record View(Entered form, List<Field> prices, String currency, String version, boolean writes) {
        /** Copies the list. */
        public View {
            prices = List.copyOf(prices);
        }
    }

    @GetMapping(PATH)
    ModelAndView show(Page page) throws IOException {
        SettingsText.Opened<Yard> opened = keep.open(SettingsText.YARD);
        Map<String, String> values = new LinkedHashMap<>();
        opened.value().stores().forEach(s -> values.put(field(s), Entered.plain(s.price())));
        Entered form = Entered.stands(page, "stores", values);
        return page.show(Section.SETTINGS, TEMPLATE, view(page, form, opened.value(), opened.version()));
    }

    private static String field(StoreItem item) {
        return "price-" + item.id();
    }

    private static View view(Page page, Entered form, Yard yard, String version) {
        String currency = yard.currency().getCurrencyCode();
        List<Field> prices = yard.stores().stream()
                .map(s -> {
                    form.label(field(s), s.name());
                    return form.field(field(s)).as("number").in(page.say("stores.unit", currency, s.unit()));
                })
                .toList();
        return new View(form, prices, currency, version, page.may(Role.MANAGER));
    }

    @ForManager
    @PostMapping(PATH)
    ModelAndView change(Page page) throws IOException {
        Yard before = keep.open(SettingsText.YARD).value();
        Entered form = Entered.sent(page, "stores");
        view(page, form, before, "");
        List<StoreItem> items = new ArrayList<>();
        Map<String, String> fields = new LinkedHashMap<>();
        for (StoreItem s : before.stores()) {
            items.add(new StoreItem(s.id(), s.name(), s.unit(), form.figure(field(s))));
            fields.put("[" + s.id() + "].price", field(s));
        }
        if (!form.text("name").isEmpty()) {
            Set<String> taken = items.stream().map(StoreItem::id).collect(Collectors.toSet());
            String id = ShortName.free(form.text("name"), taken);
            items.add(new StoreItem(id, form.text("name"), form.needed("unit"), form.figure("price")));
            fields.put("[" + id + "].price", "price");
        }
        if (form.good()) {
            try {
                return keep.keep(
                        page,
                        new KeepSettings.Change<>(
                                SettingsText.YARD, before, before.stores(items), PATH, page.say("settings.stores")));
            } catch (BadInput bad) {
                form.refused(bad, fields);
            }
        }
        return page.wrong(Section.SETTINGS, TEMPLATE, view(page, form, before, form.text("version")));
    }
}
