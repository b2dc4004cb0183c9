package pegbed.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import pegbed.findings.PegMap;
import pegbed.model.Bottom;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.model.Visit;
import pegbed.storage.table.Formulas;
import pegbed.surface.grid.GridFrame;

/** Readings and the grid as CSV (RFC 4180), with longitude and latitude where the peg has a position. */
final class CsvFiles {
    private CsvFiles() {}

    /**
     * All readings of all visits: the columns of a table of readings, by which they can be taken in again, then the
     * visit, the depth below today's water, x and y.
     */
    static String readings(PegMap map, Georeference reference) {
        Peg peg = map.peg();
        StringBuilder out = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
            print(
                    printer,
                    List.of(
                            "distance_m",
                            "angle_deg",
                            "depth_m",
                            "bottom",
                            "note",
                            "visit",
                            "visit_start",
                            "depth_today_m",
                            "x_m",
                            "y_m"),
                    reference,
                    null);
            for (int v = 0; v < peg.visits().size(); v++) {
                Visit visit = peg.visits().get(v);
                double higher = map.bottom().level(v).higherMetres();
                for (Reading reading : visit.readings()) {
                    print(
                            printer,
                            List.of(
                                    rounded(reading.place().distanceMetres(), 4),
                                    rounded(reading.place().angleDegrees(), 4),
                                    rounded(reading.depthMetres(), 4),
                                    reading.bottom() == Bottom.UNKNOWN
                                            ? ""
                                            : reading.bottom().word(),
                                    Formulas.asText(reading.note()),
                                    Integer.toString(v + 1),
                                    visit.start()
                                            .map(DateTimeFormatter.ISO_OFFSET_DATE_TIME::format)
                                            .orElse(""),
                                    rounded(reading.depthMetres() + higher, 4),
                                    rounded(reading.place().xMetres(), 4),
                                    rounded(reading.place().yMetres(), 4)),
                            reference,
                            new double[] {
                                reading.place().xMetres(), reading.place().yMetres()
                            });
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("Writing to a text can't fail.", e);
        }
        return out.toString();
    }

    /** Depth, doubt and slope at the nodes of 25 cm where anything is known, nearest row first. */
    static String grid(PegMap map, Georeference reference) {
        Raster raster = PegRaster.of(map, 1);
        GridFrame frame = PegRaster.frame(map, 1);
        StringBuilder out = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
            print(printer, List.of("x_m", "y_m", "depth_m", "sd_m", "slope"), reference, null);
            for (int row = frame.rows() - 1; row >= 0; row--) {
                for (int column = 0; column < frame.columns(); column++) {
                    int at = row * frame.columns() + column;
                    if (Float.isNaN(raster.bands()[0][at])) {
                        continue;
                    }
                    double x = frame.x(column);
                    double y = frame.y(frame.rows() - 1 - row);
                    float slope = raster.bands()[2][at];
                    print(
                            printer,
                            List.of(
                                    rounded(x, 4),
                                    rounded(y, 4),
                                    rounded(raster.bands()[0][at], 4),
                                    rounded(raster.bands()[1][at], 4),
                                    Float.isNaN(slope) ? "" : rounded(slope, 4)),
                            reference,
                            new double[] {x, y});
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("Writing to a text can't fail.", e);
        }
        return out.toString();
    }

    /** A row; longitude and latitude behind it where they are known, their names where there is no place. */
    private static void print(CSVPrinter printer, List<String> cells, Georeference reference, double[] place)
            throws IOException {
        List<String> all = new ArrayList<>(cells);
        if (!reference.isLocal()) {
            if (place == null) {
                all.addAll(List.of("latitude_deg", "longitude_deg"));
            } else {
                reference.toEarth(place);
                all.addAll(List.of(rounded(place[1], 9), rounded(place[0], 9)));
            }
        }
        printer.printRecord(all);
    }

    private static String rounded(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
