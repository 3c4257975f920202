package sternwright.app.web.due;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.util.UriComponentsBuilder;
import sternwright.app.desk.campaign.CampaignLetters;
import sternwright.app.desk.campaign.CampaignLine;
import sternwright.app.desk.campaign.CampaignList;
import sternwright.app.desk.campaign.CampaignsOfYard;
import sternwright.app.desk.derived.MadeOnce;
import sternwright.app.desk.find.BoatsOfYard;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.files.problem.BadInput;
import sternwright.app.paper.Figures;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Pager;
import sternwright.app.web.page.Section;

/** One work on all boats whose part has come of age: as a list, a sheet and letters to the owners. */
@Controller
@ForOffice
public class CampaignPage {
    private static final String PATH = "/due/campaign";
    private static final int LINES = 100;
    private static final int DAYS_TO_ANSWER = 28;

    private final OpenYard yard;
    private final BoatsOfYard boats;
    private final CampaignsOfYard campaigns;
    private final MadeOnce made;

    CampaignPage(OpenYard yard, BoatsOfYard boats, CampaignsOfYard campaigns, MadeOnce made) {
        this.made = made;
        this.yard = yard;
        this.boats = boats;
        this.campaigns = campaigns;
    }

    @GetMapping(PATH)
    ModelAndView show(
            Page page,
            @RequestParam Map<String, String> typed,
            @RequestParam(name = Pager.NAME, defaultValue = "1") int number) {
        CampaignAsked asked = CampaignAsked.of(page, typed);
        List<CampaignLine> all =
                asked.campaign() == null ? List.of() : list(asked).lines();
        Pager pager = new Pager(number, LINES, all.size());
        DueLines words = new DueLines(page, yard.files());
        List<CampaignView.Line> lines =
                pager.cut(all).stream().map(l -> line(page, words, l)).toList();
        int boats = (int) all.stream().map(l -> l.row().boat().id()).distinct().count();
        Field by = Field.plain(
                        "by",
                        page.say("due.campaign.by"),
                        yard.today().plusDays(DAYS_TO_ANSWER).toString())
                .as("date");
        CampaignView view = new CampaignView(
                fields(page, typed),
                asked.wrong(),
                asked.campaign() != null,
                lines,
                pager,
                boats,
                question(typed),
                by,
                CampaignAsked.NAMES.stream()
                        .map(n -> new Field.Choice(n, typed.getOrDefault(n, "")))
                        .toList());
        return asked.wrong().isEmpty()
                ? page.show(Section.DUE, "due/campaign", view)
                : page.wrong(Section.DUE, "due/campaign", view);
    }

    @GetMapping(PATH + ".csv")
    ResponseEntity<byte[]> sheet(Page page, @RequestParam Map<String, String> typed) {
        byte[] csv = list(CampaignAsked.of(page, typed)).csv().getBytes(StandardCharsets.UTF_8);
        return answer(new MediaType("text", "csv", StandardCharsets.UTF_8), "attachment", "campaign.csv", csv);
    }

    @GetMapping(PATH + ".pdf")
    ResponseEntity<byte[]> letters(Page page, @RequestParam Map<String, String> typed) {
        CampaignList list = list(CampaignAsked.of(page, typed));
        LocalDate by = day(typed.getOrDefault("by", ""));
        if (by == null || by.isBefore(yard.today())) {
            throw BadInput.of(
                    "by",
                    "found \"" + typed.getOrDefault("by", "") + "\"",
                    "a day from " + yard.today() + " on",
                    "It stands in the letters as the day by which the owner is asked to answer.");
        }
        String what = String.join(
                " ",
                "letters",
                yard.state(),
                yard.today().toString(),
                list.campaign().toString(),
                by.toString());
        byte[] pdf = made.of(
                what + " " + page.locale(),
                () -> CampaignLetters.of(list, yard.files(), by, page.locale()).pdf());
        return answer(MediaType.APPLICATION_PDF, "inline", "letters.pdf", pdf);
    }

    private static ResponseEntity<byte[]> answer(MediaType type, String how, String name, byte[] bytes) {
        return ResponseEntity.ok()
                .contentType(type)
                .cacheControl(CacheControl.noStore())
                .header(HttpHeaders.CONTENT_DISPOSITION, how + "; filename=\"" + name + "\"")
                .body(bytes);
    }

    private CampaignList list(CampaignAsked asked) {
        var campaign = asked.campaign();
        if (campaign == null) {
            throw BadInput.of(
                    "campaign",
                    asked.wrong().isEmpty() ? "no work is named" : String.join(" ", asked.wrong()),
                    "a work, and an age in years or hours",
                    "Choose them on the page of campaigns.");
        }
        return campaigns.of(campaign);
    }

    private List<Field> fields(Page page, Map<String, String> typed) {
        List<Field.Choice> rules = boats.works().stream()
                .map(w -> new Field.Choice(w.rule(), w.words()))
                .toList();
        return List.of(
                field(page, typed, "rule").of(rules),
                field(page, typed, "years")
                        .as("number")
                        .in(page.say("due.campaign.unit.years"))
                        .optional(),
                field(page, typed, "hours").as("number").in("h").optional(),
                field(page, typed, "name").optional());
    }

    private static Field field(Page page, Map<String, String> typed, String name) {
        return Field.plain(name, page.say("due.campaign." + name), typed.getOrDefault(name, ""));
    }

    private static CampaignView.Line line(Page page, DueLines words, CampaignLine l) {
        Figures f = page.figures();
        LocalDate since = l.since();
        Integer months = l.months();
        Double hours = l.hours();
        List<String> age = new ArrayList<>();
        if (since == null || months == null) {
            age.add(page.say("due.campaign.age.unknown"));
        } else {
            age.add(page.say("due.campaign.age", months / 12, months % 12, f.shortDate(since)));
        }
        if (hours != null) {
            age.add(page.say("due.campaign.run", f.quantity(Math.rint(hours), "h")));
        }
        DueView.Line line = words.line(l.row().due());
        return new CampaignView.Line(
                line.boatId(),
                line.boat(),
                l.row().boat().owner().name(),
                line.part(),
                line.work(),
                String.join(", ", age),
                line.on(),
                line.state());
    }

    private static String question(Map<String, String> typed) {
        UriComponentsBuilder address = UriComponentsBuilder.newInstance();
        CampaignAsked.NAMES.forEach(n -> address.queryParam(n, "{" + n + "}"));
        Map<String, String> values = new java.util.HashMap<>();
        CampaignAsked.NAMES.forEach(n -> values.put(n, typed.getOrDefault(n, "")));
        return String.valueOf(address.encode().buildAndExpand(values).toUriString());
    }

    private static @Nullable LocalDate day(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException e) {
            return null;
        }
    }
}
