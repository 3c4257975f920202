package sternwright.app.api;

import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import jakarta.annotation.security.RolesAllowed;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import sternwright.app.account.AuditTrail;
import sternwright.app.desk.campaign.Campaign;
import sternwright.app.desk.campaign.CampaignLetters;
import sternwright.app.desk.campaign.CampaignLine;
import sternwright.app.desk.campaign.CampaignList;
import sternwright.app.desk.campaign.CampaignsOfYard;
import sternwright.app.desk.derived.EachOfYard;
import sternwright.app.desk.derived.MadeOnce;
import sternwright.app.desk.derived.SeasonOfYard;
import sternwright.app.desk.protect.EnteredReading;
import sternwright.app.desk.protect.ProtectBoat;
import sternwright.app.desk.protect.ProtectRequest;
import sternwright.app.desk.protect.ProtectionView;
import sternwright.app.desk.today.DayAtYard;
import sternwright.app.desk.today.TodayAtYard;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.protection.metal.ReferenceElectrode;
import tools.jackson.databind.json.JsonMapper;

/** The yard as a whole: its day, its campaigns, what readings say of a boat's protection, and who changed what. */
@RestController
@RolesAllowed({"MANAGER", "OFFICE", "TECHNICIAN", "SURVEYOR"})
public class YardApi {
    private static final int MOST_READINGS = 40;

    /** Days kept as they are sent: today and what somebody looks ahead to. */
    private static final int DAYS = 4;

    private final Asked asked;
    private final AuditTrail audit;
    private final SeasonOfYard season;
    private final CampaignsOfYard campaigns;
    private final EachOfYard<LocalDate, byte[]> days;
    private final MadeOnce made;
    private final JsonMapper json;

    YardApi(
            Asked asked,
            AuditTrail audit,
            SeasonOfYard season,
            CampaignsOfYard campaigns,
            MadeOnce made,
            JsonMapper json) {
        this.made = made;
        this.json = json;
        this.asked = asked;
        this.season = season;
        this.campaigns = campaigns;
        this.days = new EachOfYard<>(asked.yard(), DAYS);
        this.audit = audit;
    }

    /** What the yard does on a day: people, hoist, boats ashore, parts missing, promises at risk. */
    @ApiResponse(responseCode = "200", content = @Content(schema = @Schema(implementation = DayAtYard.class)))
    @GetMapping(value = "/api/today", produces = MediaType.APPLICATION_JSON_VALUE)
    byte[] today(@RequestParam(name = "day", required = false) @Nullable LocalDate day) {
        LocalDate of = Objects.requireNonNullElse(day, asked.yard().today());
        return days.of(of, () -> json.writeValueAsBytes(day(of)));
    }

    private DayAtYard day(LocalDate day) {
        return TodayAtYard.of(asked.yard().files(), season.files(), asked.yard().dues(), day);
    }

    /**
     * A part of a campaign.
     *
     * @param boat id of the boat
     * @param owner whose she is
     * @param part installation/part
     * @param rule id of the rule
     * @param since when it was fitted or last done, null if not known
     * @param months since then
     * @param hours engine hours since then
     * @param dueOn when it is due
     */
    public record Part(
            String boat,
            String owner,
            String part,
            String rule,
            @Nullable LocalDate since,
            @Nullable Integer months,
            @Nullable Double hours,
            LocalDate dueOn) {
        static Part of(CampaignLine line) {
            return new Part(
                    line.row().boat().id(),
                    line.row().boat().owner().name(),
                    line.row().due().part().toString(),
                    line.row().due().rule().id(),
                    line.since(),
                    line.months(),
                    line.hours(),
                    line.row().due().dueOn());
        }
    }

    /** The parts of a rule or a kind that are of an age or hours, or of which neither is known. */
    @GetMapping("/api/campaign")
    @RolesAllowed({"MANAGER", "OFFICE"})
    Stretch<Part> campaign(
            @RequestParam(name = "rule", required = false) @Nullable String rule,
            @RequestParam(name = "kind", required = false) @Nullable String kind,
            @RequestParam(name = "months", required = false) @Nullable Integer months,
            @RequestParam(name = "hours", required = false) @Nullable Double hours,
            @RequestParam(name = "page", defaultValue = "1") int page,
            @RequestParam(name = "size", defaultValue = "100") int size) {
        return Stretch.of(list(rule, kind, months, hours).lines(), page, size, Part::of);
    }

    /** Letters to the owners of a campaign, on paper. */
    @GetMapping(value = "/api/campaign/letters", produces = MediaType.APPLICATION_PDF_VALUE)
    @RolesAllowed({"MANAGER", "OFFICE"})
    byte[] letters(
            @RequestParam(name = "rule", required = false) @Nullable String rule,
            @RequestParam(name = "kind", required = false) @Nullable String kind,
            @RequestParam(name = "months", required = false) @Nullable Integer months,
            @RequestParam(name = "hours", required = false) @Nullable Double hours,
            @RequestParam(name = "by") LocalDate by,
            Locale reader) {
        if (by.isBefore(asked.yard().today())) {
            throw BadInput.of("by", "found " + by, "a day from " + asked.yard().today() + " on", "");
        }
        CampaignList list = list(rule, kind, months, hours);
        return made.of(
                "letters " + asked.now() + " " + list.campaign() + " " + by + " " + reader,
                () -> CampaignLetters.of(list, asked.yard().files(), by, reader).pdf());
    }

    private CampaignList list(
            @Nullable String rule, @Nullable String kind, @Nullable Integer months, @Nullable Double hours) {
        try {
            return campaigns.of(new Campaign("", rule, kind, months, hours));
        } catch (IllegalArgumentException cannot) {
            throw BadInput.of("campaign", String.valueOf(cannot.getMessage()), "", "");
        }
    }

    /**
     * Readings taken aboard.
     *
     * @param readings as on the command line, such as {@code main/leg=-970mV,anodes-off}
     * @param electrode the reference electrode, where it is not silver/silver chloride in sea water
     * @param shoreLead whether the shore lead is plugged in, true if missing
     */
    public record Readings(
            @Nullable List<String> readings,
            @Nullable String electrode,
            @Nullable Boolean shoreLead) {}

    /** What readings say: the faults by harm, and the next measurement; nothing is kept. */
    @PostMapping("/api/boats/{id}/protection/diagnosis")
    ProtectionView diagnosis(@PathVariable("id") String id, @RequestBody Readings said) {
        List<String> readings = Objects.requireNonNullElse(said.readings(), List.of());
        String electrode = Objects.requireNonNullElse(said.electrode(), "");
        boolean shore = !Boolean.FALSE.equals(said.shoreLead());
        if (readings.size() > MOST_READINGS || readings.stream().anyMatch(Objects::isNull)) {
            throw BadInput.of(
                    "readings", "found " + readings.size(), "up to " + MOST_READINGS + ", none of them null", "");
        }
        List<Problem> wrong = new ArrayList<>();
        List<EnteredReading> taken = EnteredReading.all("reading", readings, electrode, wrong);
        if (!wrong.isEmpty()) {
            throw new BadInput(wrong);
        }
        ProtectRequest usual = ProtectRequest.on(asked.yard().today());
        ProtectRequest request = new ProtectRequest(
                usual.today(), shore, usual.coatingYears(), usual.figures(), usual.wantedYears(), taken);
        return ProtectionView.of(
                new ProtectBoat(asked.yard().files()).report(asked.boat(id), request),
                ReferenceElectrode.find(electrode).orElse(ReferenceElectrode.SILVER_CHLORIDE_SEAWATER));
    }

    /**
     * A line of the audit.
     *
     * @param at when
     * @param who the person's name then
     * @param address where from
     * @param deed what was done
     * @param subject to what
     * @param detail more
     */
    public record Change(Instant at, String who, String address, String deed, String subject, String detail) {}

    /** Who changed what, the newest first. */
    @GetMapping("/api/audit")
    @RolesAllowed("MANAGER")
    Stretch<Change> audit(
            @RequestParam(name = "page", defaultValue = "1") int page,
            @RequestParam(name = "size", defaultValue = "100") int size) {
        Stretch.check(page, size);
        List<Change> lines = audit.lines(Stretch.before(page, size), size).stream()
                .map(l -> new Change(l.at(), l.who(), l.address(), l.deed(), l.subject(), l.detail()))
                .toList();
        return new Stretch<>(lines, page, size, (int) audit.count());
    }
}
