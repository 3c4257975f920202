package sternwright.app.web.register;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.BindingResult;
import sternwright.app.files.YardFiles;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Field.Choice;
import sternwright.app.web.page.Form;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.TypedDay;
import sternwright.app.web.page.TypedNumber;
import sternwright.boat.Cooling;
import sternwright.boat.HullMaterial;
import sternwright.boat.Winter;

/** What the form of a new boat is sent and shows. */
public final class NewBoatForm {
    static final List<String> FIGURES = List.of("lengthM", "beamM", "draughtM", "massKg", "powerKw");

    private NewBoatForm() {}

    /**
     * A boat as typed; figures and days as text, for an empty one is not known.
     *
     * @param name as painted on the stern
     * @param owner whose she is
     * @param contact telephone or e-mail
     * @param berth where she lies
     * @param use her kind of use
     * @param winter where she spends it
     * @param cooling how the engine is cooled
     * @param twin two engines
     * @param engineModel as on the plate
     * @param powerKw rated power
     * @param lengthM length overall
     * @param beamM beam
     * @param draughtM draught
     * @param massKg mass as lifted
     * @param material of the hull
     */
    public record Typed(
            @NotBlank @Size(max = 80) String name,
            @Nullable @Size(max = 120) String owner,
            @Nullable @Size(max = 120) String contact,
            @NotBlank String berth,
            @NotBlank String use,
            @NotNull Winter winter,
            @NotNull Cooling cooling,
            boolean twin,
            @Nullable @Size(max = 80) String engineModel,
            @Nullable String powerKw,
            @Nullable String lengthM,
            @Nullable String beamM,
            @Nullable String draughtM,
            @Nullable String massKg,
            @NotNull HullMaterial material) {
        @Nullable
        Double figure(String name) {
            String text = switch (name) {
                case "lengthM" -> lengthM;
                case "beamM" -> beamM;
                case "draughtM" -> draughtM;
                case "massKg" -> massKg;
                default -> powerKw;
            };
            OptionalDouble number = text == null ? OptionalDouble.empty() : TypedNumber.of(text);
            return number.isPresent() ? number.getAsDouble() : null;
        }
    }

    /**
     * A part whose age decides when it is renewed.
     *
     * @param id its short name in the template
     * @param name what it is called
     * @param years years it is given
     */
    public record Ageing(String id, String name, String years) {}

    /**
     * What the form shows.
     *
     * @param arrangement such as saildrive, as addresses have it
     * @param arrangementName in words
     * @param form the fields
     * @param berths berths to choose from
     * @param uses kinds of use to choose from
     * @param winters where a winter can be spent
     * @param coolings ways of cooling
     * @param materials materials of hulls
     * @param fitted days on which ageing parts were fitted
     * @param wrongs all that must be put right
     */
    public record View(
            String arrangement,
            String arrangementName,
            Form form,
            List<Choice> berths,
            List<Choice> uses,
            List<Choice> winters,
            List<Choice> coolings,
            List<Choice> materials,
            List<Field> fitted,
            List<Form.Wrong> wrongs) {}

    /** The form, empty or as typed. */
    static View view(
            Page page,
            YardFiles yard,
            LocalDate today,
            String arrangement,
            List<Ageing> ageing,
            Optional<BindingResult> errors) {
        Form form = errors.map(e -> Form.typed(page, "register", e))
                .orElseGet(() -> Form.of(page, "register", blank(yard)));
        List<Field> fitted = ageing.stream().map(a -> fitted(page, today, a)).toList();
        List<Form.Wrong> wrongs = Stream.concat(
                        form.wrong().stream(),
                        fitted.stream()
                                .filter(f -> !f.error().isEmpty())
                                .map(f -> new Form.Wrong(f.name(), f.label(), f.error())))
                .toList();
        return new View(
                arrangement,
                page.say("boats.arrangement." + arrangement),
                form,
                yard.berths().values().stream()
                        .map(b -> new Choice(b.id(), b.name()))
                        .toList(),
                yard.yard().uses().stream()
                        .map(u -> new Choice(u.id(), u.name()))
                        .toList(),
                choices(page, "winter", Winter.values()),
                choices(page, "cooling", Cooling.values()),
                choices(page, "material", HullMaterial.values()),
                fitted,
                wrongs);
    }

    private static Typed blank(YardFiles yard) {
        String berth =
                yard.berths().size() == 1 ? yard.berths().keySet().iterator().next() : "";
        return new Typed(
                "",
                "",
                "",
                berth,
                yard.yard().uses().get(0).id(),
                Winter.ASHORE,
                Cooling.FRESH_WATER,
                false,
                "",
                "",
                "",
                "",
                "",
                "",
                HullMaterial.GRP);
    }

    private static List<Choice> choices(Page page, String what, Enum<?>... all) {
        List<Choice> choices = new ArrayList<>();
        for (Enum<?> each : all) {
            choices.add(new Choice(
                    each.name(),
                    page.say("boats." + what + "."
                            + each.name().toLowerCase(Locale.ROOT).replace('_', '-'))));
        }
        return choices;
    }

    private static Field fitted(Page page, LocalDate today, Ageing part) {
        String name = field(part.id());
        String typed = Optional.ofNullable(page.typed(name)).orElse("");
        String error = fault(page, typed, today);
        return new Field(
                name,
                part.name(),
                page.say("register.fitted.hint", part.years()),
                typed,
                error,
                "text",
                false,
                "",
                "",
                List.of());
    }

    static String field(String partId) {
        return "fitted-" + partId;
    }

    private static String fault(Page page, String typed, LocalDate latest) {
        if (typed.isBlank()) {
            return "";
        }
        Optional<LocalDate> day = TypedDay.of(typed);
        if (day.isEmpty()) {
            return page.say("register.fitted.unreadable");
        }
        return day.get().isAfter(latest) ? page.say("field.PastOrPresent") : "";
    }

    /** Days typed, by part; none if any of them cannot be. */
    static Optional<Map<String, LocalDate>> fitted(Page page, LocalDate today, List<Ageing> ageing) {
        Map<String, LocalDate> days = new LinkedHashMap<>();
        for (Ageing part : ageing) {
            String typed = Optional.ofNullable(page.typed(field(part.id()))).orElse("");
            if (!fault(page, typed, today).isEmpty()) {
                return Optional.empty();
            }
            TypedDay.of(typed).ifPresent(d -> days.put(part.id(), d));
        }
        return Optional.of(days);
    }
}
