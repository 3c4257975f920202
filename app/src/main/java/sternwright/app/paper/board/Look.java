package sternwright.app.paper.board;

/** How shapes look on paper; on a screen the page's own sheet leads. */
final class Look {
    static final String AXIS = "font-size=\"10\" fill=\"#544d44\"";
    static final String MONTH = "stroke=\"#cdc3b2\" stroke-width=\"0.7\"";
    static final String WEEK = "stroke=\"#a89f90\" stroke-width=\"0.6\"";
    static final String DAY = "font-size=\"9\" fill=\"#544d44\" text-anchor=\"middle\"";
    static final String NAME = "font-size=\"10\" fill=\"#1c1813\"";
    static final String STRONG = "font-size=\"10\" font-weight=\"600\" fill=\"#86291a\"";
    static final String SOFT = "font-size=\"9.5\" fill=\"#544d44\"";
    static final String COUNT = "font-size=\"7.5\" fill=\"#1c1813\" text-anchor=\"middle\"";
    static final String COUNT_FULL = "font-size=\"7.5\" font-weight=\"600\" fill=\"#ffffff\" text-anchor=\"middle\"";
    static final String HAIR = "stroke=\"#e4dccd\" stroke-width=\"0.7\"";
    static final String FILL = "fill=\"#c9bfae\"";
    static final String FULL = "fill=\"#86291a\"";
    static final String ASHORE = "fill=\"#efe7d8\" stroke=\"#a89f90\" stroke-width=\"0.6\"";
    static final String LAY_UP = "fill=\"#1c1813\"";
    static final String SPRING = "fill=\"#fffdf8\" stroke=\"#1c1813\" stroke-width=\"1\"";
    static final String HOIST = "stroke=\"#1c1813\" stroke-width=\"1.6\"";
    static final String BAD = "fill=\"#86291a\" stroke=\"#86291a\" stroke-width=\"1\"";
    static final String TODAY = "stroke=\"#86291a\" stroke-width=\"1\" stroke-dasharray=\"3 2\"";

    private Look() {}
}
