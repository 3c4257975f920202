package sternwright.app.web.phones;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/** A text for the camera of a phone (ISO/IEC 18004). */
public final class QrCode {
    /** Light modules around the picture that the standard asks for. */
    private static final int QUIET = 4;

    private final ByteMatrix modules;

    private QrCode(ByteMatrix modules) {
        this.modules = modules;
    }

    /**
     * The picture of a text.
     *
     * @param text what the camera reads, such as an address
     * @return the picture
     * @throws IllegalArgumentException if the text is too long
     */
    public static QrCode of(String text) {
        try {
            return new QrCode(Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix());
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("too long for a picture: " + text.length() + " signs", tooLong);
        }
    }

    /**
     * Modules on a side, the quiet ones included.
     *
     * @return the side of the square
     */
    public int side() {
        return modules.getWidth() + 2 * QUIET;
    }

    private boolean dark(int x, int y) {
        int column = x - QUIET;
        int row = y - QUIET;
        return column >= 0
                && row >= 0
                && column < modules.getWidth()
                && row < modules.getHeight()
                && modules.get(column, row) == 1;
    }

    /**
     * The dark modules as an outline in a square of {@link #side()}.
     *
     * @return an SVG path
     */
    public String outline() {
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < side(); y++) {
            for (int x = 0; x < side(); x++) {
                if (dark(x, y)) {
                    path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
                }
            }
        }
        return path.toString();
    }

    /**
     * The picture in the signs of a terminal, two rows of modules in each line; light modules are drawn, as most terminals are dark.
     *
     * @return lines without an end of line after the last
     */
    public String text() {
        StringBuilder text = new StringBuilder();
        for (int y = 0; y < side(); y += 2) {
            if (y > 0) {
                text.append('\n');
            }
            for (int x = 0; x < side(); x++) {
                boolean upper = !dark(x, y);
                boolean lower = y + 1 < side() && !dark(x, y + 1);
                text.append(upper ? (lower ? '\u2588' : '\u2580') : lower ? '\u2584' : ' ');
            }
        }
        return text.toString();
    }
}
