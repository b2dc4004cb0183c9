package pegbed.storage.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import pegbed.model.DayEvent;
import pegbed.model.Extras;
import pegbed.model.InputException;
import pegbed.model.Place;
import pegbed.storage.peg.ElementParser;
import pegbed.storage.peg.Fields;
import pegbed.storage.peg.NumberText;

/**
 * A day's events as a table with the columns {@code time,event,x_m,y_m[,what][,amount][,count][,weight_kg][,note]}, in
 * any order. All or nothing: one bad cell refuses the table.
 *
 * @param events in the table's order
 * @param ignoredColumns columns that were passed over
 */
public record EventsTable(List<DayEvent> events, List<String> ignoredColumns) {
    private static final String EXAMPLE = "time,event,x_m,y_m";

    private static final Map<String, DayEvent.Kind> KINDS =
            ElementParser.words(DayEvent.Kind.values(), DayEvent.Kind::word);

    public EventsTable {
        events = List.copyOf(events);
        ignoredColumns = List.copyOf(ignoredColumns);
    }

    /**
     * Reads a table of events.
     *
     * @throws InputException with file, line and column of the first thing that is wrong
     */
    public static EventsTable read(Path path) throws InputException {
        Table table = Table.read(path, EXAMPLE);
        Column time = table.needed("time");
        Column kind = table.needed("event");
        Column x = table.length("x");
        Column y = table.length("y");
        Optional<Column> what = table.optional("what");
        Optional<Column> amount = table.optional("amount");
        Optional<Column> count = table.optional("count");
        Optional<Column> kilograms = table.optional("weight_kg");
        Optional<Column> note = table.optional("note");
        List<DayEvent> events = new ArrayList<>();
        for (Table.Row row : table.rows()) {
            boolean placed = !x.words(row).isBlank() || !y.words(row).isBlank();
            Optional<Place> line = placed ? Optional.of(PointsTable.place(x, y, row)) : Optional.empty();
            OptionalDouble weight = number(kilograms, row, DayEvent.HEAVIEST_KILOGRAMS, "0.7");
            double fish = number(count, row, DayEvent.MOST_FISH, "1").orElse(1);
            if (fish != Math.rint(fish)) {
                throw count.orElseThrow().bad(row, "a count of fish is a whole number", "2");
            }
            try {
                events.add(new DayEvent(
                        time(time, row),
                        kind(kind, row),
                        line,
                        words(what, row),
                        words(amount, row),
                        (int) fish,
                        weight,
                        words(note, row),
                        Extras.NONE));
            } catch (IllegalArgumentException e) {
                throw new InputException(table.name() + ", line " + row.line() + ": " + e.getMessage(), e);
            }
        }
        return new EventsTable(events, table.ignoredColumns());
    }

    private static OffsetDateTime time(Column column, Table.Row row) throws InputException {
        String words = column.words(row).strip();
        try {
            return OffsetDateTime.parse(words);
        } catch (DateTimeParseException e) {
            throw column.bad(
                    row,
                    "\"" + Fields.shortened(words, 40) + "\" is no time with its date and offset",
                    "2026-05-02T07:30:00+01:00");
        }
    }

    private static DayEvent.Kind kind(Column column, Table.Row row) throws InputException {
        String word = column.words(row).strip().toLowerCase(Locale.ROOT);
        if (!KINDS.containsKey(word)) {
            throw column.bad(
                    row,
                    "\"" + Fields.shortened(word, 40) + "\" is none of " + String.join(", ", KINDS.keySet()),
                    "fish");
        }
        return KINDS.get(word);
    }

    private static OptionalDouble number(Optional<Column> column, Table.Row row, double most, String example)
            throws InputException {
        return column.isEmpty() || column.get().words(row).isBlank()
                ? OptionalDouble.empty()
                : OptionalDouble.of(column.get().number(row, 0, most, example));
    }

    private static String words(Optional<Column> column, Table.Row row) {
        return column.map(found -> Formulas.asTyped(found.words(row))).orElse("");
    }

    /**
     * Writes events as CSV (RFC 4180) with all columns, which {@link #read} reads back the same. Words that a
     * spreadsheet would take for a formula begin with an apostrophe there.
     */
    public static String write(List<DayEvent> events) {
        StringBuilder out = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
            printer.printRecord("time", "event", "x_m", "y_m", "what", "amount", "count", "weight_kg", "note");
            for (DayEvent event : events) {
                OptionalDouble kilograms = event.weightKilograms();
                printer.printRecord(
                        DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(event.time()),
                        event.kind().word(),
                        event.line()
                                .map(place -> NumberText.text(place.xMetres()))
                                .orElse(""),
                        event.line()
                                .map(place -> NumberText.text(place.yMetres()))
                                .orElse(""),
                        Formulas.asText(event.name()),
                        Formulas.asText(event.amount()),
                        event.count(),
                        kilograms.isPresent() ? NumberText.text(kilograms.getAsDouble()) : "",
                        Formulas.asText(event.note()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("Writing to a text can't fail.", e);
        }
        return out.toString();
    }
}
