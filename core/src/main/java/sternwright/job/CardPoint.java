package sternwright.job;

import java.util.List;

/**
 * The works at one service point, done with one set-up.
 *
 * @param installationId the installation
 * @param name the service point, with the side where there are two installations
 * @param again true if an earlier part of the card was at this point already, and these works had to wait for others
 * @param cautions cautions that belong to this point alone, in full
 * @param works the works in order
 */
public record CardPoint(
        String installationId, String name, boolean again, List<CardCaution> cautions, List<CardWork> works) {
    /** Copies the lists. */
    public CardPoint {
        cautions = List.copyOf(cautions);
        works = List.copyOf(works);
    }

    /**
     * Working minutes at this point, set-up not counted.
     *
     * @return minutes
     */
    public double minutes() {
        return works.stream().mapToDouble(w -> w.planned().minutes()).sum();
    }
}
