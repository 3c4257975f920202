package sternwright.app.paper;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;

/** The colour profile that PDF/A asks for: the JDK's own sRGB. */
final class SrgbProfile {
    private SrgbProfile() {}

    static byte[] bytes() {
        return ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
    }
}
