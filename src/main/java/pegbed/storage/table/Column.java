package pegbed.storage.table;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Pattern;
import pegbed.model.InputException;
import pegbed.storage.peg.Fields;
import pegbed.storage.peg.NumberText;
import pegbed.storage.peg.PegWriter;

/**
 * One column of a table.
 *
 * @param table the table
 * @param index its place, 0 for the first
 * @param title its name as the file writes it
 * @param factor what its numbers are multiplied by to give SI
 */
record Column(Table table, int index, String title, BigDecimal factor) {
    /** A comma before three digits: in English it parts thousands, elsewhere decimals. */
    private static final Pattern THOUSANDS = Pattern.compile("[+-]?\\d{1,3}(,\\d{3})+");

    /** Of smaller units a thousand is as likely as three decimals. */
    private static final BigDecimal FOOT = new BigDecimal("0.3048");

    /** Units of length that a header may name. Foot and inch as agreed in 1959: 0.3048 m and 25.4 mm exactly. */
    enum Unit {
        M("1"),
        CM("0.01"),
        MM("0.001"),
        FT("0.3048"),
        IN("0.0254");

        private final BigDecimal metres;

        Unit(String metres) {
            this.metres = new BigDecimal(metres);
        }

        BigDecimal metres() {
            return metres;
        }

        String suffix() {
            return PegWriter.word(this);
        }
    }

    /** What a cell says. */
    String words(Table.Row row) {
        return row.cells().get(index);
    }

    /**
     * The number in a cell, in SI.
     *
     * @param least smallest right value, SI
     * @param most largest right value, SI
     * @param example a right cell in SI, which the sentence gives in the unit of this column
     */
    double number(Table.Row row, double least, double most, String example) throws InputException {
        String words = words(row);
        double plain = factor.compareTo(BigDecimal.ONE) == 0 ? Cells.plainNumber(words) : Double.NaN;
        if (plain >= least && plain <= most) {
            return plain;
        }
        if (factor.compareTo(FOOT) < 0 && THOUSANDS.matcher(words.strip()).matches()) {
            throw bad(
                    row,
                    "\"" + shortened(words) + "\" could be a thousand and more or a decimal",
                    words.strip().replace(",", ""));
        }
        Optional<BigDecimal> number = Cells.number(words);
        if (number.isEmpty()) {
            throw bad(
                    row,
                    words.isBlank() ? "a number is missing" : "\"" + shortened(words) + "\" is not a number",
                    exampleInUnit(example));
        }
        double value = number.get().multiply(factor).doubleValue();
        if (!(value >= least && value <= most)) {
            throw bad(
                    row,
                    shortened(words) + " is out of range, " + inUnit(least) + " to " + inUnit(most),
                    exampleInUnit(example));
        }
        return value == 0 ? 0 : value;
    }

    /** A sentence about a cell: file, line, column, what is wrong and what would be right. */
    InputException bad(Table.Row row, String what, String example) {
        return new InputException(table.name() + ", line " + row.line() + ", column " + title + ": " + what
                + "; right is, for example, " + example + ".");
    }

    private String exampleInUnit(String example) {
        return new BigDecimal(example)
                .divide(factor, 2, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }

    private String inUnit(double si) {
        return NumberText.text(Math.round(si / factor.doubleValue() * 100) / 100.0);
    }

    private static String shortened(String words) {
        return Fields.shortened(words, 40);
    }
}
