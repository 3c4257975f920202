package sternwright.app.desk.season;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.sheet.SeasonSheets;
import sternwright.app.files.sheet.SeasonVisitsSheet;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.Writing;
import sternwright.season.dated.Away;
import sternwright.season.dated.OwnerDate;
import sternwright.season.dated.PromisedDate;
import sternwright.season.dated.Published;
import sternwright.season.dated.event.AfterEvents;
import sternwright.season.dated.event.SeasonEvent;

/** Writes the plan that the yard works by from now on, and what happened, so that the next plan knows it. */
public final class PublishSeason {
    private PublishSeason() {}

    /**
     * Publishes.
     *
     * @param shelf where the yard's texts are kept
     * @param planned the season
     * @param events what happened before it was planned
     * @param basis the day its visits rest on
     * @throws IOException if the disk refuses; then nothing has changed
     */
    public static void write(Shelf shelf, PlannedSeason planned, List<SeasonEvent> events, LocalDate basis)
            throws IOException {
        write(shelf, planned, planned.dated().published(basis), events, null);
    }

    /**
     * Publishes a plan as it was kept and judged, to the letter: planning it again could find another.
     *
     * @param shelf where the yard's texts are kept
     * @param planned the season it belongs to, for the dates that events brought
     * @param plan the plan as kept
     * @param events what happened before it was planned
     * @param versionRead version of the plan that was published when this one was asked for, empty for none; null to publish whatever
     *     was published since
     * @throws sternwright.app.files.shelf.EditConflict if another plan was published since; then nothing has changed
     * @throws IOException if the disk refuses; then nothing has changed
     */
    public static void write(
            Shelf shelf,
            PlannedSeason planned,
            List<Published> plan,
            List<SeasonEvent> events,
            @Nullable String versionRead)
            throws IOException {
        try (Writing writing = shelf.write("season published")) {
            String text = SeasonSheets.PLAN.write(plan);
            if (versionRead == null) {
                writing.put(SeasonFolder.PLAN, text);
            } else {
                writing.put(SeasonFolder.PLAN, text, versionRead);
            }
            writing.put(SeasonFolder.VISITS, SeasonVisitsSheet.VISITS.write(planned.works()));
            put(shelf, writing, planned, events);
            writing.commit();
        }
    }

    /**
     * Whether the yard knows already what publishing would write down beside the plan. A person may be away on days on which nothing
     * was planned: the plan is the same to the letter then, and still the next one has to know.
     *
     * @param shelf where the yard's texts are kept
     * @param planned the season
     * @param events what happened before it was planned
     * @return false if publishing would write down more than the plan
     */
    public static boolean recorded(Shelf shelf, PlannedSeason planned, List<SeasonEvent> events) {
        return planned.season().request().dates().equals(SeasonFolder.dates(shelf))
                && away(shelf, events).equals(SeasonFolder.away(shelf))
                && promises(shelf, planned, events).equals(SeasonFolder.promises(shelf));
    }

    private static void put(Shelf shelf, Writing files, PlannedSeason planned, List<SeasonEvent> events) {
        List<OwnerDate> dates = planned.season().request().dates();
        if (!dates.equals(SeasonFolder.dates(shelf))) {
            files.put(SeasonFolder.DATES, SeasonSheets.DATES.write(dates));
        }
        List<Away> away = away(shelf, events);
        if (!away.equals(SeasonFolder.away(shelf))) {
            files.put(SeasonFolder.AWAY, SeasonSheets.AWAY.write(away));
        }
        List<PromisedDate> promises = promises(shelf, planned, events);
        if (!promises.equals(SeasonFolder.promises(shelf))) {
            files.put(SeasonFolder.PROMISES, SeasonSheets.PROMISES.write(promises));
        }
    }

    /** Who and which hoist is away, with what has happened, each once. */
    private static List<Away> away(Shelf shelf, List<SeasonEvent> events) {
        Set<Away> away = new LinkedHashSet<>(SeasonFolder.away(shelf));
        for (SeasonEvent event : events) {
            if (event instanceof SeasonEvent.PersonAway e) {
                away.add(new Away(e.person(), e.days()));
            } else if (event instanceof SeasonEvent.HoistDown e) {
                away.add(new Away(e.hoist(), e.days()));
            }
        }
        return List.copyOf(away);
    }

    private static List<PromisedDate> promises(Shelf shelf, PlannedSeason planned, List<SeasonEvent> events) {
        List<PromisedDate> set = events.stream()
                .filter(e -> e instanceof SeasonEvent.Moved)
                .map(e -> (SeasonEvent.Moved) e)
                .map(e -> AfterEvents.promised(
                        e.name(), e.to(), planned.season().request().today()))
                .toList();
        return with(SeasonFolder.promises(shelf), set, events);
    }

    /** Promises without those that owners have released, with some that were set by hand in place of those of the same name. */
    private static List<PromisedDate> with(
            List<PromisedDate> before, List<PromisedDate> set, List<SeasonEvent> events) {
        List<PromisedDate> all = new ArrayList<>(before.stream()
                .filter(p -> !AfterEvents.released(p, events))
                .filter(p -> set.stream().noneMatch(s -> s.name().equals(p.name())))
                .toList());
        all.addAll(set);
        return all;
    }
}
