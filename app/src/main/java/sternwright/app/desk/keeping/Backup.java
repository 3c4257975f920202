package sternwright.app.desk.keeping;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.store.Store;
import sternwright.app.store.StoreAddress;
import sternwright.app.store.Verification;
import sternwright.app.store.backup.StoreCopy;

/** A yard with its accounts in one file, made while people work: a zip of two SQLite files, on whatever it is kept. */
public final class Backup {
    private static final String YARD = "yard.db";
    private static final String ACCOUNTS = "accounts.db";
    private static final String NOTE = "READ-ME.txt";

    private final Clock clock;

    /**
     * Ready to back up and restore.
     *
     * @param clock tells the time
     */
    public Backup(Clock clock) {
        this.clock = clock;
    }

    /**
     * Backs up.
     *
     * @param place where the yard is kept
     * @param file where there is none yet
     * @param latest the last day on which anything can have happened
     * @return what was verified in it
     * @throws BadInput if the file is there already, or the yard is wrong
     * @throws IOException if disk or store refuses; there is no file then
     */
    public Verification write(YardPlace place, Path file, LocalDate latest) throws IOException {
        if (Files.exists(file)) {
            throw BadInput.of(file.toString(), "there is a file already", "a new file", "Name another one.");
        }
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw BadInput.of(file.toString(), "its folder is not there", "a folder that is there", "Make it first.");
        }
        Path work = Files.createTempDirectory(folder, ".backup");
        try {
            yard(place, work.resolve(YARD), latest);
            accounts(place, work.resolve(ACCOUNTS));
            Files.writeString(
                    work.resolve(NOTE),
                    "A yard kept by sternwright, as it was at " + clock.instant() + ".\n"
                            + "sternwright verify FILE looks whether it is whole, sternwright restore FILE brings it back.\n");
            Verification found = verified(work.resolve(YARD), latest);
            Path zip = work.resolve("backup.zip");
            zip(work, zip);
            Files.move(zip, file, StandardCopyOption.ATOMIC_MOVE);
            return found;
        } finally {
            clear(work);
        }
    }

    private void yard(YardPlace place, Path to, LocalDate latest) throws IOException {
        if (place.store().isPresent()) {
            StoreCopy.write(place.store().get(), to);
        } else {
            try (Store copy = Store.open(StoreAddress.file(to), clock)) {
                MoveYard.in(place.folder(), copy, false, "backup", latest);
            }
        }
        wholeInOneFile(to);
    }

    private static void accounts(YardPlace place, Path to) throws IOException {
        Store store = place.store().orElse(null);
        if (store != null && !store.address().isFile()) {
            if (hasAccounts(store)) {
                StoreCopy.writeAccounts(store.reader(), to);
            }
        } else if (Files.exists(YardPlace.accountsFile(place.folder()))) {
            StoreCopy.writeAccounts(StoreCopy.sqlite(YardPlace.accountsFile(place.folder())), to);
        }
    }

    private static boolean hasAccounts(Store store) throws IOException {
        try (java.sql.Connection c = store.reader().getConnection();
                java.sql.ResultSet found = c.getMetaData().getTables(null, null, "account", null)) {
            return found.next();
        } catch (java.sql.SQLException e) {
            throw new IOException("cannot read " + store.place() + ": " + e.getMessage(), e);
        }
    }

    /** A file that was opened for writing keeps its last changes beside it; this brings them in. */
    private static void wholeInOneFile(Path file) throws IOException {
        try (java.sql.Connection c = StoreCopy.sqlite(file).getConnection();
                java.sql.Statement s = c.createStatement()) {
            s.execute("pragma journal_mode=delete");
        } catch (java.sql.SQLException e) {
            throw new IOException("cannot finish " + file + ": " + e.getMessage(), e);
        }
    }

    /**
     * Verifies a backup file.
     *
     * @param file the backup
     * @param latest the last day on which anything can have happened
     * @return what was verified
     * @throws BadInput with everything that is wrong with it
     * @throws IOException if the disk refuses
     */
    public Verification verify(Path file, LocalDate latest) throws IOException {
        Path work = Files.createTempDirectory("verify");
        try {
            unzip(file, work);
            return verified(work.resolve(YARD), latest);
        } finally {
            clear(work);
        }
    }

    /**
     * Verifies a yard's store.
     *
     * @param store the store
     * @param latest the last day on which anything can have happened
     * @return what was verified
     * @throws BadInput with everything that is wrong with it
     * @throws IOException if disk or store refuses
     */
    public static Verification verify(Store store, LocalDate latest) throws IOException {
        Verification found = Verification.of(store);
        if (!found.faults().isEmpty()) {
            throw new BadInput(found.faults().stream()
                    .map(f -> new Problem(store.place(), 0, "", f, "", "Restore the last backup that verifies."))
                    .toList());
        }
        if (found.texts() > 0) {
            YardFolder.all(store.shelf(""), latest);
        }
        return found;
    }

    private Verification verified(Path yard, LocalDate latest) throws IOException {
        try (Store store = Store.open(StoreAddress.file(yard), clock)) {
            return verify(store, latest);
        }
    }

    /**
     * Restores a backup. What was there before is moved aside, never removed.
     *
     * @param file the backup
     * @param folder the yard's folder; made if it is not there
     * @param named the database the yard is to be kept in, which must be empty; null for a store in the folder
     * @param latest the last day on which anything can have happened
     * @return what was verified before it was restored
     * @throws BadInput if the backup is damaged or no backup, or the database holds a yard; nothing was changed then
     * @throws IOException if disk or database refuses
     */
    public Verification restore(Path file, Path folder, @Nullable StoreAddress named, LocalDate latest)
            throws IOException {
        Path own = Files.createDirectories(
                YardPlace.storeFile(folder).toAbsolutePath().getParent());
        Path work = Files.createTempDirectory(own, ".restore");
        try {
            unzip(file, work);
            Verification found = verified(work.resolve(YARD), latest);
            wholeInOneFile(work.resolve(YARD));
            if (named == null) {
                aside(own);
                put(work.resolve(YARD), YardPlace.storeFile(folder));
                if (Files.exists(work.resolve(ACCOUNTS))) {
                    put(work.resolve(ACCOUNTS), YardPlace.accountsFile(folder));
                }
            } else {
                intoDatabase(work, named);
            }
            return found;
        } finally {
            clear(work);
        }
    }

    private void intoDatabase(Path work, StoreAddress named) throws IOException {
        try (Store store = Store.open(named, clock)) {
            StoreCopy.read(work.resolve(YARD), store);
            if (Files.exists(work.resolve(ACCOUNTS))) {
                StoreCopy.readAccounts(work.resolve(ACCOUNTS), store.writer());
            }
        }
    }

    private static void put(Path from, Path to) throws IOException {
        try (FileChannel channel = FileChannel.open(from, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    }

    /** Moves the databases that are there, with what belongs to them, into a folder of their own. */
    private void aside(Path own) throws IOException {
        List<Path> there;
        try (Stream<Path> files = Files.list(own)) {
            there = files.filter(f -> String.valueOf(f.getFileName()).matches("(yard|accounts)[.]db(-wal|-shm)?"))
                    .toList();
        }
        if (there.isEmpty()) {
            return;
        }
        String when = clock.instant().toString().replaceAll("[^0-9TZ]", "-");
        Path kept = Files.createDirectories(own.resolve("before-restore-" + when));
        for (Path one : there) {
            Files.move(one, kept.resolve(one.getFileName()));
        }
    }

    private static void zip(Path work, Path zip) throws IOException {
        try (OutputStream out = Files.newOutputStream(zip);
                ZipOutputStream all = new ZipOutputStream(out)) {
            for (String name : List.of(NOTE, YARD, ACCOUNTS)) {
                Path one = work.resolve(name);
                if (Files.exists(one)) {
                    all.putNextEntry(new ZipEntry(name));
                    Files.copy(one, all);
                    all.closeEntry();
                }
            }
        }
        try (FileChannel channel = FileChannel.open(zip, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /**
     * Takes out the files that a backup has, by their names and nothing else. The list at the end shows that the file is whole,
     * reading from its beginning proves the checksum of each.
     */
    private static void unzip(Path file, Path to) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw BadInput.of(file.toString(), "there is no such file", "a file made by sternwright backup", "");
        }
        try (ZipFile listed = new ZipFile(file.toFile());
                InputStream in = Files.newInputStream(file);
                ZipInputStream all = new ZipInputStream(in, StandardCharsets.UTF_8)) {
            for (ZipEntry one = all.getNextEntry(); one != null; one = all.getNextEntry()) {
                if (listed.getEntry(one.getName()) != null
                        && List.of(YARD, ACCOUNTS).contains(one.getName())) {
                    Files.copy(all, to.resolve(one.getName()));
                }
            }
        } catch (ZipException | java.io.EOFException damaged) {
            throw noBackup(file, "it is damaged: " + damaged.getMessage());
        }
        if (!Files.exists(to.resolve(YARD))) {
            throw noBackup(file, "it is no backup of a yard");
        }
    }

    private static BadInput noBackup(Path file, String why) {
        return BadInput.of(file.toString(), why, "a file made by sternwright backup", "Take another backup.");
    }

    private static void clear(Path work) throws IOException {
        try (Stream<Path> all = Files.walk(work)) {
            for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(one);
            }
        }
    }
}
