package sternwright.app.desk.working;

import java.io.IOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.recording.RecordWork;
import sternwright.app.files.YardFolder;
import sternwright.app.files.sheet.Sheet;
import sternwright.app.files.shelf.Shelf;
import sternwright.history.BoatHistory;
import sternwright.history.MeterReading;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.history.TakenReading;
import sternwright.job.CardReading;
import sternwright.job.CardWork;
import sternwright.job.JobCard;
import sternwright.measure.unit.YardUnits;

/** Turns a card that was worked through into lines of the boat's history, and records them. */
public final class FinishCard {
    private static final int LONGEST_NAME = 100;

    private final JobCard card;
    private final Map<String, String> typed;
    private final LocalDate today;
    private final YardUnits units;
    private final List<Lack> lacks = new ArrayList<>();
    private final List<ServiceEntry> entries = new ArrayList<>();
    private final List<MeterReading> meter = new ArrayList<>();

    @Nullable
    private Integer minutes;

    private FinishCard(JobCard card, Map<String, String> typed, LocalDate today, YardUnits units) {
        this.units = units;
        this.card = card;
        this.typed = typed;
        this.today = today;
    }

    /** What keeps a card from being recorded. */
    public enum Kind {
        /** The day is missing, no day, or to come. */
        DAY,
        /** Nobody is named. */
        WHO,
        /** The time spent is no number of hours. */
        SPENT,
        /** A meter shows no number. */
        METER,
        /** A work is not answered. */
        ANSWER,
        /** A reading is missing, and the remark does not say why. */
        READING,
        /** A reading cannot be read. */
        FIGURE,
        /** A refusal without the name of who signed it. */
        SIGNED,
        /** A work is not done, and the remark does not say why. */
        REMARK
    }

    /**
     * One thing that keeps it from being recorded.
     *
     * @param field name of the field
     * @param kind what is wrong with it
     * @param work number of the work, 0 if it is not about one
     * @param label the reading or meter, may be empty
     */
    public record Lack(String field, Kind kind, int work, String label) {}

    /**
     * A card ready to be recorded, or what it lacks.
     *
     * @param lacks what must be put right; nothing can be recorded then
     * @param entries lines for the history
     * @param meter meters read
     * @param minutes time spent, null if not said
     */
    public record Ready(
            List<Lack> lacks,
            List<ServiceEntry> entries,
            List<MeterReading> meter,
            @Nullable Integer minutes) {
        /** Copies the lists. */
        public Ready {
            lacks = List.copyOf(lacks);
            entries = List.copyOf(entries);
            meter = List.copyOf(meter);
        }
    }

    /**
     * Looks whether a card can be recorded.
     *
     * @param card the card as issued
     * @param typed what was written on it, by the names of {@link CardFields}
     * @param today the last day on which work can have been done
     * @param units the units in which the fields were shown
     * @return lines for the history, or everything that is missing
     */
    public static Ready of(JobCard card, Map<String, String> typed, LocalDate today, YardUnits units) {
        return new FinishCard(card, typed, today, units).ready();
    }

    /**
     * Records it. Lines that stand in the history already are left alone, so that recording the same card again after an
     * interruption does nothing twice.
     *
     * @param shelf where the yard's texts are kept
     * @param card the card
     * @param ready what to record
     * @param today the day called today
     * @param asRead true if meter readings out of line are to be kept as read
     * @throws sternwright.app.files.problem.BadInput with everything the history cannot take; nothing was written then
     * @throws IOException if the disk refuses
     */
    public static void record(Shelf shelf, JobCard card, Ready ready, LocalDate today, boolean asRead)
            throws IOException {
        String boatId = card.boat().id();
        BoatHistory before = YardFolder.only(shelf, List.of(boatId), today).history(boatId);
        List<Sheet.Row<ServiceEntry>> rows = ready.entries().stream()
                .filter(e -> before.entries().stream().noneMatch(old -> same(old, e)))
                .map(e -> new Sheet.Row<>(0, e))
                .toList();
        List<MeterReading> meter = ready.meter().stream()
                .filter(m -> before.meter().stream()
                        .noneMatch(old -> old.date().equals(m.date())
                                && old.installationId().equals(m.installationId())
                                && old.hours() == m.hours()))
                .toList();
        if (!rows.isEmpty() || !meter.isEmpty()) {
            RecordWork.record(
                    shelf, boatId, new RecordWork.Said("job card " + card.number(), rows, meter), today, today, asRead);
        }
    }

    private static boolean same(ServiceEntry old, ServiceEntry e) {
        return old.date().equals(e.date())
                && old.part().equals(e.part())
                && old.ruleId().equals(e.ruleId())
                && old.outcome() == e.outcome()
                && old.who().equals(e.who());
    }

    private Ready ready() {
        LocalDate day = day();
        String who = says(CardFields.WHO);
        if (who.isEmpty() || who.length() > LONGEST_NAME) {
            lacks.add(new Lack(CardFields.WHO, Kind.WHO, 0, ""));
        }
        spent();
        for (int i = 0; i < card.engines().size(); i++) {
            meter(i, day, who);
        }
        card.works().forEach(w -> work(w, day, who));
        return new Ready(lacks, entries, meter, minutes);
    }

    private LocalDate day() {
        try {
            LocalDate day = LocalDate.parse(says(CardFields.DAY));
            if (!day.isAfter(today)) {
                return day;
            }
        } catch (DateTimeParseException e) {
            // said below, together with a day to come
        }
        lacks.add(new Lack(CardFields.DAY, Kind.DAY, 0, ""));
        return today;
    }

    private void spent() {
        String said = says(CardFields.SPENT).replace(',', '.');
        if (said.isEmpty()) {
            return;
        }
        if (said.matches("[0-9]{1,3}(\\.[0-9]{1,2})?")) {
            minutes = (int) Math.round(Double.parseDouble(said) * 60);
        } else {
            lacks.add(new Lack(CardFields.SPENT, Kind.SPENT, 0, ""));
        }
    }

    private void meter(int engine, LocalDate day, String who) {
        String said = says(CardFields.meter(engine)).replace(',', '.');
        String installation = card.engines().get(engine).installation().id();
        if (said.matches("[0-9]{1,6}(\\.[0-9]{1,2})?")) {
            meter.add(new MeterReading(day, installation, Double.parseDouble(said), null, who));
        } else if (!said.isEmpty()) {
            lacks.add(new Lack(CardFields.meter(engine), Kind.METER, 0, installation));
        }
    }

    private void work(CardWork w, LocalDate day, String who) {
        int n = w.number();
        String remark = says(CardFields.remark(n));
        List<TakenReading> taken = readings(w);
        switch (says(CardFields.answer(n))) {
            case "done" -> {
                missing(w, remark);
                entries.add(entry(w, day, Outcome.DONE, who, taken, remark));
            }
            case "not-done" -> {
                if (remark.isEmpty()) {
                    lacks.add(new Lack(CardFields.remark(n), Kind.REMARK, n, w.order()));
                }
                if (!taken.isEmpty()) {
                    entries.add(entry(w, day, Outcome.SEEN, who, taken, remark));
                }
            }
            case "refused" -> {
                String signed = says(CardFields.signed(n));
                if (signed.isEmpty() || signed.length() > LONGEST_NAME) {
                    lacks.add(new Lack(CardFields.signed(n), Kind.SIGNED, n, w.order()));
                }
                entries.add(entry(w, day, Outcome.REFUSED, signed, List.of(), remark));
            }
            default -> lacks.add(new Lack(CardFields.answer(n), Kind.ANSWER, n, w.order()));
        }
    }

    private List<TakenReading> readings(CardWork w) {
        List<TakenReading> taken = new ArrayList<>();
        for (int i = 0; i < w.readings().size(); i++) {
            CardReading asked = w.readings().get(i);
            String field = CardFields.reading(w.number(), i);
            String said = says(field);
            TakenReading one = TypedReading.of(
                            w, asked, said, units.shown(0, asked.asked().unit()).unit())
                    .taken();
            if (one != null) {
                taken.add(one);
            } else if (!said.isEmpty()) {
                lacks.add(new Lack(field, Kind.FIGURE, w.number(), asked.asked().label()));
            }
        }
        return taken;
    }

    private void missing(CardWork w, String remark) {
        for (int i = 0; i < w.readings().size(); i++) {
            String field = CardFields.reading(w.number(), i);
            if (says(field).isEmpty() && remark.isEmpty()) {
                lacks.add(new Lack(
                        field,
                        Kind.READING,
                        w.number(),
                        w.readings().get(i).asked().label()));
            }
        }
    }

    private ServiceEntry entry(
            CardWork w, LocalDate day, Outcome outcome, String who, List<TakenReading> taken, String remark) {
        return new ServiceEntry(
                day, w.planned().part(), w.planned().inForce().rule().id(), outcome, null, who, taken, remark);
    }

    private String says(String field) {
        return typed.getOrDefault(field, "").strip();
    }
}
