package pegbed.storage.table;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pegbed.model.Bottom;
import pegbed.model.Extras;
import pegbed.model.InputException;
import pegbed.model.Place;
import pegbed.model.Precision;
import pegbed.model.Reading;
import pegbed.model.Typed;
import pegbed.storage.peg.NumberText;

/**
 * Readings of a table of somebody else's, its columns recognised by their names: a place as distance and direction, as
 * x and y, or as latitude and longitude, and a depth with its unit; bottom and note where there are any. All or
 * nothing: one bad cell refuses the table.
 *
 * @param readings in the table's order
 * @param recognised how each column was understood, such as {@code Dist (m): distance in metres}
 * @param ignoredColumns columns that were passed over
 */
public record SpreadsheetReadings(List<Reading> readings, List<String> recognised, List<String> ignoredColumns) {
    private static final String EXAMPLE = "distance_m,angle_deg,depth_ft";

    /** A quantity in some words, then its unit in others. */
    private static final Pattern NAME = Pattern.compile("(.+?)(?:_(?:in_)?(m|metres?|meters?|cm|centimet(?:re|er)s?|mm"
            + "|millimet(?:re|er)s?|ft|feet|foot|in|inch|inches|deg|degrees?))?");

    private static final Map<String, String> QUANTITIES = quantities();

    private static final Map<String, String> UNIT_WORDS = Map.of(
            "m", "metres", "cm", "centimetres", "mm", "millimetres", "ft", "feet", "in", "inches", "deg", "degrees");

    public SpreadsheetReadings {
        readings = List.copyOf(readings);
        recognised = List.copyOf(recognised);
        ignoredColumns = List.copyOf(ignoredColumns);
    }

    /** Brings a place on the earth, degrees, into the peg's plane. */
    public interface EarthPlaces {
        /**
         * The place of a latitude and longitude.
         *
         * @throws InputException if the peg has no position
         */
        Place place(double latitudeDegrees, double longitudeDegrees) throws InputException;
    }

    private static Map<String, String> quantities() {
        Map<String, String> quantities = new HashMap<>();
        for (String[] words : new String[][] {
            {"distance", "dist", "range", "how_far"},
            {"angle", "direction", "dir"},
            {"depth", "water_depth", "depth_read", "sounding"},
            {"x", "right"},
            {"y", "out"},
            {"latitude", "lat"},
            {"longitude", "lon", "long", "lng"},
            {"bottom", "bed", "ground", "felt"},
            {"note", "notes", "remark", "remarks", "comment", "comments"}
        }) {
            for (String word : words) {
                quantities.put(word, words[0]);
            }
        }
        return Map.copyOf(quantities);
    }

    /**
     * The name by which a column is known here, such as {@code depth_ft} for {@code Water depth (feet)}; the name
     * itself where it is not recognised.
     */
    public static String known(String title) {
        String plain = Table.columnName(title);
        Matcher name = NAME.matcher(plain);
        String quantity = name.matches() ? QUANTITIES.get(name.group(1)) : null;
        if (quantity == null) {
            return plain;
        }
        String unit = unit(name.group(2));
        return switch (quantity) {
            case "bottom", "note" -> unit.isEmpty() ? quantity : plain;
            case "angle", "latitude", "longitude" -> unit.isEmpty() || unit.equals("deg") ? quantity + "_deg" : plain;
            default -> unit.equals("deg") ? plain : quantity + (unit.isEmpty() ? "" : "_" + unit);
        };
    }

    private static String unit(String words) {
        if (words == null) {
            return "";
        }
        return switch (words) {
            case "foot", "feet" -> "ft";
            case "inch", "inches" -> "in";
            case "degree", "degrees" -> "deg";
            default ->
                words.startsWith("met")
                        ? "m"
                        : words.startsWith("cent") ? "cm" : words.startsWith("mill") ? "mm" : words;
        };
    }

    /** How a known name reads, such as {@code depth in feet}. */
    public static String words(String known) {
        int at = known.lastIndexOf('_');
        String unit = at < 0 ? null : UNIT_WORDS.get(known.substring(at + 1));
        return unit == null ? known : known.substring(0, at) + " in " + unit;
    }

    /**
     * Reads a table.
     *
     * @throws InputException with file, line and column of the first thing that is wrong
     */
    public static SpreadsheetReadings read(Path path, EarthPlaces earth) throws InputException {
        return from(Table.read(path, EXAMPLE), earth);
    }

    /**
     * Reads rows that are there already, such as those of a layer of points.
     *
     * @param name what to call the rows in sentences
     * @param titles names of the columns
     * @param rows one text for each column
     */
    public static SpreadsheetReadings of(String name, List<String> titles, List<List<String>> rows, EarthPlaces earth)
            throws InputException {
        return from(Table.of(name, titles, rows, EXAMPLE), earth);
    }

    private static SpreadsheetReadings from(Table original, EarthPlaces earth) throws InputException {
        Map<String, String> names = new HashMap<>();
        for (String title : original.header()) {
            String known = known(title);
            names.put(title, known);
        }
        Table table = original.renamed(names);
        if (!table.hasLength("depth")) {
            boolean named = names.containsValue("depth");
            throw new InputException(table.name() + (named ? " has depths without a unit" : " has no depths")
                    + "; a column must be named such as depth_m or depth_ft.");
        }
        Column depth = table.length("depth");
        Optional<Column> bottom = table.optional("bottom");
        Optional<Column> note = table.optional("note");
        Placing placing = placing(table, earth);
        List<Reading> readings = new ArrayList<>();
        for (Table.Row row : table.rows()) {
            Place place = placing.of(row);
            readings.add(new Reading(
                    Typed.NOTHING,
                    place,
                    Precision.PLAIN,
                    depth.number(row, 0, Reading.DEEPEST_METRES, "1.37"),
                    bottom.isPresent() ? ReadingsTable.bottom(bottom.get(), row) : Bottom.UNKNOWN,
                    note.isPresent() ? Formulas.asTyped(note.get().words(row)) : "",
                    Optional.empty(),
                    Extras.NONE));
        }
        List<String> recognised = new ArrayList<>();
        table.forEachUsed((title, known) -> recognised.add(title + ": " + words(known)));
        return new SpreadsheetReadings(readings, recognised, table.ignoredColumns());
    }

    private interface Placing {
        Place of(Table.Row row) throws InputException;
    }

    private static Placing placing(Table table, EarthPlaces earth) throws InputException {
        double far = NumberText.FARTHEST_METRES;
        if (table.hasLength("distance") && table.optional("angle_deg").isPresent()) {
            Column distance = table.length("distance");
            Column angle = table.needed("angle_deg");
            return row -> Place.polar(distance.number(row, 0, far, "11.5"), angle.number(row, -360, 360, "-20"));
        }
        if (table.hasLength("x") && table.hasLength("y")) {
            Column x = table.length("x");
            Column y = table.length("y");
            return row -> new Place(x.number(row, -far, far, "-2.5"), y.number(row, -far, far, "9.8"));
        }
        Optional<Column> latitude = table.optional("latitude_deg");
        Optional<Column> longitude = table.optional("longitude_deg");
        if (latitude.isPresent() && longitude.isPresent()) {
            return row -> {
                double lat = latitude.get().number(row, -90, 90, "52.1234");
                return earth.place(lat, longitude.get().number(row, -180, 180, "-1.2345"));
            };
        }
        throw new InputException(String.format(
                Locale.ROOT,
                "%s does not say where its depths were read; it needs columns such as distance_m and angle_deg, or x_m and"
                        + " y_m, or latitude and longitude.",
                table.name()));
    }
}
