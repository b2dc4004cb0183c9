package pegbed.exchange;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKBReader;
import pegbed.geodesy.OtherReference;
import pegbed.model.InputException;

/** The points of a layer of a GeoPackage. */
final class GeoPackagePoints {
    /** Bytes of the box in the header of a geometry by its kind (OGC 12-128r17, clause 2.1.3.1.1). */
    private static final int[] BOX_BYTES = {0, 32, 48, 48, 64};

    private static final int UNDEFINED_PLANE = -1;

    private static final String LAYERS = "SELECT c.table_name, g.column_name, g.srs_id, s.srs_name, s.definition FROM"
            + " gpkg_contents c JOIN gpkg_geometry_columns g ON g.table_name = c.table_name JOIN gpkg_spatial_ref_sys s"
            + " ON s.srs_id = g.srs_id WHERE c.data_type = 'features' AND upper(g.geometry_type_name) IN ('POINT',"
            + " 'GEOMETRY') ORDER BY c.table_name";

    private GeoPackagePoints() {}

    private record Found(String table, String column, int reference, String referenceName, String definition) {}

    static ReadingsImport.Points read(Path file, String name, Optional<String> layer) throws InputException {
        try (Connection base = DriverManager.getConnection(
                "jdbc:sqlite:file:" + file.toAbsolutePath().toUri().getRawPath() + "?mode=ro")) {
            Found found = chosen(base, name, layer);
            boolean local = found.reference() == UNDEFINED_PLANE;
            Optional<OtherReference> reference = local
                    ? Optional.empty()
                    : Optional.of(OtherReference.of(found.referenceName(), found.definition()));
            ReadingsImport.Points points = new ReadingsImport.Points(name + ", layer " + found.table(), local);
            String sql = "SELECT * FROM \"" + found.table().replace("\"", "\"\"") + "\"";
            try (PreparedStatement statement = base.prepareStatement(sql);
                    ResultSet rows = statement.executeQuery()) {
                while (rows.next()) {
                    add(points, rows, found.column(), reference);
                }
            }
            return points;
        } catch (SQLException e) {
            throw new InputException(name + " is no GeoPackage that can be read: " + e.getMessage() + ".", e);
        }
    }

    private static Found chosen(Connection base, String name, Optional<String> layer)
            throws SQLException, InputException {
        List<Found> all = new ArrayList<>();
        try (PreparedStatement statement = base.prepareStatement(LAYERS);
                ResultSet rows = statement.executeQuery()) {
            while (rows.next()) {
                all.add(new Found(
                        rows.getString(1), rows.getString(2), rows.getInt(3), rows.getString(4), rows.getString(5)));
            }
        }
        String names = String.join(", ", all.stream().map(Found::table).toList());
        if (all.isEmpty()) {
            throw new InputException(name + " has no layer of points.");
        }
        if (layer.isPresent()) {
            return all.stream()
                    .filter(each -> each.table().equals(layer.get()))
                    .findFirst()
                    .orElseThrow(() -> new InputException(
                            name + " has no layer of points '" + layer.get() + "'; it has " + names + "."));
        }
        List<Found> readings = all.stream()
                .filter(each -> each.table().equals("readings") || each.table().equals("readings_local"))
                .toList();
        if (readings.size() == 1) {
            return readings.get(0);
        }
        if (all.size() == 1) {
            return all.get(0);
        }
        throw new InputException(name + " has several layers of points; say which with --layer: " + names + ".");
    }

    private static void add(
            ReadingsImport.Points points, ResultSet row, String column, Optional<OtherReference> reference)
            throws SQLException, InputException {
        Optional<Coordinate> at = coordinate(row.getBytes(column));
        if (at.isEmpty()) {
            points.passOver();
            return;
        }
        double[] place = reference.isPresent()
                ? reference.get().toEarth(at.get().x, at.get().y)
                : new double[] {at.get().x, at.get().y};
        Map<String, String> said = new LinkedHashMap<>();
        for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
            String title = row.getMetaData().getColumnName(i);
            if (!title.equals(column)) {
                String words = row.getString(i);
                said.put(title, words == null ? "" : words);
            }
        }
        points.add(place, said);
    }

    private static Optional<Coordinate> coordinate(byte[] blob) {
        if (blob == null || blob.length < 8 || blob[0] != 'G' || blob[1] != 'P') {
            return Optional.empty();
        }
        int box = (blob[3] >> 1) & 7;
        ByteBuffer header = ByteBuffer.wrap(blob).order(ByteOrder.LITTLE_ENDIAN);
        if (box >= BOX_BYTES.length || header.capacity() < 8 + BOX_BYTES[box]) {
            return Optional.empty();
        }
        try {
            Geometry geometry = new WKBReader().read(Arrays.copyOfRange(blob, 8 + BOX_BYTES[box], blob.length));
            return geometry instanceof Point point && !point.isEmpty()
                    ? Optional.of(point.getCoordinate())
                    : Optional.empty();
        } catch (ParseException e) {
            return Optional.empty();
        }
    }
}
