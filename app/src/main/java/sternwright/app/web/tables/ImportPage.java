package sternwright.app.web.tables;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.SentOnce;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.tables.ImportBoats;
import sternwright.app.desk.tables.ImportTable;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.sheet.BoatsSheet;
import sternwright.app.files.sheet.HistorySheet;
import sternwright.app.files.sheet.HoursSheet;
import sternwright.app.files.sheet.TableFile;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.TrialShelf;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;

/** Boats, hours or history from a spreadsheet: looked at first, then taken in whole. */
@Controller
@ForOffice
public class ImportPage {
    private static final String PATH = "/boats/import";
    private static final int ROWS_SHOWN = 6;
    private static final int PROBLEMS_SHOWN = 200;

    private final OpenYard yard;
    private final AuditTrail audit;
    private final SentOnce once;
    private final Drafts drafts;

    ImportPage(OpenYard yard, AuditTrail audit, SentOnce once, Drafts drafts) {
        this.yard = yard;
        this.audit = audit;
        this.once = once;
        this.drafts = drafts;
    }

    /** What a table holds. */
    enum Kind {
        BOATS,
        HOURS,
        HISTORY;

        String columns() {
            return switch (this) {
                case BOATS -> BoatsSheet.SHEET.header();
                case HOURS -> HoursSheet.MANY_BOATS.header();
                case HISTORY -> HistorySheet.MANY_BOATS.header();
            };
        }
    }

    /**
     * A kind of table.
     *
     * @param name in words
     * @param columns its columns
     */
    public record Columns(String name, String columns) {}

    /**
     * The page that takes a file.
     *
     * @param kind the field of the kind
     * @param kinds what each kind holds
     * @param problems what is wrong with the table that was sent
     * @param more how many problems more there are than shown
     * @param fault what is wrong with the file itself, empty if nothing is
     */
    public record View(Field kind, List<Columns> kinds, List<Problem> problems, int more, String fault) {}

    /**
     * What a table would do.
     *
     * @param draft by which it is taken in
     * @param name of its file
     * @param says what it would add, in words
     * @param rows its first lines
     * @param update whether boats that are there are changed
     * @param asRead whether readings out of line are kept
     */
    public record Preview(String draft, String name, String says, List<String> rows, boolean update, boolean asRead) {
        /** Copies the list. */
        public Preview {
            rows = List.copyOf(rows);
        }
    }

    @GetMapping(PATH)
    ModelAndView show(Page page) {
        return page.show(Section.BOATS, "tables/import", view(page, "", List.of(), ""));
    }

    private static View view(Page page, String kind, List<Problem> problems, String fault) {
        List<Field.Choice> kinds = Stream.of(Kind.values())
                .map(k -> new Field.Choice(k.name(), word(page, k)))
                .toList();
        return new View(
                Field.plain("kind", page.say("import.kind"), kind).of(kinds),
                Stream.of(Kind.values())
                        .map(k -> new Columns(word(page, k), k.columns()))
                        .toList(),
                problems.stream()
                        .limit(PROBLEMS_SHOWN)
                        .map(p -> onPage(page, p))
                        .toList(),
                Math.max(0, problems.size() - PROBLEMS_SHOWN),
                fault);
    }

    /** What is asked for on a command line is ticked on the page. */
    private static Problem onPage(Page page, Problem p) {
        String advice = p.advice()
                .replace("say --as-read", page.say("import.tick", page.say("import.asread")))
                .replace("Say --update", page.say("import.tick.first", page.say("import.update")));
        return new Problem(p.file(), p.line(), p.field(), p.found(), p.expected(), advice);
    }

    private static String word(Page page, Kind kind) {
        return page.say("import.kind." + kind.name().toLowerCase(Locale.ROOT));
    }

    @PostMapping(PATH)
    ModelAndView look(
            Page page,
            @RequestParam(name = "kind", defaultValue = "") String kindTyped,
            @RequestParam("file") MultipartFile file,
            @RequestParam(name = "update", defaultValue = "false") boolean update,
            @RequestParam(name = "asRead", defaultValue = "false") boolean asRead)
            throws IOException {
        Optional<Kind> kind =
                Stream.of(Kind.values()).filter(k -> k.name().equals(kindTyped)).findFirst();
        Optional<String> text = text(file);
        if (kind.isEmpty() || text.isEmpty() || text.get().isBlank()) {
            String fault = page.say(
                    kind.isEmpty() ? "import.fault.kind" : text.isEmpty() ? "import.fault.text" : "import.fault.empty");
            return page.wrong(Section.BOATS, "tables/import", view(page, kindTyped, List.of(), fault));
        }
        TableFile table = new TableFile(name(file), text.get());
        try {
            String says =
                    take(page, new TrialShelf(yard.shelf(page.who())), kind.get(), table, update, asRead, "would");
            String id = drafts.keep(page.whoId(), new Drafts.Draft(kind.get().name(), table.name(), table.text()));
            List<String> rows = table.text().lines().limit(ROWS_SHOWN).toList();
            return page.show(
                    Section.BOATS, "tables/preview", new Preview(id, table.name(), says, rows, update, asRead));
        } catch (BadInput bad) {
            return page.wrong(Section.BOATS, "tables/import", view(page, kindTyped, bad.problems(), ""));
        }
    }

    @PostMapping(PATH + "/take")
    ModelAndView takeIn(
            Page page,
            @RequestParam("draft") String id,
            @RequestParam(name = "update", defaultValue = "false") boolean update,
            @RequestParam(name = "asRead", defaultValue = "false") boolean asRead)
            throws IOException {
        Optional<Drafts.Draft> draft = drafts.find(id, page.whoId());
        if (draft.isEmpty()) {
            return page.go("/boats", "import.gone");
        }
        Kind kind = Kind.valueOf(draft.get().kind());
        TableFile table = new TableFile(draft.get().name(), draft.get().content());
        try {
            Optional<String> says = once.take(id, page.whoId(), () -> {
                String done = take(page, yard.shelf(page.who()), kind, table, update, asRead, "did");
                yard.changed();
                audit.note("table.imported", table.name(), done);
                return done;
            });
            drafts.drop(id, page.whoId());
            return page.go("/boats", says.isEmpty() ? "import.gone" : "import.done", says.orElse(""));
        } catch (BadInput bad) {
            return page.wrong(Section.BOATS, "tables/import", view(page, kind.name(), bad.problems(), ""));
        }
    }

    private String take(
            Page page, Shelf shelf, Kind kind, TableFile table, boolean update, boolean asRead, String tense)
            throws IOException {
        if (kind == Kind.BOATS) {
            ImportBoats.Imported in = ImportBoats.take(shelf, table, update, yard.today());
            return page.say("import." + tense + ".boats", in.added(), in.changed(), in.same());
        }
        ImportTable.Imported in = kind == Kind.HOURS
                ? ImportTable.hours(shelf, table, yard.today(), asRead)
                : ImportTable.history(shelf, table, yard.today(), asRead);
        return page.say("import." + tense + ".lines", in.added(), in.boats(), in.known());
    }

    /** The text of a file, empty if it is not UTF-8. */
    private static Optional<String> text(MultipartFile file) throws IOException {
        try {
            return Optional.of(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(file.getBytes()))
                    .toString());
        } catch (CharacterCodingException notText) {
            return Optional.empty();
        }
    }

    private static String name(MultipartFile file) {
        String name = Optional.ofNullable(file.getOriginalFilename()).orElse("");
        String last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
        String plain = last.replaceAll("\\p{Cntrl}", "");
        return plain.isEmpty() ? "table.csv" : plain.substring(0, Math.min(120, plain.length()));
    }
}
