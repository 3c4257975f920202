package sternwright.job;

import sternwright.finding.Caution;

/**
 * A caution as it stands on a card: text once, then its key wherever it applies.
 *
 * @param key letter by which works refer to it: A to Z, then AA
 * @param title a few words, made from its id
 * @param caution the caution itself
 */
public record CardCaution(String key, String title, Caution caution) {}
