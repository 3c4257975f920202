package sternwright.app.web.boat;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.AuditTrail;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.register.ChangeBoat;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shelf.EditConflict;
import sternwright.app.files.shelf.Kept;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;

/** A boat's file as text: every line that is wrong is told, and whoever opened it before somebody else changed it, too. */
@Controller
@ForOffice
public class BoatTextPage {
    private static final int LEAST_ROWS = 12;
    private static final int MOST_ROWS = 60;

    private final OpenYard yard;
    private final AuditTrail audit;

    BoatTextPage(OpenYard yard, AuditTrail audit) {
        this.yard = yard;
        this.audit = audit;
    }

    /**
     * A line that is wrong.
     *
     * @param problem what is wrong
     * @param line the line as it was typed, empty if the problem has none
     */
    public record Wrong(Problem problem, String line) {}

    /**
     * The page.
     *
     * @param head head of the boat's pages
     * @param text what stands in the field
     * @param version the version it was read in
     * @param rows how high the field is
     * @param wrong what is wrong with it
     * @param theirs what somebody else has made of it meanwhile, empty if nobody has
     */
    public record View(
            BoatSheet.Head head, String text, String version, int rows, List<Wrong> wrong, Optional<String> theirs) {}

    @GetMapping("/boats/{id}/text")
    ModelAndView show(Page page, @PathVariable("id") String id) throws IOException {
        OneBoat one = OneBoat.of(yard.files(), id);
        Kept kept = yard.shelf(page.who()).kept(FolderLayout.boat(id)).orElseThrow(() -> new Missing("boat.one"));
        return page.show(
                Section.BOATS, "boat/text", view(page, one, kept.text(), kept.version(), List.of(), Optional.empty()));
    }

    @PostMapping("/boats/{id}/text")
    ModelAndView change(
            Page page,
            @PathVariable("id") String id,
            @RequestParam("text") String text,
            @RequestParam("version") String version)
            throws IOException {
        OneBoat one = OneBoat.of(yard.files(), id);
        try {
            ChangeBoat.change(yard.shelf(page.who()), id, text, version, yard.today());
        } catch (EditConflict conflict) {
            return meanwhile(page, one, text, conflict);
        } catch (BadInput bad) {
            List<String> lines = text.lines().toList();
            List<Wrong> wrong = bad.problems().stream()
                    .map(p -> new Wrong(
                            p,
                            p.line() > 0 && p.line() <= lines.size()
                                    ? lines.get(p.line() - 1).strip()
                                    : ""))
                    .toList();
            return page.wrong(Section.BOATS, "boat/text", view(page, one, text, version, wrong, Optional.empty()));
        }
        yard.changed();
        audit.note("boat.changed", id, "");
        return page.go("/boats/" + id, "text.done", one.boat().name());
    }

    /** Both texts stand side by side; saving again puts the reader's own in the place of what was just shown. */
    private static ModelAndView meanwhile(Page page, OneBoat one, String text, EditConflict conflict) {
        Kept theirs = conflict.theirs().orElseThrow(() -> new Missing("boat.one"));
        View view = view(page, one, text, theirs.version(), List.of(), Optional.of(theirs.text()));
        ModelAndView shown = page.show(Section.BOATS, "boat/text", view);
        shown.setStatus(HttpStatus.CONFLICT);
        return shown;
    }

    private static View view(
            Page page, OneBoat one, String text, String version, List<Wrong> wrong, Optional<String> theirs) {
        int rows = (int) Math.min(MOST_ROWS, Math.max(LEAST_ROWS, text.lines().count() + 1));
        return new View(one.head(page, "text"), text, version, rows, wrong, theirs);
    }
}
