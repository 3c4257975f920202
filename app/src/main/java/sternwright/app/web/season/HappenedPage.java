package sternwright.app.web.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.util.UriUtils;
import sternwright.app.desk.derived.OfYard;
import sternwright.app.desk.derived.SeasonOfYard;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.season.EventWords;
import sternwright.app.files.YardFiles;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.app.web.page.TypedDay;
import sternwright.season.dated.event.SeasonEvent;
import sternwright.service.Programme;
import sternwright.service.Rule;
import sternwright.yard.resource.Absence;
import sternwright.yard.resource.Resources;

/** What has happened since the plan was published, gathered in the address until the season is planned again after it. */
@Controller
@ForOffice
public class HappenedPage {
    static final String PATH = SeasonPage.PATH + "/happened";
    private static final int MOST = 30;
    private static final Set<String> OF_A_BOAT = Set.of("part", "emergency", "wanted");

    private final OpenYard yard;
    private final SeasonOfYard season;
    private final OfYard<TypedBoats> boats;

    HappenedPage(OpenYard yard, SeasonOfYard season) {
        this.yard = yard;
        this.season = season;
        this.boats = new OfYard<>(yard, y -> TypedBoats.of(y.files().boats().values()));
    }

    /**
     * What the page shows.
     *
     * @param said what has happened so far
     * @param forms one for each kind of thing
     * @param spans for how long one can search
     * @param boats the boats as they can be typed
     */
    public record View(List<One> said, List<Kind> forms, List<RunsPage.Span> spans, List<String> boats) {
        /** Copies the lists. */
        public View {
            said = List.copyOf(said);
            forms = List.copyOf(forms);
            spans = List.copyOf(spans);
            boats = List.copyOf(boats);
        }
    }

    /**
     * One thing that has happened.
     *
     * @param word as it stands in the address
     * @param words as it is read
     * @param without the address without it
     */
    public record One(String word, String words, String without) {}

    /**
     * A form for one kind of thing.
     *
     * @param kind as it is sent
     * @param title what has happened
     * @param fields what to fill in; their names are unique on the page
     * @param wrong what is wrong with it, empty if nothing is
     */
    public record Kind(String kind, String title, List<Field> fields, String wrong) {
        /** Copies the list. */
        public Kind {
            fields = List.copyOf(fields);
        }
    }

    @GetMapping(PATH)
    ModelAndView show(
            Page page,
            @RequestParam(name = "e", required = false) List<String> words,
            @RequestParam Map<String, String> typed) {
        List<String> before = words == null
                ? List.of()
                : words.stream().filter(w -> !w.isBlank()).limit(MOST).toList();
        YardFiles files = yard.files();
        Resources resources = season.files().resources();
        EventText text = new EventText(page, files, resources);
        List<SeasonEvent> events = new ArrayList<>();
        for (String word : before) {
            events.add(EventWords.parse(word, yard.today(), page.say("season.happened.where")));
        }
        String kind = typed.getOrDefault("kind", "");
        if (!kind.isEmpty()) {
            Optional<SeasonEvent> more = event(kind, typed);
            if (more.isPresent()) {
                List<String> all = new ArrayList<>(before);
                all.add(EventWords.text(more.get()));
                return page.go(address(all), "");
            }
        }
        View view = new View(
                said(events, text),
                forms(page, files, resources, wrong(page, kind, typed), typed, yard.today()),
                RunsPage.spans(page),
                boats.get().words());
        return kind.isEmpty()
                ? page.show(Section.SEASON, "season/happened", view)
                : page.wrong(Section.SEASON, "season/happened", view);
    }

    private static List<One> said(List<SeasonEvent> events, EventText text) {
        List<String> words = events.stream().map(EventWords::text).toList();
        List<One> said = new ArrayList<>();
        for (int i = 0; i < events.size(); i++) {
            List<String> without = new ArrayList<>(words);
            without.remove(i);
            said.add(new One(words.get(i), text.words(events.get(i)), address(without)));
        }
        return said;
    }

    private static String address(List<String> words) {
        StringBuilder address = new StringBuilder(PATH);
        for (String word : words) {
            address.append(address.indexOf("?") < 0 ? "?e=" : "&e=")
                    .append(UriUtils.encode(word, java.nio.charset.StandardCharsets.UTF_8));
        }
        return address.toString();
    }

    /** What was typed; empty if something is missing or the days are the wrong way round. */
    private Optional<SeasonEvent> event(String kind, Map<String, String> typed) {
        String said = typed.getOrDefault(kind + "-who", "");
        String who = OF_A_BOAT.contains(kind) ? boats.get().id(said).orElse("") : said;
        Optional<LocalDate> from = TypedDay.of(typed.getOrDefault(kind + "-from", ""));
        Optional<LocalDate> to = TypedDay.of(typed.getOrDefault(kind + "-to", ""));
        if (who.isBlank() || from.isEmpty()) {
            return Optional.empty();
        }
        LocalDate day = from.get();
        Optional<Absence> days = to.filter(t -> !t.isBefore(day)).map(t -> new Absence(day, t, ""));
        String work = typed.getOrDefault(kind + "-work", "");
        return switch (kind) {
            case "away" -> days.map(d -> new SeasonEvent.PersonAway(who, d));
            case "hoist" -> days.map(d -> new SeasonEvent.HoistDown(who, d));
            case "part" -> work.isBlank() ? Optional.empty() : Optional.of(new SeasonEvent.PartLate(who, work, day));
            case "emergency" -> Optional.of(new SeasonEvent.Emergency(who, day));
            case "wanted" -> Optional.of(new SeasonEvent.OwnerWants(who, day));
            default -> Optional.empty();
        };
    }

    /** What is wrong with what was typed, in a form of one kind. */
    private record Wrong(String kind, String words) {}

    private Wrong wrong(Page page, String kind, Map<String, String> typed) {
        String said = typed.getOrDefault(kind + "-who", "");
        boolean stranger = OF_A_BOAT.contains(kind)
                && !said.isBlank()
                && boats.get().id(said).isEmpty();
        return new Wrong(
                kind, stranger ? page.say("season.happened.stranger", said) : page.say("season.happened.wrong"));
    }

    private static List<Kind> forms(
            Page page, YardFiles files, Resources resources, Wrong wrong, Map<String, String> typed, LocalDate today) {
        Forms forms = new Forms(page, wrong, typed, today);
        List<Field.Choice> crew = resources.crew().stream()
                .map(c -> new Field.Choice(c.id(), c.name()))
                .toList();
        List<Field.Choice> hoists = resources.hoists().stream()
                .map(h -> new Field.Choice(h.id(), h.name()))
                .toList();
        List<Field.Choice> works = Stream.concat(Stream.of(files.generic()), files.programmes().stream())
                .map(Programme::rules)
                .flatMap(List::stream)
                .filter(r -> !r.supplies().isEmpty())
                .map((Rule r) -> new Field.Choice(r.id(), r.work()))
                .distinct()
                .sorted(Comparator.comparing(Field.Choice::label))
                .toList();
        return List.of(
                forms.kind("away", List.of(forms.who("away", crew), forms.from("away"), forms.to("away"))),
                forms.kind("hoist", List.of(forms.who("hoist", hoists), forms.from("hoist"), forms.to("hoist"))),
                forms.kind("part", List.of(forms.boat("part"), forms.work("part", works), forms.from("part"))),
                forms.kind("emergency", List.of(forms.boat("emergency"), forms.from("emergency"))),
                forms.kind("wanted", List.of(forms.boat("wanted"), forms.from("wanted"))));
    }

    /** Fields of the forms with what was typed. */
    private record Forms(Page page, Wrong wrong, Map<String, String> typed, LocalDate today) {
        Kind kind(String kind, List<Field> fields) {
            return new Kind(
                    kind, page.say("season.happened." + kind), fields, kind.equals(wrong.kind()) ? wrong.words() : "");
        }

        Field who(String kind, List<Field.Choice> choices) {
            return field(kind, "who", "").of(choices);
        }

        Field boat(String kind) {
            return field(kind, "who", "").as("boat");
        }

        Field work(String kind, List<Field.Choice> choices) {
            return field(kind, "work", "").of(choices);
        }

        Field from(String kind) {
            return field(kind, "from", today.toString()).as("date");
        }

        Field to(String kind) {
            return field(kind, "to", today.toString()).as("date");
        }

        private Field field(String kind, String name, String usual) {
            String key = kind + "-" + name;
            return Field.plain(key, page.say("season.happened." + kind + "." + name), typed.getOrDefault(key, usual));
        }
    }
}
