package sternwright.app.paper;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sternwright.app.paper.board.SeasonBoard;
import sternwright.season.dated.answer.Binding;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.DatedSeason;
import sternwright.season.dated.answer.Load;
import sternwright.yard.Yard;

/**
 * The season as a page: what to mind, the board, and the table behind it.
 *
 * @param yard the yard
 * @param season the season
 * @param today the day it was planned
 * @param remarks what a person should know
 */
public record SeasonPaper(Yard yard, DatedSeason season, LocalDate today, List<String> remarks) {
    /** Copies the list. */
    public SeasonPaper {
        remarks = List.copyOf(remarks);
    }

    /**
     * The page and its printable form.
     *
     * @param figures formats of the reader
     * @return the paper
     */
    public Paper paper(Figures figures) {
        String title = "Season board " + figures.dates(season.from(), season.to());
        String foot = Paper.foot(title, yard.name(), yard.invented());
        SeasonBoard board = new SeasonBoard(season, today, figures.locale());
        return new Paper(
                fileName(),
                title,
                page(title, Style.boardScreen(foot, figures), board, figures, false),
                page(title, Style.boardPrint(foot, figures), board, figures, true));
    }

    /** Name of the paper without ending. */
    public String fileName() {
        return "season-board-" + today;
    }

    private String page(String title, String style, SeasonBoard board, Figures figures, boolean print) {
        Map<String, Object> facts = new HashMap<>();
        facts.put("p", this);
        facts.put("board", board);
        facts.put("f", figures);
        facts.put("print", print);
        return Paper.page("board", title, style, facts);
    }

    /** The worst operation of each boat that is not as wished, the worst boat first. */
    public List<DatedOperation> toMind() {
        Set<String> seen = new HashSet<>();
        return season
                .operations(o -> o.state() == DatedOperation.State.UNSAFE || o.state() == DatedOperation.State.LATE)
                .stream()
                .sorted(Comparator.comparing(DatedOperation::state)
                        .thenComparing(DatedOperation::daysLate)
                        .reversed())
                .filter(o -> seen.add(o.meaning().boatId()))
                .toList();
    }

    /** What is full for how long, one line each; people are in the board. */
    public List<String> binds(Figures figures) {
        List<String> lines = new ArrayList<>();
        for (Binding b : season.binds()) {
            if (b.kind() != Load.Kind.PERSON) {
                lines.add(Words.sentence(b.name()) + " from " + figures.shortDate(b.from()) + " to "
                        + figures.shortDate(b.to()));
            }
        }
        return lines;
    }
}
