package sternwright.bench.protection;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import sternwright.protection.circuit.Body;
import sternwright.protection.circuit.Circuit;
import sternwright.protection.circuit.CurrentSource;
import sternwright.protection.circuit.Link;
import sternwright.protection.circuit.Reaction;

/** A circuit as an ngspice netlist whose operating point is computed a number of times in one process. */
final class Netlist {
    private final Circuit circuit;
    private final Map<String, Integer> node = new HashMap<>();
    private final StringBuilder out = new StringBuilder("* protection circuit\n");

    private Netlist(Circuit circuit) {
        this.circuit = circuit;
        circuit.bodies().forEach(b -> node.put(b.id(), node.size()));
    }

    static String of(Circuit circuit, int times) {
        return new Netlist(circuit).write(times);
    }

    private String write(int times) {
        for (Body b : circuit.bodies()) {
            body(b, at(b.id()));
        }
        int n = 0;
        for (Link l : circuit.links()) {
            link(l, n++);
        }
        for (CurrentSource s : circuit.sources()) {
            line("IS%d m%d m%d %s", n++, at(s.from()), at(s.to()), s.currentA());
        }
        line(".options reltol=1e-9 abstol=1e-16 vntol=1e-13 gmin=1e-18 itl1=2000 itl2=2000 noinit");
        line(".control");
        line("let ii=0");
        line("dowhile ii<%d", times);
        line("op");
        line("destroy all");
        line("let ii=ii+1");
        line("end");
        line("quit");
        line(".endc");
        line(".end");
        return out.toString();
    }

    private void body(Body b, int n) {
        StringBuilder sum = new StringBuilder();
        double start = -0.5;
        for (Reaction r : b.wet() ? b.reactions() : List.<Reaction>of()) {
            double k = r.sign() * Math.log(10) / r.slopeVPerDecade();
            String z = String.format(Locale.ROOT, "(v(m%d)-v(w%d)-(%s))*(%s)", n, n, r.e0V(), k);
            String sign = r.sign() > 0 ? "+" : "-";
            if (r.limitAPerM2() == Reaction.NO_LIMIT) {
                sum.append(String.format(Locale.ROOT, "%s%s*exp(min(%s,200))", sign, r.i0APerM2(), z));
            } else {
                sum.append(String.format(
                        Locale.ROOT,
                        "%s%s/(1+%s*exp(min(-(%s),200)))",
                        sign,
                        r.limitAPerM2(),
                        r.limitAPerM2() / r.i0APerM2(),
                        z));
            }
            start = r.kind() == Reaction.Kind.ANODIC ? r.e0V() : start;
        }
        line("B%d m%d s%d I=%s*(%s)", n, n, n, b.bareAreaM2(), sum.isEmpty() ? "0" : sum);
        line("Vs%d s%d w%d 0", n, n, n);
        line("RW%d w%d 0 %s", n, n, Math.max(b.waterOhm(), 1e-9));
        line(".nodeset v(m%d)=%s v(w%d)=0", n, start, n);
    }

    private void link(Link l, int n) {
        int a = at(l.a());
        int b = at(l.b());
        if (l instanceof Link.Resistor r) {
            line("RL%d m%d m%d %s", n, a, b, Math.max(r.ohm(), 1e-9));
        } else if (l instanceof Link.Isolator i) {
            line("RL%d m%d d%d %s", n, a, n, Math.max(i.seriesOhm(), 1e-9));
            line(
                    "BL%d d%d m%d I=%s*(exp(min((v(d%d)-v(m%d))*%s,200))-exp(min(-(v(d%d)-v(m%d))*%s,200)))",
                    n, n, b, i.saturationA(), n, b, 1 / i.scaleV(), n, b, 1 / i.scaleV());
        }
    }

    private int at(String body) {
        Integer n = node.get(body);
        if (n == null) {
            throw new IllegalArgumentException("no body " + body);
        }
        return n;
    }

    private void line(String form, Object... values) {
        out.append(String.format(Locale.ROOT, form, values)).append('\n');
    }
}
