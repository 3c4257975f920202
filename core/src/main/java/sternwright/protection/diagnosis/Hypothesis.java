package sternwright.protection.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import sternwright.protection.fault.Fault;

/**
 * A set of none, one or two faults that are taken to be all that is wrong.
 *
 * @param faults the faults
 * @param prior probability before any reading
 */
public record Hypothesis(List<Fault> faults, double prior) {
    public Hypothesis {
        faults = List.copyOf(faults);
    }

    /** The faults in words. */
    public String words() {
        return faults.isEmpty()
                ? "nothing wrong"
                : faults.stream().map(Fault::words).collect(Collectors.joining(" and "));
    }

    /** No fault, every fault, every pair of faults at two places. */
    static List<Hypothesis> upToPairs(List<Fault> faults) {
        double none = 1;
        for (Fault f : faults) {
            none *= 1 - f.prior();
        }
        List<Hypothesis> all = new ArrayList<>();
        all.add(new Hypothesis(List.of(), none));
        for (int i = 0; i < faults.size(); i++) {
            Fault a = faults.get(i);
            all.add(new Hypothesis(List.of(a), none * odds(a)));
            for (int k = i + 1; k < faults.size(); k++) {
                Fault b = faults.get(k);
                if (!a.where().equals(b.where())) {
                    all.add(new Hypothesis(List.of(a, b), none * odds(a) * odds(b)));
                }
            }
        }
        return all;
    }

    private static double odds(Fault f) {
        return f.prior() / (1 - f.prior());
    }
}
