package pegbed.exchange;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ByteOrderValues;
import org.locationtech.jts.io.WKBWriter;
import pegbed.geodesy.UtmZone;

/**
 * Layers of one peg or many as a GeoPackage (OGC 12-128r17, version 1.3): a table for each layer, and its style as
 * Styled Layer Descriptor (OGC 05-078r4) in a table {@code layer_styles}. Pegs without a position lie in tables of
 * their own, whose names end in {@code _local}, in the undefined plane that the standard has for such places.
 */
final class GeoPackageFile implements AutoCloseable {
    /** {@code GPKG}, by which a database says that it is a GeoPackage. */
    private static final int APPLICATION_ID = 0x47504B47;

    private static final int VERSION = 10300;
    private static final int WGS84 = 4326;

    /** Undefined plane coordinates (GeoPackage 1.3, table 3). */
    private static final int UNDEFINED_PLANE = -1;

    private static final String WGS84_TEXT = "GEOGCS[\"WGS 84\",DATUM[\"WGS_1984\",SPHEROID[\"WGS 84\",6378137,"
            + "298.257223563,AUTHORITY[\"EPSG\",\"7030\"]],AUTHORITY[\"EPSG\",\"6326\"]],PRIMEM[\"Greenwich\",0,"
            + "AUTHORITY[\"EPSG\",\"8901\"]],UNIT[\"degree\",0.0174532925199433,AUTHORITY[\"EPSG\",\"9122\"]],"
            + "AUTHORITY[\"EPSG\",\"4326\"]]";

    /** Times as the standard has them, in UTC; a row has the epoch until the file is ended. */
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern(
                    "yyyy-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);

    private final Connection connection;
    private final Optional<UtmZone> zone;
    private final Map<String, Table> tables = new LinkedHashMap<>();
    private Instant changed = Instant.EPOCH;

    /** A table and what was put into it. */
    private static final class Table {
        private final PreparedStatement insert;
        private final int reference;
        private final Envelope box = new Envelope();

        private Table(PreparedStatement insert, int reference) {
            this.insert = insert;
            this.reference = reference;
        }
    }

    private GeoPackageFile(Connection connection, Optional<UtmZone> zone) throws SQLException {
        this.connection = connection;
        this.zone = zone;
        begin();
    }

    /**
     * Begins a file.
     *
     * @param path where nothing is yet
     * @param zone of the coordinates; WGS 84 longitude and latitude where it is empty
     */
    static GeoPackageFile create(Path path, Optional<UtmZone> zone) throws IOException {
        try {
            return new GeoPackageFile(DriverManager.getConnection("jdbc:sqlite:" + path.toAbsolutePath()), zone);
        } catch (SQLException e) {
            throw failed(e);
        }
    }

    private static IOException failed(SQLException e) {
        return new IOException("the database said: " + e.getMessage(), e);
    }

    private void begin() throws SQLException {
        run("PRAGMA journal_mode = OFF");
        run("PRAGMA synchronous = OFF");
        run("PRAGMA application_id = " + APPLICATION_ID);
        run("PRAGMA user_version = " + VERSION);
        connection.setAutoCommit(false);
        run("CREATE TABLE gpkg_spatial_ref_sys (srs_name TEXT NOT NULL, srs_id INTEGER NOT NULL PRIMARY KEY,"
                + " organization TEXT NOT NULL, organization_coordsys_id INTEGER NOT NULL, definition TEXT NOT NULL,"
                + " description TEXT)");
        run("CREATE TABLE gpkg_contents (table_name TEXT NOT NULL PRIMARY KEY, data_type TEXT NOT NULL, identifier TEXT"
                + " UNIQUE, description TEXT DEFAULT '', last_change DATETIME NOT NULL DEFAULT"
                + " (strftime('%Y-%m-%dT%H:%M:%fZ','now')), min_x DOUBLE, min_y DOUBLE, max_x DOUBLE, max_y DOUBLE,"
                + " srs_id INTEGER, CONSTRAINT fk_gc_r_srs_id FOREIGN KEY (srs_id) REFERENCES"
                + " gpkg_spatial_ref_sys(srs_id))");
        run(
                "CREATE TABLE gpkg_geometry_columns (table_name TEXT NOT NULL, column_name TEXT NOT NULL, geometry_type_name"
                        + " TEXT NOT NULL, srs_id INTEGER NOT NULL, z TINYINT NOT NULL, m TINYINT NOT NULL, CONSTRAINT"
                        + " pk_geom_cols PRIMARY KEY (table_name, column_name), CONSTRAINT uk_gc_table_name UNIQUE (table_name),"
                        + " CONSTRAINT fk_gc_tn FOREIGN KEY (table_name) REFERENCES gpkg_contents(table_name), CONSTRAINT"
                        + " fk_gc_srs FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys (srs_id))");
        reference("WGS 84", WGS84, "EPSG", WGS84, WGS84_TEXT, "longitude and latitude in degrees");
        reference("Undefined Cartesian SRS", -1, "NONE", -1, "undefined", Georeference.LOCAL);
        reference("Undefined geographic SRS", 0, "NONE", 0, "undefined", "undefined geographic coordinates");
        if (zone.isPresent()) {
            UtmZone utm = zone.get();
            reference(utm.name(), utm.epsgCode(), "EPSG", utm.epsgCode(), utm.wellKnownText(), "metres");
        }
        run(
                "CREATE TABLE layer_styles (id INTEGER PRIMARY KEY AUTOINCREMENT, f_table_catalog TEXT, f_table_schema TEXT,"
                        + " f_table_name TEXT, f_geometry_column TEXT, styleName TEXT, styleQML TEXT, styleSLD TEXT,"
                        + " useAsDefault BOOLEAN, description TEXT, owner TEXT, ui TEXT, update_time DATETIME DEFAULT"
                        + " (strftime('%Y-%m-%dT%H:%M:%fZ','now')))");
        insert(
                "INSERT INTO gpkg_contents (table_name, data_type, identifier, description, last_change) VALUES"
                        + " ('layer_styles', 'attributes', 'layer_styles',"
                        + " 'How the layers are drawn, as Styled Layer Descriptor', ?)",
                TIME.format(Instant.EPOCH));
    }

    private void run(String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    private void reference(String name, int id, String organisation, int code, String definition, String description)
            throws SQLException {
        insert(
                "INSERT INTO gpkg_spatial_ref_sys VALUES (?, ?, ?, ?, ?, ?)",
                name,
                id,
                organisation,
                code,
                definition,
                description);
    }

    private void insert(String sql, Object... values) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (int i = 0; i < values.length; i++) {
                statement.setObject(i + 1, values[i]);
            }
            statement.executeUpdate();
        }
    }

    /**
     * Puts the layers of one peg in.
     *
     * @param visited when the peg was last visited, or the epoch where that is not known: the file says that its
     *     contents are of the latest of these times, so that the same pegs always give the same bytes
     */
    void add(List<Layer> layers, Georeference reference, Instant visited) throws IOException {
        changed = visited.isAfter(changed) ? visited : changed;
        try {
            for (Layer layer : layers) {
                Table table = table(layer, reference.isLocal());
                for (Layer.Feature feature : layer.features()) {
                    put(table, feature, reference.moved(feature.geometry(), zone));
                }
            }
        } catch (SQLException e) {
            throw failed(e);
        }
    }

    private void put(Table table, Layer.Feature feature, Geometry geometry) throws SQLException {
        table.box.expandToInclude(geometry.getEnvelopeInternal());
        table.insert.setBytes(1, blob(geometry, table.reference));
        for (int i = 0; i < feature.values().size(); i++) {
            Object value = feature.values().get(i);
            table.insert.setObject(i + 2, value instanceof Boolean flag ? (Object) (flag ? 1 : 0) : value);
        }
        table.insert.executeUpdate();
    }

    /** A geometry as GeoPackage keeps it (clause 2.1.3): a header with the box, then well-known binary. */
    private static byte[] blob(Geometry geometry, int reference) {
        byte[] wkb = new WKBWriter(2, ByteOrderValues.LITTLE_ENDIAN).write(geometry);
        ByteBuffer out = ByteBuffer.allocate(8 + 32 + wkb.length).order(ByteOrder.LITTLE_ENDIAN);
        Envelope box = geometry.getEnvelopeInternal();
        out.put((byte) 'G')
                .put((byte) 'P')
                .put((byte) 0)
                .put((byte) 0b0000_0011)
                .putInt(reference);
        out.putDouble(box.getMinX()).putDouble(box.getMaxX());
        out.putDouble(box.getMinY()).putDouble(box.getMaxY());
        return out.put(wkb).array();
    }

    private Table table(Layer layer, boolean local) throws SQLException {
        String name = layer.name() + (local ? "_local" : "");
        Table known = tables.get(name);
        if (known != null) {
            return known;
        }
        int srs = local ? UNDEFINED_PLANE : zone.map(UtmZone::epsgCode).orElse(WGS84);
        StringBuilder create = new StringBuilder(
                "CREATE TABLE \"" + name + "\" (fid INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL, geom " + layer.shape());
        StringBuilder into = new StringBuilder("INSERT INTO \"" + name + "\" (geom");
        StringBuilder marks = new StringBuilder("?");
        for (Layer.Column column : layer.columns()) {
            create.append(", \"").append(column.name()).append("\" ").append(type(column.type()));
            into.append(", \"").append(column.name()).append('"');
            marks.append(", ?");
        }
        run(create.append(')').toString());
        insert(
                "INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id, last_change)"
                        + " VALUES (?, 'features', ?, ?, ?, ?)",
                name,
                name,
                local ? Georeference.LOCAL : "",
                srs,
                TIME.format(Instant.EPOCH));
        insert(
                "INSERT INTO gpkg_geometry_columns VALUES (?, 'geom', ?, ?, 0, 0)",
                name,
                layer.shape().name(),
                srs);
        insert(
                "INSERT INTO layer_styles (f_table_catalog, f_table_schema, f_table_name, f_geometry_column, styleName,"
                        + " styleSLD, useAsDefault, description, update_time)"
                        + " VALUES ('', '', ?, 'geom', 'Pegbed', ?, 1, ?, ?)",
                name,
                LayerStyle.of(layer).text(name),
                "As Pegbed draws it",
                TIME.format(Instant.EPOCH));
        Table made = new Table(
                connection.prepareStatement(
                        into.append(") VALUES (").append(marks).append(')').toString()),
                srs);
        tables.put(name, made);
        return made;
    }

    private static String type(Layer.Type type) {
        return switch (type) {
            case TEXT -> "TEXT";
            case REAL -> "DOUBLE";
            case INTEGER -> "INTEGER";
            case BOOLEAN -> "BOOLEAN";
        };
    }

    /** Ends the file; before that it is none. */
    void end() throws IOException {
        try {
            for (Map.Entry<String, Table> each : new ArrayList<>(tables.entrySet())) {
                Envelope box = each.getValue().box;
                if (!box.isNull()) {
                    insert(
                            "UPDATE gpkg_contents SET min_x = ?, min_y = ?, max_x = ?, max_y = ? WHERE table_name = ?",
                            box.getMinX(),
                            box.getMinY(),
                            box.getMaxX(),
                            box.getMaxY(),
                            each.getKey());
                }
            }
            String time = TIME.format(changed);
            insert("UPDATE gpkg_contents SET last_change = ?", time);
            insert("UPDATE layer_styles SET update_time = ?", time);
            connection.commit();
        } catch (SQLException e) {
            throw failed(e);
        }
    }

    @Override
    public void close() throws IOException {
        try {
            for (Table table : tables.values()) {
                table.insert.close();
            }
            connection.close();
        } catch (SQLException e) {
            throw failed(e);
        }
    }

    /** A database of its own in the folder for temporary files, to be filled and read whole. */
    interface Filling {
        void fill(GeoPackageFile into) throws IOException, pegbed.model.InputException;
    }

    /** The bytes of a GeoPackage. */
    static byte[] bytes(Optional<UtmZone> zone, Filling filling) throws IOException, pegbed.model.InputException {
        Path folder = Files.createTempDirectory("pegbed-export");
        Path file = folder.resolve("export.gpkg");
        try {
            try (GeoPackageFile into = create(file, zone)) {
                filling.fill(into);
                into.end();
            }
            return Files.readAllBytes(file);
        } finally {
            Files.deleteIfExists(file);
            Files.deleteIfExists(folder);
        }
    }
}
