package sternwright.app.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import sternwright.boat.Arrangement;
import sternwright.boat.Boat;
import sternwright.boat.Cooling;
import sternwright.boat.HullMaterial;
import sternwright.boat.Installation;
import sternwright.boat.Side;
import sternwright.finding.Source;
import sternwright.history.MeterReading;
import sternwright.job.CardCaution;
import sternwright.job.CardReading;
import sternwright.job.CardWork;
import sternwright.job.JobCard;
import sternwright.job.reading.Limits;
import sternwright.service.Interval;
import sternwright.service.Place;
import sternwright.service.Rule;

/** Facts of boat and work in the words a person reads. */
public final class Words {
    private Words() {}

    /** A first capital letter. */
    public static String sentence(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** A full stop at the end, a capital at the head. */
    public static String full(String words) {
        String text = sentence(words.strip()).replace("..", ".");
        return text.isEmpty() || text.endsWith(".") || text.endsWith("?") ? text : text + ".";
    }

    /** Length, beam, draught, mass and material. */
    public static String hull(Boat boat, Figures f) {
        return f.quantity(boat.hull().lengthM(), "m") + " long, "
                + f.quantity(boat.hull().beamM(), "m") + " beam, "
                + f.quantity(boat.hull().draughtM(), "m") + " draught, "
                + f.quantity(boat.hull().massKg(), "kg") + " as lifted, "
                + material(boat.hull().material());
    }

    /** One installation in a line. */
    public static String engine(Installation i, Figures f) {
        List<String> parts = new ArrayList<>();
        if (i.side() != Side.CENTRELINE) {
            parts.add(side(i.side()));
        }
        parts.add(i.engineModel() == null ? "model not known" : i.engineModel());
        if (i.powerKw() != null) {
            parts.add(f.quantity(i.powerKw(), "kW"));
        }
        parts.add(arrangement(i.arrangement()));
        parts.add(cooling(i.cooling()));
        return sentence(String.join(", ", parts));
    }

    /** Where the installation sits. */
    public static String side(Side side) {
        return side.name().toLowerCase(Locale.ROOT);
    }

    /** The arrangement. */
    public static String arrangement(Arrangement a) {
        return a.name().toLowerCase(Locale.ROOT);
    }

    /** The way of cooling. */
    public static String cooling(Cooling c) {
        return switch (c) {
            case RAW_WATER -> "raw-water cooled";
            case FRESH_WATER -> "fresh-water cooled";
            case KEEL -> "keel cooled";
        };
    }

    private static String material(HullMaterial m) {
        return m == HullMaterial.GRP ? "GRP" : m.name().toLowerCase(Locale.ROOT);
    }

    /** Where the visit takes place. */
    public static String place(Place place, boolean lifts) {
        if (lifts) {
            return "ashore, the boat is lifted for it";
        }
        return place == Place.ASHORE ? "while the boat is ashore" : "afloat";
    }

    /** How often a rule asks for its work. */
    public static String interval(Rule rule, Figures f) {
        Interval i = rule.interval();
        List<String> parts = new ArrayList<>();
        if (i.months() != null) {
            parts.add("every " + i.months() + " months");
        }
        if (i.hours() != null) {
            parts.add("every " + f.quantity(i.hours(), "engine hours"));
        }
        if (i.lifeMonths() != null) {
            parts.add("life " + i.lifeMonths() + " months");
        }
        if (i.everyNth() != null) {
            parts.add("every " + ordinal(i.everyNth().n()) + " time");
        }
        if (i.occasion() != null) {
            parts.add(i.occasion().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        }
        if (!i.after().isEmpty()) {
            parts.add("after other work");
        }
        return String.join(", or ", parts);
    }

    private static String ordinal(int n) {
        return switch (n) {
            case 2 -> "second";
            case 3 -> "third";
            default -> n + "th";
        };
    }

    /** Interval, scope and source of a work in one line. */
    public static String source(CardWork work, Figures f) {
        var inForce = work.planned().inForce();
        String often = interval(inForce.rule(), f);
        return (often.isEmpty() ? "" : sentence(often) + "; ")
                + (often.isEmpty()
                        ? sentence(inForce.scope().words())
                        : inForce.scope().words())
                + ". Source: " + inForce.sources() + ".";
    }

    /** The figure the hour meter shows after a reading. */
    public static double shown(MeterReading reading) {
        Double fresh = reading.newMeterHours();
        return fresh == null ? reading.hours() : fresh;
    }

    /** The title of a caution by its key. */
    public static String cautionTitle(JobCard card, String key) {
        return Stream.concat(card.cautions().stream(), card.points().stream().flatMap(p -> p.cautions().stream()))
                .filter(c -> c.key().equals(key))
                .map(CardCaution::title)
                .findFirst()
                .orElse("");
    }

    /** Whether a reading is answered with yes or no. */
    public static boolean yesOrNo(CardReading reading) {
        return Limits.yesOrNo(reading.asked());
    }

    /** The label of a reading; how yes and no are written down is left out, for boxes are printed. */
    public static String label(CardReading reading) {
        return sentence(reading.asked().label().replace("(1 yes, 0 no)", "").strip());
    }

    /** The source of a limit where it is another than that of the work, empty otherwise. */
    public static String limitSource(CardReading reading, CardWork work) {
        Source source = reading.asked().source();
        boolean limited = reading.asked().low() != null || reading.asked().high() != null;
        return limited && !source.equals(work.planned().inForce().source()) ? source.line() : "";
    }

    /** A unit beside a line to write on. */
    public static String unit(String unit) {
        return unit.equals("pcs") ? "" : unit;
    }
}
