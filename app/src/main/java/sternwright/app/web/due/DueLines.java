package sternwright.app.web.due;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Objects;
import sternwright.app.files.YardFiles;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.State;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.boat.PartRef;
import sternwright.due.Clause;
import sternwright.due.Due;
import sternwright.due.DueState;
import sternwright.due.Reasons;
import sternwright.service.Half;

/** Puts works that are due into words and formats of the reader. */
final class DueLines {
    private final Page page;
    private final YardFiles files;
    private final Reasons reasons;

    DueLines(Page page, YardFiles files) {
        this.page = page;
        this.files = files;
        this.reasons = new Reasons(page.locale());
    }

    DueView.Line line(Due due) {
        Boat boat = Objects.requireNonNull(files.boats().get(due.boatId()));
        var berth = files.berths().get(boat.berthId());
        LocalDate done = due.lastDone();
        return new DueView.Line(
                due.state() == DueState.UNKNOWN ? page.say("due.on.unknown") : day(due.dueOn()),
                range(due.first()),
                due.rule().work(),
                due.rule().id(),
                due.rule().safety(),
                part(boat, due.part()),
                boat.id(),
                boat.name(),
                berth == null ? boat.berthId() : berth.name(),
                where(due),
                state(due.state()),
                reasons.sentence(due),
                day(due.lastSensible()),
                done == null ? page.say("due.done.unknown") : day(done),
                page.say(
                        "due.figure",
                        due.inForce().scope().words(),
                        due.inForce().sources()),
                due.rule().ifDeclined());
    }

    private String where(Due due) {
        String place = page.say("due.place." + DueAsked.word(due.rule().place()));
        return due.rule().half() == Half.ANY
                ? place
                : page.say(
                        "due.where",
                        place,
                        page.say("due.half." + DueAsked.word(due.rule().half())));
    }

    private String range(Clause first) {
        LocalDate early = first.early80();
        LocalDate late = first.late80();
        return early == null || late == null ? "" : page.say("due.range", day(early), day(late));
    }

    private String part(Boat boat, PartRef ref) {
        Installation installation = boat.installation(ref.installationId()).orElse(null);
        String kind = installation == null
                ? ref.partId()
                : installation
                        .part(ref.partId())
                        .flatMap(p -> files.catalogue().find(p.kind()))
                        .map(k -> k.name())
                        .orElse(ref.partId().replace('-', ' '));
        return installation == null || boat.installations().size() < 2
                ? kind
                : page.say("due.part.side", kind, installation.side().name().toLowerCase(Locale.ROOT));
    }

    private State state(DueState state) {
        String word = page.say("due.state." + DueAsked.word(state));
        return switch (state) {
            case OVERDUE -> new State(word, State.Mark.TRIANGLE, State.Tone.ACT);
            case DUE -> new State(word, State.Mark.DISC, State.Tone.WATCH);
            case UNKNOWN -> new State(word, State.Mark.GAP, State.Tone.WATCH);
            case EVERY_VISIT -> new State(word, State.Mark.RING, State.Tone.PLAIN);
            case COMING -> new State(word, State.Mark.RING, State.Tone.SOFT);
            case REFUSED -> new State(word, State.Mark.BAR, State.Tone.PLAIN);
        };
    }

    private String day(LocalDate day) {
        return page.figures().shortDate(day);
    }
}
