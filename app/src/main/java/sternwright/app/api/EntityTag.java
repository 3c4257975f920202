package sternwright.app.api;

/** Entity tags (RFC 9110, 8.8.3): the version of what was read, in quotation marks. */
final class EntityTag {
    private EntityTag() {}

    /** The tag of a version. */
    static String of(String version) {
        return '"' + version + '"';
    }

    /** The version of a tag that came back, weak or strong. */
    static String version(String tag) {
        String plain = tag.startsWith("W/") ? tag.substring(2) : tag;
        return plain.replace("\"", "");
    }
}
