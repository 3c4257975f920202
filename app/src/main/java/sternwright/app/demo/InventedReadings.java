package sternwright.app.demo;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Part;
import sternwright.history.TakenReading;
import sternwright.service.ReadingAsked;
import sternwright.service.Rule;

/** What an invented engineer measures: mostly within limits, now and then not. */
final class InventedReadings {
    private static final double WRONG = 0.03;

    /** Low and high of what a reading without limits in the programme usually shows; invented. */
    private static final Map<String, double[]> USUAL = Map.of(
            "opening-pressure", new double[] {150, 210},
            "blade-play", new double[] {0.4, 1.6},
            "full-rpm", new double[] {2800, 3400},
            "oil-pressure", new double[] {2.8, 4.6},
            "bearing-clearance", new double[] {0.3, 1.4},
            "wear-ring-clearance", new double[] {0.3, 1.2},
            "anode-mass", new double[] {0.2, 0.9});

    private final SplittableRandom random;
    private final double anodeLossPerYear;
    private final Map<Part, LocalDate> firstSeen = new HashMap<>();

    /** Anode loss in per cent of the first mass a year, as this boat's berth and bonding have it. */
    InventedReadings(SplittableRandom random, double anodeLossPerYear) {
        this.random = random;
        this.anodeLossPerYear = anodeLossPerYear;
    }

    /** What is measured when a work is done; {@code newSince} is the day the part was new. */
    List<TakenReading> take(Rule rule, Part part, @Nullable LocalDate newSince, LocalDate day) {
        List<TakenReading> taken = new ArrayList<>();
        for (ReadingAsked asked : rule.readings()) {
            double value = asked.name().equals("anode-remaining") ? anode(part, newSince, day) : value(asked);
            if (!asked.name().equals("anode-mass")) {
                taken.add(new TakenReading(asked.name(), rounded(value), asked.unit()));
            } else if (part.massKg() != null) {
                taken.add(new TakenReading(
                        asked.name(), rounded(part.massKg() * anode(part, newSince, day) / 100), asked.unit()));
            }
        }
        return taken;
    }

    /** An anode of unknown age was a year old when it was first looked at, and ages from there. */
    private double anode(Part part, @Nullable LocalDate newSince, LocalDate day) {
        LocalDate from = newSince != null ? newSince : firstSeen.computeIfAbsent(part, p -> day.minusYears(1));
        double years = ChronoUnit.DAYS.between(from, day) / 365.25;
        double left = 100 - anodeLossPerYear * years * (0.9 + 0.2 * random.nextDouble());
        return Math.rint(Math.max(4, Math.min(98, left)));
    }

    private double value(ReadingAsked asked) {
        boolean wrong = random.nextDouble() < WRONG;
        Double low = asked.low();
        Double high = asked.high();
        if (asked.unit().equals("1")) {
            double good = low != null ? low : 0;
            return wrong ? 1 - Math.min(1, good) : good;
        }
        if (low != null && high != null) {
            return wrong ? high + 0.1 * (high - low) : low + (high - low) * (0.2 + 0.6 * random.nextDouble());
        }
        if (high != null) {
            double spread = Math.abs(high);
            return wrong ? high + 0.3 * spread : high - spread * (0.1 + 0.6 * random.nextDouble());
        }
        if (low != null) {
            return wrong ? low * 0.6 : low * (1.05 + 0.25 * random.nextDouble());
        }
        double[] usual = USUAL.getOrDefault(asked.name(), new double[] {0, 1});
        return usual[0] + (usual[1] - usual[0]) * random.nextDouble();
    }

    private static double rounded(double value) {
        double step = Math.abs(value) >= 20 ? 1 : Math.abs(value) >= 2 ? 0.1 : 0.01;
        return Math.rint(value / step) * step == 0
                ? 0
                : Double.parseDouble(String.format(java.util.Locale.ROOT, "%.2f", Math.rint(value / step) * step));
    }
}
