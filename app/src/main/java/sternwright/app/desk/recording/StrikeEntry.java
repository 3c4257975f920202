package sternwright.app.desk.recording;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Predicate;
import sternwright.app.desk.due.DueWork;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.sheet.HistorySheet;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.Writing;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.history.BoatHistory;
import sternwright.history.HistoryLine;
import sternwright.history.ServiceEntry;
import sternwright.history.Strike;
import sternwright.history.StruckEntry;

/**
 * Strikes a wrong line of a boat's history: a line is added that says who, when and why. The wrong one stays to be seen and counts no
 * more. A meter reading that was written down with it stays: the next one puts it right.
 */
public final class StrikeEntry {
    private static final int KEY_LENGTH = 16;

    private StrikeEntry() {}

    /**
     * What came of it.
     *
     * @param struck the line, with who, when and why
     * @param before the due list before
     * @param after the due list after
     */
    public record Struck(StruckEntry struck, List<Due> before, List<Due> after) {
        /** Copies the lists. */
        public Struck {
            before = List.copyOf(before);
            after = List.copyOf(after);
        }
    }

    /**
     * By what a line is asked for: the same for two lines that say the same, of which either may be struck.
     *
     * @param entry the line
     * @return sixteen figures and letters
     */
    public static String key(ServiceEntry entry) {
        String line = HistorySheet.ONE_BOAT.write(List.of(HistoryLine.of(entry)));
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(line.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash).substring(0, KEY_LENGTH);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /**
     * Strikes a line.
     *
     * @param shelf where the yard's texts are kept
     * @param boatId the boat
     * @param which tells the line; of several that say the same the last one is struck
     * @param strike who, when and why
     * @param today the day called today
     * @return the line and how the due list moved
     * @throws BadInput if no line is meant, or several that say different things; nothing was written then
     * @throws IOException if what keeps the yard refuses
     */
    public static Struck strike(
            Shelf shelf, String boatId, Predicate<ServiceEntry> which, Strike strike, LocalDate today)
            throws IOException {
        FolderLayout.of(shelf);
        try (Writing writing = shelf.write("line of history struck on " + boatId)) {
            YardFiles files = YardFolder.only(shelf, List.of(boatId), today);
            Boat boat = files.boats().values().iterator().next();
            BoatHistory before = files.history(boatId);
            HistoryLine line = new HistoryLine(meant(boatId, before, which), strike);
            List<HistoryLine> lines = new java.util.ArrayList<>(before.lines());
            lines.add(line);
            BoatHistory after = BoatHistory.of(boatId, lines, before.meter());
            Appending.history(shelf, boatId, List.of(line), writing);
            writing.commit();
            DueWork work = new DueWork(files);
            return new Struck(
                    new StruckEntry(line.entry(), strike), work.of(boat, before, today), work.of(boat, after, today));
        }
    }

    private static ServiceEntry meant(String boatId, BoatHistory history, Predicate<ServiceEntry> which) {
        List<ServiceEntry> meant =
                history.entries().stream().filter(which).distinct().toList();
        if (meant.isEmpty()) {
            throw BadInput.of(
                    FolderLayout.history(boatId),
                    "no line that holds is the one meant",
                    "a line of the history that is not struck yet",
                    "Look at the history again: somebody else may have struck it.");
        }
        if (meant.size() > 1) {
            throw BadInput.of(
                    FolderLayout.history(boatId),
                    meant.size() + " lines are meant: "
                            + String.join(
                                    "; ", meant.stream().map(StrikeEntry::words).toList()),
                    "one of them",
                    "Say more of it: its day, part, outcome or hours.");
        }
        return meant.get(0);
    }

    private static String words(ServiceEntry e) {
        return e.date() + " " + e.part() + " " + e.ruleId() + " "
                + e.outcome().name().toLowerCase(java.util.Locale.ROOT)
                + (e.hours() == null ? "" : " at " + e.hours() + " h");
    }
}
