package sternwright.app.desk.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.desk.InventedDesk;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.shelf.FolderShelf;
import sternwright.season.dated.OwnerDate;
import sternwright.visit.BoatPlan;
import sternwright.visit.HandPlan;
import sternwright.visit.planned.AgreedWork;
import sternwright.visit.planned.HandChange;
import sternwright.visit.planned.VisitAt;

class AgreedVisitsTest {
    @TempDir
    Path folder;

    @Test
    void whatWasAgreedIsPlannedAgain() {
        int changed = 0;
        for (ByHandTest.Planned p : ByHandTest.planned()) {
            for (int shift : new int[] {1, -1, 2}) {
                VisitAt first = VisitAt.of(p.plan().visits().get(0));
                if (first.month()
                        .plusMonths(shift)
                        .isBefore(p.visits().problem().firstMonth())) {
                    continue;
                }
                HandPlan hand = p.visits()
                        .byHand(
                                p.plan(),
                                List.of(new HandChange.MoveVisit(
                                        first, new VisitAt(first.month().plusMonths(shift), first.place()))));
                List<AgreedWork> agreed = AgreeVisits.works(hand.plan(), InventedDesk.TODAY, "A. Owner");
                HandPlan again = p.visits().asAgreed(p.plan(), agreed);
                assertEquals(works(hand.plan()), works(again.plan()), p.plan().boatId() + " by " + shift);
                changed += works(p.plan()).equals(works(again.plan())) ? 0 : 1;
            }
        }
        assertTrue(changed > 5, "plans that differ: " + changed);
    }

    @Test
    void anAgreementTakesThePlaceOfTheOneBefore() throws IOException {
        ByHandTest.Planned p = ByHandTest.planned().get(0);
        FolderShelf shelf = shelf();
        HandPlan same = p.visits().byHand(p.plan(), List.of());
        OwnerDate out =
                new OwnerDate(p.plan().boatId(), OwnerDate.Kind.OUT_FROM, "", InventedDesk.TODAY.plusDays(9), "");
        AgreeVisits.write(shelf, AgreeVisits.of(same, List.of(out), List.of(), InventedDesk.TODAY, "A. Owner"));
        AgreeVisits.Agreement again = AgreeVisits.of(same, List.of(out), List.of(), InventedDesk.TODAY, "B. Owner");
        AgreeVisits.write(shelf, again);
        assertEquals(again.works(), SeasonFolder.agreed(shelf));
        assertEquals(1, SeasonFolder.dates(shelf).stream().filter(out::equals).count(), "a date is not written twice");
    }

    @Test
    void aPlanThatBreaksSafetyIsNotAgreed() {
        for (ByHandTest.Planned p : ByHandTest.planned()) {
            List<HandChange> all = p.plan().visits().stream()
                    .flatMap(v -> v.works().stream()
                            .filter(w -> w.inForce().rule().safety())
                            .map(w -> (HandChange) new HandChange.LeaveWork(
                                    w.part(), w.inForce().rule().id(), VisitAt.of(v))))
                    .toList();
            HandPlan hand = p.visits().byHand(p.plan(), distinct(all, p.plan()));
            if (!hand.allowed()) {
                BadInput refused = assertThrows(
                        BadInput.class, () -> AgreeVisits.of(hand, List.of(), List.of(), InventedDesk.TODAY, ""));
                assertTrue(String.valueOf(refused.getMessage()).contains("refusal on record"), refused.getMessage());
                return;
            }
        }
        throw new AssertionError("no boat with a safety item to do");
    }

    /** Works that are done at every visit are not the plan's to leave out. */
    private static List<HandChange> distinct(List<HandChange> all, BoatPlan plan) {
        return all.stream()
                .filter(c -> c instanceof HandChange.LeaveWork l
                        && plan.visits().stream()
                                .filter(v -> VisitAt.of(v).equals(l.from()))
                                .anyMatch(v -> v.works().stream()
                                        .anyMatch(w -> w.part().equals(l.part())
                                                && w.inForce().rule().interval().lifeMonths() != null)))
                .toList();
    }

    private static Set<String> works(BoatPlan plan) {
        return plan.visits().stream()
                .flatMap(v -> v.works().stream()
                        .map(w -> VisitAt.of(v) + " " + w.part() + " "
                                + w.inForce().rule().id()))
                .collect(Collectors.toSet());
    }

    private FolderShelf shelf() throws IOException {
        Path yard = folder.resolve("yard");
        try (var files = Files.walk(InventedDesk.folder())) {
            for (Path from : files.toList()) {
                Path to = yard.resolve(InventedDesk.folder().relativize(from).toString());
                if (Files.isDirectory(from)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(from, to);
                }
            }
        }
        return new FolderShelf(yard);
    }
}
