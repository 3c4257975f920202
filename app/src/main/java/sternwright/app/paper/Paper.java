package sternwright.app.paper;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;
import sternwright.job.JobCard;
import sternwright.job.estimate.Estimate;

/**
 * A paper ready to be written: the same page for a browser and for PDF.
 *
 * @param fileName name without ending, such as {@code card-grey-plover-2026-10-05}
 * @param title title of the document
 * @param html one self-contained page
 * @param printable the same page in the sheet of the PDF
 */
public record Paper(String fileName, String title, String html, String printable) {
    /** Compiled templates are looked up once. */
    private static final class Pages {
        static final TemplateEngine ENGINE = TemplateEngine.createPrecompiled(ContentType.Html);
    }

    /**
     * The job card.
     *
     * @param card the card
     * @param figures formats of the reader
     * @return the paper
     */
    public static Paper of(JobCard card, Figures figures) {
        String title = "Job card " + card.boat().name() + " " + card.from();
        String foot = foot(title, card.yardName(), card.invented());
        return paper("card", name(card), title, foot, figures, Map.of("card", card, "f", figures));
    }

    /**
     * The estimate.
     *
     * @param estimate the estimate
     * @param figures formats of the reader
     * @return the paper
     */
    public static Paper of(Estimate estimate, Figures figures) {
        String title = "Estimate " + estimate.boat().name() + " " + estimate.from();
        String foot = foot(title, estimate.yardName(), estimate.invented());
        return paper("estimate", name(estimate), title, foot, figures, Map.of("estimate", estimate, "f", figures));
    }

    /**
     * The protection report.
     *
     * @param sheet the report with its yard
     * @param figures formats of the reader
     * @return the paper
     */
    public static Paper of(ProtectionSheet sheet, Figures figures) {
        String title = "Protection report " + sheet.report().boat().name() + " "
                + sheet.report().today();
        String foot = foot(title, sheet.yardName(), sheet.invented());
        return paper("protection", name(sheet), title, foot, figures, Map.of("sheet", sheet, "f", figures));
    }

    /** Name of a job card's paper without ending. */
    public static String name(JobCard card) {
        return "card-" + card.number();
    }

    /** Name of an estimate's paper without ending. */
    public static String name(Estimate estimate) {
        return "estimate-" + estimate.number();
    }

    /** Name of a protection report's paper without ending. */
    public static String name(ProtectionSheet sheet) {
        return "protection-" + sheet.report().boat().id() + "-" + sheet.report().today();
    }

    static String foot(String title, String yard, boolean invented) {
        return title + " \u00b7 " + yard + (invented ? " \u00b7 invented" : "");
    }

    private static Paper paper(
            String kind, String name, String title, String foot, Figures figures, Map<String, Object> facts) {
        return new Paper(
                name,
                title,
                page(kind, title, Style.screen(foot, figures), facts),
                page(kind, title, Style.print(foot, figures), facts));
    }

    static String page(String kind, String title, String style, Map<String, Object> facts) {
        Map<String, Object> all = new java.util.HashMap<>(facts);
        all.put("title", title);
        all.put("style", style);
        StringOutput out = new StringOutput();
        Pages.ENGINE.render("paper/" + kind + ".jte", all, out);
        return out.toString();
    }

    /**
     * The paper as PDF.
     *
     * @return the bytes of a tagged PDF with its fonts inside
     */
    public byte[] pdf() {
        return PdfLayout.lay(printable);
    }
}
