package sternwright.app.desk.settings;

import java.io.IOException;
import java.lang.ref.SoftReference;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.kind.ProgrammeShape;
import sternwright.app.files.kind.ResourcesShape;
import sternwright.app.files.kind.YardShape;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shape.Reading;
import sternwright.app.files.shape.Shape;
import sternwright.app.files.shape.Yaml;
import sternwright.app.files.shape.YamlChange;
import sternwright.app.files.shelf.Kept;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.WhatIfShelf;
import sternwright.app.files.shelf.Writing;
import sternwright.service.Programme;
import sternwright.yard.Yard;
import sternwright.yard.resource.Resources;

/**
 * One of the yard's texts that settings are written in.
 *
 * @param <T> what it is read to
 * @param name of the text
 * @param shape of it
 */
public record SettingsText<T>(String name, Shape<T> shape) {
    private static final int MOST_KEPT = 12;

    /** The yard itself. */
    public static final SettingsText<Yard> YARD = new SettingsText<>(FolderLayout.YARD, YardShape.YARD);

    /** What a season is planned with. */
    public static final SettingsText<Resources> RESOURCES =
            new SettingsText<>(SeasonFolder.RESOURCES, ResourcesShape.RESOURCES);

    /**
     * A programme of the yard's own.
     *
     * @param name of its text
     * @return the text
     */
    public static SettingsText<Programme> programme(String name) {
        return new SettingsText<>(name, ProgrammeShape.PROGRAMME);
    }

    /**
     * What a text says.
     *
     * @param <T> what it is read to
     * @param value what it says
     * @param version to be sent along with a change
     */
    public record Opened<T>(T value, String version) {}

    /**
     * Reads it.
     *
     * @param shelf where the yard's texts are kept
     * @param latest the last day on which anything can have happened
     * @return what it says; empty if there is no such text
     * @throws BadInput with every line that is wrong
     * @throws IOException if what keeps the yard cannot be read
     */
    public Optional<Opened<T>> open(Shelf shelf, LocalDate latest) throws IOException {
        Optional<Kept> kept = shelf.kept(name);
        return kept.isEmpty()
                ? Optional.empty()
                : Optional.of(new Opened<>(
                        known(kept.get().text(), latest), kept.get().version()));
    }

    /** What was read last of each text: pages of settings open the same text again and again. */
    private static final Map<SettingsText<?>, SoftReference<LastRead>> LAST = new ConcurrentHashMap<>();

    private record LastRead(String text, LocalDate latest, Object value) {}

    @SuppressWarnings("unchecked")
    private T known(String text, LocalDate latest) {
        SoftReference<LastRead> kept = LAST.get(this);
        LastRead last = kept == null ? null : kept.get();
        if (last != null && last.text.equals(text) && last.latest.equals(latest)) {
            return (T) last.value;
        }
        T value = read(text, latest);
        if (LAST.size() >= MOST_KEPT) {
            LAST.clear();
        }
        LAST.put(this, new SoftReference<>(new LastRead(text, latest, Objects.requireNonNull(value))));
        return value;
    }

    private T read(String text, LocalDate latest) {
        List<Problem> problems = new ArrayList<>();
        Yaml.Read<T> read = Yaml.read(text, shape, new Reading(name, latest), problems);
        if (read == null) {
            throw new BadInput(problems);
        }
        return read.value();
    }

    /**
     * The text as it would be.
     *
     * @param before the text as it is
     * @param after what it shall say
     * @param latest the last day on which anything can have happened
     * @return the new text, comments and all lines that mean the same as they were
     * @throws BadInput with every line of the new text that cannot be
     */
    public String changed(String before, T after, LocalDate latest) {
        read(before, latest);
        String text = YamlChange.of(before, shape, after)
                .orElseThrow(() -> BadInput.of(
                        name,
                        "the file is written in a way that only a person can change",
                        "each field and each member of a list on lines of its own, without anchors",
                        "Change it in the file itself."));
        read(text, latest);
        return text;
    }

    /**
     * Changes it, if nobody has changed it since its editor read it.
     *
     * @param shelf where the yard's texts are kept
     * @param after what it shall say
     * @param versionRead the version its editor had read
     * @param latest the last day on which anything can have happened
     * @throws sternwright.app.files.shelf.EditConflict if somebody has changed it since; nothing is written
     * @throws BadInput with everything that is wrong, in this text or in one that refers to it; nothing is written
     * @throws IOException if what keeps the yard refuses
     */
    public void change(Shelf shelf, T after, String versionRead, LocalDate latest) throws IOException {
        try (Writing writing = shelf.write(name + " changed in the settings")) {
            Kept kept = shelf.kept(name)
                    .orElseThrow(
                            () -> BadInput.of(name, "the file is missing", "", "Write it, or start with the example."));
            String text = changed(kept.text(), after, latest);
            writing.put(name, text, versionRead);
            prove(new WhatIfShelf(shelf, Map.of(name, text)), latest);
            writing.commit();
        }
    }

    /** Whatever refers to the text is read with it as it would be: boats need a band of lifts, absences their people. */
    private void prove(Shelf whatIf, LocalDate latest) {
        if (name.equals(SeasonFolder.RESOURCES)) {
            SeasonFolder.read(whatIf, latest);
        } else {
            YardFolder.all(whatIf, latest);
        }
    }

    /**
     * What the yard would say with another yard text.
     *
     * @param files what it says
     * @param yard what {@code yard.yaml} would say
     * @return the same with that
     */
    public static YardFiles with(YardFiles files, Yard yard) {
        return new YardFiles(
                yard,
                files.berths(),
                files.catalogue(),
                files.generic(),
                files.programmes(),
                files.boats(),
                files.histories(),
                files.remarks());
    }
}
