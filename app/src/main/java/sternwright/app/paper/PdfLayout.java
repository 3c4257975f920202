package sternwright.app.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.EnumSet;
import java.util.Set;

/** Lays a page out as PDF/A-3a and PDF/UA-1. */
final class PdfLayout {
    private static final String FAMILY = "Source Serif 4";

    private static final Set<FSFontUseCase> USES = EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG);

    /** The four letters GSUB as a number. */
    private static final int GSUB = 0x47535542;

    private PdfLayout() {}

    static byte[] lay(String page) {
        XRLog.setLoggingEnabled(false);
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 17);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        font(builder, "Regular", 400, FontStyle.NORMAL);
        font(builder, "Semibold", 600, FontStyle.NORMAL);
        font(builder, "It", 400, FontStyle.ITALIC);
        builder.usePdfUaAccessibility(true);
        builder.usePdfAConformance(PdfAConformance.PDFA_3_A);
        builder.useColorProfile(SrgbProfile.bytes());
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.withProducer("Sternwright");
        builder.withHtmlContent(page, null);
        builder.toStream(out);
        try {
            builder.run();
        } catch (IOException e) {
            throw new UncheckedIOException("the PDF could not be laid out: " + e.getMessage(), e);
        }
        return out.toByteArray();
    }

    private static void font(PdfRendererBuilder builder, String name, int weight, FontStyle style) {
        byte[] data = withoutLigatures(Style.bytes("font/SourceSerif4-" + name + ".ttf"));
        builder.useFont(() -> new ByteArrayInputStream(data), FAMILY, weight, style, true, USES);
    }

    /**
     * The font with its substitution table out of sight. PDFBox would join letters into signs that have no code of their own, such
     * as ft, and neither a reader aloud nor a search would find the word. Only this copy in memory is changed, never the file.
     * Layout of the table directory: OpenType specification, "Organization of an OpenType font".
     */
    private static byte[] withoutLigatures(byte[] font) {
        ByteBuffer directory = ByteBuffer.wrap(font);
        int tables = directory.getShort(4);
        for (int i = 0; i < tables; i++) {
            int entry = 12 + 16 * i;
            if (directory.getInt(entry) == GSUB) {
                directory.putInt(entry, GSUB + 1);
            }
        }
        return font;
    }
}
