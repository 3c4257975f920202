package sternwright.app.web.crew;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.Role;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.sheet.SeasonSheets;
import sternwright.app.files.sheet.Sheet;
import sternwright.app.files.sheet.TableFile;
import sternwright.app.files.shelf.EditConflict;
import sternwright.app.files.shelf.Kept;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.Writing;
import sternwright.app.web.access.ForManager;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.yard.resource.HighWater;

/** The tide table: how far it reaches, and another one in its place. */
@Controller
@ForOffice
public class TidesPage {
    private static final String PATH = "/settings/tides";
    private static final int SHOWN = 14;

    private final OpenYard yard;
    private final AuditTrail audit;

    TidesPage(OpenYard yard, AuditTrail audit) {
        this.yard = yard;
        this.audit = audit;
    }

    /**
     * A high water to come.
     *
     * @param day the day
     * @param time local time
     * @param height above chart datum
     */
    public record Line(String day, String time, String height) {}

    /**
     * The page.
     *
     * @param reach how far the table reaches
     * @param next the next high waters
     * @param columns of the table
     * @param version of the text; empty if there is none
     * @param problems what is wrong with the table that was sent
     * @param writes whether the reader changes it
     */
    public record View(
            String reach, List<Line> next, String columns, String version, List<Problem> problems, boolean writes) {
        /** Copies the lists. */
        public View {
            next = List.copyOf(next);
            problems = List.copyOf(problems);
        }
    }

    static List<HighWater> table(Shelf shelf, LocalDate today) throws IOException {
        Optional<String> text = shelf.text(SeasonFolder.TIDES);
        return text.isEmpty() ? List.of() : read(SeasonFolder.TIDES, text.get(), today);
    }

    private static List<HighWater> read(String name, String text, LocalDate today) {
        List<Problem> problems = new ArrayList<>();
        List<HighWater> rows = new TableFile(name, text)
                .read(SeasonSheets.TIDES, today, problems).stream()
                        .map(Sheet.Row::value)
                        .sorted(java.util.Comparator.comparing(HighWater::at))
                        .toList();
        if (!problems.isEmpty()) {
            throw new BadInput(problems);
        }
        return rows;
    }

    static String reach(Page page, List<HighWater> table) {
        return table.isEmpty()
                ? page.say("tides.none")
                : page.say(
                        "tides.reach",
                        table.size(),
                        page.figures().date(table.get(0).at().toLocalDate()),
                        page.figures().date(table.get(table.size() - 1).at().toLocalDate()));
    }

    @GetMapping(PATH)
    ModelAndView show(Page page) throws IOException {
        return page.show(Section.SETTINGS, "crew/tides", view(page, List.of()));
    }

    private View view(Page page, List<Problem> problems) throws IOException {
        Shelf shelf = yard.shelf(page.who());
        List<HighWater> table = table(shelf, yard.today());
        List<Line> next = table.stream()
                .filter(h -> !h.at().toLocalDate().isBefore(yard.today()))
                .limit(SHOWN)
                .map(h -> new Line(
                        page.figures().shortDate(h.at().toLocalDate()),
                        h.at().toLocalTime().toString(),
                        page.figures().quantity(h.heightM(), "m")))
                .toList();
        String version = shelf.kept(SeasonFolder.TIDES).map(Kept::version).orElse("");
        return new View(
                reach(page, table), next, SeasonSheets.TIDES.header(), version, problems, page.may(Role.MANAGER));
    }

    @ForManager
    @PostMapping(PATH)
    ModelAndView change(
            Page page,
            @RequestParam("file") MultipartFile file,
            @RequestParam(name = "version", defaultValue = "") String version)
            throws IOException {
        String name = Optional.ofNullable(file.getOriginalFilename())
                .filter(n -> !n.isBlank())
                .orElse("table");
        String text = new String(file.getBytes(), StandardCharsets.UTF_8);
        List<HighWater> table;
        try {
            table = read(name, text, yard.today());
            if (table.isEmpty()) {
                throw BadInput.of(name, "there is no high water in it", SeasonSheets.TIDES.header(), "");
            }
        } catch (BadInput bad) {
            return page.wrong(Section.SETTINGS, "crew/tides", view(page, bad.problems()));
        }
        try (Writing writing = yard.shelf(page.who()).write("tide table changed")) {
            writing.put(SeasonFolder.TIDES, SeasonSheets.TIDES.write(table), version);
            writing.commit();
        } catch (EditConflict conflict) {
            return page.conflict(Section.SETTINGS, PATH, page.say("tides.title"));
        }
        yard.changed();
        audit.note("tides.changed", name, reach(page, table));
        return page.go(PATH, "settings.kept", page.say("tides.title"));
    }
}
