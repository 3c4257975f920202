package sternwright.season.dated.make;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;
import sternwright.season.dated.OwnerDate;
import sternwright.season.dated.SeasonRequest;
import sternwright.yard.SeasonDates;
import sternwright.yard.WinterStay;

/**
 * The winter of a season: its lay-up, its recommission, and which of its visits belongs to which.
 *
 * @param layUp the lay-up; of the winter after if the season begins after this year's
 * @param recommission the recommission
 * @param ahead whether the boats are still to be laid up when the season begins
 */
record Winterings(SeasonDates.Window layUp, SeasonDates.Window recommission, boolean ahead) {
    /** The part of the season in which a visit lies. */
    enum Part {
        /** Before the lay-up. */
        BEFORE,
        /** Lay-up. */
        AUTUMN,
        /** Recommission. */
        SPRING,
        /** After the recommission. */
        AFTER
    }

    static Winterings of(SeasonDates dates, LocalDate from) {
        SeasonDates.Window layUp = dates.layUpEndingFrom(from);
        SeasonDates.Window recommission = dates.recommissionEndingFrom(from);
        return new Winterings(layUp, recommission, layUp.to().isBefore(recommission.to()));
    }

    Part part(LocalDate from, LocalDate to) {
        if (from.isAfter(recommission.to())) {
            return Part.AFTER;
        }
        if (!ahead) {
            return Part.SPRING;
        }
        if (to.isBefore(layUp.from())) {
            return Part.BEFORE;
        }
        LocalDate middle = layUp.to().plusDays(ChronoUnit.DAYS.between(layUp.to(), recommission.from()) / 2);
        return from.isAfter(middle) ? Part.SPRING : Part.AUTUMN;
    }

    /** The first frost of this winter. */
    @Nullable
    LocalDate frost(@Nullable MonthDay firstFrost) {
        if (firstFrost == null) {
            return null;
        }
        LocalDate begin = ahead ? layUp.from() : recommission.from().minusMonths(6);
        LocalDate frost = firstFrost.atYear(begin.getYear());
        return frost.isBefore(begin) ? firstFrost.atYear(begin.getYear() + 1) : frost;
    }

    /** Whether a boat that winters ashore stands there when the season begins. */
    boolean stands(SeasonRequest request, String boatId) {
        return new WinterStay(request.yard().season()).hauledBefore(request.from())
                || request.date(boatId, OwnerDate.Kind.ASHORE_SINCE)
                        .filter(d -> !d.isAfter(request.from()))
                        .isPresent();
    }

    /** What visits of the winter are called after. */
    String years() {
        int spring = recommission.to().getYear();
        int autumn = ahead ? layUp.from().getYear() : spring - 1;
        return autumn == spring ? Integer.toString(spring) : autumn + "/" + spring % 100;
    }
}
