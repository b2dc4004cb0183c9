package pegbed.storage.table;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import pegbed.model.InputException;
import pegbed.storage.disk.AtomicFileWriter;
import pegbed.storage.disk.FileOps;
import pegbed.storage.disk.Memory;
import pegbed.storage.peg.Fields;

/**
 * A table as a spreadsheet writes or pastes it: CSV (RFC 4180) with a header line, its values parted by commas, by
 * semicolons or by tabs, whichever stands in the header. Empty lines are passed over.
 */
final class Table {
    private static final int LONGEST = 400_000_000;

    /** Of a column's name in a sentence, letters. */
    private static final int LONGEST_TITLE = 60;

    /** A row is a list of cells, each a text. */
    private static final int TIMES_IN_MEMORY = 32;

    private final String name;
    private final String example;
    private final List<String> header;

    /** The columns' names as the file writes them, on one line each. */
    private final List<String> titles;

    private final List<Row> rows;
    private final Set<Integer> used = new HashSet<>();

    /**
     * One row.
     *
     * @param line the line in the file on which it starts, 1 for the first
     * @param cells as many as the header has
     */
    record Row(long line, List<String> cells) {}

    private Table(String name, String example, List<String> header, List<String> titles, List<Row> rows) {
        this.name = name;
        this.example = example;
        this.header = header;
        this.titles = titles;
        this.rows = rows;
    }

    /**
     * Reads a table from a file.
     *
     * @param example a right header, for sentences
     */
    static Table read(Path path, String example) throws InputException {
        return reading(
                path,
                TIMES_IN_MEMORY,
                () -> parse(AtomicFileWriter.name(path), text(FileOps.DISK.read(path)), example));
    }

    /**
     * Reads a table's file if there is room for it.
     *
     * @param times how many times the file's size reading takes at most
     * @throws InputException if it can't be read, in a table's words
     */
    static <T> T reading(Path path, int times, Memory.Reading<T> reading) throws InputException {
        String name = AtomicFileWriter.name(path);
        if (path.toString().isBlank()) {
            throw new InputException("The name of a table is empty; give that of a CSV file.");
        }
        if (FileOps.DISK.isFolder(path)) {
            throw new InputException(name + " is a folder; give the name of a CSV file.");
        }
        try {
            return Memory.reading(path, times, reading);
        } catch (NoSuchFileException e) {
            throw new InputException("There is no file " + path + ".", e);
        } catch (IOException | SecurityException e) {
            throw unreadable(name, e);
        }
    }

    /** Why a table's bytes could not be had. */
    static InputException unreadable(String name, Exception e) {
        return e instanceof CharacterCodingException
                ? new InputException(name + " is not UTF-8 text; save it from the spreadsheet as \"CSV UTF-8\".", e)
                : new InputException(name + " could not be read: " + AtomicFileWriter.reasonOfReading(e) + ".", e);
    }

    private static String text(byte[] bytes) throws CharacterCodingException {
        return StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(bytes))
                .toString();
    }

    /** Reads a table from text, to its end. */
    static Table read(Reader reader, String name, String example) throws InputException {
        StringBuilder text = new StringBuilder();
        char[] piece = new char[1 << 16];
        try {
            for (int n = reader.read(piece); n >= 0; n = reader.read(piece)) {
                text.append(piece, 0, n);
                if (text.length() > LONGEST) {
                    throw new InputException(name + " is too long for a table of a peg.");
                }
            }
        } catch (IOException e) {
            throw unreadable(name, e);
        }
        return parse(name, text.toString(), example);
    }

    private static Table parse(String name, String marked, String example) throws InputException {
        String text = marked.startsWith("\uFEFF") ? marked.substring(1) : marked;
        if (text.isBlank()) {
            throw empty(name, example);
        }
        if (text.indexOf('\0') >= 0) {
            throw new InputException(
                    name + " is not text; a table is CSV whose first line is such as " + example + ".");
        }
        CSVFormat format = format(text);
        List<String> header = null;
        List<String> titles = List.of();
        List<Row> rows = new ArrayList<>();
        long line = 1;
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            for (CSVRecord each : parser) {
                List<String> cells = each.toList();
                if (!cells.stream().allMatch(Table::isBlank)) {
                    if (header == null) {
                        header = header(name, cells, example);
                        titles = titles(cells);
                    } else {
                        rows.add(new Row(line, fitted(name, line, cells, header.size())));
                    }
                }
                line = parser.getCurrentLineNumber() + 1;
            }
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            throw openQuote(name, line, e);
        }
        if (header == null) {
            throw empty(name, example);
        }
        return new Table(name, example, header, titles, rows);
    }

    /** A table of rows that are there already. */
    static Table of(String name, List<String> titles, List<List<String>> rows, String example) throws InputException {
        List<Row> numbered = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            numbered.add(new Row(i + 1L, rows.get(i)));
        }
        return new Table(name, example, header(name, titles, example), titles(titles), numbered);
    }

    /**
     * This table with other names for its columns.
     *
     * @throws InputException if two columns come to have the same name
     */
    Table renamed(Map<String, String> names) throws InputException {
        List<String> renamed = new ArrayList<>();
        for (int i = 0; i < header.size(); i++) {
            String other = names.getOrDefault(header.get(i), header.get(i));
            if (!other.isEmpty() && renamed.contains(other)) {
                throw new InputException(name + " has two columns for " + other + ", "
                        + titles.get(renamed.indexOf(other)) + " and " + titles.get(i)
                        + "; leave one of them out.");
            }
            renamed.add(other);
        }
        return new Table(name, example, List.copyOf(renamed), titles, rows);
    }

    /** The columns' names, in their order. */
    List<String> header() {
        return header;
    }

    /** A table of no rows, from its header line. */
    static Table of(String name, List<String> cells, String example) throws InputException {
        return new Table(name, example, header(name, cells, example), titles(cells), List.of());
    }

    /** How a table is written that begins so. */
    static CSVFormat format(String beginning) {
        return CSVFormat.RFC4180
                .builder()
                .setDelimiter(delimiter(beginning))
                .setIgnoreEmptyLines(false)
                .get();
    }

    static InputException empty(String name, String example) {
        return new InputException(name + " is empty; its first line must name the columns, such as " + example + ".");
    }

    static InputException openQuote(String name, long line, Exception cause) {
        return new InputException(
                name + ", line " + line + ": a quote (\") is not closed or stands inside a value; write it twice"
                        + " (\"\") inside quotes, or leave it out.",
                cause);
    }

    /** What parts the values: the mark that stands most in the first line that says anything. */
    private static char delimiter(String text) {
        String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        char most = ',';
        for (char each : new char[] {';', '\t'}) {
            if (count(first, each) > count(first, most)) {
                most = each;
            }
        }
        return most;
    }

    private static long count(String text, char letter) {
        return text.chars().filter(each -> each == letter).count();
    }

    private static List<String> header(String name, List<String> cells, String example) throws InputException {
        if (cells.stream().anyMatch(cell -> Cells.isNumber(cell.strip()))) {
            throw new InputException(name + " has no header; its first line must name the columns, such as " + example
                    + ", before the numbers.");
        }
        List<String> header = cells.stream().map(Table::columnName).toList();
        Set<String> seen = new HashSet<>();
        for (String column : header) {
            if (!column.isEmpty() && !seen.add(column)) {
                throw new InputException(name + " has two columns " + Fields.shortened(column, LONGEST_TITLE)
                        + "; leave one of them out.");
            }
        }
        return header;
    }

    private static List<String> titles(List<String> cells) {
        return cells.stream().map(cell -> Fields.shortened(cell, LONGEST_TITLE)).toList();
    }

    /** {@code Depth (ft)} and {@code depth_ft} are the same column. */
    static String columnName(String cell) {
        return cell.strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "_")
                .replaceAll("^_|_$", "");
    }

    static List<String> fitted(String name, long line, List<String> cells, int columns) throws InputException {
        if (cells.size() > columns
                && !cells.subList(columns, cells.size()).stream().allMatch(Table::isBlank)) {
            throw new InputException(name + ", line " + line + " has " + cells.size() + " values under " + columns
                    + " column names; put a value with a comma in it in quotes, or part the columns by semicolons.");
        }
        List<String> fitted = new ArrayList<>(cells.subList(0, Math.min(columns, cells.size())));
        while (fitted.size() < columns) {
            fitted.add("");
        }
        return fitted;
    }

    private static boolean isBlank(String cell) {
        return cell.isBlank();
    }

    String name() {
        return name;
    }

    List<Row> rows() {
        return rows;
    }

    /** Whether there is a column of a quantity in some unit. */
    boolean hasLength(String quantity) {
        return Arrays.stream(Column.Unit.values()).anyMatch(unit -> header.contains(quantity + "_" + unit.suffix()));
    }

    /** The column of a quantity and its unit, such as {@code depth_ft} for depth; metres per unit in {@link Column}. */
    Column length(String quantity) throws InputException {
        Column found = null;
        for (Column.Unit unit : Column.Unit.values()) {
            int index = header.indexOf(quantity + "_" + unit.suffix());
            if (index >= 0 && found != null) {
                throw new InputException(name + " has two columns for " + quantity + ", " + found.title() + " and "
                        + titles.get(index) + "; leave one of them out.");
            }
            if (index >= 0) {
                found = new Column(this, index, titles.get(index), unit.metres());
            }
        }
        if (found == null) {
            String hint = header.contains(quantity) ? quantity + " needs its unit, such as " : "there is no column ";
            throw new InputException(name + ": " + hint + quantity
                    + "_m; the first line must name the columns, such as " + example + ".");
        }
        used.add(found.index());
        return found;
    }

    /** A column by its name. */
    Column needed(String title) throws InputException {
        Optional<Column> column = optional(title);
        if (column.isEmpty()) {
            throw new InputException(name + ": there is no column " + title
                    + "; the first line must name the columns, such as " + example + ".");
        }
        return column.get();
    }

    /** A column that may not be there. */
    Optional<Column> optional(String title) {
        int index = header.indexOf(title);
        if (index < 0) {
            return Optional.empty();
        }
        used.add(index);
        return Optional.of(new Column(this, index, titles.get(index), BigDecimal.ONE));
    }

    /** The columns that nobody asked for, by the file's names. */
    List<String> ignoredColumns() {
        List<String> ignored = new ArrayList<>();
        for (int i = 0; i < header.size(); i++) {
            if (!used.contains(i) && !header.get(i).isEmpty()) {
                ignored.add(titles.get(i));
            }
        }
        return List.copyOf(ignored);
    }

    /** Gives, in order, each column that was asked for: the file's name of it and the one by which it was asked for. */
    void forEachUsed(BiConsumer<String, String> taker) {
        for (int i = 0; i < header.size(); i++) {
            if (used.contains(i)) {
                taker.accept(titles.get(i), header.get(i));
            }
        }
    }
}
