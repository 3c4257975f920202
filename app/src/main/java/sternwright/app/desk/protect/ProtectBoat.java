package sternwright.app.desk.protect;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import sternwright.app.files.YardFiles;
import sternwright.app.files.problem.BadInput;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.PartRef;
import sternwright.due.WearDate;
import sternwright.history.BoatHistory;
import sternwright.protection.anode.AnodeLife;
import sternwright.protection.anode.BoatYear;
import sternwright.protection.metal.MetalCatalogue;
import sternwright.protection.register.CircuitCondition;
import sternwright.protection.register.CircuitFromRegister;
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
        Berth berth = berth(boat);
        CircuitCondition condition = CircuitCondition.atBerth(request.today().getMonth())
                .withShoreLead(request.shoreLead())
                .painted(request.coatingYears())
                .with(request.figures());
        BoatHistory history =
                Optional.ofNullable(files.histories().get(boat.id())).orElseGet(() -> BoatHistory.empty(boat.id()));
        try {
            return new ReportWriter(builder)
                    .write(new ReportRequest(
                            boat,
                            berth,
                            condition,
                            year(boat, berth),
                            history,
                            request.readings(),
                            request.wantedYears(),
                            request.today()));
        } catch (IllegalArgumentException e) {
            String said = String.valueOf(e.getMessage()).strip();
            throw BadInput.of(
                    "boats/" + boat.id() + ".yaml",
                    said.endsWith(".") ? said.substring(0, said.length() - 1) : said,
                    "",
                    "");
        }
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
