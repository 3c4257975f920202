package sternwright.app.desk.tables;

import java.util.regex.Pattern;

/** A cell of a sheet that no spreadsheet takes for a formula. */
public final class SheetCell {
    /**
     * What a spreadsheet would take for a formula: such a cell begins with one of these (OWASP, CSV Injection, owasp.org). Telephone
     * numbers with their plus stay as they are.
     */
    private static final Pattern FORMULA = Pattern.compile("^(?:[=@\\t\\r]|[+-](?![\\d ().,/-]*$)).*", Pattern.DOTALL);

    private SheetCell() {}

    /**
     * The text with an apostrophe before it where it would be taken for a formula.
     *
     * @param cell any text
     * @return the text as it may stand in a sheet
     */
    public static String plain(String cell) {
        return FORMULA.matcher(cell).matches() ? "'" + cell : cell;
    }
}
