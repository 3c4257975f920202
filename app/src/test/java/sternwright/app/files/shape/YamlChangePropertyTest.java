package sternwright.app.files.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sternwright.app.files.Shipped;
import sternwright.app.files.kind.ResourcesShape;
import sternwright.app.files.problem.Problem;
import sternwright.yard.resource.Absence;
import sternwright.yard.resource.CrewMember;
import sternwright.yard.resource.Hoist;
import sternwright.yard.resource.Resources;
import sternwright.yard.resource.StandingClass;
import sternwright.yard.resource.TidalDock;

/** A text that is changed again and again at random says each time what was asked, and keeps what nobody asked to change. */
class YamlChangePropertyTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final int CHANGES = 40;
    private static final List<String> NAMES =
            List.of("Ann", "yes", "12", "a: b", "two, three", "# no comment", "Ö \"q\"");

    private static Resources read(String text) {
        List<Problem> problems = new ArrayList<>();
        Yaml.Read<Resources> read =
                Yaml.read(text, ResourcesShape.RESOURCES, new Reading("resources.yaml", TODAY), problems);
        assertEquals(List.of(), problems, text);
        return Objects.requireNonNull(read).value();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void changesSayWhatWasAskedAndNothingElse(long seed) {
        Random random = new Random(seed);
        String text = seed % 2 == 0 ? Shipped.seasonResources().replace("\n", "\r\n") : Shipped.seasonResources();
        String head = text.lines().findFirst().orElseThrow();
        for (int i = 0; i < CHANGES; i++) {
            Resources after = changed(read(text), random, i);
            String next = YamlChange.of(text, ResourcesShape.RESOURCES, after).orElseThrow();
            assertEquals(after, read(next), next);
            assertTrue(next.startsWith(head), "the comment at the head stays");
            assertEquals(
                    next, YamlChange.of(next, ResourcesShape.RESOURCES, after).orElseThrow(), "asked again");
            text = next;
        }
        String lost = text;
        assertEquals(
                List.of(),
                text.lines()
                        .filter(l -> l.contains("prices:"))
                        .filter(l -> !l.contains("# only their"))
                        .toList(),
                lost);
    }

    private static Resources changed(Resources r, Random random, int n) {
        List<CrewMember> crew = new ArrayList<>(r.crew());
        List<Hoist> hoists = new ArrayList<>(r.hoists());
        List<StandingClass> places = new ArrayList<>(r.standing());
        switch (random.nextInt(6)) {
            case 0 -> crew.add(random.nextInt(crew.size() + 1), member("m" + n, random));
            case 1 -> {
                if (crew.size() > 1) {
                    crew.remove(random.nextInt(crew.size()));
                }
            }
            case 2 -> {
                int at = random.nextInt(crew.size());
                crew.set(at, member(crew.get(at).id(), random));
            }
            case 3 ->
                hoists.add(new Hoist(
                        "h" + n,
                        name(random),
                        1 + random.nextInt(50_000),
                        3.5,
                        4,
                        random.nextBoolean() ? null : new TidalDock(-1.25, 0.3)));
            case 4 -> {
                if (!hoists.isEmpty()) {
                    hoists.remove(random.nextInt(hoists.size()));
                }
            }
            default -> places.add(new StandingClass("p" + n, name(random), 5 + random.nextInt(200) / 10.0, n));
        }
        return new Resources(hoists, places, crew, r.times(), r.prices());
    }

    private static String name(Random random) {
        return NAMES.get(random.nextInt(NAMES.size()));
    }

    private static CrewMember member(String id, Random random) {
        Set<String> skills = new TreeSet<>(List.of("yard"));
        if (random.nextBoolean()) {
            skills.add("drive");
        }
        List<Absence> away = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            away.add(new Absence(TODAY.plusDays(10L * i), TODAY.plusDays(10L * i + random.nextInt(5)), name(random)));
        }
        EnumSet<DayOfWeek> days = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.of(1 + random.nextInt(7)));
        return new CrewMember(id, name(random), skills, days, away, random.nextInt(3) * 2.5, random.nextInt(2) * 30);
    }
}
