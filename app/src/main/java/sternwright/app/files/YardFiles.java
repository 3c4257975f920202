package sternwright.app.files;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import sternwright.app.files.problem.Problem;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.PartCatalogue;
import sternwright.history.BoatHistory;
import sternwright.service.Programme;
import sternwright.yard.Yard;

/**
 * All that a yard's folder says. Every reference in it leads somewhere.
 *
 * @param yard the yard
 * @param berths berths by id
 * @param catalogue kinds of part, the yard's own included
 * @param generic the generic programme
 * @param programmes the yard's own programmes, in the order of their file names
 * @param boats boats by id, those asked for
 * @param histories what is written down of each of them; in a yard that stays open each is unpacked when it is asked for, so
 *     the same question may be answered by another, equal record
 * @param remarks what a person should know and what does not stop the work
 */
public record YardFiles(
        Yard yard,
        Map<String, Berth> berths,
        PartCatalogue catalogue,
        Programme generic,
        List<Programme> programmes,
        Map<String, Boat> boats,
        Map<String, BoatHistory> histories,
        List<Problem> remarks) {
    /** Copies the lists; the maps keep their order. */
    public YardFiles {
        berths = Collections.unmodifiableMap(new LinkedHashMap<>(berths));
        boats = Collections.unmodifiableMap(new LinkedHashMap<>(boats));
        histories = histories instanceof Histories packed
                ? packed
                : Collections.unmodifiableMap(new LinkedHashMap<>(histories));
        programmes = List.copyOf(programmes);
        remarks = List.copyOf(remarks);
    }

    /**
     * The same with its histories packed, for whoever keeps it long: they are by far the most of what a yard says.
     *
     * @return an equal yard; this one if its histories are packed already
     */
    public YardFiles packed() {
        if (histories instanceof Histories) {
            return this;
        }
        Map<String, Supplier<BoatHistory>> byBoat = new LinkedHashMap<>();
        histories.forEach((id, history) ->
                byBoat.put(id, new Histories.Packed(Histories.packing().pack(BoatHistory.class, history))));
        return new YardFiles(yard, berths, catalogue, generic, programmes, boats, Histories.of(byBoat), remarks);
    }

    /**
     * What is written down of a boat.
     *
     * @param boatId the boat
     * @return its history, empty if there is none
     */
    public BoatHistory history(String boatId) {
        return Optional.ofNullable(histories.get(boatId)).orElseGet(() -> BoatHistory.empty(boatId));
    }
}
