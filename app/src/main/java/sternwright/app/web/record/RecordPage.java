package sternwright.app.web.record;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.SentOnce;
import sternwright.app.desk.due.DueWork;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.recording.RecordWork;
import sternwright.app.desk.recording.TypedWork;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.sheet.Sheet;
import sternwright.app.paper.Words;
import sternwright.app.web.access.ForCrew;
import sternwright.app.web.boat.DueMark;
import sternwright.app.web.boat.OneBoat;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.due.Due;
import sternwright.finding.Severity;
import sternwright.history.MeterReading;
import sternwright.history.ServiceEntry;

/** Works are chosen, then recorded together: how each ended, what was measured, when and by whom. */
@Controller
@ForCrew
public class RecordPage {
    private static final String PATH = "/boats/{id}/record";

    private final OpenYard yard;
    private final AuditTrail audit;
    private final SentOnce once;

    RecordPage(OpenYard yard, AuditTrail audit, SentOnce once) {
        this.yard = yard;
        this.audit = audit;
        this.once = once;
    }

    @GetMapping(PATH)
    ModelAndView show(
            Page page,
            @PathVariable("id") String id,
            @RequestParam(name = "work", required = false) @Nullable List<String> chosen,
            @RequestParam(name = "asked", defaultValue = "") String asked) {
        OneBoat one = OneBoat.of(yard.files(), id);
        List<Due> works = works(id, chosen);
        if (works.isEmpty()) {
            return asked.isEmpty()
                    ? page.show(Section.BOATS, "record/choose", choices(page, one, ""))
                    : page.wrong(Section.BOATS, "record/choose", choices(page, one, page.say("record.choose.none")));
        }
        RecordForm form = new RecordForm(page, one, works, new TypedVisit(page, one, works, yard.today()));
        return page.show(Section.BOATS, "record/record", form.blank(yard.today()));
    }

    private List<Due> works(String id, @Nullable List<String> chosen) {
        List<String> keys = chosen == null ? List.of() : chosen;
        return yard.dues(id).stream()
                .filter(d -> keys.contains(TypedVisit.key(d)))
                .sorted(DueMark.PRESSING)
                .toList();
    }

    private RecordSheet.Choices choices(Page page, OneBoat one, String wrong) {
        List<RecordSheet.Choice> now = new ArrayList<>();
        List<RecordSheet.Choice> rest = new ArrayList<>();
        for (Due due :
                yard.dues(one.boat().id()).stream().sorted(DueMark.PRESSING).toList()) {
            (DueMark.now(due) ? now : rest)
                    .add(new RecordSheet.Choice(
                            TypedVisit.key(due),
                            "work-" + (now.size() + rest.size()),
                            due.rule().work(),
                            one.name(page, due.part()),
                            DueMark.of(page, due.state())));
        }
        List<Field.Choice> happenings = new DueWork(one.files())
                .happenings().stream()
                        .map(h -> new Field.Choice(h, h.replace('-', ' ')))
                        .toList();
        Field happening =
                Field.plain("what", page.say("record.happened.what"), "").of(happenings);
        return new RecordSheet.Choices(one.head(page, "record"), now, rest, happening, wrong);
    }

    @GetMapping(PATH + "/judge")
    ModelAndView judge(
            Page page,
            @PathVariable("id") String id,
            @RequestParam("key") String key,
            @RequestParam("reading") String reading,
            @RequestParam("field") String field) {
        OneBoat one = OneBoat.of(yard.files(), id);
        List<Due> works = works(id, List.of(key));
        RecordSheet.Said said = works.isEmpty()
                ? RecordSheet.Said.NOTHING
                : new TypedVisit(page, one, works.subList(0, 1), yard.today()).one(reading, page.typed(field));
        return page.show(Section.BOATS, "record/said", said);
    }

    @PostMapping(PATH)
    ModelAndView write(
            Page page,
            @PathVariable("id") String id,
            @RequestParam("work") List<String> chosen,
            @RequestParam(name = "once", defaultValue = "") String key,
            @RequestParam(name = "look", defaultValue = "") String look)
            throws IOException {
        OneBoat one = OneBoat.of(yard.files(), id);
        List<Due> works = works(id, chosen);
        TypedVisit visit = new TypedVisit(page, one, works, yard.today());
        RecordForm form = new RecordForm(page, one, works, visit);
        List<ServiceEntry> entries = visit.entries();
        List<MeterReading> meters = visit.meters(form.engines());
        if (!visit.wrong().isEmpty()) {
            return page.wrong(Section.BOATS, "record/record", form.typed(false, false));
        }
        if (!look.isEmpty()) {
            return page.show(Section.BOATS, "record/record", form.typed(true, false));
        }
        List<Sheet.Row<ServiceEntry>> rows = new ArrayList<>();
        entries.forEach(e -> rows.add(new Sheet.Row<>(rows.size() + 1, e)));
        RecordWork.Said said = new RecordWork.Said(page.say("record.source"), rows, meters);
        try {
            boolean asRead = visit.typed("asRead").equals("true");
            Optional<RecordWork.Recorded> recorded = once.take(key, page.whoId(), () -> record(page, id, said, asRead));
            return recorded.isEmpty()
                    ? page.go("/boats/" + id + "/history", "record.again")
                    : page.go("/boats/" + id + "/history", "record.done", done(page, recorded.get()));
        } catch (BadInput bad) {
            return page.wrong(Section.BOATS, "record/record", form.typed(false, refused(bad, form, visit)));
        }
    }

    private RecordWork.Recorded record(Page page, String id, RecordWork.Said said, boolean asRead) throws IOException {
        RecordWork.Recorded recorded =
                RecordWork.record(yard.shelf(page.who()), id, said, yard.today(), yard.today(), asRead);
        yard.changed();
        audit.note(
                "work.recorded",
                id,
                String.join(
                        ", ",
                        recorded.entries().stream()
                                .map(e -> e.part() + " " + e.ruleId())
                                .toList()));
        return recorded;
    }

    /** What the deed found stands with its field; says whether a meter reading out of line is among it. */
    private static boolean refused(BadInput bad, RecordForm form, TypedVisit visit) {
        boolean odd = false;
        for (Problem p : bad.problems()) {
            String words = Words.sentence(p.found()) + ".";
            if (p.field().equals("hours")) {
                odd = true;
                form.engines().stream()
                        .filter(e -> form.engines().size() == 1 || p.found().contains(" " + e))
                        .forEach(e -> visit.wrong().put(TypedVisit.hoursField(e), words));
            } else {
                int work = Math.max(0, p.line() - 1);
                visit.wrong().put(TypedVisit.outcomeField(work), words + " " + p.advice());
            }
        }
        return odd;
    }

    private static String done(Page page, RecordWork.Recorded recorded) {
        long pressing = recorded.entries().stream()
                .flatMap(e -> e.findings().stream())
                .filter(f -> f.severity() == Severity.ACT || f.severity() == Severity.UNSAFE)
                .count();
        return page.say("record.done.words", recorded.entries().size(), pressing);
    }

    @PostMapping("/boats/{id}/happened")
    ModelAndView happened(
            Page page,
            @PathVariable("id") String id,
            @RequestParam(name = "what", defaultValue = "") String what,
            @RequestParam(name = "note", defaultValue = "") String note,
            @RequestParam(name = "once", defaultValue = "") String key)
            throws IOException {
        OneBoat one = OneBoat.of(yard.files(), id);
        if (!new DueWork(one.files()).happenings().contains(what)) {
            return page.wrong(Section.BOATS, "record/choose", choices(page, one, page.say("record.happened.none")));
        }
        LocalDate today = yard.today();
        TypedWork.Typed typed = new TypedWork.Typed(
                List.of(), null, today, null, page.who(), List.of(), note.strip(), false, null, what);
        Optional<RecordWork.Recorded> recorded = once.take(
                key,
                page.whoId(),
                () -> record(page, id, TypedWork.said(yard.shelf(page.who()), id, typed, today), false));
        return recorded.isEmpty()
                ? page.go("/boats/" + id + "/history", "record.again")
                : page.go("/boats/" + id + "/history", "record.happened.done", what.replace('-', ' '));
    }
}
