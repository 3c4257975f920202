package sternwright.app.desk.visits;

import java.io.IOException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.sheet.AgreedSheet;
import sternwright.app.files.sheet.SeasonSheets;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.Writing;
import sternwright.season.dated.OwnerDate;
import sternwright.season.dated.PromisedDate;
import sternwright.service.Occasion;
import sternwright.service.Rule;
import sternwright.visit.BoatPlan;
import sternwright.visit.BoatVisits;
import sternwright.visit.HandPlan;
import sternwright.visit.planned.AgreedWork;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PlannedWork;
import sternwright.visit.planned.VisitAt;

/** Writes down that a plan of visits is accepted, so that the next season keeps it. */
public final class AgreeVisits {
    private AgreeVisits() {}

    /**
     * What accepting a plan adds to the yard's texts.
     *
     * @param boatId the boat
     * @param works for {@code agreed.csv}: every work of every visit; they take the place of what was agreed for her from their first
     *     month on
     * @param dates for {@code dates.csv}: days the owner has set, such as out-from and afloat-by; one of a kind takes the place of
     *     the one that stood there
     * @param promises for {@code promises.csv}: days given to the owner
     */
    public record Agreement(String boatId, List<AgreedWork> works, List<OwnerDate> dates, List<PromisedDate> promises) {
        /** Copies the lists. */
        public Agreement {
            works = List.copyOf(works);
            dates = List.copyOf(dates);
            promises = List.copyOf(promises);
        }
    }

    /**
     * The agreement of a plan.
     *
     * @param plan the plan, changed by hand or not
     * @param dates days the owner has set, for this boat
     * @param promises days given to the owner, for this boat
     * @param today the day called today
     * @param who who agreed
     * @return what is to be written
     * @throws BadInput if the plan breaks what must not be broken
     */
    public static Agreement of(
            HandPlan plan, List<OwnerDate> dates, List<PromisedDate> promises, LocalDate today, String who) {
        if (!plan.allowed()) {
            throw new BadInput(plan.broken().stream()
                    .filter(HandPlan.Broken::refused)
                    .map(b -> new Problem("visits", 0, b.ruleId(), b.words(), "", b.advice()))
                    .toList());
        }
        return new Agreement(plan.plan().boatId(), works(plan.plan(), today, who), dates, promises);
    }

    /**
     * The works of a plan as they are written down when it is accepted; what is done at every visit goes without saying.
     *
     * @param plan the plan
     * @param agreedOn the day
     * @param who who agreed
     * @return a line for each work of each visit
     */
    public static List<AgreedWork> works(BoatPlan plan, LocalDate agreedOn, String who) {
        List<AgreedWork> works = new ArrayList<>();
        for (PlannedVisit visit : plan.visits()) {
            VisitAt at = VisitAt.of(visit, BoatVisits.firstMonth(agreedOn));
            for (PlannedWork w : visit.works()) {
                Rule rule = w.inForce().rule();
                if (rule.interval().occasion() != Occasion.EVERY_VISIT) {
                    works.add(new AgreedWork(plan.boatId(), at, w.part(), rule.id(), agreedOn, who));
                }
            }
        }
        return works;
    }

    /**
     * Writes it.
     *
     * @param shelf where the yard's texts are kept
     * @param agreement what is to be written
     * @throws IOException if the keeper refuses; nothing has changed then
     */
    public static void write(Shelf shelf, Agreement agreement) throws IOException {
        try (Writing writing = shelf.write("visits agreed for " + agreement.boatId())) {
            writing.put(SeasonFolder.AGREED, AgreedSheet.AGREED.write(works(SeasonFolder.agreed(shelf), agreement)));
            if (!agreement.dates().isEmpty()) {
                writing.put(
                        SeasonFolder.DATES,
                        SeasonSheets.DATES.write(together(
                                SeasonFolder.dates(shelf).stream()
                                        .filter(d -> agreement.dates().stream().noneMatch(n -> replaces(n, d))),
                                agreement.dates())));
            }
            if (!agreement.promises().isEmpty()) {
                writing.put(
                        SeasonFolder.PROMISES,
                        SeasonSheets.PROMISES.write(together(
                                SeasonFolder.promises(shelf).stream()
                                        .filter(p -> agreement.promises().stream()
                                                .noneMatch(n -> n.name().equals(p.name()))),
                                agreement.promises())));
            }
            writing.commit();
        }
    }

    private static boolean replaces(OwnerDate now, OwnerDate before) {
        return now.boatId().equals(before.boatId())
                && now.kind() == before.kind()
                && now.work().equals(before.work());
    }

    private static List<AgreedWork> works(List<AgreedWork> before, Agreement agreement) {
        YearMonth first = agreement.works().stream()
                .map(w -> w.at().month())
                .min(YearMonth::compareTo)
                .orElse(YearMonth.of(9999, 12));
        return together(
                before.stream()
                        .filter(a -> !a.boatId().equals(agreement.boatId())
                                || a.at().month().isBefore(first)),
                agreement.works());
    }

    private static <T> List<T> together(Stream<T> kept, List<T> added) {
        List<T> all = new ArrayList<>(kept.toList());
        all.addAll(added);
        return all;
    }
}
