package sternwright.app.command.demo;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sternwright.app.command.entry.Deed;
import sternwright.app.command.entry.ExitStatus;
import sternwright.app.command.entry.Pages;
import sternwright.app.demo.InventedFolder;
import sternwright.app.desk.demo.ShowDemo;
import sternwright.app.desk.season.Onlooker;
import sternwright.app.files.YardFiles;
import sternwright.app.files.problem.BadInput;
import sternwright.due.Due;
import sternwright.visit.BoatAnswer;

/** An invented yard to try the program on. */
@Command(
        name = "demo",
        description = {
            "Make an invented yard with eight years of past and do the main job on it.",
            "That is: due list, visits, one job card, one estimate and the season."
        },
        sortOptions = false)
public final class DemoCommand extends Deed {
    private static final int MOST_BOATS = 3000;
    private static final int PORT = 8080;

    @Option(
            names = "--folder",
            paramLabel = "FOLDER",
            defaultValue = "yard-demo",
            description = "Where to; missing or empty. Left out: yard-demo, here.")
    Path folder = Path.of("yard-demo");

    @Option(names = "--boats", paramLabel = "N", defaultValue = "60", description = "How many boats; left out: 60.")
    int boats;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "Another number makes another yard; the same number and day make the same one.")
    long seed;

    @Option(names = "--south", description = "A yard south of the equator.")
    boolean south;

    @Option(names = "--serve", description = "Then open its pages at http://127.0.0.1:8080/.")
    boolean serve;

    private final Pages pages;

    /**
     * The command.
     *
     * @param pages opens the pages
     */
    public DemoCommand(Pages pages) {
        this.pages = pages;
    }

    @Override
    public boolean writes() {
        return true;
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (boats < 1 || boats > MOST_BOATS) {
            throw BadInput.of("--boats", "found " + boats, "1 to " + MOST_BOATS, "");
        }
        ShowDemo demo = new ShowDemo(folder, program().today(), program().reader());
        DemoText text = new DemoText(out(), program().reader());
        YardFiles files = demo.write(south ? InventedFolder.Where.SOUTH : InventedFolder.Where.NORTH, boats, seed);
        text.yard(files, folder, program().today());
        List<Due> dues = demo.dues(files);
        text.dues(dues);
        List<BoatAnswer> answers = demo.visits(files);
        text.visits(answers, files.yard().currency());
        Optional<ShowDemo.Papers> papers = demo.papers(files, answers);
        papers.ifPresent(text::papers);
        text.season(demo.season(Onlooker.NOBODY, System::nanoTime));
        text.next(
                folder,
                papers.map(p -> p.boat().id())
                        .orElseGet(() -> files.boats().keySet().iterator().next()));
        if (serve) {
            out().flush();
            pages.open(
                    new Pages.Ask(
                            folder,
                            "127.0.0.1",
                            PORT,
                            List.of(),
                            false,
                            null,
                            program().asked()),
                    out());
        }
        return ExitStatus.DONE;
    }
}
