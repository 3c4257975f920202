package sternwright.app.command.protect;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sternwright.app.command.entry.Deed;
import sternwright.app.command.entry.ExitStatus;
import sternwright.app.command.text.Json;
import sternwright.app.desk.protect.EnteredReading;
import sternwright.app.desk.protect.ProtectBoat;
import sternwright.app.desk.protect.ProtectRequest;
import sternwright.app.desk.protect.ProtectionView;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.safe.SafeFile;
import sternwright.app.paper.Figures;
import sternwright.app.paper.Paper;
import sternwright.app.paper.ProtectionSheet;
import sternwright.boat.Boat;
import sternwright.protection.metal.ReferenceElectrode;
import sternwright.protection.report.ProtectionReport;

/** How a boat's metal is protected. */
@Command(
        name = "protect",
        description = {
            "Work out how a boat's metal under water is protected, how long its anodes last, what each fault would do.",
            "With readings: what is wrong, and what to measure next."
        },
        sortOptions = false)
public final class ProtectCommand extends Deed {
    @Parameters(paramLabel = "BOAT", arity = "1", description = "The boat.")
    String boat = "";

    @Option(
            names = "--reading",
            paramLabel = "PLACE=VALUE",
            description = {
                "A reading, such as main/leg=-970mV, main/leg~main/engine=0.2ohm, main/leg-anode=1.5x; may be given many times.",
                "After the unit: ,anodes-off ,shore-in ,far. Potentials need --electrode."
            })
    List<String> readings = new ArrayList<>();

    @Option(
            names = "--electrode",
            paramLabel = "NAME",
            description = "Reference electrode of readings and answers: Ag/AgCl/sw, Ag/AgCl/KCl, SCE, CSE or Zn.")
    String electrode = "";

    @Option(
            names = "--set",
            paramLabel = "KEY=VALUE",
            description =
                    "Your own figure for an assumed one, such as main/propeller.area-m2=0.15; may be given many times.")
    Map<String, String> figures = new LinkedHashMap<>();

    @Option(names = "--unplugged", description = "With the shore lead out.")
    boolean unplugged;

    @Option(
            names = "--paint-years",
            paramLabel = "YEARS",
            defaultValue = "1",
            description = "Age of the paint below the water; left out: 1.")
    double paintYears = 1;

    @Option(
            names = "--last-years",
            paramLabel = "YEARS",
            defaultValue = "1",
            description = "How long a new anode should last to half gone; left out: 1.")
    double lastYears = 1;

    @Option(names = "--assumptions", description = "List every figure the register did not give, with its source.")
    boolean assumptions;

    @Option(names = "--html", paramLabel = "FILE", description = "Write the report as a page.")
    @Nullable
    Path html;

    @Option(names = "--pdf", paramLabel = "FILE", description = "Write the report as PDF.")
    @Nullable
    Path pdf;

    @Override
    public boolean writes() {
        return html != null || pdf != null;
    }

    @Override
    public Integer call() {
        List<Problem> problems = new ArrayList<>();
        ReferenceElectrode shown = shown(problems);
        List<EnteredReading> taken = EnteredReading.all("--reading", readings, electrode, problems);
        ProtectRequest request =
                new ProtectRequest(program().today(), !unplugged, paintYears, numbers(problems), lastYears, taken);
        YardFiles files = files(problems);
        Boat found = files.boats().values().iterator().next();
        ProtectBoat desk = new ProtectBoat(files);
        problems.addAll(desk.problems(found, request));
        if (!problems.isEmpty()) {
            throw new BadInput(problems);
        }
        ProtectionReport report = desk.report(found, request);
        write(report, shown, files);
        if (program().json()) {
            Json.print(ProtectionView.of(report, shown), out());
        } else {
            new ProtectText(
                            out(),
                            shown,
                            Figures.of(program().reader()).in(files.yard().units()))
                    .print(report, assumptions);
        }
        return ExitStatus.DONE;
    }

    /** The boat's own files; what is wrong with them is said together with what is wrong on the command line. */
    private YardFiles files(List<Problem> problems) {
        try {
            return YardFolder.only(program().yard(), List.of(boat), program().latest());
        } catch (BadInput e) {
            problems.addAll(e.problems());
            throw new BadInput(problems);
        }
    }

    private ReferenceElectrode shown(List<Problem> problems) {
        if (electrode.isBlank()) {
            return ReferenceElectrode.SILVER_CHLORIDE_SEAWATER;
        }
        return ReferenceElectrode.find(electrode).orElseGet(() -> {
            if (readings.isEmpty()) {
                problems.add(new Problem(
                        "--electrode " + electrode,
                        0,
                        "",
                        "it is not known",
                        "Ag/AgCl/sw, Ag/AgCl/KCl, SCE, CSE or Zn",
                        ""));
            }
            return ReferenceElectrode.SILVER_CHLORIDE_SEAWATER;
        });
    }

    private Map<String, Double> numbers(List<Problem> problems) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        figures.forEach((key, value) -> {
            try {
                numbers.put(key, Double.valueOf(value));
            } catch (NumberFormatException e) {
                problems.add(new Problem(
                        "--set " + key, 0, "", "\"" + value + "\" is no number", "a number such as 0.15", ""));
            }
        });
        return numbers;
    }

    private void write(ProtectionReport report, ReferenceElectrode shown, YardFiles files) {
        if (html == null && pdf == null) {
            return;
        }
        Paper paper = Paper.of(
                new ProtectionSheet(
                        report, shown, files.yard().name(), files.yard().invented()),
                Figures.of(program().reader()).in(files.yard().units()));
        try {
            if (html != null) {
                SafeFile.write(html, paper.html());
                err().println("Written: " + html);
            }
            if (pdf != null) {
                SafeFile.write(pdf, paper.pdf());
                err().println("Written: " + pdf);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the report could not be written: " + e.getMessage(), e);
        }
    }
}
