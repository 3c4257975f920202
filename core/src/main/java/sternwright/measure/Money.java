package sternwright.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;

/**
 * An amount of money in one currency, rounded half up to the currency's own smallest unit.
 *
 * @param amount the amount, already rounded
 * @param currency ISO 4217 currency
 */
public record Money(BigDecimal amount, Currency currency) implements Comparable<Money> {
    /** Rounds to the currency's fraction digits. */
    public Money {
        amount = amount.setScale(Math.max(0, currency.getDefaultFractionDigits()), RoundingMode.HALF_UP);
    }

    /**
     * Makes an amount from a number.
     *
     * @param amount currency units, finite
     * @param currency ISO 4217 currency
     * @return the rounded amount
     */
    public static Money of(double amount, Currency currency) {
        return new Money(BigDecimal.valueOf(amount), currency);
    }

    /**
     * Nothing, in a currency.
     *
     * @param currency ISO 4217 currency
     * @return zero
     */
    public static Money zero(Currency currency) {
        return new Money(BigDecimal.ZERO, currency);
    }

    /**
     * Adds an amount of the same currency.
     *
     * @param other what is added
     * @return the sum
     * @throws IllegalArgumentException if the currencies differ
     */
    public Money plus(Money other) {
        requireSame(other);
        return new Money(amount.add(other.amount), currency);
    }

    /**
     * Takes away an amount of the same currency.
     *
     * @param other what is taken away
     * @return the difference
     * @throws IllegalArgumentException if the currencies differ
     */
    public Money minus(Money other) {
        requireSame(other);
        return new Money(amount.subtract(other.amount), currency);
    }

    /**
     * Multiplies, for quantities and tax.
     *
     * @param factor any number
     * @return the rounded product
     */
    public Money times(double factor) {
        return new Money(amount.multiply(BigDecimal.valueOf(factor)), currency);
    }

    /**
     * The amount as a plain number, for planning only.
     *
     * @return currency units
     */
    public double toDouble() {
        return amount.doubleValue();
    }

    @Override
    public int compareTo(Money other) {
        requireSame(other);
        return amount.compareTo(other.amount);
    }

    @Override
    public String toString() {
        return amount.toPlainString() + " " + currency.getCurrencyCode();
    }

    private void requireSame(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException("amounts of " + currency + " and " + other.currency
                    + " cannot be mixed: bring both to the yard's currency first");
        }
    }
}
