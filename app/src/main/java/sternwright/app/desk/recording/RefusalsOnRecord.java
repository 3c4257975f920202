package sternwright.app.desk.recording;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.sheet.Sheet;
import sternwright.app.files.shelf.Shelf;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.job.estimate.Estimate;
import sternwright.job.estimate.Refusal;
import sternwright.visit.planned.PlannedWork;

/** Puts the safety items that an owner refused on record, so that no plan holds them and everybody can see why. */
public final class RefusalsOnRecord {
    private RefusalsOnRecord() {}

    /**
     * Writes them into the boat's history; those that stand there already are left alone.
     *
     * @param shelf where the yard's texts are kept
     * @param answered the estimate with the owner's answers
     * @param owner the name the owner wrote
     * @param day when
     * @return how many were written
     * @throws sternwright.app.files.problem.BadInput if the boat no longer has the part or the rule; nothing was written then
     * @throws IOException if the disk refuses
     */
    public static int write(Shelf shelf, Estimate answered, String owner, LocalDate day) throws IOException {
        String boatId = answered.boat().id();
        YardFiles files = YardFolder.only(shelf, List.of(boatId), day);
        List<ServiceEntry> before = files.history(boatId).entries();
        List<Sheet.Row<ServiceEntry>> rows = answered.refusals().stream()
                .map(r -> entry(answered, r, owner, day))
                .filter(e -> before.stream().noneMatch(old -> same(old, e)))
                .map(e -> new Sheet.Row<>(0, e))
                .toList();
        if (!rows.isEmpty()) {
            RecordWork.record(
                    shelf,
                    boatId,
                    new RecordWork.Said("estimate " + answered.number(), rows, List.of()),
                    day,
                    day,
                    false);
        }
        return rows.size();
    }

    private static ServiceEntry entry(Estimate answered, Refusal refusal, String owner, LocalDate day) {
        PlannedWork work = answered.lines().stream()
                .filter(l -> l.number() == refusal.lineNumber())
                .findFirst()
                .orElseThrow()
                .planned();
        return new ServiceEntry(
                day,
                work.part(),
                work.inForce().rule().id(),
                Outcome.REFUSED,
                null,
                owner,
                List.of(),
                "estimate " + answered.number() + ", line " + refusal.lineNumber() + ", by the owner's link");
    }

    private static boolean same(ServiceEntry old, ServiceEntry e) {
        return old.outcome() == Outcome.REFUSED
                && old.date().equals(e.date())
                && old.part().equals(e.part())
                && old.ruleId().equals(e.ruleId());
    }
}
