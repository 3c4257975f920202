package sternwright.app.paper.drawing;

import static sternwright.app.paper.drawing.PotentialScale.escape;
import static sternwright.app.paper.drawing.PotentialScale.format;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sternwright.protection.circuit.Link;
import sternwright.protection.register.BoatBody;
import sternwright.protection.register.BoatJoint;
import sternwright.protection.report.JointLine;
import sternwright.protection.report.ProtectionReport;

/**
 * The circuit of a boat as one would chalk it on the floor: a box for each body, wires between the boxes on the left, the water as one
 * line on the right, with the current that each body gives to it or takes from it.
 */
public final class CircuitDrawing {
    private static final int TOP = 30;
    private static final int ROW = 34;
    private static final int TRACK = 11;
    private static final double BAD_JOINT_V = 0.010;
    private static final String INK = "#544d44";
    private static final String DARK = "#1c1813";
    private static final String ACCENT = "#86291a";

    /** A sheet or a phone held upright. */
    private record Form(String name, int width, int box, int current, int font) {
        static final Form SHEET = new Form("circuit wide-only", 720, 270, 150, 12);
        static final Form PHONE = new Form("circuit narrow-only", 340, 190, 62, 11);
    }

    private final ProtectionReport report;
    private final Form form;
    private final StringBuilder out = new StringBuilder();
    private final Map<String, Integer> rows = new HashMap<>();
    private final List<JointLine> joints;
    private final List<Integer> tracks = new ArrayList<>();
    private int wires;

    private CircuitDrawing(ProtectionReport report, Form form) {
        this.report = report;
        this.form = form;
        joints = JointLine.of(report.circuit(), report.state());
    }

    /** Draws the circuit for a sheet. */
    public static String of(ProtectionReport report) {
        return new CircuitDrawing(report, Form.SHEET).draw();
    }

    /** Draws the same for a phone. */
    public static String narrow(ProtectionReport report) {
        return new CircuitDrawing(report, Form.PHONE).draw();
    }

    private String draw() {
        List<BoatBody> bodies = report.circuit().bodies();
        for (int n = 0; n < bodies.size(); n++) {
            rows.put(bodies.get(n).id(), n);
        }
        lay();
        int height = TOP + ROW * bodies.size() + 8;
        String alt = escape(words());
        boolean phone = form == Form.PHONE;
        out.append(format(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"%s\" viewBox=\"0 0 %d %d\" width=\"%d\" height=\"%.0f\""
                        + " font-family=\"SourceSerifDrawing, 'Source Serif 4'\" font-size=\"%d\" role=\"img\" aria-label=\"%s\" alt=\"%s\">",
                form.name,
                form.width,
                height,
                phone ? form.width : 637,
                phone ? height : height * 637.0 / form.width,
                form.font,
                alt,
                alt));
        text("soft", INK, form.font - 1.5, 0, 12, "start", "in metal");
        text("soft", INK, form.font - 1.5, form.width, 12, "end", "water");
        for (int n = 0; n < joints.size(); n++) {
            wire(joints.get(n), tracks.get(n));
        }
        bodies.forEach(this::body);
        double water = form.width - 6;
        out.append(format(
                "<path class=\"water\" stroke=\"%s\" stroke-width=\"3\" d=\"M%.1f,%d V%d\"/>",
                "#8fa3a8", water, TOP - 8, height - 6));
        return out.append("</svg>").toString();
    }

    /** Gives each joint the first free track to the left of the boxes, short joints nearest. */
    private void lay() {
        List<List<int[]>> taken = new ArrayList<>();
        List<Integer> order = new ArrayList<>();
        for (int n = 0; n < joints.size(); n++) {
            order.add(n);
            tracks.add(0);
        }
        order.sort((a, b) -> Integer.compare(span(joints.get(a)), span(joints.get(b))));
        for (int n : order) {
            int from = Math.min(row(joints.get(n), true), row(joints.get(n), false));
            int to = Math.max(row(joints.get(n), true), row(joints.get(n), false));
            int track = 0;
            while (track < taken.size() && clashes(taken.get(track), from, to)) {
                track++;
            }
            if (track == taken.size()) {
                taken.add(new ArrayList<>());
            }
            taken.get(track).add(new int[] {from, to});
            tracks.set(n, track);
        }
        wires = taken.size();
    }

    private static boolean clashes(List<int[]> taken, int from, int to) {
        return taken.stream().anyMatch(t -> from < t[1] && t[0] < to);
    }

    private int span(JointLine j) {
        return Math.abs(row(j, true) - row(j, false));
    }

    private int row(JointLine j, boolean first) {
        Link l = j.joint().link();
        return rows.getOrDefault(first ? l.a() : l.b(), 0);
    }

    private double left() {
        int labels = form == Form.PHONE ? 0 : 130;
        return labels + Math.max(3, wires) * TRACK + 6.0;
    }

    private double middle(int row) {
        return TOP + ROW * (row + 0.5);
    }

    /** The two ends of a joint are set a little apart from those of others, above and below the middle of the box. */
    private void wire(JointLine j, int track) {
        boolean open = !j.joint().link().conducts();
        boolean bad = !open && j.acrossV() > BAD_JOINT_V && j.joint().kind() != BoatJoint.Kind.SHORE_EARTH;
        double x = left() - TRACK * (track + 1.0);
        int a = Math.min(row(j, true), row(j, false));
        int b = Math.max(row(j, true), row(j, false));
        double from = middle(a) + 5;
        double to = middle(b) - 5;
        out.append(format(
                "<path class=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"1.2\"%s d=\"M%.1f,%.1f H%.1f V%.1f H%.1f\"/>",
                bad ? "wrongwire" : "wire",
                bad ? ACCENT : INK,
                open ? " stroke-dasharray=\"2 3\"" : "",
                left(),
                from,
                x,
                to,
                left()));
        boolean isolator = j.joint().link() instanceof Link.Isolator;
        if (isolator) {
            double y = (from + to) / 2;
            out.append(format(
                    "<path class=\"metal\" fill=\"#ffffff\" stroke=\"%s\" d=\"M%.1f,%.1f h8 l-4,7 z m0,7 h8\"/>",
                    INK, x - 4, y - 4));
        }
        boolean said = open || bad || isolator || j.joint().kind() == BoatJoint.Kind.SHORE_EARTH;
        if (said && form == Form.SHEET) {
            String what = open ? "open" : isolator ? "isolator" : PotentialScale.millivolts(j.acrossV()) + " mV across";
            text(
                    bad ? "wrong" : "soft",
                    bad ? ACCENT : INK,
                    10,
                    left() - TRACK * wires - 7,
                    (from + to) / 2 + 3.5,
                    "end",
                    what);
        }
    }

    private void body(BoatBody b) {
        double y = middle(rows.getOrDefault(b.id(), 0));
        double x = left();
        double width = form.width - x - form.current - 8;
        out.append(format(
                "<rect class=\"%s\" fill=\"%s\" stroke=\"%s\" stroke-width=\"1\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%d\"/>",
                b.anode() ? "box anodebox" : "box", b.anode() ? "#e9ddcf" : "#ffffff", INK, x, y - 13, width, 26));
        text("ink", DARK, form.font, x + 6, y - 1, "start", b.name());
        text("soft", INK, form.font - 2.5, x + 6, y + 9.5, "start", b.metal().name());
        double amps = report.state().body(b.id()).currentA();
        double water = form.width - 6;
        if (Math.abs(amps) < 5e-5 || b.areaM2() == 0) {
            return;
        }
        boolean gives = amps > 0;
        double tip = gives ? water - 3 : x + width + 1;
        double tail = gives ? x + width : water - 2;
        double head = gives ? -6 : 6;
        out.append(format(
                "<path class=\"wire\" fill=\"none\" stroke=\"%s\" stroke-width=\"1.2\" d=\"M%.1f,%.1f H%.1f m%.1f,-3.5 l%.1f,3.5 l%.1f,3.5\"/>",
                INK, tail, y + 2, tip, head, -head, head));
        text(
                "soft",
                INK,
                form.font - 2,
                (x + width + water) / 2,
                y - 3,
                "middle",
                PotentialScale.milliamps(Math.abs(amps)) + " mA");
    }

    private void text(String kind, String fill, double size, double x, double y, String anchor, String said) {
        out.append(format(
                "<text class=\"%s\" fill=\"%s\" font-size=\"%.1f\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>",
                kind, fill, size, x, y, anchor, escape(said)));
    }

    private String words() {
        StringBuilder s = new StringBuilder("Circuit at the berth: ");
        report.circuit()
                .bodies()
                .forEach(b -> s.append(b.name())
                        .append(' ')
                        .append(PotentialScale.milliamps(
                                report.state().body(b.id()).currentA()))
                        .append(" mA into the water; "));
        joints.forEach(j -> s.append(j.joint().name()).append(j.joint().link().conducts() ? " joined; " : " open; "));
        return s.toString();
    }
}
