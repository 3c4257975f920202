package sternwright.app.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sternwright.app.paper.drawing.Elevation;
import sternwright.boat.Installation;
import sternwright.boat.Side;
import sternwright.job.CardWork;
import sternwright.job.JobCard;

/**
 * An installation of a card with its works marked.
 *
 * @param svg the drawing
 * @param caption what stands under it
 */
public record CardDrawing(String svg, String caption) {
    /** Draws one installation of a card. */
    public static CardDrawing of(JobCard card, Installation installation) {
        Map<String, List<Integer>> labels = new LinkedHashMap<>();
        List<CardWork> works = card.works().stream()
                .filter(w -> w.planned().part().installationId().equals(installation.id()))
                .toList();
        for (CardWork w : works) {
            labels.computeIfAbsent(w.planned().part().partId(), k -> new ArrayList<>())
                    .add(w.number());
        }
        String side = installation.side() == Side.CENTRELINE ? "" : Words.side(installation.side()) + " ";
        String alt = "Side elevation of the " + side + Words.arrangement(installation.arrangement())
                + " installation, bow to the right. Works: "
                + works.stream()
                        .map(w -> w.number() + " at " + w.planned().partName())
                        .collect(Collectors.joining(", "))
                + ".";
        Elevation drawn = Elevation.of(installation, labels, alt);
        String missing = drawn.missing().isEmpty() ? "" : " Not drawn: " + String.join("; ", drawn.missing()) + ".";
        return new CardDrawing(
                drawn.svg(),
                Words.sentence(
                                side
                                        + "installation from the side, bow to the right, not to scale. The numbers are the works below.")
                        + missing);
    }
}
