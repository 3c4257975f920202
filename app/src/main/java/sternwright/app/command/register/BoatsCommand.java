package sternwright.app.command.register;

import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import sternwright.app.command.entry.Deed;
import sternwright.app.command.entry.ExitStatus;
import sternwright.app.command.text.Counted;
import sternwright.app.command.text.Json;
import sternwright.app.command.text.TextTable;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.shape.Shapes;
import sternwright.boat.Berth;
import sternwright.boat.Boat;

/** The register. */
@Command(name = "boats", description = "List the yard's boats.")
public final class BoatsCommand extends Deed {
    @Override
    public Integer call() {
        YardFiles files = YardFolder.all(program().shelf(), program().latest());
        if (program().json()) {
            Json.print(files.boats().values(), out());
            return ExitStatus.DONE;
        }
        TextTable table = new TextTable("id", "name", "length m", "berth", "winter", "installations", "parts");
        files.boats()
                .values()
                .forEach(b -> row(table, b, Optional.ofNullable(files.berths().get(b.berthId()))));
        table.print(out());
        out().println(Counted.of(files.boats().size(), "boat") + ".");
        return ExitStatus.DONE;
    }

    private static void row(TextTable table, Boat boat, Optional<Berth> berth) {
        table.row(
                boat.id(),
                boat.name(),
                Double.toString(boat.hull().lengthM()),
                berth.map(Berth::name).orElse(boat.berthId()),
                Shapes.kebab(boat.winter()),
                boat.installations().stream()
                        .map(i -> i.id() + " " + Shapes.kebab(i.arrangement()))
                        .collect(Collectors.joining(", ")),
                Integer.toString(boat.installations().stream()
                        .mapToInt(i -> i.parts().size())
                        .sum()));
    }
}
