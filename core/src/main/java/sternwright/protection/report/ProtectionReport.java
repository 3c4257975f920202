package sternwright.protection.report;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.protection.anode.AlloyChoice;
import sternwright.protection.anode.AnodeLife;
import sternwright.protection.anode.RequiredMass;
import sternwright.protection.diagnosis.Diagnosis;
import sternwright.protection.fault.FaultEffect;
import sternwright.protection.register.BoatCircuit;
import sternwright.protection.solver.CircuitState;

/**
 * Everything said of a boat's protection.
 *
 * @param boat the boat
 * @param berth its berth
 * @param today the day it is written
 * @param circuit the circuit at the berth
 * @param state its solution
 * @param parts the parts, in the order of the register
 * @param life anode life
 * @param alloy alloy that suits the water
 * @param masses mass each anode would need to last the wanted time to half
 * @param faults every single fault, worst first
 * @param diagnosis what readings and weighings say; null without any
 * @param measureNext what to measure next, most telling first
 * @param pocket pocket formulas beside the network
 * @param owner how the boat stands, in plain words for the owner
 * @param advice what to do about it, most pressing first
 */
public record ProtectionReport(
        Boat boat,
        Berth berth,
        LocalDate today,
        BoatCircuit circuit,
        CircuitState state,
        List<PartLine> parts,
        AnodeLife life,
        AlloyChoice alloy,
        List<RequiredMass> masses,
        List<FaultEffect> faults,
        @Nullable Diagnosis diagnosis,
        List<Diagnosis.NextMeasurement> measureNext,
        List<PocketCheck> pocket,
        List<String> owner,
        List<Advice> advice) {
    /** Copies the lists. */
    public ProtectionReport {
        parts = List.copyOf(parts);
        masses = List.copyOf(masses);
        faults = List.copyOf(faults);
        pocket = List.copyOf(pocket);
        owner = List.copyOf(owner);
        measureNext = List.copyOf(measureNext);
        advice = List.copyOf(advice);
    }
}
