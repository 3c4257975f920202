package sternwright.service;

import sternwright.finding.Source;

/**
 * One link of the chain from the programme's own figures to those that hold.
 *
 * @param scope how far it reaches
 * @param figures what it gives, in words, such as {@code 12 months, 200 h}; empty if it changes no figure
 * @param source where it comes from
 */
public record FigureStep(Scope scope, String figures, Source source) {
    /**
     * The step in words.
     *
     * @return such as {@code yard's own rule: 10 months (manual K-40, section 7, maker's manual)}
     */
    public String line() {
        return scope.words() + ": " + (figures.isEmpty() ? "" : figures + "; ") + source.line();
    }
}
