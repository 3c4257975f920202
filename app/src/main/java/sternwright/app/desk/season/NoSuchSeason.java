package sternwright.app.desk.season;

import java.util.List;
import java.util.stream.Stream;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;

/** There is no season that keeps every demand; says which clash and what would be enough. Nothing was written. */
public final class NoSuchSeason extends BadInput {
    private static final long serialVersionUID = 1;

    private final transient Clash clash;

    NoSuchSeason(Clash clash) {
        super(Stream.concat(
                        Stream.of(new Problem(
                                "season", 0, "", "no plan keeps every demand: " + clash.why(), "", clash.advice())),
                        clash.reliefs().stream()
                                .filter(Clash.Relief::enough)
                                .map(r -> new Problem("season", 0, "", "this is enough: " + r.words(), "", "")))
                .toList());
        this.clash = clash;
    }

    /** What clashes and what would help. */
    public Clash clash() {
        return clash;
    }

    /** One problem, however much would help. */
    @Override
    public int count() {
        return 1;
    }

    /** The clash in the form of a problem of a plan that is shown all the same. */
    static List<Problem> told(Clash clash) {
        return clash.sentences().stream()
                .map(s -> new Problem("season", 0, "", s.substring(0, s.length() - 1), "", ""))
                .toList();
    }
}
