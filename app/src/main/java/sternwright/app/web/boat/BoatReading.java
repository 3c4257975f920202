package sternwright.app.web.boat;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import sternwright.app.desk.boats.BoatOverview;
import sternwright.app.desk.boats.BoatOverview.InstallationView;
import sternwright.app.desk.boats.PartRow;
import sternwright.app.web.boat.BoatSheet.Engine;
import sternwright.app.web.boat.BoatSheet.Fact;
import sternwright.app.web.boat.BoatSheet.PartLine;
import sternwright.app.web.boat.BoatSheet.Work;
import sternwright.app.web.page.Page;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.boat.PartRef;
import sternwright.due.Due;
import sternwright.due.Reasons;
import sternwright.history.BoatHistory;
import sternwright.history.MeterReading;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;

/** Puts what is known of a boat into the words and formats of a reader. */
final class BoatReading {
    private static final int MONTHS_SAID = 24;
    private static final double MONTHS_A_YEAR = 12;

    private final Page page;
    private final OneBoat one;
    private final Boat boat;
    private final BoatHistory history;
    private final List<Due> dues;
    private final LocalDate today;
    private final Reasons reasons;

    BoatReading(Page page, OneBoat one, List<Due> dues, LocalDate today) {
        this.page = page;
        this.one = one;
        this.boat = one.boat();
        this.history = one.files().history(boat.id());
        this.dues = dues.stream().sorted(DueMark.PRESSING).toList();
        this.today = today;
        this.reasons = new Reasons(page.locale());
    }

    List<Fact> facts() {
        var hull = boat.hull();
        var f = page.figures();
        List<Fact> facts = new ArrayList<>();
        facts.add(fact("owner", boat.owner().name()));
        facts.add(fact("contact", Optional.ofNullable(boat.owner().contact()).orElse("")));
        facts.add(fact("berth", one.berth()));
        facts.add(fact("winter", page.say("boats.winter." + OneBoat.word(boat.winter()))));
        facts.add(fact(
                "use", one.files().yard().use(boat.use()).map(u -> u.name()).orElse(boat.use())));
        facts.add(fact(
                "hull",
                page.say(
                        "boat.hull.line",
                        f.quantity(hull.lengthM(), "m"),
                        f.quantity(hull.beamM(), "m"),
                        f.quantity(hull.draughtM(), "m"),
                        f.quantity(hull.massKg(), "kg"),
                        page.say("boats.material." + OneBoat.word(hull.material())))));
        if (boat.programme() != null) {
            facts.add(fact("programme", boat.programme()));
        }
        if (boat.note() != null) {
            facts.add(fact("note", boat.note()));
        }
        return facts;
    }

    private Fact fact(String name, String value) {
        return new Fact(page.say("boat.fact." + name), value.equals("not known") ? "" : value);
    }

    List<Engine> engines() {
        return BoatOverview.of(one.files(), boat, dues, today).installations().stream()
                .map(this::engine)
                .toList();
    }

    private Engine engine(InstallationView view) {
        Installation installation = view.installation();
        Map<PartRef, PartRow> rows = new HashMap<>();
        view.parts().forEach(r -> rows.put(r.ref(), r));
        Set<PartRef> said = new HashSet<>();
        List<Work> now = new ArrayList<>();
        List<Work> coming = new ArrayList<>();
        for (Due due : dues) {
            PartRow row = rows.get(due.part());
            if (row != null) {
                boolean first = !row.key().isEmpty() && said.add(due.part());
                (DueMark.now(due) ? now : coming).add(work(due, row, first ? row.anchor() : ""));
            }
        }
        String name = one.name(page, installation);
        String missing = view.picture().missing().stream()
                .map(m -> m.key() + " "
                        + Objects.requireNonNull(rows.get(new PartRef(installation.id(), m.partId())))
                                .kindName())
                .collect(Collectors.joining("; "));
        return new Engine(
                installation.id(),
                name,
                engineLine(installation),
                page.say("boat.drawing.caption")
                        + (missing.isEmpty() ? "" : " " + page.say("boat.drawing.missing", missing)),
                view.picture().wide(),
                view.picture().narrow(),
                now,
                coming,
                view.parts().stream().map(r -> part(installation, r)).toList(),
                meter(installation));
    }

    private static String missing(Map<PartRef, PartRow> rows, PartRef ref) {
        PartRow row = rows.get(ref);
        return row == null ? ref.partId() : row.kindName();
    }

    private String engineLine(Installation i) {
        String model = i.engineModel() == null ? page.say("boat.engine.unknown") : i.engineModel();
        String power = i.powerKw() == null ? "" : page.figures().quantity(i.powerKw(), "kW");
        return page.say(
                "boat.engine.line",
                model,
                power.isEmpty() ? 0 : 1,
                power,
                page.say("boats.arrangement." + OneBoat.word(i.arrangement())),
                page.say("boats.cooling." + OneBoat.word(i.cooling())));
    }

    private Work work(Due due, PartRow row, String anchor) {
        return new Work(
                row.key(),
                anchor,
                due.rule().work(),
                one.name(boat.installation(due.part().installationId()).orElseThrow(), row.part()),
                DueMark.of(page, due.state()),
                due.rule().safety(),
                page.figures().shortDate(due.dueOn()),
                reasons.sentence(due),
                page.say(
                        "boat.source",
                        due.inForce().scope().words(),
                        due.inForce().source().line()),
                due.rule().ifDeclined());
    }

    private PartLine part(Installation installation, PartRow row) {
        LocalDate since = row.since();
        Double hours = row.hours();
        String last = history.entries().stream()
                .filter(e -> e.part().equals(row.ref()) && e.outcome() == Outcome.DONE)
                .max(Comparator.comparing(ServiceEntry::date))
                .map(e -> page.figures().shortDate(e.date()))
                .orElse("");
        return new PartLine(
                one.name(installation, row.part()),
                row.part().id(),
                since == null ? "" : page.figures().shortDate(since),
                since == null ? "" : age(since),
                hours == null ? "" : page.figures().quantity(Math.rint(hours), "h"),
                last,
                row.key(),
                PartFigures.of(page, row.part()));
    }

    private String age(LocalDate since) {
        long months = Math.max(0, ChronoUnit.MONTHS.between(since, today));
        return months < MONTHS_SAID
                ? page.say("boat.age.months", months)
                : page.say("boat.age.years", page.figures().number(Math.floor(months / MONTHS_A_YEAR * 10) / 10));
    }

    private List<MeterReading> readings(Installation installation) {
        return history.meter().stream()
                .filter(r -> r.installationId().equals(installation.id()))
                .toList();
    }

    private String meter(Installation installation) {
        List<MeterReading> read = readings(installation);
        if (read.isEmpty()) {
            return "";
        }
        MeterReading last = read.get(read.size() - 1);
        Double fresh = last.newMeterHours();
        return page.say(
                "boat.meter.last",
                page.figures().quantity(fresh == null ? last.hours() : fresh, "h"),
                page.figures().shortDate(last.date()));
    }

    List<String> remarks() {
        List<String> names = List.of(
                sternwright.app.files.FolderLayout.boat(boat.id()),
                sternwright.app.files.FolderLayout.history(boat.id()),
                sternwright.app.files.FolderLayout.hours(boat.id()));
        return one.files().remarks().stream()
                .filter(p -> names.contains(p.file()))
                .map(p -> p.text())
                .toList();
    }
}
