package sternwright.app.web.estimate;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.app.issued.IssuedEstimate;
import sternwright.app.issued.OfferedEstimate;
import sternwright.app.paper.Figures;
import sternwright.app.paper.OwnerWords;
import sternwright.app.paper.Words;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.State;
import sternwright.finding.Caution;
import sternwright.job.estimate.Estimate;
import sternwright.job.estimate.EstimateLine;
import sternwright.job.estimate.OwnerAnswer;
import sternwright.job.estimate.Refusal;
import sternwright.visit.planned.PriceLine;

/** Puts an estimate into words and formats of the reader. */
final class EstimateText {
    private final Page page;
    private final Figures f;
    private final ZoneId zone;

    EstimateText(Page page, ZoneId zone) {
        this.page = page;
        this.f = page.figures();
        this.zone = zone;
    }

    EstimateView.Paper paper(IssuedEstimate issued, Map<String, String> typed) {
        Estimate e = issued.estimate();
        return new EstimateView.Paper(
                e.boat().name(),
                e.boat().owner().name(),
                e.number(),
                OwnerWords.opening(issued.offered().estimate(), f),
                f.date(e.validUntil()),
                e.lines().stream().map(l -> line(issued.offered(), l, typed)).toList(),
                whole(e),
                e.complete());
    }

    private EstimateView.Line line(OfferedEstimate offered, EstimateLine l, Map<String, String> typed) {
        String refusal = offered.estimate().refusals().stream()
                .filter(r -> r.lineNumber() == l.number())
                .map(Refusal::statement)
                .findFirst()
                .orElse("");
        return new EstimateView.Line(
                l.number(),
                Words.sentence(l.planned().inForce().rule().work()),
                l.planned().partName(),
                l.safety(),
                Words.full(l.why()),
                Words.full(l.planned().reason()),
                OwnerWords.standing(l),
                Words.full(l.ifDeclined()),
                OwnerWords.contents(l, f),
                l.unpriced(),
                f.money(l.price()),
                offered.of(l.number()).stream().map(Caution::text).toList(),
                refusal,
                typed.getOrDefault("line." + l.number(), ""),
                "true".equals(typed.get("told." + l.number())),
                answer(l.answer()));
    }

    private @Nullable State answer(OwnerAnswer answer) {
        return switch (answer) {
            case OPEN -> null;
            case ACCEPTED -> new State(page.say("estimate.answer.yes"), State.Mark.TICK, State.Tone.PLAIN);
            case DECLINED -> new State(page.say("estimate.answer.no"), State.Mark.BAR, State.Tone.WATCH);
        };
    }

    private List<EstimateView.Price> whole(Estimate e) {
        List<EstimateView.Price> lines = new ArrayList<>();
        String works = page.say(e.anyDeclined() ? "estimate.works.less" : "estimate.works");
        lines.add(new EstimateView.Price(works, "", f.money(OwnerWords.works(e)), false));
        for (PriceLine p : e.visitLines()) {
            lines.add(new EstimateView.Price(
                    Words.sentence(p.what()), OwnerWords.amount(p, f), f.money(p.amount()), false));
        }
        lines.add(new EstimateView.Price(page.say("estimate.net", e.taxName()), "", f.money(e.net()), true));
        String tax = page.say("estimate.tax", e.taxName(), f.quantity(e.taxPercent(), "%"));
        lines.add(new EstimateView.Price(tax, "", f.money(e.tax()), false));
        String pay = page.say(e.complete() ? "estimate.gross" : "estimate.gross.so-far");
        lines.add(new EstimateView.Price(pay, "", f.money(e.gross()), true));
        return lines;
    }

    State state(IssuedEstimate issued, Instant now) {
        return switch (issued.link(now)) {
            case NONE -> new State(page.say("estimate.state.none"), State.Mark.GAP, State.Tone.PLAIN);
            case OPEN -> new State(page.say("estimate.state.open"), State.Mark.RING, State.Tone.PLAIN);
            case EXPIRED -> new State(page.say("estimate.state.expired"), State.Mark.BAR, State.Tone.WATCH);
            case WITHDRAWN -> new State(page.say("estimate.state.withdrawn"), State.Mark.BAR, State.Tone.SOFT);
            case ANSWERED ->
                issued.owesRecord()
                        ? new State(page.say("estimate.state.owes"), State.Mark.TRIANGLE, State.Tone.ACT)
                        : issued.estimate().anyDeclined()
                                ? new State(page.say("estimate.state.part"), State.Mark.DISC, State.Tone.WATCH)
                                : new State(page.say("estimate.state.yes"), State.Mark.TICK, State.Tone.PLAIN);
        };
    }

    /** How an estimate stands, in a sentence. */
    String stands(IssuedEstimate issued, Instant now) {
        String by = issued.answeredBy();
        Instant at = issued.answeredAt();
        if (by != null && at != null) {
            return answered(by, at);
        }
        return switch (issued.link(now)) {
            case NONE -> page.say("estimate.stands.none");
            case EXPIRED -> page.say("estimate.stands.expired", lastDay(issued));
            case WITHDRAWN -> page.say("estimate.stands.withdrawn");
            case OPEN, ANSWERED -> page.say("estimate.stands.open", lastDay(issued));
        };
    }

    String answered(String by, Instant at) {
        return page.say("estimate.answered", by, f.date(day(at)));
    }

    String lastDay(IssuedEstimate issued) {
        return f.date(day(issued.expiresAt().minusMillis(1)));
    }

    LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, zone);
    }
}
