package sternwright.app.web.cards;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sternwright.app.account.Role;
import sternwright.app.account.SignedIn;
import sternwright.app.desk.working.CardFields;
import sternwright.app.desk.working.FinishCard;
import sternwright.app.files.problem.Problem;
import sternwright.app.issued.IssuedCard;
import sternwright.app.paper.Figures;
import sternwright.app.paper.Words;
import sternwright.app.web.page.Page;
import sternwright.history.MeterReading;
import sternwright.job.CardCaution;
import sternwright.job.CardEngine;
import sternwright.job.HullOpening;
import sternwright.job.JobCard;
import sternwright.visit.planned.SupplyLine;

/** Puts a card and what was written on it into words and formats of the reader. */
final class CardText {
    private final Page page;
    private final Figures f;
    private final ZoneId zone;
    private final JobCard card;
    private final Map<String, String> typed;

    CardText(Page page, ZoneId zone, JobCard card, Map<String, String> typed) {
        this.page = page;
        this.f = page.figures();
        this.zone = zone;
        this.card = card;
        this.typed = typed;
    }

    CardView.Card view(
            IssuedCard issued,
            LocalDate today,
            List<FinishCard.Lack> lacks,
            List<Problem> problems,
            CardView.Papers papers) {
        CardWorks works = new CardWorks(page, card, typed);
        return new CardView.Card(
                issued.id(),
                issued.boatId(),
                card.boat().name(),
                page.say("cards.lead", card.boat().owner().name(), card.berth().name()),
                page.say(
                        "cards.visit",
                        f.dates(card.from(), card.to()),
                        Words.place(card.place(), card.lifts()),
                        f.time(card.minutes()),
                        card.works().size()),
                page.say("cards.issued.by", issued.issuedBy(), day(issued.issuedAt())),
                recorded(issued),
                issued.open() && page.may(Role.MANAGER, Role.OFFICE, Role.TECHNICIAN),
                facts(),
                card.toSettle().stream().map(Words::full).toList(),
                card.cautions().stream().map(CardText::caution).toList(),
                IntStream.range(0, card.engines().size()).mapToObj(this::engine).toList(),
                IntStream.range(0, card.openings().size())
                        .mapToObj(this::opening)
                        .toList(),
                IntStream.range(0, card.supplies().size())
                        .mapToObj(this::supply)
                        .toList(),
                works.points(),
                leaving(),
                close(today),
                lacks.stream().map(this::wrong).toList(),
                problems.stream().map(this::onPage).toList(),
                papers);
    }

    private String recorded(IssuedCard issued) {
        Instant at = issued.finishedAt();
        String by = issued.finishedBy();
        return at == null || by == null ? "" : page.say("cards.recorded.by", by, day(at));
    }

    private String day(Instant at) {
        return f.date(LocalDate.ofInstant(at, zone));
    }

    private List<String> facts() {
        List<String> facts = new ArrayList<>();
        facts.add(Words.full(Words.hull(card.boat(), f)));
        card.engines().forEach(e -> facts.add(Words.full(Words.engine(e.installation(), f))));
        String note = card.boat().note();
        if (note != null) {
            facts.add(Words.full(note));
        }
        if (card.diver()) {
            facts.add(page.say("cards.diver"));
        }
        return facts;
    }

    static CardView.Caution caution(CardCaution c) {
        return new CardView.Caution(c.key(), c.title(), c.caution().text());
    }

    private CardView.Entry engine(int i) {
        CardEngine e = card.engines().get(i);
        MeterReading last = e.lastMeter();
        String name = card.engines().size() == 1
                ? page.say("cards.meter")
                : page.say("cards.meter.of", Words.side(e.installation().side()));
        String hint = last == null
                ? page.say("cards.meter.never")
                : page.say("cards.meter.last", f.quantity(Words.shown(last), "h"), f.shortDate(last.date()));
        return entry(CardFields.meter(i), name, hint, "h");
    }

    private CardView.Opening opening(int i) {
        HullOpening o = card.openings().get(i);
        String kind = o.shuts() ? "cards.opening.shuts." : "cards.opening.seals.";
        return new CardView.Opening(
                Words.sentence(o.name()),
                page.say(kind + "one"),
                page.say(kind + "other"),
                CardFields.arrival(i),
                says(CardFields.arrival(i)),
                CardFields.leaving(i),
                says(CardFields.leaving(i)));
    }

    private CardView.Tick supply(int i) {
        SupplyLine s = card.supplies().get(i);
        return tick(
                CardFields.taken(i),
                page.say("cards.supply", f.supply(s.quantity(), s.unit()), s.name()),
                Words.full(s.note()));
    }

    private List<CardView.Tick> leaving() {
        return IntStream.range(0, CardFields.LEAVING)
                .mapToObj(i -> tick(CardFields.before(i), page.say("cards.leaving." + i), ""))
                .toList();
    }

    private CardView.Close close(LocalDate today) {
        String me = page.person().map(SignedIn::fullName).orElse("");
        return new CardView.Close(
                new CardView.Entry(CardFields.DAY, page.say("cards.day"), "", "", or(CardFields.DAY, today.toString())),
                new CardView.Entry(CardFields.WHO, page.say("cards.who"), "", "", or(CardFields.WHO, me)),
                entry(CardFields.SPENT, page.say("cards.spent"), "", "h"),
                entry(CardFields.SEEN, page.say("cards.seen"), "", ""),
                says(CardFields.AS_READ).equals("true"));
    }

    private String or(String field, String otherwise) {
        String said = says(field);
        return said.isEmpty() ? otherwise : said;
    }

    private CardView.Entry entry(String field, String label, String hint, String unit) {
        return new CardView.Entry(field, label, hint, unit, says(field));
    }

    private CardView.Tick tick(String field, String text, String note) {
        return new CardView.Tick(field, text, note, says(field).equals("true"));
    }

    private String says(String field) {
        return typed.getOrDefault(field, "");
    }

    private CardView.Wrong wrong(FinishCard.Lack lack) {
        String key = "cards.lack." + lack.kind().name().toLowerCase(java.util.Locale.ROOT);
        return new CardView.Wrong(lack.field(), page.say(key, lack.work(), lack.label()));
    }

    /** Where the command line would say an option, the page has a field. */
    private Problem onPage(Problem p) {
        String advice = p.advice().replace("say --as-read", page.say("cards.as-read.advice"));
        return new Problem(p.file(), p.line(), p.field(), p.found(), p.expected(), advice);
    }

    /** Names of things in a row, for a sentence. */
    static String row(List<String> names) {
        return names.stream().collect(Collectors.joining(", "));
    }
}
