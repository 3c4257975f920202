package sternwright.app.desk.campaign;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import sternwright.service.Half;
import sternwright.service.Place;

/** By what a due list can be narrowed. */
public enum Facet {
    /** The rule, by its id. */
    RULE {
        @Override
        String value(DueRow row) {
            return row.due().rule().id();
        }

        @Override
        String words(DueRow row) {
            return row.due().rule().work();
        }
    },
    /** The kind of part, by its id in the catalogue. */
    KIND {
        @Override
        String value(DueRow row) {
            return row.part().kind();
        }

        @Override
        String words(DueRow row) {
            return row.kindName();
        }
    },
    /** Where it can be done: {@code afloat}, {@code ashore}, {@code either}. */
    PLACE {
        @Override
        String value(DueRow row) {
            return written(row.due().rule().place());
        }

        @Override
        String words(DueRow row) {
            Place place = row.due().rule().place();
            return place.words();
        }
    },
    /** Half of the year: {@code lay-up}, {@code recommission}, {@code any}. */
    HALF {
        @Override
        String value(DueRow row) {
            return written(row.due().rule().half());
        }

        @Override
        String words(DueRow row) {
            Half half = row.due().rule().half();
            return half.words();
        }
    },
    /** The berth, by its id. */
    BERTH {
        @Override
        String value(DueRow row) {
            return row.boat().berthId();
        }

        @Override
        String words(DueRow row) {
            return row.berthName();
        }
    },
    /** {@code yes} for safety items, {@code no} for all others. */
    SAFETY {
        @Override
        String value(DueRow row) {
            return row.due().rule().safety() ? "yes" : "no";
        }

        @Override
        String words(DueRow row) {
            return row.due().rule().safety() ? "safety item" : "no safety item";
        }
    },
    /** How it stands: {@code overdue}, {@code due}, {@code unknown}, {@code every-visit}, {@code coming}, {@code refused}. */
    STATE {
        @Override
        String value(DueRow row) {
            return written(row.due().state());
        }

        @Override
        String words(DueRow row) {
            return row.due().state().words();
        }
    };

    /** The value of a row, as it stands in an address. */
    abstract String value(DueRow row);

    /** The value of a row as people read it. */
    abstract String words(DueRow row);

    private static String written(Enum<?> value) {
        return Written.NAMES.computeIfAbsent(
                value, v -> v.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** Each name is made once: a due list of a large yard asks for it a million times. */
    private static final class Written {
        static final Map<Enum<?>, String> NAMES = new ConcurrentHashMap<>();
    }

    /**
     * Its name in an address.
     *
     * @return such as {@code rule}
     */
    public String key() {
        return written(this);
    }

    /**
     * The facet of a name.
     *
     * @param key such as {@code rule}
     * @return the facet; empty if there is none of this name
     */
    public static Optional<Facet> of(String key) {
        return Stream.of(values()).filter(f -> f.key().equals(key)).findFirst();
    }
}
