package sternwright.app.desk.settings;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.shelf.Kept;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.WhatIfShelf;
import sternwright.app.files.shelf.Writing;
import sternwright.service.Overriding;
import sternwright.service.Programme;
import sternwright.service.Scope;

/** The yard's and makers' figures over those of the programmes: found, put in, taken back, each in the file it stands in. */
public final class Overridings {
    private static final String OWN = FolderLayout.PROGRAMMES + "/own.yaml";
    private static final String FRESH = """
            # The yard's own and makers' figures in place of the programmes'. Which leads over which: docs/programmes.md.
            id: own
            name: Our own figures
            overridings: []
            """;

    private final List<File> files;
    private final LocalDate latest;

    private record File(String name, String text, String version, Programme programme) {}

    /**
     * What an overriding is for; there is one overriding for each in force.
     *
     * @param ruleId the rule
     * @param scope how far it reaches
     * @param target boat, engine model or part; empty for the yard
     */
    public record Key(String ruleId, Scope scope, String target) {
        /**
         * What an overriding is for.
         *
         * @param o the overriding
         * @return its key
         */
        public static Key of(Overriding o) {
            return new Key(o.ruleId(), o.scope(), o.target());
        }

        boolean is(Overriding o) {
            return o.ruleId().equals(ruleId)
                    && o.scope() == scope
                    && (scope == Scope.ENGINE_MODEL
                            ? normal(o.target()).equals(normal(target))
                            : o.target().equals(target));
        }

        /**
         * The boat it is for.
         *
         * @return her id; empty where it is for more than one
         */
        public Optional<String> boat() {
            return scope == Scope.BOAT || scope == Scope.PART ? Optional.of(target.split("/", 2)[0]) : Optional.empty();
        }

        private static String normal(String model) {
            return model.strip().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * An overriding where it stands.
     *
     * @param file name of the text
     * @param programme name of the programme
     * @param onlyIfNamed whether what it says of the whole yard holds only for the boats that name it
     * @param overriding the overriding
     */
    public record Written(String file, String programme, boolean onlyIfNamed, Overriding overriding) {
        /**
         * Whether it holds only for the boats that name its programme.
         *
         * @return false if it holds for the whole yard, or for the model, boat or part it names
         */
        public boolean forWhoNamesIt() {
            return onlyIfNamed && overriding.scope() == Scope.YARD;
        }
    }

    /**
     * A text as it would be.
     *
     * @param file name of the text
     * @param version it was made from, empty if there was none
     * @param text what it would say
     * @param key what is changed
     */
    public record Change(String file, String version, String text, Key key) {}

    private Overridings(List<File> files, LocalDate latest) {
        this.files = files;
        this.latest = latest;
    }

    /**
     * Reads the yard's programmes.
     *
     * @param shelf where the yard's texts are kept
     * @param latest the last day on which anything can have happened
     * @return what they say over the rules
     * @throws BadInput with every line that is wrong
     * @throws IOException if what keeps the yard cannot be read
     */
    public static Overridings of(Shelf shelf, LocalDate latest) throws IOException {
        List<File> files = new ArrayList<>();
        for (String name : FolderLayout.of(shelf).programmes()) {
            Kept kept = shelf.kept(name).orElse(null);
            Optional<SettingsText.Opened<Programme>> read =
                    SettingsText.programme(name).open(shelf, latest);
            if (kept != null && read.isPresent()) {
                files.add(new File(name, kept.text(), kept.version(), read.get().value()));
            }
        }
        return new Overridings(files, latest);
    }

    /**
     * All of them.
     *
     * @return in the order in which they lead over each other among equals, the later one over the earlier
     */
    public List<Written> all() {
        return files.stream()
                .flatMap(f -> f.programme.overridings().stream()
                        .map(o -> new Written(f.name, f.programme.name(), f.programme.onlyIfNamed(), o)))
                .toList();
    }

    /**
     * The one that leads among those for the same.
     *
     * @param key what it is for
     * @return the last of them; what a programme says only to the boats that name it is none of the whole yard's
     */
    public Optional<Written> leading(Key key) {
        return all().stream()
                .filter(w -> !w.forWhoNamesIt())
                .filter(w -> key.is(w.overriding()))
                .reduce((a, b) -> b);
    }

    /**
     * The version of the text that a change of a key goes to, to be sent along with the change.
     *
     * @param key what is changed
     * @return the version; empty if the text is not there yet
     */
    public String version(Key key) {
        return home(key).version;
    }

    private File home(Key key) {
        Optional<String> there = leading(key).map(Written::file);
        return files.stream()
                .filter(f -> there.isPresent()
                        ? f.name.equals(there.get())
                        : f.name.equals(OWN) && !f.programme.onlyIfNamed())
                .findFirst()
                .or(() -> files.stream()
                        .filter(f -> there.isEmpty() && !f.programme.onlyIfNamed())
                        .reduce((a, b) -> b))
                .orElseGet(this::fresh);
    }

    private File fresh() {
        Set<String> names = files.stream().map(File::name).collect(Collectors.toSet());
        Set<String> ids = files.stream().map(f -> f.programme.id()).collect(Collectors.toSet());
        String id = Stream.iterate(1, n -> n + 1)
                .map(n -> n == 1 ? "own" : "own-" + n)
                .filter(n -> !ids.contains(n) && !names.contains(OWN.replace("own", n)))
                .findFirst()
                .orElseThrow();
        Programme empty = new Programme(id, "Our own figures", false, List.of(), List.of(), List.of());
        return new File(OWN.replace("own", id), FRESH.replace("id: own", "id: " + id), "", empty);
    }

    /**
     * Puts an overriding in, in the place of the one for the same if there is one.
     *
     * @param over the overriding
     * @return the text as it would be
     * @throws BadInput with everything in it that cannot be
     */
    public Change put(Overriding over) {
        Key key = Key.of(over);
        return change(key, list -> {
            List<Overriding> changed = new ArrayList<>(list);
            int at = lastOf(key, list);
            if (at < 0) {
                changed.add(over);
            } else {
                changed.set(at, over);
            }
            return changed;
        });
    }

    /**
     * Takes an overriding back: what is wider holds again.
     *
     * @param key what it is for
     * @return the text as it would be
     * @throws BadInput if there is none
     */
    public Change takeBack(Key key) {
        if (leading(key).isEmpty()) {
            throw BadInput.of(
                    FolderLayout.PROGRAMMES,
                    "there is no figure of " + key.ruleId() + " for "
                            + (key.target().isEmpty() ? "the yard" : key.target()),
                    "",
                    "Look at it again: somebody else may have taken it back.");
        }
        return change(key, list -> {
            List<Overriding> changed = new ArrayList<>(list);
            changed.remove(lastOf(key, list));
            return changed;
        });
    }

    private static int lastOf(Key key, List<Overriding> list) {
        int at = list.size() - 1;
        while (at >= 0 && !key.is(list.get(at))) {
            at--;
        }
        return at;
    }

    private Change change(Key key, UnaryOperator<List<Overriding>> how) {
        File home = home(key);
        Programme p = home.programme;
        Programme after =
                new Programme(p.id(), p.name(), p.onlyIfNamed(), p.rules(), how.apply(p.overridings()), p.cautions());
        return new Change(
                home.name, home.version, SettingsText.programme(home.name).changed(home.text, after, latest), key);
    }

    /**
     * What the yard would say.
     *
     * @param shelf where the yard's texts are kept
     * @param now what it says now, all boats
     * @param change the change
     * @param latest the last day on which anything can have happened
     * @return the same with the change in its programmes
     * @throws BadInput with everything that is wrong: a boat or part that is not there, a clause that cannot be dropped
     */
    public static YardFiles whatIf(Shelf shelf, YardFiles now, Change change, LocalDate latest) {
        Shelf whatIf = new WhatIfShelf(shelf, Map.of(change.file, change.text));
        List<String> boats =
                change.key.boat().filter(now.boats()::containsKey).stream().toList();
        YardFiles read = YardFolder.only(whatIf, boats, latest);
        return new YardFiles(
                now.yard(),
                now.berths(),
                now.catalogue(),
                now.generic(),
                read.programmes(),
                now.boats(),
                now.histories(),
                now.remarks());
    }

    /**
     * Writes a change, if nobody has changed its text since its editor read it.
     *
     * @param shelf where the yard's texts are kept
     * @param now what the yard says now
     * @param change the change
     * @param versionRead the version its editor had read
     * @param latest the last day on which anything can have happened
     * @throws sternwright.app.files.shelf.EditConflict if somebody has; nothing is written
     * @throws BadInput with everything that is wrong; nothing is written
     * @throws IOException if what keeps the yard refuses
     */
    public static void write(Shelf shelf, YardFiles now, Change change, @Nullable String versionRead, LocalDate latest)
            throws IOException {
        try (Writing writing = shelf.write("figures of " + change.key.ruleId() + " changed")) {
            writing.put(change.file, change.text, versionRead == null ? change.version : versionRead);
            whatIf(shelf, now, change, latest);
            writing.commit();
        }
    }
}
