package sternwright.app.api;

/** What a program read and names by its entity tag is not what stands there any more. */
final class OtherVersion extends RuntimeException {
    private static final long serialVersionUID = 1;

    OtherVersion(String what) {
        super(what);
    }
}
