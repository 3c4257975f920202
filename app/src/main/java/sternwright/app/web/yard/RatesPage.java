package sternwright.app.web.yard;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
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
import sternwright.yard.LengthBand;
import sternwright.yard.Tariff;
import sternwright.yard.Yard;

/** What the yard charges: labour, tax, lifts by length, hard standing, call-outs. */
@Controller
@ForOffice
public class RatesPage {
    private static final String PATH = "/settings/rates";
    private static final String TEMPLATE = "yard/rates";
    private static final String UP_TO = "up-to-";
    private static final int BLANK_ROWS = 2;
    private static final Map<String, String> FIELDS = Map.of(
            "labour-per-hour", "labour",
            "set-up-minutes", "setUp",
            "tax-percent", "tax",
            "tax-name", "taxName",
            "hard-standing-per-metre-week", "standing",
            "call-out-afloat", "callOut",
            "work-visit-ashore", "ashore",
            "loss-of-use-per-week", "loss",
            "diver-hour", "diver");

    private final KeepSettings keep;

    RatesPage(KeepSettings keep) {
        this.keep = keep;
    }

    /**
     * A row of the tariff of lifts.
     *
     * @param upTo longest boat
     * @param price what she pays
     */
    public record Band(Field upTo, Field price) {}

    /**
     * The page.
     *
     * @param form the fields
     * @param bands lifts by length
     * @param currency of every price
     * @param version the version it was read in
     * @param writes whether the reader changes it
     */
    public record View(Entered form, List<Band> bands, String currency, String version, boolean writes) {
        /** Copies the list. */
        public View {
            bands = List.copyOf(bands);
        }
    }

    @GetMapping(PATH)
    ModelAndView show(Page page) throws IOException {
        SettingsText.Opened<Yard> yard = keep.open(SettingsText.YARD);
        Entered form = Entered.stands(page, "rates", stands(yard.value()));
        return page.show(Section.SETTINGS, TEMPLATE, view(page, form, yard.version()));
    }

    private static View view(Page page, Entered form, String version) {
        List<Band> bands = new ArrayList<>();
        int rows = form.rows(UP_TO, page.may(Role.MANAGER) ? BLANK_ROWS : 0);
        for (int i = 0; i < rows; i++) {
            form.label(upTo(i), page.say("rates.upTo", i + 1));
            form.label(price(i), page.say("rates.price", i + 1));
            bands.add(new Band(form.field(upTo(i)), form.field(price(i))));
        }
        return new View(form, bands, form.text("currency"), version, page.may(Role.MANAGER));
    }

    private static String upTo(int row) {
        return UP_TO + row;
    }

    private static String price(int row) {
        return "price-" + row;
    }

    private static Map<String, String> stands(Yard yard) {
        Tariff tariff = yard.tariff();
        Map<String, String> values = new LinkedHashMap<>();
        values.put("currency", yard.currency().getCurrencyCode());
        values.put("taxName", yard.taxName());
        values.put("tax", Entered.plain(yard.taxPercent()));
        values.put("labour", Entered.plain(yard.labourPerHour()));
        values.put("setUp", Entered.plain(yard.setUpMinutes()));
        values.put("standing", Entered.plain(tariff.hardStandingPerMetreWeek()));
        values.put("callOut", Entered.plain(tariff.callOutAfloat()));
        values.put("ashore", Entered.plain(tariff.workVisitAshore()));
        values.put("diver", Entered.plain(tariff.diverHour()));
        values.put("loss", Entered.plain(tariff.lossOfUsePerWeek()));
        for (int i = 0; i < tariff.lifts().size(); i++) {
            values.put(upTo(i), Entered.plain(tariff.lifts().get(i).upToLengthM()));
            values.put(price(i), Entered.plain(tariff.lifts().get(i).price()));
        }
        return values;
    }

    @ForManager
    @PostMapping(PATH)
    ModelAndView change(Page page) throws IOException {
        Yard before = keep.open(SettingsText.YARD).value();
        Entered form = Entered.sent(page, "rates");
        String version = form.text("version");
        view(page, form, version);
        Yard after = typed(page, form, before, form.rows(UP_TO, 0));
        if (!form.good()) {
            return page.wrong(Section.SETTINGS, TEMPLATE, view(page, form, version));
        }
        try {
            return keep.keep(
                    page,
                    new KeepSettings.Change<>(SettingsText.YARD, before, after, PATH, page.say("settings.rates")));
        } catch (BadInput bad) {
            form.refused(bad, FIELDS);
            return page.wrong(Section.SETTINGS, TEMPLATE, view(page, form, version));
        }
    }

    private static Yard typed(Page page, Entered form, Yard y, int rows) {
        Tariff tariff = new Tariff(
                bands(page, form, rows),
                form.figure("standing"),
                form.figure("callOut"),
                form.figure("ashore"),
                form.figure("loss"),
                form.figure("diver"));
        return y.rates(
                currency(page, form, y),
                form.needed("taxName"),
                form.figure("tax"),
                form.figure("labour"),
                form.figure("setUp"),
                tariff);
    }

    private static Currency currency(Page page, Entered form, Yard before) {
        try {
            return Currency.getInstance(form.needed("currency").toUpperCase(java.util.Locale.ROOT));
        } catch (IllegalArgumentException unknown) {
            form.wrong("currency", page.say("rates.currency.unknown"));
            return before.currency();
        }
    }

    /** A row left empty is no band. */
    private static List<LengthBand> bands(Page page, Entered form, int rows) {
        List<LengthBand> bands = new ArrayList<>();
        Set<Double> lengths = new TreeSet<>();
        for (int i = 0; i < rows; i++) {
            if (form.text(upTo(i)).isEmpty() && form.text(price(i)).isEmpty()) {
                continue;
            }
            double length = form.figure(upTo(i));
            double price = form.figure(price(i));
            if (form.good() && !(length > 0)) {
                form.wrong(upTo(i), page.say("field.Positive"));
            } else if (form.good() && !lengths.add(length)) {
                form.wrong(upTo(i), page.say("rates.upTo.twice"));
            } else if (form.good() && price < 0) {
                form.wrong(price(i), page.say("field.PositiveOrZero"));
            }
            bands.add(new LengthBand(length, price));
        }
        if (bands.isEmpty()) {
            form.wrong(upTo(0), page.say("field.NotBlank"));
        }
        return bands;
    }
}
