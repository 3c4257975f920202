package sternwright.app.web.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.desk.derived.MadeOnce;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.protect.EnteredReading;
import sternwright.app.desk.protect.KeptReports;
import sternwright.app.desk.protect.ProtectRequest;
import sternwright.app.files.YardFiles;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.paper.Paper;
import sternwright.app.paper.ProtectionSheet;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.boat.Boat;
import sternwright.protection.metal.ReferenceElectrode;
import sternwright.protection.report.ProtectionReport;

/** How one boat's metals are protected, and what readings taken aboard say. */
@Controller
@ForAll
public class ProtectionPage {
    private final OpenYard yard;
    private final KeptReports reports;
    private final MadeOnce made;

    ProtectionPage(OpenYard yard, KeptReports reports, MadeOnce made) {
        this.made = made;
        this.yard = yard;
        this.reports = reports;
    }

    @GetMapping("/protection/{boat}")
    ModelAndView show(Page page, @PathVariable("boat") String id, @RequestParam Map<String, String> sent) {
        YardFiles files = yard.files();
        Boat boat = boat(files, id);
        boolean shore = !"out".equals(sent.get("shore"));
        TypedReadings typed = TypedReadings.of(sent);
        List<Problem> wrong = new ArrayList<>();
        List<EnteredReading> readings = typed.taken(page, wrong);
        KeptReports.Answer answer = reports.of(files, boat, request(shore, wrong.isEmpty() ? readings : List.of()));
        KeptReports.Answer plain = answer.report() == null && !readings.isEmpty()
                ? reports.of(files, boat, request(shore, List.of()))
                : answer;
        if (plain != answer) {
            wrong.addAll(answer.problems());
        }
        ReferenceElectrode electrode =
                ReferenceElectrode.find(typed.electrode()).orElse(ReferenceElectrode.SILVER_CHLORIDE_SEAWATER);
        ProtectionView view = new ProtectionText(page, electrode)
                .view(boat, shore, plain.report(), plain.report() == null ? plain.problems() : wrong, typed);
        ModelAndView shown = page.show(Section.PROTECTION, "protection/boat", view);
        if (!view.problems().isEmpty()) {
            shown.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        return shown;
    }

    /** The report on paper. */
    @GetMapping(value = "/protection/{boat}/report.pdf", produces = MediaType.APPLICATION_PDF_VALUE)
    ResponseEntity<byte[]> paper(Page page, @PathVariable("boat") String id) {
        YardFiles files = yard.files();
        Boat boat = boat(files, id);
        KeptReports.Answer answer = reports.of(files, boat, request(true, List.of()));
        ProtectionReport report = answer.report();
        if (report == null) {
            throw new BadInput(answer.problems());
        }
        ProtectionSheet sheet = new ProtectionSheet(
                report,
                ReferenceElectrode.SILVER_CHLORIDE_SEAWATER,
                files.yard().name(),
                files.yard().invented());
        byte[] pdf = made.of(
                "report " + answer.number() + " " + page.figures().mark(),
                () -> Paper.of(sheet, page.figures()).pdf());
        return ResponseEntity.ok()
                .header("Content-Disposition", "inline; filename=\"" + Paper.name(sheet) + ".pdf\"")
                .body(pdf);
    }

    private ProtectRequest request(boolean shore, List<EnteredReading> readings) {
        ProtectRequest usual = ProtectRequest.on(yard.today());
        return new ProtectRequest(
                usual.today(), shore, usual.coatingYears(), usual.figures(), usual.wantedYears(), readings);
    }

    private static Boat boat(YardFiles files, String id) {
        return Optional.ofNullable(files.boats().get(id)).orElseThrow(() -> new Missing("protection.one"));
    }
}
