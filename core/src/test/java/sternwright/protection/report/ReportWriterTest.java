package sternwright.protection.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sternwright.boat.Arrangement;
import sternwright.boat.Boat;
import sternwright.boat.Cooling;
import sternwright.boat.HullMaterial;
import sternwright.boat.ShorePower;
import sternwright.boat.Water;
import sternwright.history.BoatHistory;
import sternwright.protection.anode.BoatYear;
import sternwright.protection.diagnosis.Measurement;
import sternwright.protection.diagnosis.Observation;
import sternwright.protection.diagnosis.Quantity;
import sternwright.protection.diagnosis.Setting;
import sternwright.protection.metal.MetalCatalogue;
import sternwright.protection.register.CircuitCondition;
import sternwright.protection.register.CircuitFromRegister;
import sternwright.protection.register.ProtectionBoats;

class ReportWriterTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 4, 1);

    private static ProtectionReport report(Boat boat, ShorePower shore, List<Observation> observations) {
        ReportWriter writer =
                new ReportWriter(new CircuitFromRegister(ProtectionBoats.kinds(), MetalCatalogue.standard()));
        return writer.write(new ReportRequest(
                boat,
                ProtectionBoats.sea(shore),
                CircuitCondition.atBerth(Month.APRIL),
                BoatYear.atBerth(),
                BoatHistory.empty(boat.id()),
                observations,
                1,
                TODAY));
    }

    static List<Boat> boats() {
        return List.of(
                ProtectionBoats.saildrive(),
                ProtectionBoats.twinSterndrive(),
                ProtectionBoats.shaft(true),
                ProtectionBoats.pod(),
                ProtectionBoats.jet(),
                ProtectionBoats.steel());
    }

    @ParameterizedTest
    @MethodSource("boats")
    void everyArrangementGetsAWholeReport(Boat boat) {
        ProtectionReport r = report(boat, ShorePower.GALVANIC_ISOLATOR, List.of());
        assertTrue(r.parts().size() >= 3);
        assertEquals(r.circuit().anodes().size(), r.life().forecasts().size());
        assertTrue(r.owner().stream().allMatch(s -> s.endsWith(".")), r.owner().toString());
        assertTrue(r.faults().size() > 5);
    }

    @Test
    void pocketFormulasStandBesideTheNetworkAndAgreeWhereTheyHold() {
        ProtectionReport r = report(ProtectionBoats.saildrive(), ShorePower.NONE, List.of());
        assertEquals(3, r.pocket().size());
        for (PocketCheck c : r.pocket()) {
            assertEquals(
                    c.pocket(), c.network(), c.unit().equals("months") ? 1.5 : 1e-6 * Math.abs(c.network()), c.what());
        }
    }

    @Test
    void readingsAreDiagnosedAndToldToTheOwner() {
        ProtectionReport r = report(
                ProtectionBoats.saildrive(),
                ShorePower.NONE,
                List.of(
                        Observation.of(new Measurement(Quantity.POTENTIAL_CLOSE, "main/leg", Setting.USUAL), -0.71),
                        Observation.of(
                                new Measurement(Quantity.POTENTIAL_CLOSE, "main/leg-anode", Setting.USUAL), -1.05)));
        assertNotNull(r.diagnosis());
        assertTrue(Objects.requireNonNull(r.diagnosis()).summary().contains("anode not connected"));
        assertTrue(r.owner().stream().anyMatch(s -> s.contains("not connected")));
    }

    @Test
    void theShoreEarthIsSaidWithWhatToDoAndWhoDoesIt() {
        ProtectionReport r = report(ProtectionBoats.twinSterndrive(), ShorePower.EARTHED, List.of());
        assertTrue(r.owner().get(0).startsWith("By calculation"));
        Advice isolator = r.advice().stream()
                .filter(a -> a.act().contains("galvanic isolator"))
                .findFirst()
                .orElseThrow();
        assertTrue(isolator.caution().contains("qualified electrician"));
        assertTrue(r.advice().get(0).severity().compareTo(isolator.severity()) >= 0, "most pressing first");
        assertTrue(report(ProtectionBoats.twinSterndrive(), ShorePower.NONE, List.of()).advice().stream()
                .noneMatch(a -> a.act().contains("isolator")));
    }

    @Test
    void wordsForTheOwnerNameNoShortNames() {
        for (Boat boat : boats()) {
            for (ShorePower shore : ShorePower.values()) {
                ProtectionReport r = report(boat, shore, List.of());
                List<String> said = new java.util.ArrayList<>(r.owner());
                r.advice().forEach(a -> said.addAll(List.of(a.found(), a.act(), a.caution())));
                r.faults().forEach(f -> said.addAll(List.of(f.fault().words(), f.sentence())));
                for (String s : said) {
                    assertTrue(!s.contains("/") && !s.contains("~") && !s.contains("null"), s);
                }
            }
        }
    }

    @Test
    void aMetalThatTheWaterDoesNotAskForIsToBeChanged() {
        ReportWriter writer =
                new ReportWriter(new CircuitFromRegister(ProtectionBoats.kinds(), MetalCatalogue.standard()));
        Boat boat = ProtectionBoats.saildrive();
        ProtectionReport river = writer.write(new ReportRequest(
                boat,
                ProtectionBoats.berth(new Water(null, 30.0, List.of()), ShorePower.NONE),
                CircuitCondition.atBerth(Month.APRIL),
                BoatYear.atBerth(),
                BoatHistory.empty(boat.id()),
                List.of(),
                1,
                TODAY));
        assertTrue(river.advice().stream()
                .anyMatch(a -> a.found().contains("is of zinc") && a.found().contains("asks for magnesium")));
    }

    @Test
    void theWantedIntervalIsAnsweredForEveryAnode() {
        ReportWriter writer =
                new ReportWriter(new CircuitFromRegister(ProtectionBoats.kinds(), MetalCatalogue.standard()));
        Boat boat = ProtectionBoats.twinSterndrive();
        double[] sum = new double[2];
        for (int years = 1; years <= 2; years++) {
            ProtectionReport r = writer.write(new ReportRequest(
                    boat,
                    ProtectionBoats.sea(ShorePower.NONE),
                    CircuitCondition.atBerth(Month.APRIL),
                    BoatYear.atBerth(),
                    BoatHistory.empty(boat.id()),
                    List.of(),
                    years,
                    TODAY));
            assertEquals(r.circuit().anodes().size(), r.masses().size());
            sum[years - 1] = r.masses().stream().mapToDouble(m -> m.massKg()).sum();
        }
        assertEquals(2 * sum[0], sum[1], 1e-9);
    }

    @Test
    void aSteelHullWithNoAnodeOfItsOwnIsToldHowMany() {
        Boat boat = ProtectionBoats.boat(
                HullMaterial.STEEL,
                List.of(),
                ProtectionBoats.installation(
                        "main",
                        Arrangement.SHAFT,
                        Cooling.KEEL,
                        ProtectionBoats.part("engine"),
                        ProtectionBoats.part("shaft"),
                        ProtectionBoats.part("propeller"),
                        ProtectionBoats.part("shaft-anode")));
        ProtectionReport r = report(boat, ShorePower.NONE, List.of());
        assertTrue(
                r.owner().get(0).contains("the steel hull is not fully protected"),
                r.owner().toString());
        assertTrue(
                r.advice().stream()
                        .anyMatch(a -> a.act().contains("hull anode") && a.act().contains("on the hull itself")),
                r.advice().toString());
    }
}
