package sternwright.protection.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import sternwright.protection.anode.AlloyChoice;
import sternwright.protection.anode.AnodeForecast;
import sternwright.protection.anode.AnodeLife;
import sternwright.protection.anode.RequiredMass;
import sternwright.protection.circuit.Body;
import sternwright.protection.diagnosis.Diagnoser;
import sternwright.protection.diagnosis.Diagnosis;
import sternwright.protection.diagnosis.Measurement;
import sternwright.protection.diagnosis.Observation;
import sternwright.protection.diagnosis.Quantity;
import sternwright.protection.diagnosis.Setting;
import sternwright.protection.fault.FaultList;
import sternwright.protection.fault.FaultStudy;
import sternwright.protection.judgement.PotentialJudge;
import sternwright.protection.metal.AnodeAlloy;
import sternwright.protection.metal.Metal;
import sternwright.protection.metal.MetalCatalogue;
import sternwright.protection.register.BoatBody;
import sternwright.protection.register.BoatCircuit;
import sternwright.protection.register.CircuitCondition;
import sternwright.protection.register.CircuitFromRegister;
import sternwright.protection.solver.BodyState;
import sternwright.protection.solver.CircuitSolver;
import sternwright.protection.solver.CircuitState;
import sternwright.protection.water.WaterResistance;

/** Writes the protection report of a boat. */
public final class ReportWriter {
    private final CircuitFromRegister builder;

    /** Writes with the catalogues of this builder. */
    public ReportWriter(CircuitFromRegister builder) {
        this.builder = builder;
    }

    /**
     * Writes a report.
     *
     * @param request what it is made from
     * @throws IllegalArgumentException in words, where water, metal, an override or a reading cannot be used
     */
    public ProtectionReport write(ReportRequest request) {
        CircuitCondition now = request.condition();
        BoatCircuit rest = builder.build(request.boat(), request.berth(), now);
        BoatCircuit run = builder.build(request.boat(), request.berth(), now.underWay());
        CircuitState state = CircuitSolver.solve(rest.circuit());
        List<PartLine> parts = parts(rest, state, CircuitSolver.solve(run.circuit()));
        AnodeLife life = AnodeLife.of(
                builder, request.boat(), request.berth(), now, request.year(), request.history(), request.today());
        List<Observation> readings = readings(request, life);
        Diagnosis diagnosis = new Diagnoser(rest, FaultList.of(rest)).diagnose(readings);
        boolean aluminium = rest.bodies().stream().anyMatch(b -> b.metal().family() == Metal.Family.ALUMINIUM);
        AlloyChoice alloy = AlloyChoice.of(rest.water().salinity(), aluminium);
        @Nullable Diagnosis found = readings.isEmpty() ? null : diagnosis;
        Metal suited = MetalCatalogue.standard().metal(alloy.metalId());
        return new ProtectionReport(
                request.boat(),
                request.berth(),
                request.today(),
                rest,
                state,
                parts,
                life,
                alloy,
                masses(request, rest, life),
                FaultStudy.of(rest),
                found,
                diagnosis.next(),
                pocket(rest, state, life),
                OwnerWords.of(parts, life, found, request.today()),
                new Adviser(rest, request.berth(), parts, life, suited, request.today()).all(found));
    }

    private static List<RequiredMass> masses(ReportRequest request, BoatCircuit rest, AnodeLife life) {
        return life.forecasts().stream()
                .map(f -> RequiredMass.of(
                        f.body(),
                        f.newLastsMonths(),
                        request.wantedYears(),
                        rest.water().temperatureC()))
                .toList();
    }

    /** The readings, and the last weighing of each anode where no reading says the same already. */
    private static List<Observation> readings(ReportRequest request, AnodeLife life) {
        List<Observation> all = new ArrayList<>(request.observations());
        life.wastageRatios().forEach((anode, ratio) -> {
            boolean given = all.stream()
                    .anyMatch(o -> o.measurement().quantity() == Quantity.WASTAGE_RATIO
                            && o.measurement().where().equals(anode));
            if (!given) {
                all.add(Observation.of(new Measurement(Quantity.WASTAGE_RATIO, anode, Setting.USUAL), ratio));
            }
        });
        return all;
    }

    private static List<PartLine> parts(BoatCircuit rest, CircuitState state, CircuitState running) {
        List<PartLine> lines = new ArrayList<>();
        boolean fresh = rest.water().fresh();
        for (BoatBody b : rest.bodies()) {
            if (!b.onBoard() || b.areaM2() == 0) {
                continue;
            }
            BodyState s = state.body(b.id());
            double run = running.body(b.id()).interfaceV();
            lines.add(new PartLine(
                    b,
                    s.interfaceV(),
                    s.metalV(),
                    s.currentA(),
                    run,
                    PotentialJudge.judge(b.metal(), s.interfaceV(), fresh),
                    PotentialJudge.judge(b.metal(), run, fresh)));
        }
        return lines;
    }

    /** The formulas an engineer trusts on sight, where they hold: resistance by shape, current by Ohm, life by Faraday. */
    private static List<PocketCheck> pocket(BoatCircuit boat, CircuitState state, AnodeLife life) {
        List<PocketCheck> checks = new ArrayList<>();
        double rho = boat.water().resistivityOhmM();
        for (BoatBody a : boat.anodes()) {
            Body body = boat.circuit().body(a.id());
            BodyState s = state.body(a.id());
            checks.add(new PocketCheck(
                    "resistance of the " + a.name() + " to the water",
                    String.format(Locale.ROOT, "R = 0.315 rho / sqrt(A) = 0.315 x %.3f / sqrt(%.3f)", rho, a.areaM2()),
                    WaterResistance.compact(rho, a.areaM2()),
                    body.waterOhm(),
                    "ohm"));
            boolean shared = boat.circuit().mutualResistances().stream()
                    .anyMatch(m -> m.a().equals(a.id()) || m.b().equals(a.id()));
            if (!shared && body.waterOhm() > 0) {
                checks.add(new PocketCheck(
                        "current of the " + a.name(),
                        String.format(
                                Locale.ROOT,
                                "I = (V far - V close) / R = (%.3f - %.3f) / %.3f",
                                s.metalV(),
                                s.interfaceV(),
                                body.waterOhm()),
                        (s.metalV() - s.interfaceV()) / body.waterOhm(),
                        s.currentA(),
                        "A"));
            }
        }
        life.forecasts().forEach(f -> life(f, state, boat.water().temperatureC(), checks));
        return checks;
    }

    private static void life(AnodeForecast f, CircuitState state, double temperatureC, List<PocketCheck> checks) {
        AnodeAlloy alloy = f.body().metal().alloy();
        Double mass = f.body().massKg();
        double current = state.body(f.body().id()).currentA();
        int half = 0;
        while (half < f.median().size() && f.median().get(half) > f.remainingNow() - 0.25) {
            half++;
        }
        if (alloy == null
                || mass == null
                || !(current > 0)
                || half == f.median().size()) {
            return;
        }
        double capacity = alloy.capacityAhPerKg(temperatureC);
        checks.add(new PocketCheck(
                "months that the " + f.body().name() + " takes to lose a quarter",
                String.format(
                        Locale.ROOT, "t = M u eps / I = %.2f x 0.25 x %.0f / %.4f / 730", mass, capacity, current),
                mass * 0.25 * capacity / current / 730,
                half,
                "months"));
    }
}
