package sternwright.due;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import sternwright.boat.PartRef;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.history.TakenReading;

/**
 * One boat's history up to today, its entries chained by part from the newest to the oldest.
 *
 * <p>Parts are known here by their place in the boat's list of parts. Entries of parts that the boat no longer has are found
 * by the questions about a whole installation only.
 */
final class HistoryIndex {
    private static final int NONE = -1;

    private final List<ServiceEntry> entries;
    private final int count;
    private final int[] newest;
    private final int[] older;
    private boolean happenings;
    private boolean refusals;

    HistoryIndex(List<PartRef> parts, List<ServiceEntry> oldestFirst, LocalDate today) {
        this.entries = oldestFirst;
        int upTo = oldestFirst.size();
        while (upTo > 0 && oldestFirst.get(upTo - 1).date().isAfter(today)) {
            upTo--;
        }
        this.count = upTo;
        this.newest = new int[parts.size()];
        this.older = new int[count];
        Arrays.fill(newest, NONE);
        Places places = new Places(parts);
        for (int i = 0; i < count; i++) {
            ServiceEntry entry = entries.get(i);
            int part = places.of(entry.part());
            if (part != NONE) {
                older[i] = newest[part];
                newest[part] = i;
            }
            happenings |= entry.outcome() == Outcome.HAPPENED;
            refusals |= entry.outcome() == Outcome.REFUSED;
        }
    }

    /** The last time one of some works was done on a part, null if never. */
    @Nullable
    ServiceEntry lastDone(int part, Set<String> ruleIds) {
        for (int i = newest[part]; i != NONE; i = older[i]) {
            ServiceEntry e = entries.get(i);
            if (e.outcome() == Outcome.DONE && ruleIds.contains(e.ruleId())) {
                return e;
            }
        }
        return null;
    }

    /** How often a work was done on a part after a day; the day null for always. */
    int timesDone(int part, String ruleId, @Nullable LocalDate after) {
        int n = 0;
        for (int i = newest[part]; i != NONE; i = older[i]) {
            ServiceEntry e = entries.get(i);
            if (after != null && !e.date().isAfter(after)) {
                return n;
            }
            if (e.outcome() == Outcome.DONE && ruleId.equals(e.ruleId())) {
                n++;
            }
        }
        return n;
    }

    /** Whether the owner's signed refusal is newer than the last time the work was done. */
    boolean refused(int part, String ruleId, @Nullable LocalDate lastDone) {
        if (!refusals) {
            return false;
        }
        for (int i = newest[part]; i != NONE; i = older[i]) {
            ServiceEntry e = entries.get(i);
            if (lastDone != null && !e.date().isAfter(lastDone)) {
                return false;
            }
            if (e.outcome() == Outcome.REFUSED && ruleId.equals(e.ruleId())) {
                return true;
            }
        }
        return false;
    }

    /** Whether something happened to a part on or after a day; the day null for ever. */
    boolean happened(int part, String what, @Nullable LocalDate since) {
        if (!happenings) {
            return false;
        }
        for (int i = newest[part]; i != NONE; i = older[i]) {
            ServiceEntry e = entries.get(i);
            if (since != null && e.date().isBefore(since)) {
                return false;
            }
            if (e.outcome() == Outcome.HAPPENED && what.equals(e.ruleId())) {
                return true;
            }
        }
        return false;
    }

    /** The newest reading of a name on a part, null if there is none. */
    @Nullable
    Taken lastReading(int part, String name) {
        for (int i = newest[part]; i != NONE; i = older[i]) {
            ServiceEntry e = entries.get(i);
            List<TakenReading> readings = e.readings();
            for (int k = 0; k < readings.size(); k++) {
                if (readings.get(k).name().equals(name)) {
                    return new Taken(e.date(), readings.get(k).value());
                }
            }
        }
        return null;
    }

    /** The last time one of some works was done, or something happened, anywhere on an installation; null if never. */
    @Nullable
    ServiceEntry newest(String installationId, Outcome outcome, Set<String> ids) {
        if (outcome == Outcome.HAPPENED && !happenings) {
            return null;
        }
        for (int i = count - 1; i >= 0; i--) {
            ServiceEntry e = entries.get(i);
            if (e.outcome() == outcome
                    && ids.contains(e.ruleId())
                    && e.part().installationId().equals(installationId)) {
                return e;
            }
        }
        return null;
    }

    /** A reading with its date. */
    record Taken(LocalDate date, double value) {}

    /** Finds a part's place in the boat's list: open addressing, because a hash map would cost a boat forty small objects. */
    private static final class Places {
        private final List<PartRef> parts;
        private final int[] slots;

        Places(List<PartRef> parts) {
            this.parts = parts;
            this.slots = new int[Integer.highestOneBit(Math.max(2, parts.size()) * 4)];
            Arrays.fill(slots, NONE);
            for (int i = 0; i < parts.size(); i++) {
                slots[slot(parts.get(i))] = i;
            }
        }

        int of(PartRef part) {
            return slots[slot(part)];
        }

        /** Where the part stands, or the free slot where it would. */
        private int slot(PartRef part) {
            int mask = slots.length - 1;
            int hash = 31 * part.installationId().hashCode() + part.partId().hashCode();
            int at = (hash ^ (hash >>> 15)) & mask;
            while (slots[at] != NONE && !same(parts.get(slots[at]), part)) {
                at = (at + 1) & mask;
            }
            return at;
        }

        private static boolean same(PartRef a, PartRef b) {
            return a == b
                    || (a.partId().equals(b.partId()) && a.installationId().equals(b.installationId()));
        }
    }
}
