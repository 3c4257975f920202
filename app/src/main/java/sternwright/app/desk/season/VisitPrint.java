package sternwright.app.desk.season;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.YardFiles;
import sternwright.boat.Boat;
import sternwright.history.BoatHistory;
import sternwright.visit.planned.AgreedWork;

/**
 * A print of all that the visits of a boat are planned from: her file, berth and use, the yard's rates, kinds of part, rules, what was
 * done until the day of planning, what is agreed, since when she stands ashore. Two prints are the same where all that is the same,
 * in any run of the program.
 */
final class VisitPrint {
    private static final int LETTERS = 16;

    /** How the parts of each record are asked for, in the order in which they are declared. */
    private static final ClassValue<Method[]> PARTS = new ClassValue<>() {
        @Override
        protected Method[] computeValue(Class<?> type) {
            Method[] parts = Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getAccessor)
                    .toArray(Method[]::new);
            Arrays.stream(parts).forEach(p -> p.setAccessible(true));
            return parts;
        }
    };

    private final YardFiles files;
    private final String common;

    VisitPrint(YardFiles files, LocalDate basis) {
        this.files = files;
        StringBuilder text = new StringBuilder();
        add(text, basis);
        add(text, files.yard());
        add(text, files.catalogue());
        add(text, files.generic());
        add(text, files.programmes());
        common = of(text.toString());
    }

    /**
     * What the visits of one boat rest on.
     *
     * @param boat the boat
     * @param then her history until the day of planning
     * @param agreed what is agreed for her
     * @param ashoreSince since when she is known to stand ashore, null if nothing is known
     * @return the print
     */
    String of(Boat boat, BoatHistory then, List<AgreedWork> agreed, @Nullable LocalDate ashoreSince) {
        StringBuilder text = new StringBuilder(common);
        add(text, boat);
        add(text, files.berths().get(boat.berthId()));
        add(text, then.entries());
        add(text, then.meter());
        add(text, agreed);
        add(text, ashoreSince);
        return of(text.toString());
    }

    /** The print of a text. */
    static String of(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash).substring(0, LETTERS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Sets and maps have no order of their own: they are told in the order of their texts. */
    private static void add(StringBuilder text, @Nullable Object value) {
        if (value instanceof Record held) {
            text.append(held.getClass().getName()).append('(');
            for (Method part : PARTS.get(held.getClass())) {
                add(text, part(held, part));
            }
            text.append(')');
        } else if (value instanceof Set<?> set) {
            add(text, set.stream().map(VisitPrint::text).sorted().toList());
        } else if (value instanceof Map<?, ?> map) {
            add(
                    text,
                    map.entrySet().stream()
                            .collect(Collectors.toMap(e -> text(e.getKey()), e -> text(e.getValue())))
                            .entrySet()
                            .stream()
                            .sorted(Map.Entry.comparingByKey())
                            .map(e -> List.of(e.getKey(), e.getValue()))
                            .toList());
        } else if (value instanceof Collection<?> list) {
            text.append('[');
            list.forEach(one -> add(text, one));
            text.append(']');
        } else if (value instanceof Optional<?> maybe) {
            add(text, maybe.orElse(null));
        } else {
            String plain = plain(value);
            text.append(plain.length()).append(':').append(plain);
        }
    }

    private static String text(@Nullable Object value) {
        StringBuilder text = new StringBuilder();
        add(text, value);
        return text.toString();
    }

    /** Values whose text is the same in every run. */
    private static String plain(@Nullable Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof Enum<?> constant) {
            return constant.name();
        }
        if (value.getClass().getName().startsWith("java.")) {
            return value.toString();
        }
        throw new IllegalStateException("no print of a " + value.getClass().getName());
    }

    private static @Nullable Object part(Record held, Method part) {
        try {
            return part.invoke(held);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("no print of " + part, e);
        }
    }
}
