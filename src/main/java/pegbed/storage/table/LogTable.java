package pegbed.storage.table;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import pegbed.model.InputException;
import pegbed.model.Place;
import pegbed.model.Precision;
import pegbed.model.SoundingLog;
import pegbed.storage.peg.NumberText;

/**
 * The log of a whole water as a table with the columns {@code x_m,y_m,depth_m}, or {@code distance_m,angle_deg,depth_m}
 * from a seat, in any order and in any unit of length as in {@link ReadingsTable}. It is read row by row into plain
 * numbers. All or nothing: one bad cell refuses the table.
 *
 * @param log its soundings, in the table's order
 * @param ignoredColumns columns that were passed over
 */
public record LogTable(SoundingLog log, List<String> ignoredColumns) {
    private static final String EXAMPLE = "x_m,y_m,depth_m";

    /** Coordinates of a country's own grid are right as well, metres. */
    private static final double FARTHEST_METRES = 10_000_000;

    public LogTable {
        ignoredColumns = List.copyOf(ignoredColumns);
    }

    /**
     * Reads the log of a whole water.
     *
     * @param placeSdMetres how well x and y are known each way, metres, 0 to 100; not used with distances and angles
     * @throws InputException with file, line and column of the first thing that is wrong
     */
    public static LogTable read(Path path, double placeSdMetres) throws InputException {
        Filling filling = new Filling(placeSdMetres);
        TableStream.read(path, EXAMPLE, filling);
        return filling.filled();
    }

    /**
     * As {@link #read(Path, double)}, from a table's bytes.
     *
     * @param name of the table, for sentences
     */
    public static LogTable read(InputStream bytes, String name, double placeSdMetres) throws InputException {
        Filling filling = new Filling(placeSdMetres);
        TableStream.read(bytes, name, EXAMPLE, filling);
        return filling.filled();
    }

    /** Fills a log with the rows. */
    private static final class Filling implements TableStream.Use {
        private final double placeSdMetres;
        private SoundingLog log;
        private Table table;

        Filling(double placeSdMetres) {
            this.placeSdMetres = placeSdMetres;
        }

        LogTable filled() throws InputException {
            if (log.size() == 0) {
                throw new InputException(table.name() + " has no soundings under its header; give one line each.");
            }
            return new LogTable(log, table.ignoredColumns());
        }

        @Override
        public TableStream.Rows columns(Table header) throws InputException {
            table = header;
            Optional<Column> angle = header.optional("angle_deg");
            boolean fromSeat = angle.isPresent() && !header.hasLength("x");
            log = fromSeat ? SoundingLog.fromSeat(Precision.PLAIN) : SoundingLog.placedWithin(placeSdMetres);
            Column depth = header.length("depth");
            Column first = header.length(fromSeat ? "distance" : "x");
            Column second = fromSeat ? angle.orElseThrow() : header.length("y");
            return row -> {
                if (log.size() == SoundingLog.MOST) {
                    throw new InputException(header.name() + ", line " + row.line() + ": a log has at most "
                            + SoundingLog.MOST + " soundings; leave some out, or make two logs of it.");
                }
                double depthMetres = depth.number(row, 0, SoundingLog.DEEPEST_METRES, "1.37");
                if (fromSeat) {
                    Place place = Place.polar(
                            first.number(row, 0, NumberText.FARTHEST_METRES, "11.5"),
                            second.number(row, -360, 360, "-20"));
                    log.add(place.xMetres(), place.yMetres(), depthMetres);
                } else {
                    log.add(
                            first.number(row, -FARTHEST_METRES, FARTHEST_METRES, "-2.5"),
                            second.number(row, -FARTHEST_METRES, FARTHEST_METRES, "11.5"),
                            depthMetres);
                }
            };
        }
    }
}
