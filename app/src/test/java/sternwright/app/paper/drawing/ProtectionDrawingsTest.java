package sternwright.app.paper.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import sternwright.boat.Arrangement;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Cooling;
import sternwright.boat.Hull;
import sternwright.boat.HullMaterial;
import sternwright.boat.Installation;
import sternwright.boat.Owner;
import sternwright.boat.Part;
import sternwright.boat.PartCatalogue;
import sternwright.boat.PartKind;
import sternwright.boat.ShorePower;
import sternwright.boat.Side;
import sternwright.boat.Water;
import sternwright.boat.Winter;
import sternwright.history.BoatHistory;
import sternwright.protection.anode.BoatYear;
import sternwright.protection.metal.MetalCatalogue;
import sternwright.protection.metal.ReferenceElectrode;
import sternwright.protection.register.CircuitCondition;
import sternwright.protection.register.CircuitFromRegister;
import sternwright.protection.report.ProtectionReport;
import sternwright.protection.report.ReportRequest;
import sternwright.protection.report.ReportWriter;

/** Drawings are sound XML, name every part, and keep their ink inside the sheet. */
class ProtectionDrawingsTest {
    private static final ProtectionReport REPORT = report();

    @Test
    void eachDrawingHasItsTable() {
        List<Drawing> all = ProtectionDrawings.of(REPORT, ReferenceElectrode.SILVER_CHLORIDE_SEAWATER);
        assertEquals(
                List.of("circuit", "potentials", "anode:port/leg-anode", "anode:starboard/leg-anode"),
                all.stream().map(Drawing::key).toList());
        for (Drawing d : all) {
            assertTrue(!d.rows().isEmpty(), d.key());
            d.rows().forEach(r -> assertEquals(d.columns().size(), r.size(), d.key()));
        }
        assertEquals(REPORT.parts().size(), all.get(1).rows().size());
    }

    @Test
    void everyPartIsNamedAndNoWordRunsOffThePhone() throws Exception {
        for (Drawing d : ProtectionDrawings.of(REPORT, ReferenceElectrode.SILVER_CHLORIDE_SEAWATER)) {
            for (String svg : List.of(d.wide(), d.narrow())) {
                Document xml = DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new InputSource(new StringReader(svg)));
                Matcher box = Pattern.compile("viewBox=\"0 0 (\\d+) (\\d+)\"").matcher(svg);
                assertTrue(box.find());
                inside(xml, Integer.parseInt(box.group(1)), d.key());
            }
            assertTrue(d.narrow().contains("viewBox=\"0 0 340 "), d.key());
        }
        Drawing circuit = ProtectionDrawings.circuit(REPORT);
        REPORT.circuit().bodies().forEach(b -> assertTrue(circuit.wide().contains(b.name()), b.name()));
    }

    /** Width of a word from its letters, generously: half the size of the type for each. */
    private static void inside(Document xml, int width, String key) {
        NodeList texts = xml.getElementsByTagName("text");
        List<String> outside = new ArrayList<>();
        for (int n = 0; n < texts.getLength(); n++) {
            var a = texts.item(n).getAttributes();
            String said = texts.item(n).getTextContent();
            double size = a.getNamedItem("font-size") == null
                    ? 12
                    : Double.parseDouble(a.getNamedItem("font-size").getNodeValue());
            double x = Double.parseDouble(a.getNamedItem("x").getNodeValue());
            String anchor = a.getNamedItem("text-anchor") == null
                    ? "start"
                    : a.getNamedItem("text-anchor").getNodeValue();
            double length = said.length() * size * 0.5;
            double from = anchor.equals("end") ? x - length : anchor.equals("middle") ? x - length / 2 : x;
            if (from < -2 || from + length > width + 2) {
                outside.add(said);
            }
        }
        assertEquals(List.of(), outside, key);
    }

    private static ProtectionReport report() {
        PartCatalogue kinds = new PartCatalogue(List.of(
                new PartKind("engine", "engine", "stern", false, "cast-iron", null, Set.of()),
                new PartKind("leg", "drive leg", "stern", true, "aluminium-casting", null, Set.of()),
                new PartKind("propeller", "fixed propeller", "stern", true, "bronze", null, Set.of()),
                new PartKind("leg-anode", "leg anode", "stern", true, "aluminium-anode", null, Set.of())));
        Boat boat = new Boat(
                "test",
                "Invented",
                new Owner("nobody", null),
                "b1",
                "cruising",
                Winter.AFLOAT,
                new Hull(11, 3.6, 1.9, 8000, HullMaterial.GRP),
                List.of(drive("port", Side.PORT), drive("starboard", Side.STARBOARD)),
                List.of(),
                null,
                null);
        Berth berth = new Berth(
                "b1", "invented berth", 50, new Water(35.0, null, List.of()), null, null, false, ShorePower.EARTHED);
        return new ReportWriter(new CircuitFromRegister(kinds, MetalCatalogue.standard()))
                .write(new ReportRequest(
                        boat,
                        berth,
                        CircuitCondition.atBerth(Month.APRIL).with(Map.of()),
                        BoatYear.atBerth(),
                        BoatHistory.empty("test"),
                        List.of(),
                        1,
                        LocalDate.of(2026, 4, 1)));
    }

    private static Installation drive(String id, Side side) {
        return new Installation(
                id,
                side,
                Arrangement.SAILDRIVE,
                Cooling.RAW_WATER,
                null,
                null,
                List.of(
                        Part.of("engine", "engine"),
                        Part.of("leg", "leg"),
                        Part.of("propeller", "propeller"),
                        Part.of("leg-anode", "leg-anode")));
    }
}
