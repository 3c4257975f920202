package sternwright.app.files.shape;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeType;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import sternwright.app.files.problem.Problem;

/** One file being read: its name, the day called today, and what was wrong so far. */
public final class Reading {
    private static final int SHOWN = 60;

    private final String file;
    private final LocalDate today;
    private final List<Problem> problems = new ArrayList<>();
    private final List<Referred> referred = new ArrayList<>();

    /**
     * Starts to read a file.
     *
     * @param file its name as the person knows it
     * @param today the last day on which anything can have happened
     */
    public Reading(String file, LocalDate today) {
        this.file = file;
        this.today = today;
    }

    /**
     * The file's name as the person knows it.
     *
     * @return relative to the yard's folder
     */
    public String file() {
        return file;
    }

    /**
     * The day called today.
     *
     * @return the last day on which anything can have happened
     */
    public LocalDate today() {
        return today;
    }

    /**
     * What was wrong so far.
     *
     * @return problems in the order they were met
     */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    /**
     * A name that stands for a thing in another file.
     *
     * @param what the kind of thing
     * @param written the name
     * @param line where it stands
     * @param path the field
     */
    public record Referred(String what, String written, int line, String path) {}

    /** Notes a name that stands for a thing in another file. */
    void refer(String what, String written, Node node, Path path) {
        referred.add(new Referred(what, written, line(node), path.toString()));
    }

    /**
     * The names of things in other files met so far, whatever else was wrong.
     *
     * @return in the order they were met
     */
    public List<Referred> referred() {
        return List.copyOf(referred);
    }

    /** How much was wrong so far. */
    int count() {
        return problems.size();
    }

    /**
     * Notes that a node is not what it should be.
     *
     * @param node where
     * @param path field path
     * @param expected what should stand there
     * @param advice what to do, may be empty
     */
    public void wrong(Node node, Path path, String expected, String advice) {
        note(node, path, "found " + shown(node), expected, advice);
    }

    /**
     * Notes a problem in free words.
     *
     * @param node where
     * @param path field path
     * @param found what stands there, as a phrase
     * @param expected what should stand there, may be empty
     * @param advice what to do, may be empty
     */
    public void note(Node node, Path path, String found, String expected, String advice) {
        problems.add(new Problem(file, line(node), path.toString(), found, expected, advice));
    }

    /**
     * The line of a node.
     *
     * @param node any node of a file
     * @return the line counted from 1
     */
    public static int line(Node node) {
        return node.getStartMark().map(m -> m.getLine() + 1).orElse(0);
    }

    /** What stands at a node, short enough for a message. */
    private static String shown(Node node) {
        if (node instanceof ScalarNode scalar) {
            if (Tag.NULL.equals(scalar.getTag())) {
                return "nothing";
            }
            String value = scalar.getValue();
            String cut = value.length() > SHOWN ? value.substring(0, SHOWN) + "…" : value;
            return Tag.STR.equals(scalar.getTag()) ? "\"" + cut + "\"" : cut;
        }
        return node.getNodeType() == NodeType.SEQUENCE ? "a list" : "a block of fields";
    }
}
