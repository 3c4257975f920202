package sternwright.app.desk.working;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import sternwright.history.TakenReading;
import sternwright.job.CardReading;
import sternwright.job.CardWork;
import sternwright.job.reading.Judgement;
import sternwright.job.reading.Limits;
import sternwright.job.reading.ReadingJudge;
import sternwright.measure.unit.Unit;
import sternwright.service.ReadingAsked;

/**
 * A reading as it was typed on a card.
 *
 * @param taken the reading in the unit asked, null if what was typed is none
 * @param judgement the verdict, null if what was typed is none
 */
public record TypedReading(
        @Nullable TakenReading taken, @Nullable Judgement judgement) {
    private static final TypedReading NONE = new TypedReading(null, null);
    private static final Pattern FIGURE = Pattern.compile("([-+\u2212]?[0-9]{1,12}(?:[.,][0-9]{1,9})?)\\s*(\\S{0,12})");

    /**
     * Reads and judges what was typed.
     *
     * @param work the work that asks for it
     * @param reading what is asked, with the one before
     * @param typed a figure with a point or a comma, with or without a unit of the same kind; yes or no where that is asked
     * @param shown the unit beside the field, which a figure without a unit is meant in
     * @return the verdict; nothing in it if what was typed is no reading
     */
    public static TypedReading of(CardWork work, CardReading reading, String typed, String shown) {
        ReadingAsked asked = reading.asked();
        OptionalDouble value = Limits.yesOrNo(asked) ? answer(typed.strip()) : figure(typed.strip(), asked, shown);
        if (value.isEmpty() || asked.unit().equals("%") && !(value.getAsDouble() >= 0 && value.getAsDouble() <= 100)) {
            return NONE;
        }
        TakenReading taken = new TakenReading(asked.name(), value.getAsDouble(), asked.unit());
        return new TypedReading(
                taken,
                ReadingJudge.judge(
                        asked, taken, reading.last(), work.planned().inForce().rule()));
    }

    private static OptionalDouble answer(String typed) {
        return switch (typed) {
            case "yes" -> OptionalDouble.of(1);
            case "no" -> OptionalDouble.of(0);
            default -> OptionalDouble.empty();
        };
    }

    private static OptionalDouble figure(String typed, ReadingAsked asked, String shown) {
        Matcher m = FIGURE.matcher(typed);
        if (!m.matches()) {
            return OptionalDouble.empty();
        }
        double value = Double.parseDouble(m.group(1).replace(',', '.').replace('\u2212', '-'));
        String unit = m.group(2).isEmpty() ? shown : m.group(2);
        return unit.equals(asked.unit()) ? OptionalDouble.of(value) : Unit.convert(value, unit, asked.unit());
    }
}
