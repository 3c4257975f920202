package sternwright.app.certificate;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.AclEntry;
import java.nio.file.attribute.AclEntryPermission;
import java.nio.file.attribute.AclEntryType;
import java.nio.file.attribute.AclFileAttributeView;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** Files and folders that only their owner may open. */
public final class PrivateFile {
    private static final Set<PosixFilePermission> OWNER_FILE = PosixFilePermissions.fromString("rw-------");
    private static final Set<PosixFilePermission> OWNER_FOLDER = PosixFilePermissions.fromString("rwx------");

    private PrivateFile() {}

    /**
     * Writes a secret that must not be there yet; nobody else can open the file at any moment.
     *
     * @param file the file
     * @param text what it holds
     * @throws IOException if it is there or the disk refuses
     */
    public static void write(Path file, String text) throws IOException {
        if (posix(file)) {
            Files.createFile(file, PosixFilePermissions.asFileAttribute(OWNER_FILE));
        } else {
            Files.createFile(file);
            close(file);
        }
        Files.writeString(file, text, StandardCharsets.UTF_8, StandardOpenOption.TRUNCATE_EXISTING);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /**
     * Shuts a file or folder to everybody but its owner.
     *
     * @param path what is to be shut
     * @return whether somebody else could open it until now
     * @throws IOException if the disk refuses
     */
    public static boolean close(Path path) throws IOException {
        Set<PosixFilePermission> wanted = Files.isDirectory(path) ? OWNER_FOLDER : OWNER_FILE;
        if (posix(path)) {
            Set<PosixFilePermission> before = Files.getPosixFilePermissions(path);
            Files.setPosixFilePermissions(path, wanted);
            return !wanted.containsAll(before);
        }
        AclFileAttributeView acl = Files.getFileAttributeView(path, AclFileAttributeView.class);
        if (acl != null) {
            acl.setAcl(List.of(AclEntry.newBuilder()
                    .setType(AclEntryType.ALLOW)
                    .setPrincipal(Files.getOwner(path))
                    .setPermissions(EnumSet.allOf(AclEntryPermission.class))
                    .build()));
        }
        return false;
    }

    private static boolean posix(Path path) throws IOException {
        Path there = Files.exists(path)
                ? path
                : Objects.requireNonNull(path.toAbsolutePath().getParent());
        FileStore disk = Files.getFileStore(there);
        return disk.supportsFileAttributeView(PosixFileAttributeView.class);
    }
}
