package sternwright.app.desk.protect;

import java.lang.ref.SoftReference;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.YardFiles;
import sternwright.app.files.problem.Problem;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.PartCatalogue;
import sternwright.history.BoatHistory;
import sternwright.protection.report.ProtectionReport;
import sternwright.yard.Yard;

/**
 * Reports of boats as they lie, nothing measured, kept as long as what they rest on stays the same: another boat's change costs nothing.
 * The last ones asked for are kept, as long as there is memory. Any number of threads may ask.
 */
public final class KeptReports {
    private static final int KEPT = 100;

    private final Map<Asked, SoftReference<Known>> known = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Asked, SoftReference<Known>> eldest) {
            return size() > KEPT;
        }
    };

    /**
     * A report, or what stands in its way.
     *
     * @param number another one for every report that was made since the program was started
     * @param report null if none can be made
     * @param problems why not
     */
    public record Answer(long number, @Nullable ProtectionReport report, List<Problem> problems) {
        /** Copies the list. */
        public Answer {
            problems = List.copyOf(problems);
        }
    }

    private record Asked(String boatId, boolean shoreLead) {}

    /** What a report rests on; the same objects as long as nobody has changed them, but for the history, which is unpacked anew. */
    private record Ground(
            Boat boat,
            @Nullable Berth berth,
            @Nullable BoatHistory history,
            Yard yard,
            PartCatalogue catalogue,
            LocalDate today) {
        static Ground of(YardFiles files, Boat boat, LocalDate today) {
            return new Ground(
                    boat,
                    files.berths().get(boat.berthId()),
                    files.histories().get(boat.id()),
                    files.yard(),
                    files.catalogue(),
                    today);
        }

        boolean same(Ground other) {
            return boat == other.boat
                    && berth == other.berth
                    && Objects.equals(history, other.history)
                    && yard == other.yard
                    && catalogue == other.catalogue
                    && today.equals(other.today);
        }
    }

    private record Known(Ground ground, Answer answer) {}

    private final AtomicLong made = new AtomicLong();

    /**
     * The report of a boat.
     *
     * @param files what the yard says
     * @param boat the boat
     * @param request what is asked
     * @return the report or its problems; kept unless readings or figures were put in
     */
    public Answer of(YardFiles files, Boat boat, ProtectRequest request) {
        ProtectRequest plain = ProtectRequest.on(request.today());
        if (!request.equals(plain.withShoreLead(request.shoreLead()))) {
            return work(files, boat, request);
        }
        Asked asked = new Asked(boat.id(), request.shoreLead());
        Ground ground = Ground.of(files, boat, request.today());
        synchronized (known) {
            SoftReference<Known> kept = known.get(asked);
            Known before = kept == null ? null : kept.get();
            if (before != null && before.ground().same(ground)) {
                return before.answer();
            }
        }
        Answer answer = work(files, boat, request);
        synchronized (known) {
            known.put(asked, new SoftReference<>(new Known(ground, answer)));
        }
        return answer;
    }

    private Answer work(YardFiles files, Boat boat, ProtectRequest request) {
        ProtectBoat desk = new ProtectBoat(files);
        List<Problem> problems = desk.problems(boat, request);
        return problems.isEmpty()
                ? new Answer(made.incrementAndGet(), desk.report(boat, request), List.of())
                : new Answer(made.incrementAndGet(), null, problems);
    }
}
