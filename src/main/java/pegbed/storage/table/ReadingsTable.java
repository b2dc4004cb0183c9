package pegbed.storage.table;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import pegbed.model.Bottom;
import pegbed.model.Extras;
import pegbed.model.InputException;
import pegbed.model.Place;
import pegbed.model.Precision;
import pegbed.model.Reading;
import pegbed.model.Typed;
import pegbed.storage.peg.ElementParser;
import pegbed.storage.peg.Fields;
import pegbed.storage.peg.NumberText;

/**
 * Readings as a table with the columns {@code distance_m,angle_deg,depth_m[,bottom][,note]}, in any order. Distance and
 * depth may be in {@code _m}, {@code _cm}, {@code _mm}, {@code _ft} or {@code _in} instead. Values are parted by
 * commas, or by semicolons or tabs with decimal commas allowed. All or nothing: one bad cell refuses the table.
 *
 * @param readings in the table's order
 * @param ignoredColumns columns that were passed over
 */
public record ReadingsTable(List<Reading> readings, List<String> ignoredColumns) {
    static final String EXAMPLE = "distance_m,angle_deg,depth_m";

    private static final Map<String, Bottom> BOTTOMS = ElementParser.words(Bottom.values(), Bottom::word);

    public ReadingsTable {
        readings = List.copyOf(readings);
        ignoredColumns = List.copyOf(ignoredColumns);
    }

    /**
     * Reads a table of readings.
     *
     * @throws InputException with file, line and column of the first thing that is wrong
     */
    public static ReadingsTable read(Path path) throws InputException {
        return from(Table.read(path, EXAMPLE));
    }

    /**
     * Reads a table of readings from text, such as pasted.
     *
     * @param name what to call the text in sentences
     */
    public static ReadingsTable read(Reader reader, String name) throws InputException {
        return from(Table.read(reader, name, EXAMPLE));
    }

    private static ReadingsTable from(Table table) throws InputException {
        Column distance = table.length("distance");
        Column angle = table.needed("angle_deg");
        Column depth = table.length("depth");
        Optional<Column> bottom = table.optional("bottom");
        Optional<Column> note = table.optional("note");
        List<Reading> readings = new ArrayList<>();
        for (Table.Row row : table.rows()) {
            Place place = Place.polar(
                    distance.number(row, 0, NumberText.FARTHEST_METRES, "11.5"), angle.number(row, -360, 360, "-20"));
            double depthMetres = depth.number(row, 0, Reading.DEEPEST_METRES, "1.37");
            readings.add(new Reading(
                    Typed.NOTHING,
                    place,
                    Precision.PLAIN,
                    depthMetres,
                    bottom.isPresent() ? bottom(bottom.get(), row) : Bottom.UNKNOWN,
                    note.isPresent() ? Formulas.asTyped(note.get().words(row)) : "",
                    Optional.empty(),
                    Extras.NONE));
        }
        return new ReadingsTable(readings, table.ignoredColumns());
    }

    static Bottom bottom(Column column, Table.Row row) throws InputException {
        String word = column.words(row).strip().toLowerCase(Locale.ROOT);
        if (word.isEmpty()) {
            return Bottom.UNKNOWN;
        }
        if (!BOTTOMS.containsKey(word)) {
            String right = Arrays.stream(Bottom.values()).map(Bottom::word).collect(Collectors.joining(", "));
            throw column.bad(row, "\"" + Fields.shortened(word, 40) + "\" is none of " + right, "silt");
        }
        return BOTTOMS.get(word);
    }

    /**
     * Writes readings as CSV (RFC 4180) with the header {@code distance_m,angle_deg,depth_m,bottom,note}, which
     * {@link #read(Reader, String)} reads back the same: what was typed, how well it is known and the time are not in
     * it. A note that a spreadsheet would take for a formula begins with an apostrophe there.
     */
    public static String write(List<Reading> readings) {
        StringBuilder out = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
            printer.printRecord("distance_m", "angle_deg", "depth_m", "bottom", "note");
            for (Reading reading : readings) {
                NumberText.Polar polar = NumberText.polar(reading.place());
                printer.printRecord(
                        polar.distanceMetres(),
                        polar.angleDegrees(),
                        NumberText.text(reading.depthMetres()),
                        reading.bottom() == Bottom.UNKNOWN
                                ? ""
                                : reading.bottom().word(),
                        Formulas.asText(reading.note()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("Writing to a text can't fail.", e);
        }
        return out.toString();
    }
}
