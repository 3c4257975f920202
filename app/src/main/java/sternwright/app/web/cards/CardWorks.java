package sternwright.app.web.cards;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import sternwright.app.desk.working.CardFields;
import sternwright.app.desk.working.TypedReading;
import sternwright.app.paper.Figures;
import sternwright.app.paper.Words;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.State;
import sternwright.finding.Severity;
import sternwright.history.TakenReading;
import sternwright.job.CardPoint;
import sternwright.job.CardReading;
import sternwright.job.CardWork;
import sternwright.job.JobCard;
import sternwright.job.reading.Judgement;
import sternwright.job.reading.Limits;

/** Puts the works of a card and the verdicts on their readings into words. */
final class CardWorks {
    static final CardView.Verdict NOTHING =
            new CardView.Verdict(false, new State("", State.Mark.RING, State.Tone.SOFT), "", "");

    private final Page page;
    private final Figures f;
    private final JobCard card;
    private final Map<String, String> typed;

    CardWorks(Page page, JobCard card, Map<String, String> typed) {
        this.page = page;
        this.f = page.figures();
        this.card = card;
        this.typed = typed;
    }

    List<CardView.Point> points() {
        return card.points().stream().map(this::point).toList();
    }

    private CardView.Point point(CardPoint p) {
        String name = Words.sentence(p.name());
        return new CardView.Point(
                p.again() ? page.say("cards.again", name) : name,
                p.cautions().stream().map(CardText::caution).toList(),
                p.works().stream().map(this::work).toList());
    }

    private CardView.Work work(CardWork w) {
        int n = w.number();
        return new CardView.Work(
                n,
                Words.sentence(w.order()),
                w.planned().partName(),
                f.time(w.planned().minutes()),
                w.safety(),
                mind(w),
                Words.full(w.planned().reason()),
                Words.source(w, f),
                takes(w),
                IntStream.range(0, w.steps().size())
                        .mapToObj(i ->
                                tick(CardFields.step(n, i), Words.full(w.steps().get(i))))
                        .toList(),
                IntStream.range(0, w.readings().size())
                        .mapToObj(i -> reading(w, i))
                        .toList(),
                says(CardFields.answer(n)),
                entry(CardFields.remark(n), page.say("cards.remark"), "", ""),
                entry(CardFields.signed(n), page.say("cards.signed"), page.say("cards.signed.hint"), ""));
    }

    private String mind(CardWork w) {
        return w.cautions().isEmpty()
                ? ""
                : page.say(
                        "cards.mind",
                        CardText.row(w.cautions().stream()
                                .map(k -> k + " " + Words.cautionTitle(card, k))
                                .toList()));
    }

    private String takes(CardWork w) {
        return w.planned().supplies().isEmpty()
                ? ""
                : page.say(
                        "cards.takes",
                        CardText.row(w.planned().supplies().stream()
                                .map(s -> page.say("cards.supply", f.supply(s.quantity(), s.unit()), s.name()))
                                .toList()));
    }

    private CardView.Reading reading(CardWork w, int i) {
        CardReading r = w.readings().get(i);
        TakenReading last = r.last();
        var lastOn = r.lastOn();
        String limit = page.say("cards.limit", f.limit(r.asked()));
        String before = last == null || lastOn == null
                ? page.say("cards.reading.first")
                : page.say("cards.reading.last", f.value(r.asked(), last.value()), f.shortDate(lastOn));
        String field = CardFields.reading(w.number(), i);
        return new CardView.Reading(
                entry(
                        field,
                        Words.label(r),
                        page.say("cards.reading.hint", limit, before),
                        Words.unit(f.unit(r.asked().unit()))),
                Limits.yesOrNo(r.asked()),
                verdict(w, r, says(field)));
    }

    /** What a reading means, in words. */
    CardView.Verdict verdict(CardWork w, CardReading r, String said) {
        if (said.isBlank()) {
            return NOTHING;
        }
        Judgement j = TypedReading.of(w, r, said, f.unit(r.asked().unit())).judgement();
        if (j == null) {
            String how = page.say(
                    "cards.unread", f.limit(r.asked()), f.unit(r.asked().unit()));
            return new CardView.Verdict(
                    true, new State(page.say("cards.unread.state"), State.Mark.GAP, State.Tone.ACT), how, "");
        }
        return new CardView.Verdict(
                true,
                state(j.severity()),
                f.judged(j.why(), r.asked().unit()),
                page.say("cards.limit.source", j.source().line()));
    }

    private State state(Severity severity) {
        return switch (severity) {
            case FINE -> new State(page.say("cards.fine"), State.Mark.TICK, State.Tone.PLAIN);
            case WATCH -> new State(page.say("cards.watch"), State.Mark.RING, State.Tone.WATCH);
            case ACT -> new State(page.say("cards.act"), State.Mark.DISC, State.Tone.ACT);
            case UNSAFE -> new State(page.say("cards.unsafe"), State.Mark.TRIANGLE, State.Tone.ACT);
        };
    }

    private CardView.Entry entry(String field, String label, String hint, String unit) {
        return new CardView.Entry(field, label, hint, unit, says(field));
    }

    private CardView.Tick tick(String field, String text) {
        return new CardView.Tick(field, text, "", says(field).equals("true"));
    }

    private String says(String field) {
        return typed.getOrDefault(field, "");
    }
}
