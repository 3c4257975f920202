package sternwright.app.desk.campaign;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import sternwright.app.files.YardFiles;
import sternwright.app.paper.Figures;
import sternwright.app.paper.OwnerLetters;
import sternwright.app.paper.OwnerLetters.Item;
import sternwright.app.paper.OwnerLetters.Letter;
import sternwright.app.paper.Paper;
import sternwright.app.paper.Words;
import sternwright.boat.Owner;
import sternwright.boat.Side;
import sternwright.due.DueState;
import sternwright.due.Reasons;
import sternwright.finding.Caution;
import sternwright.service.Programme;
import sternwright.service.Rule;

/** One letter an owner, all boats and parts of the campaign on it. */
public final class CampaignLetters {
    /** The letter says it in its own words. */
    private static final String WHO_DECIDES = "who-decides";

    private final YardFiles files;
    private final Figures figures;
    private final Reasons reasons;

    private CampaignLetters(YardFiles files, Figures figures) {
        this.files = files;
        this.figures = figures;
        reasons = new Reasons(figures.locale());
    }

    /**
     * Writes the letters of a campaign. Works an owner refused by signature are not written about again.
     *
     * @param list the campaign
     * @param files the yard's files
     * @param answerBy day by which the yard would like to hear
     * @param reader whose formats of dates and numbers to use
     * @return one document, a sheet for each owner; its {@code pdf()} is PDF/A-3a and PDF/UA-1
     */
    public static Paper of(CampaignList list, YardFiles files, LocalDate answerBy, Locale reader) {
        return new CampaignLetters(files, Figures.of(reader)).paper(list, answerBy);
    }

    private Paper paper(CampaignList list, LocalDate answerBy) {
        Map<Owner, List<CampaignLine>> byOwner = new LinkedHashMap<>();
        list.lines().stream()
                .filter(l -> l.row().due().state() != DueState.REFUSED)
                .forEach(l -> byOwner.computeIfAbsent(key(l.row().boat().owner()), o -> new ArrayList<>())
                        .add(l));
        List<Letter> letters = byOwner.values().stream().map(this::letter).toList();
        return new OwnerLetters(files.yard(), list.today(), answerBy, about(list), letters).paper(figures);
    }

    /** The heading: what the yard calls it, or else the work itself. */
    private static String about(CampaignList list) {
        if (!list.campaign().name().isBlank()) {
            return list.campaign().name();
        }
        List<String> works = list.lines().stream()
                .map(l -> l.row().due().rule().work())
                .distinct()
                .toList();
        return works.size() == 1 ? works.get(0) : "work that is due";
    }

    /** The same person however the name was typed. */
    private static Owner key(Owner owner) {
        String contact = owner.contact();
        return new Owner(
                owner.name().strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT),
                contact == null ? null : contact.replaceAll("\\s+", "").toLowerCase(Locale.ROOT));
    }

    private Letter letter(List<CampaignLine> lines) {
        Owner owner = lines.get(0).row().boat().owner();
        return new Letter(
                owner.name(),
                Objects.requireNonNullElse(owner.contact(), ""),
                lines.stream().map(this::item).toList(),
                cautions(lines));
    }

    private Item item(CampaignLine line) {
        DueRow row = line.row();
        Rule rule = row.due().rule();
        Side side = row.installation().side();
        return new Item(
                row.boat().name(),
                row.berthName(),
                (side == Side.CENTRELINE ? "" : Words.side(side) + " ") + row.kindName(),
                rule.work(),
                age(line),
                reasons.sentence(row.due()),
                rule.why(),
                rule.ifDeclined(),
                row.due().state() == DueState.OVERDUE,
                rule.safety());
    }

    private String age(CampaignLine line) {
        LocalDate since = line.since();
        Integer months = line.months();
        Double hours = line.hours();
        if (since == null || months == null) {
            return "age not known to us";
        }
        String run = hours == null ? "" : ", " + figures.quantity(Math.rint(hours), "h") + " run";
        String span = months < 24
                ? figures.number(months) + (months == 1 ? " month" : " months")
                : figures.number(Math.floorDiv(months, 12)) + " years";
        String what = line.row().due().rule().renews() ? "fitted or renewed " : "last done ";
        return what + figures.shortDate(since) + ", " + span + " ago" + run;
    }

    /** What to mind where the work can hurt someone, each once, in the order of the works. */
    private List<Caution> cautions(List<CampaignLine> lines) {
        Map<String, Caution> known = new LinkedHashMap<>();
        files.generic().cautions().forEach(c -> known.put(c.id(), c));
        files.programmes().stream()
                .map(Programme::cautions)
                .flatMap(List::stream)
                .forEach(c -> known.put(c.id(), c));
        Set<String> ids = new TreeSet<>();
        lines.forEach(l -> ids.addAll(l.row().due().rule().cautions()));
        ids.remove(WHO_DECIDES);
        return ids.stream().map(known::get).filter(Objects::nonNull).toList();
    }
}
