package sternwright.app.files.packed;

import org.jspecify.annotations.Nullable;

/** Numbers as they are written down: nearly all have at most three decimals and take two or three bytes; none is rounded. */
record Figure() implements Form {
    private static final int NONE = 0;
    private static final int WHOLE = 1;
    private static final int THOUSANDTHS = 2;
    private static final int BITS = 3;
    private static final double THOUSAND = 1000;
    private static final double LARGEST = 1e12;

    @Override
    public void write(@Nullable Object value, PackedOut out) {
        if (value == null) {
            out.octet(NONE);
            return;
        }
        double figure = (Double) value;
        if (Math.abs(figure) < LARGEST) {
            long whole = Math.round(figure);
            long thousandths = Math.round(figure * THOUSAND);
            if (same(whole, figure)) {
                out.octet(WHOLE);
                out.signed(whole);
                return;
            }
            if (same(thousandths / THOUSAND, figure)) {
                out.octet(THOUSANDTHS);
                out.signed(thousandths);
                return;
            }
        }
        out.octet(BITS);
        out.number(Double.doubleToRawLongBits(figure));
    }

    private static boolean same(double a, double b) {
        return Double.doubleToRawLongBits(a) == Double.doubleToRawLongBits(b);
    }

    @Override
    public @Nullable Object read(PackedIn in) {
        return switch (in.octet()) {
            case NONE -> null;
            case WHOLE -> in.shared((double) in.signed());
            case THOUSANDTHS -> in.shared(in.signed() / THOUSAND);
            default -> Double.longBitsToDouble(in.number());
        };
    }
}
