package sternwright.app.desk.campaign;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import sternwright.app.desk.InventedDesk;
import sternwright.app.desk.campaign.DueTable.Choice;
import sternwright.app.desk.campaign.DueTable.Narrowed;
import sternwright.app.files.YardFiles;
import sternwright.app.paper.Paper;
import sternwright.boat.Boat;
import sternwright.boat.Owner;
import sternwright.due.DueState;
import sternwright.service.Place;

class CampaignTest {
    private static final Campaign SEALS =
            new Campaign("Diaphragm seals over seven years", null, "diaphragm-seal", 84, null);

    private final DueTable table = DueTable.of(InventedDesk.yard(), InventedDesk.dues());

    @Test
    void countsAreThoseOfTheListEachChoiceWouldGive() {
        DueFilter ashore = DueFilter.of(Map.of("place", Set.of("ashore"), "page", Set.of("2")), null);
        Narrowed list = table.narrowed(ashore);
        assertFalse(list.rows().isEmpty());
        assertTrue(list.rows().stream().allMatch(r -> r.due().rule().place() == Place.ASHORE));
        for (Facet facet : Facet.values()) {
            for (Choice choice : list.of(facet)) {
                Map<String, Set<String>> with = new java.util.HashMap<>(Map.of("place", Set.of("ashore")));
                with.put(facet.key(), Set.of(choice.value()));
                Narrowed chosen = table.narrowed(DueFilter.of(with, null));
                assertEquals(chosen.rows(), table.rows(DueFilter.of(with, null)), facet + " " + choice);
                assertEquals(chosen.rows().size(), choice.works(), facet + " " + choice);
                assertEquals(chosen.boats(), choice.boats(), facet + " " + choice);
            }
        }
    }

    @Test
    void aChoiceWithoutWorksStaysToBeTakenBack() {
        Narrowed none = table.narrowed(DueFilter.of(Map.of("rule", Set.of("no-such")), null));
        assertTrue(none.rows().isEmpty());
        assertTrue(none.of(Facet.RULE).stream().anyMatch(c -> c.value().equals("no-such") && c.chosen()));
    }

    @Test
    void everySealOverSevenYearsAndThoseOfUnknownAge() {
        CampaignList list = CampaignList.of(SEALS, InventedDesk.dues(), InventedDesk.yard(), InventedDesk.TODAY);
        assertFalse(list.lines().isEmpty());
        for (CampaignLine line : list.lines()) {
            Integer months = line.months();
            assertTrue(months == null || months >= 84, line.toString());
            assertEquals("diaphragm-seal", line.row().part().kind());
        }
        long seals = InventedDesk.yard().boats().values().stream()
                .flatMap(b -> b.installations().stream())
                .flatMap(i -> i.parts().stream())
                .filter(p -> p.kind().equals("diaphragm-seal"))
                .count();
        CampaignList all = CampaignList.of(
                new Campaign("all", null, "diaphragm-seal", null, null),
                InventedDesk.dues(),
                InventedDesk.yard(),
                InventedDesk.TODAY);
        assertEquals(seals, all.lines().size());
        assertThrows(IllegalArgumentException.class, () -> new Campaign("everything", null, null, 1, null));
    }

    @Test
    void theSheetHoldsEveryLineAndNoFormula() {
        YardFiles renamed = named("=HYPERLINK(\"x\")", "+44 1632 960001");
        CampaignList list = CampaignList.of(SEALS, InventedDesk.dues(), renamed, InventedDesk.TODAY);
        var rows = CsvReader.builder().ofCsvRecord(list.csv()).stream().toList();
        assertEquals(list.lines().size() + 1, rows.size());
        assertEquals("boat", rows.get(0).getField(0));
        assertEquals("'=HYPERLINK(\"x\")", rows.get(1).getField(2));
        assertEquals("+44 1632 960001", rows.get(1).getField(3));
    }

    @Test
    void oneLetterAnOwner() throws IOException {
        YardFiles one = named("Ada  Example", "a@example.org");
        CampaignList seals = CampaignList.of(SEALS, InventedDesk.dues(), one, InventedDesk.TODAY);
        assertEquals(1, count(letters(seals).html(), "<section class=\"owner\">"));
        CampaignList list = CampaignList.of(
                new Campaign("Seals over three years", null, "diaphragm-seal", 36, null),
                InventedDesk.dues(),
                InventedDesk.yard(),
                InventedDesk.TODAY);
        Paper paper = letters(list);
        Set<String> owners = list.lines().stream()
                .filter(l -> l.row().due().state() != DueState.REFUSED)
                .map(l -> l.row().boat().owner().name())
                .collect(Collectors.toSet());
        assertEquals(owners.size(), count(paper.html(), "<section class=\"owner\">"));
        byte[] pdf = paper.pdf();
        Path to = Files.createDirectories(Path.of("target/paper"));
        Files.write(to.resolve("letters.pdf"), pdf);
        Files.writeString(to.resolve("letters.html"), paper.html());
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertTrue(document.getNumberOfPages() >= owners.size());
            assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
        }
    }

    @Test
    void aCampaignWithoutANameIsHeadedByItsWork() {
        CampaignList list = CampaignList.of(
                new Campaign("", "change-engine-oil", null, null, null),
                InventedDesk.dues(),
                InventedDesk.yard(),
                InventedDesk.TODAY);
        String html = letters(list).html();
        assertFalse(html.contains("<h1>: "), "a heading that begins with nothing");
        assertTrue(html.contains("<h1>Change engine oil and filter: "));
    }

    private Paper letters(CampaignList list) {
        return CampaignLetters.of(list, InventedDesk.yard(), InventedDesk.TODAY.plusWeeks(4), Locale.UK);
    }

    private static int count(String text, String what) {
        return text.split(java.util.regex.Pattern.quote(what), -1).length - 1;
    }

    /** The yard with every boat of one owner, typed with more or fewer spaces. */
    private static YardFiles named(String owner, String contact) {
        YardFiles f = InventedDesk.yard();
        Map<String, Boat> boats = new java.util.LinkedHashMap<>();
        boolean[] odd = {false};
        f.boats().forEach((id, b) -> {
            odd[0] = !odd[0];
            String name = odd[0] ? owner : Objects.requireNonNull(owner).replace("  ", " ");
            boats.put(
                    id,
                    new Boat(
                            b.id(),
                            b.name(),
                            new Owner(name, contact),
                            b.berthId(),
                            b.use(),
                            b.winter(),
                            b.hull(),
                            b.installations(),
                            b.bonds(),
                            b.programme(),
                            b.note()));
        });
        return new YardFiles(
                f.yard(), f.berths(), f.catalogue(), f.generic(), f.programmes(), boats, f.histories(), List.of());
    }
}
