package sternwright.app.programme;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import sternwright.protection.fault.FaultKind;
import sternwright.protection.metal.AnodeAlloy;
import sternwright.protection.metal.Criterion;
import sternwright.protection.metal.Metal;
import sternwright.protection.metal.MetalCatalogue;
import sternwright.protection.metal.ReferenceElectrode;

/** Writes docs/metals.md: every figure of the catalogue of metals with its source. */
final class MetalsPage {
    private MetalsPage() {}

    static String of(MetalCatalogue catalogue) {
        StringBuilder out = new StringBuilder("""
                # Metals and electrodes

                Written by a test from the catalogue of the program. Potentials are volts against silver/silver chloride in seawater.

                ## Free potentials, flowing seawater
                | id | metal | by itself | in fresh water | source |
                | --- | --- | --- | --- | --- |
                """);
        for (Metal m : catalogue.metals()) {
            out.append(row(
                    m.id(),
                    m.name(),
                    volts(m.freePotentialV(false)),
                    volts(m.freePotentialV(true)),
                    m.freeSource().line()));
        }
        out.append("\nCurves: ")
                .append(catalogue.metal("bronze").curveSource().line())
                .append(".\n");
        out.append("""

                ## Limits of protection
                | id | protected at or below | source | not below | source |
                | --- | --- | --- | --- | --- |
                """);
        for (Metal m : catalogue.metals()) {
            Criterion c = m.criterion();
            if (c != null) {
                String over = c.overSource() == null ? "" : c.overSource().line();
                out.append(row(m.id(), volts(c.protectedAtV()), c.source().line(), volts(c.notBelowV()), over));
            }
        }
        out.append("""

                In fresh water: 200 mV more negative than the metal by itself.

                ## Anode alloys
                | id | Ah/kg | lost for each K above 20 °C | by Faraday's law | closed circuit | source |
                | --- | --- | --- | --- | --- | --- |
                """);
        for (Metal m : catalogue.metals()) {
            AnodeAlloy a = m.alloy();
            if (a != null) {
                out.append(row(
                        m.id(),
                        figure(a.capacityAhPerKg()),
                        figure(a.warmLossAhPerKgK()),
                        figure(a.theoreticalAhPerKg()),
                        volts(a.closedCircuitV()),
                        a.source().line()));
            }
        }
        electrodes(out);
        return out.toString();
    }

    private static void electrodes(StringBuilder out) {
        out.append("""

                ## Reference electrodes
                | sign | electrode | add to a reading, V | source |
                | --- | --- | --- | --- |
                """);
        for (ReferenceElectrode e : ReferenceElectrode.values()) {
            out.append(row(
                    e.symbol(),
                    e.words(),
                    String.format(Locale.ROOT, "%+.3f", e.offsetV()),
                    e.source().line()));
        }
        out.append("""

                ## How often a fault is met at one place
                From memory; the yard's own records lead. Only the order rests on a source: galvanic causes first, wiring second, stray current last
                (three proven in more than 7,000 surveys, IIMS, The Report, June 2021).

                | fault | probability |
                | --- | --- |
                """);
        for (FaultKind k : FaultKind.values()) {
            out.append(row(k.words(), figure(k.usual())));
        }
    }

    private static String row(String... cells) {
        return "| " + String.join(" | ", cells) + " |\n";
    }

    private static String volts(@Nullable Double v) {
        return v == null ? "" : String.format(Locale.ROOT, "%.3f", v);
    }

    private static String figure(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f", value) : Double.toString(value);
    }
}
