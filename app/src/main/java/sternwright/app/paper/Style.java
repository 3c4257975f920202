package sternwright.app.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;

/** Style sheets and fonts that travel with the program. */
final class Style {
    private Style() {}

    /** The sheet of a page for a browser, fonts inside it. */
    static String screen(String foot, Figures figures) {
        return page(foot, figures)
                + face("Regular", "normal", 400)
                + face("Semibold", "normal", 600)
                + face("It", "italic", 400)
                + text("screen.css");
    }

    /** The sheet of the PDF; its fonts are given to the layout engine apart. */
    static String print(String foot, Figures figures) {
        return page(foot, figures) + drawingFace() + text("print.css");
    }

    /** The sheet of the season board for a browser. */
    static String boardScreen(String foot, Figures figures) {
        return screen(foot, figures) + text("board-screen.css");
    }

    /** The sheet of the season board's PDF: laid across. */
    static String boardPrint(String foot, Figures figures) {
        return print(foot, figures).replaceFirst("size:([^;]+);", "size:$1 landscape;") + text("board-print.css");
    }

    /** The sheet of letters for a browser. */
    static String lettersScreen(String foot, Figures figures) {
        return screen(foot, figures) + text("letters.css");
    }

    /** The sheet of the letters' PDF. */
    static String lettersPrint(String foot, Figures figures) {
        return print(foot, figures) + text("letters.css");
    }

    /** The font of drawings: the layout engine hands fonts of its own to the page, but to drawings only those of the sheet. */
    private static String drawingFace() {
        String data = Base64.getEncoder().encodeToString(bytes("font/SourceSerif4-Regular.ttf"));
        return "@font-face{font-family:'SourceSerifDrawing';src:url(data:font/ttf;base64," + data + ")}\n";
    }

    /** Size of the sheet and its foot; each margin box names its font, for it inherits none. */
    private static String page(String foot, Figures figures) {
        String words = foot.replace("\\", "").replace("\"", "").replace("<", "").replace("&", "+");
        String font = "font-family:'Source Serif 4';font-size:8.2pt;color:#544d44;";
        return "@page{size:" + figures.sheet() + ";margin:15mm 16mm 17mm 17mm;"
                + "@bottom-left{content:\"" + words + "\";" + font + "}"
                + "@bottom-right{content:\"page \" counter(page) \" of \" counter(pages);" + font + "}}\n";
    }

    private static String face(String name, String style, int weight) {
        String data = Base64.getEncoder().encodeToString(bytes("font/SourceSerif4-" + name + ".woff2"));
        return "@font-face{font-family:'Source Serif 4';font-style:" + style + ";font-weight:" + weight
                + ";src:url(data:font/woff2;base64," + data + ") format('woff2')}\n";
    }

    private static String text(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    /** Bytes of a file beside this class. */
    static byte[] bytes(String name) {
        try (InputStream in = Style.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program is incomplete: " + name + " is missing in its jar");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
