package pegbed.storage.table;

import java.io.Reader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pegbed.model.InputException;
import pegbed.model.Place;
import pegbed.storage.peg.NumberText;

/**
 * Places as a table with the columns {@code x_m,y_m}.
 *
 * @param places in the table's order
 * @param ignoredColumns columns that were passed over
 */
public record PointsTable(List<Place> places, List<String> ignoredColumns) {
    private static final String EXAMPLE = "x_m,y_m";

    public PointsTable {
        places = List.copyOf(places);
        ignoredColumns = List.copyOf(ignoredColumns);
    }

    /**
     * Reads a table of places.
     *
     * @throws InputException with file, line and column of the first thing that is wrong
     */
    public static PointsTable read(Path path) throws InputException {
        return from(Table.read(path, EXAMPLE));
    }

    /**
     * Reads a table of places from text.
     *
     * @param name what to call the text in sentences
     */
    public static PointsTable read(Reader reader, String name) throws InputException {
        return from(Table.read(reader, name, EXAMPLE));
    }

    private static PointsTable from(Table table) throws InputException {
        Column x = table.length("x");
        Column y = table.length("y");
        List<Place> places = new ArrayList<>();
        for (Table.Row row : table.rows()) {
            places.add(place(x, y, row));
        }
        return new PointsTable(places, table.ignoredColumns());
    }

    static Place place(Column x, Column y, Table.Row row) throws InputException {
        double most = NumberText.FARTHEST_METRES;
        return new Place(x.number(row, -most, most, "-2.5"), y.number(row, -most, most, "11.5"));
    }
}
