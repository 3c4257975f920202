package sternwright.service;

import java.util.List;
import sternwright.finding.Caution;

/**
 * A service programme: rules and what leads over them.
 *
 * @param id short name
 * @param name as people say it
 * @param onlyIfNamed true if it is for the boats that name it, false if it is for every boat of the yard; either way what
 *     it says of one engine model, boat or part holds for that model, boat or part
 * @param rules the rules
 * @param overridings figures in place of the rules' own, any order
 * @param cautions cautions the rules refer to
 */
public record Programme(
        String id,
        String name,
        boolean onlyIfNamed,
        List<Rule> rules,
        List<Overriding> overridings,
        List<Caution> cautions) {
    /** Copies the lists. */
    public Programme {
        rules = List.copyOf(rules);
        overridings = List.copyOf(overridings);
        cautions = List.copyOf(cautions);
    }
}
