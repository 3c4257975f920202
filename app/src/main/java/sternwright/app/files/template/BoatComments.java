package sternwright.app.files.template;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import sternwright.app.files.kind.BoatShape;
import sternwright.app.files.shape.Path;
import sternwright.app.files.shape.YamlText;
import sternwright.app.files.template.BoatTemplate.Known;

/** What a new boat's file says to the person who goes on with it. */
final class BoatComments implements YamlText.Comments {
    private static final Set<String> GUESSED = Set.of("wetted-area-m2", "coated-share", "mass-kg", "metal");

    private final Known known;
    private final Set<String> said = new HashSet<>();

    BoatComments(Known known) {
        this.known = known;
    }

    @Override
    public List<String> above(Path path) {
        List<String> lines = new ArrayList<>();
        boolean top = path.parent() != null && path.parent().parent() == null;
        String meaning = BoatShape.meaning(path.step());
        if (top) {
            lines.addAll(path.step().equals("id") ? head() : List.of(""));
        }
        if (path.step().equals("parts") && said.add("parts")) {
            lines.addAll(BoatShape.partLegend());
        } else if (!path.inList() && !meaning.isEmpty() && !inPart(path) && said.add(path.step())) {
            lines.add(meaning);
        }
        return lines;
    }

    private static List<String> head() {
        return List.of(
                "A boat as the register knows it. Every field is described in docs/file-formats.md.",
                "What is not known is left out, or left empty after its colon: that is a legal answer, and what hangs on it",
                "is then said to be not known. \"assumed\" marks a guess: put the true figure in its place.",
                "");
    }

    private static boolean inPart(Path path) {
        Path parent = path.parent();
        return parent != null
                && parent.inList()
                && parent.parent() != null
                && parent.parent().step().equals("parts");
    }

    @Override
    public String behind(Path path) {
        String field = path.step();
        if (inPart(path)) {
            return GUESSED.contains(field) ? "assumed" : "";
        }
        boolean assumed = switch (field) {
            case "length-m" -> known.lengthM() == null;
            case "beam-m" -> known.beamM() == null;
            case "draught-m" -> known.draughtM() == null;
            case "mass-kg" -> known.massKg() == null;
            default -> false;
        };
        return assumed ? "assumed: measure it" : "";
    }
}
