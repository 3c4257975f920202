package sternwright.app.files.packed;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** Finds how a kind of value is packed, by what its record declares. */
final class Forms {
    private final List<Class<? extends Record>> repeated;
    private final Map<Type, Form> known = new ConcurrentHashMap<>();

    Forms(List<Class<? extends Record>> repeated) {
        this.repeated = List.copyOf(repeated);
        known.put(String.class, new Text());
        known.put(LocalDate.class, new Day());
        known.put(double.class, new Figure());
        known.put(Double.class, new Figure());
        known.put(int.class, new Whole());
        known.put(boolean.class, new Flag());
    }

    Form of(Type type) {
        Form form = known.get(type);
        if (form == null) {
            form = make(type);
            known.put(type, form);
        }
        return form;
    }

    private Form make(Type type) {
        if (type instanceof ParameterizedType list) {
            Type[] of = list.getActualTypeArguments();
            if (list.getRawType() == List.class) {
                return new Many(of(of[0]), List::copyOf);
            }
            if (list.getRawType() == Set.class) {
                return new Many(of(of[0]), all -> Set.copyOf(new LinkedHashSet<>(all)));
            }
            if (list.getRawType() == Map.class) {
                return new Table(of(of[0]), of(of[1]));
            }
        }
        if (type instanceof Class<?> kind && kind.isEnum()) {
            return new Choice(List.of(kind.getEnumConstants()));
        }
        if (type instanceof Class<?> kind && kind.isRecord()) {
            Form form = new RecordForm(kind, this);
            return repeated.contains(kind) ? new Repeated(form) : form;
        }
        throw new IllegalArgumentException(type + " cannot be packed");
    }

    private record Text() implements Form {
        @Override
        public void write(@Nullable Object value, PackedOut out) {
            out.text((String) value);
        }

        @Override
        public @Nullable Object read(PackedIn in) {
            return in.text();
        }
    }

    private record Day() implements Form {
        @Override
        public void write(@Nullable Object value, PackedOut out) {
            if (value == null) {
                out.number(0);
            } else {
                long day = ((LocalDate) value).toEpochDay();
                out.number(1 + ((day << 1) ^ (day >> 63)));
            }
        }

        @Override
        public @Nullable Object read(PackedIn in) {
            long said = in.number();
            long day = said - 1;
            return said == 0 ? null : Days.of((day >>> 1) ^ -(day & 1));
        }
    }

    private record Whole() implements Form {
        @Override
        public void write(@Nullable Object value, PackedOut out) {
            out.signed((Integer) Objects.requireNonNull(value));
        }

        @Override
        public Object read(PackedIn in) {
            return (int) in.signed();
        }
    }

    private record Flag() implements Form {
        @Override
        public void write(@Nullable Object value, PackedOut out) {
            out.octet(Boolean.TRUE.equals(value) ? 1 : 0);
        }

        @Override
        public Object read(PackedIn in) {
            return in.octet() == 1;
        }
    }

    private record Choice(List<?> all) implements Form {
        @Override
        public void write(@Nullable Object value, PackedOut out) {
            out.number(value == null ? 0 : 1 + all.indexOf(value));
        }

        @Override
        public @Nullable Object read(PackedIn in) {
            int place = (int) in.number();
            return place == 0 ? null : all.get(place - 1);
        }
    }

    private record Many(Form one, java.util.function.Function<List<Object>, Object> copy) implements Form {
        @Override
        public void write(@Nullable Object value, PackedOut out) {
            java.util.Collection<?> all = (java.util.Collection<?>) Objects.requireNonNull(value);
            out.number(all.size());
            all.forEach(v -> one.write(v, out));
        }

        @Override
        public Object read(PackedIn in) {
            int size = (int) in.number();
            List<Object> all = new ArrayList<>(size);
            for (int i = 0; i < size; i++) {
                all.add(Objects.requireNonNull(one.read(in)));
            }
            return copy.apply(all);
        }
    }

    private record Table(Form key, Form value) implements Form {
        @Override
        public void write(@Nullable Object table, PackedOut out) {
            Map<?, ?> all = (Map<?, ?>) Objects.requireNonNull(table);
            out.number(all.size());
            all.forEach((k, v) -> {
                key.write(k, out);
                value.write(v, out);
            });
        }

        @Override
        public Object read(PackedIn in) {
            int size = (int) in.number();
            Map<Object, Object> all = new LinkedHashMap<>();
            for (int i = 0; i < size; i++) {
                all.put(Objects.requireNonNull(key.read(in)), Objects.requireNonNull(value.read(in)));
            }
            return all;
        }
    }

    private record Repeated(Form one) implements Form {
        @Override
        public void write(@Nullable Object value, PackedOut out) {
            if (out.repeated(value)) {
                one.write(value, out);
                out.said(Objects.requireNonNull(value));
            }
        }

        @Override
        public @Nullable Object read(PackedIn in) {
            int place = (int) in.number();
            if (place != PackedOut.FIRST) {
                return in.before(place);
            }
            Object value = in.shared(Objects.requireNonNull(one.read(in)));
            in.said(value);
            return value;
        }
    }
}
