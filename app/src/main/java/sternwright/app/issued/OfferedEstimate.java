package sternwright.app.issued;

import java.util.List;
import sternwright.finding.Caution;
import sternwright.job.estimate.Estimate;

/**
 * An estimate with the cautions its works refer to.
 *
 * @param estimate the estimate, not answered
 * @param cautions the cautions, each once
 */
public record OfferedEstimate(Estimate estimate, List<Caution> cautions) {
    /** Copies the list. */
    public OfferedEstimate {
        cautions = List.copyOf(cautions);
    }

    /**
     * What to mind about a line.
     *
     * @param line number of the line
     * @return the cautions of its work
     */
    public List<Caution> of(int line) {
        return estimate.lines().stream()
                .filter(l -> l.number() == line)
                .flatMap(l -> l.planned().inForce().rule().cautions().stream())
                .distinct()
                .flatMap(id -> cautions.stream().filter(c -> c.id().equals(id)))
                .toList();
    }
}
