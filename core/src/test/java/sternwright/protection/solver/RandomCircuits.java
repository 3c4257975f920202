package sternwright.protection.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import sternwright.protection.circuit.Body;
import sternwright.protection.circuit.Circuit;
import sternwright.protection.circuit.CurrentSource;
import sternwright.protection.circuit.Link;
import sternwright.protection.circuit.MutualResistance;
import sternwright.protection.circuit.Reaction;

/** Seeded random circuits with bonds from 0.1 milliohm to 10 kilohm, open joints, isolators, dry joints, shared water and stray currents. */
public final class RandomCircuits {
    private RandomCircuits() {}

    /** A circuit of a few groups with everything in it. */
    public static Circuit mixed(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Circuit circuit = withoutSources(seed);
        int n = circuit.bodies().size();
        for (int s = 0; s < random.nextInt(3); s++) {
            int from = random.nextInt(n);
            int to = (from + 1 + random.nextInt(n - 1)) % n;
            circuit = circuit.plusSource(
                    new CurrentSource("stray" + s, "b" + from, "b" + to, random.nextDouble(0.001, 2)));
        }
        return circuit;
    }

    /** The same without forced currents. */
    public static Circuit withoutSources(int seed) {
        SplittableRandom random = new SplittableRandom(1000 + seed);
        int n = random.nextInt(2, 25);
        List<Body> bodies = new ArrayList<>();
        for (int b = 0; b < n; b++) {
            bodies.add(body("b" + b, random));
        }
        List<Link> links = new ArrayList<>();
        for (int b = 1; b < n; b++) {
            links.add(link(
                    "l" + b,
                    "b" + b,
                    "b" + random.nextInt(b),
                    random,
                    bodies.get(b).wet()));
        }
        for (int x = 0; x < n / 4; x++) {
            int a = random.nextInt(n);
            links.add(link("x" + x, "b" + a, "b" + (a + 1) % n, random, true));
        }
        List<MutualResistance> mutual = new ArrayList<>();
        for (int b = 0; b + 1 < n && random.nextInt(3) == 0; b += 2) {
            double own = Math.sqrt(bodies.get(b).waterOhm() * bodies.get(b + 1).waterOhm());
            mutual.add(new MutualResistance("b" + b, "b" + (b + 1), 0.8 * own * random.nextDouble()));
        }
        return new Circuit(bodies, links, List.of(), mutual);
    }

    /** A chain of bodies as long as wanted, every tenth an anode. */
    public static Circuit chain(int n, int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Body> bodies = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        for (int b = 0; b < n; b++) {
            double free = b % 10 == 0 ? -1.05 : -0.65;
            bodies.add(new Body("b" + b, "metal", 0.1, 1, 0.2, curve(free, random)));
            if (b > 0) {
                links.add(new Link.Resistor(
                        "l" + b,
                        "b" + b,
                        "b" + (b - 1 - random.nextInt(Math.min(b, 3))),
                        random.nextDouble(0.001, 0.1)));
            }
        }
        return new Circuit(bodies, links);
    }

    private static Body body(String id, SplittableRandom random) {
        if (random.nextInt(8) == 0 && !id.equals("b0")) {
            return new Body(id, "dry joint", 0, 1, 0, List.of());
        }
        double free = random.nextDouble(-1.6, 0.0);
        double water = random.nextInt(6) == 0 ? 0 : Math.pow(10, random.nextDouble(-3, 4));
        return new Body(
                id,
                "metal",
                Math.pow(10, random.nextDouble(-4, 2)),
                random.nextDouble(0.02, 1),
                water,
                curve(free, random));
    }

    private static List<Reaction> curve(double free, SplittableRandom random) {
        double i0 = Math.pow(10, random.nextDouble(-2, -1));
        return List.of(
                Reaction.anodic(free, i0, random.nextDouble(0.03, 0.1)),
                Reaction.cathodic(free, i0 * random.nextDouble(1, 4), random.nextDouble(0.06, 0.25), 0.1 + 3 * i0),
                Reaction.cathodic(-1.0, 0.003, 0.12, Reaction.NO_LIMIT));
    }

    private static Link link(String id, String a, String b, SplittableRandom random, boolean mayOpen) {
        return switch (random.nextInt(8)) {
            case 0 -> mayOpen ? new Link.OpenJoint(id, a, b) : new Link.Resistor(id, a, b, 0.01);
            case 1 -> new Link.Isolator(id, a, b, random.nextInt(2) * 0.3, 1e-9, 1.8, 2, 0.0256926);
            case 2 -> new Link.Resistor(id, a, b, random.nextInt(2) * 5e-7);
            default -> new Link.Resistor(id, a, b, Math.pow(10, random.nextDouble(-4, 4)));
        };
    }

    /** The same bodies with quite other areas: its state is a bad place to start from. */
    public static Circuit shaken(Circuit circuit, int seed) {
        SplittableRandom random = new SplittableRandom(seed * 31L + 5);
        return circuit.withBodies(b -> b.withAreaM2(b.areaM2() * Math.pow(10, random.nextDouble(-3, 3))));
    }

    /** Every area and every conductance multiplied by k. */
    public static Circuit scaled(Circuit c, double k) {
        List<Body> bodies = c.bodies().stream()
                .map(b -> b.withAreaM2(b.areaM2() * k).withWaterOhm(b.waterOhm() / k))
                .toList();
        List<Link> links = new ArrayList<>();
        for (Link l : c.links()) {
            if (l instanceof Link.Resistor r) {
                links.add(new Link.Resistor(r.id(), r.a(), r.b(), r.ohm() / k));
            } else if (l instanceof Link.Isolator i) {
                links.add(new Link.Isolator(
                        i.id(),
                        i.a(),
                        i.b(),
                        i.seriesOhm() / k,
                        i.saturationA() * k,
                        i.emissionFactor(),
                        i.diodesInSeries(),
                        i.thermalVoltageV()));
            } else {
                links.add(l);
            }
        }
        return new Circuit(
                bodies,
                links,
                c.sources().stream()
                        .map(s -> new CurrentSource(s.id(), s.from(), s.to(), s.currentA() * k))
                        .toList(),
                c.mutualResistances().stream()
                        .map(m -> new MutualResistance(m.a(), m.b(), m.ohm() / k))
                        .toList());
    }
}
