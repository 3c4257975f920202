package sternwright.season.dated.make;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sternwright.season.Half;
import sternwright.season.Lag;
import sternwright.season.Operation;
import sternwright.season.Stay;
import sternwright.season.Visit;
import sternwright.season.dated.Meaning;

/** The lean season while it is being gathered, each operation beside its meaning. */
final class LeanSeason {
    final List<Visit> visits = new ArrayList<>();
    final List<Half> halves = new ArrayList<>();
    final List<Operation> operations = new ArrayList<>();
    final List<Meaning> meanings = new ArrayList<>();
    final List<Lag> lags = new ArrayList<>();
    final List<Stay> stays = new ArrayList<>();
    private final Map<String, Integer> visitNames = new HashMap<>();

    /** A new visit; a second one of the same name gets a number. */
    int visit(String boatId, String boatName, String name) {
        int before = visitNames.merge(boatId + "/" + name, 1, Integer::sum);
        visits.add(new Visit(boatName, before == 1 ? name : name + " (" + before + ")"));
        return visits.size() - 1;
    }

    int half(int visit, String name) {
        halves.add(new Half(visit, name));
        return halves.size() - 1;
    }

    int add(Operation operation, Meaning meaning) {
        operations.add(operation);
        meanings.add(meaning);
        return operations.size() - 1;
    }

    /** {@code later} starts when {@code earlier} has ended, or after. */
    void after(int earlier, int later) {
        lags.add(Lag.endToStart(earlier, operations.get(earlier).lengthQ(), later));
    }

    /** {@code later} starts from {@code leastQ} to {@code mostQ} quarters after the end of {@code earlier}. */
    void within(int earlier, int later, int leastQ, int mostQ) {
        int length = operations.get(earlier).lengthQ();
        lags.add(new Lag(earlier, later, length + leastQ, length + mostQ));
    }

    /** One gang on board at a time: engine spaces are narrow, and what is planned together must not ask for one person twice. */
    void oneAfterAnother(List<Integer> works) {
        for (int w = 1; w < works.size(); w++) {
            after(works.get(w - 1), works.get(w));
        }
    }
}
