package sternwright.app.desk.season;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.safe.StagedFiles;
import sternwright.app.files.safe.YardLock;
import sternwright.app.files.sheet.SeasonSheets;
import sternwright.season.dated.Away;
import sternwright.season.dated.Published;
import sternwright.season.dated.event.SeasonEvent;

/** Writes the plan that the yard works by from now on, and what happened, so that the next plan knows it. */
public final class PublishSeason {
    private PublishSeason() {}

    /**
     * Publishes.
     *
     * @param root the yard's folder
     * @param planned the season
     * @param events what happened before it was planned
     * @param basis the day its visits rest on
     * @throws IOException if the disk refuses; then nothing has changed
     */
    public static void write(Path root, PlannedSeason planned, List<SeasonEvent> events, LocalDate basis)
            throws IOException {
        StagedFiles files = new StagedFiles(root);
        List<Published> plan = planned.dated().published(basis);
        files.put(root.resolve(SeasonFolder.PLAN), SeasonSheets.PLAN.write(plan));
        if (!events.isEmpty()) {
            files.put(
                    root.resolve(SeasonFolder.DATES),
                    SeasonSheets.DATES.write(planned.season().request().dates()));
            List<Away> away = new ArrayList<>(SeasonFolder.away(root));
            for (SeasonEvent event : events) {
                if (event instanceof SeasonEvent.PersonAway e) {
                    away.add(new Away(e.person(), e.days()));
                } else if (event instanceof SeasonEvent.HoistDown e) {
                    away.add(new Away(e.hoist(), e.days()));
                }
            }
            files.put(root.resolve(SeasonFolder.AWAY), SeasonSheets.AWAY.write(away));
        }
        try (YardLock lock = YardLock.take(root)) {
            files.commit();
        }
    }
}
