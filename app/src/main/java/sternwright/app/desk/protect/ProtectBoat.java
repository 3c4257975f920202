package sternwright.app.desk.protect;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.YardFiles;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.paper.drawing.Drawing;
import sternwright.app.paper.drawing.ProtectionDrawings;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.PartRef;
import sternwright.boat.Water;
import sternwright.due.WearDate;
import sternwright.history.BoatHistory;
import sternwright.protection.anode.AnodeLife;
import sternwright.protection.anode.AnodeLog;
import sternwright.protection.anode.BoatYear;
import sternwright.protection.diagnosis.Observation;
import sternwright.protection.diagnosis.Places;
import sternwright.protection.diagnosis.Quantity;
import sternwright.protection.metal.MetalCatalogue;
import sternwright.protection.metal.ReferenceElectrode;
import sternwright.protection.register.BoatCircuit;
import sternwright.protection.register.CircuitCondition;
import sternwright.protection.register.CircuitFromRegister;
import sternwright.protection.register.RegisterProblem;
import sternwright.protection.register.UnusableRegisterException;
import sternwright.protection.report.ProtectionReport;
import sternwright.protection.report.ReportRequest;
import sternwright.protection.report.ReportWriter;
import sternwright.yard.Use;

/** Works out how a boat's metal is protected. */
public final class ProtectBoat {
    private final YardFiles files;
    private final CircuitFromRegister builder;

    /**
     * Ready to work on a yard's boats.
     *
     * @param files what the yard's folder says
     */
    public ProtectBoat(YardFiles files) {
        this.files = files;
        builder = new CircuitFromRegister(files.catalogue(), MetalCatalogue.standard());
    }

    /**
     * The protection report of a boat.
     *
     * @param boat the boat
     * @param request what is asked
     * @return the report
     * @throws BadInput in words, where water, a metal, a figure or a reading cannot be used
     */
    public ProtectionReport report(Boat boat, ProtectRequest request) {
        List<Problem> problems = problems(boat, request);
        if (!problems.isEmpty()) {
            throw new BadInput(problems);
        }
        Berth berth = berth(boat);
        BoatHistory history =
                Optional.ofNullable(files.histories().get(boat.id())).orElseGet(() -> BoatHistory.empty(boat.id()));
        List<Observation> readings =
                request.readings().stream().map(EnteredReading::observation).toList();
        try {
            return new ReportWriter(builder)
                    .write(new ReportRequest(
                            boat,
                            berth,
                            condition(request),
                            year(boat, berth),
                            history,
                            readings,
                            request.wantedYears(),
                            request.today()));
        } catch (IllegalArgumentException e) {
            throw BadInput.of(file(boat), phrase(e), "", "");
        }
    }

    /**
     * The drawings of a report, each with the table behind it.
     *
     * @param report the report
     * @param electrode what potentials are given against
     * @return the circuit, the potentials, then the life of each anode
     */
    public static List<Drawing> drawings(ProtectionReport report, ReferenceElectrode electrode) {
        return ProtectionDrawings.of(report, electrode);
    }

    /**
     * Where readings can be taken, for a form to offer.
     *
     * @param report the report
     * @param quantity what is to be read
     * @return short names of parts or joints, in the order of the register
     */
    public static List<String> places(ProtectionReport report, Quantity quantity) {
        return Places.of(report.circuit(), quantity);
    }

    private static CircuitCondition condition(ProtectRequest request) {
        return CircuitCondition.atBerth(request.today().getMonth())
                .withShoreLead(request.shoreLead())
                .painted(request.coatingYears())
                .with(request.figures());
    }

    /**
     * Everything that keeps a report from being made: water, metals, figures, places of readings.
     *
     * @param boat the boat
     * @param request what is asked
     * @return the problems, none if the report can be made
     */
    public List<Problem> problems(Boat boat, ProtectRequest request) {
        List<Problem> problems = new ArrayList<>();
        if (!(request.wantedYears() > 0) || !(request.coatingYears() >= 0)) {
            problems.add(new Problem(
                    "--last-years, --paint-years",
                    0,
                    "",
                    "they are " + request.wantedYears() + " and " + request.coatingYears(),
                    "years above 0, and of 0 or more",
                    ""));
        }
        Berth berth = berth(boat);
        @Nullable BoatCircuit circuit = null;
        try {
            circuit = builder.build(boat, berth, condition(request));
            AnodeLog.of(boat, circuit, files.history(boat.id()), request.today());
        } catch (UnusableRegisterException e) {
            e.problems().forEach(p -> problems.add(problem(boat, p)));
        } catch (IllegalArgumentException e) {
            problems.add(new Problem(file(boat), 0, "", phrase(e), "", ""));
        }
        places(circuit == null ? inAnyWater(boat, berth) : circuit, request.readings(), problems);
        return problems;
    }

    /** The circuit for its names alone, where the berth's water or the figures put in cannot be used. */
    private @Nullable BoatCircuit inAnyWater(Boat boat, Berth berth) {
        Berth atSea = new Berth(
                berth.id(),
                berth.name(),
                berth.latitudeDeg(),
                new Water(35.0, null, List.of()),
                berth.firstFrost(),
                berth.lastFrost(),
                berth.hotMarina(),
                berth.shorePower());
        try {
            return builder.build(boat, atSea, CircuitCondition.atBerth(Month.JULY));
        } catch (UnusableRegisterException e) {
            return null;
        }
    }

    private static void places(@Nullable BoatCircuit circuit, List<EnteredReading> readings, List<Problem> problems) {
        if (circuit == null) {
            return;
        }
        for (EnteredReading r : readings) {
            Places.problem(circuit, r.observation())
                    .ifPresent(p -> problems.add(new Problem(r.entered(), 0, "", p.what(), p.expected(), p.advice())));
        }
    }

    private static Problem problem(Boat boat, RegisterProblem p) {
        String where = switch (p.about()) {
            case BERTH -> "berths.yaml";
            case BOAT -> file(boat);
            case FIGURE -> "--set " + p.where();
        };
        String field = p.about() == RegisterProblem.About.FIGURE ? "" : p.where();
        return new Problem(where, 0, field, p.what(), p.expected(), p.advice());
    }

    private static String file(Boat boat) {
        return "boats/" + boat.id() + ".yaml";
    }

    private static String phrase(IllegalArgumentException e) {
        String said = String.valueOf(e.getMessage()).strip();
        return said.endsWith(".") ? said.substring(0, said.length() - 1) : said;
    }

    /**
     * Days on which the boat's anodes are half gone, as measured or predicted.
     *
     * @param boat the boat
     * @param history what is written down of it
     * @param today the day
     * @return by part; empty where the register says too little to compute them
     */
    public Map<PartRef, WearDate> wear(Boat boat, BoatHistory history, LocalDate today) {
        Berth berth = berth(boat);
        CircuitCondition condition = CircuitCondition.atBerth(today.getMonth());
        try {
            return AnodeLife.renewals(builder, boat, berth, condition, year(boat, berth), history, today);
        } catch (IllegalArgumentException e) {
            // Too little is known of water or metal: the rule's own interval holds.
            return Map.of();
        }
    }

    private Berth berth(Boat boat) {
        return Optional.ofNullable(files.berths().get(boat.berthId()))
                .orElseThrow(() -> new IllegalStateException(boat.berthId() + " was checked and is not there"));
    }

    private BoatYear year(Boat boat, Berth berth) {
        Use use = files.yard()
                .use(boat.use())
                .orElseThrow(() -> new IllegalStateException(boat.use() + " was checked and is not there"));
        return SeasonalUse.of(boat, berth, use, files.yard().season());
    }
}
