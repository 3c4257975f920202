package sternwright.app.pages;

/** The screens on which every page is looked at. */
enum Screen {
    DESK_LIGHT(1280, 900, false),
    DESK_DARK(1280, 900, true),
    PHONE_LIGHT(390, 844, false),
    PHONE_DARK(390, 844, true);

    private final int width;
    private final int height;
    private final boolean dark;

    Screen(int width, int height, boolean dark) {
        this.width = width;
        this.height = height;
        this.dark = dark;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    boolean dark() {
        return dark;
    }

    boolean phone() {
        return width < 600;
    }

    /** The same screen in dark. */
    Screen inTheDark() {
        return phone() ? PHONE_DARK : DESK_DARK;
    }

    /** As it stands in the name of a picture. */
    String word() {
        return width + (dark ? "-dark" : "-light");
    }
}
