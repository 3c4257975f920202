package sternwright.season.dated.answer;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One visit of one boat with its dates.
 *
 * @param boatId the boat
 * @param boatName as painted on the stern
 * @param visit name of the visit
 * @param placeClass smallest class of places that takes her, empty if she stays afloat
 * @param ashoreFrom lift, null if she stays afloat
 * @param ashoreUntil launch, null if she stays afloat
 * @param operations in order of time
 */
public record DatedVisit(
        String boatId,
        String boatName,
        String visit,
        String placeClass,
        @Nullable LocalDateTime ashoreFrom,
        @Nullable LocalDateTime ashoreUntil,
        List<DatedOperation> operations) {
    /** Sorts the operations by time. */
    public DatedVisit {
        operations = operations.stream()
                .sorted(Comparator.comparing(DatedOperation::from)
                        .thenComparing(o -> o.meaning().step())
                        .thenComparing(o -> o.meaning().operation()))
                .toList();
    }

    /** When the first operation begins. */
    public LocalDateTime from() {
        return operations.get(0).from();
    }

    /** When the last operation ends. */
    public LocalDateTime until() {
        return operations.stream()
                .map(DatedOperation::until)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** The worst state of its operations. */
    public DatedOperation.State state() {
        return operations.stream()
                .map(DatedOperation::state)
                .max(Comparator.naturalOrder())
                .orElse(DatedOperation.State.IN_TIME);
    }
}
