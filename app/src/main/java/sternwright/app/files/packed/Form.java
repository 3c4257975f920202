package sternwright.app.files.packed;

import org.jspecify.annotations.Nullable;

/** How one kind of value is packed. */
interface Form {
    void write(@Nullable Object value, PackedOut out);

    @Nullable
    Object read(PackedIn in);
}
