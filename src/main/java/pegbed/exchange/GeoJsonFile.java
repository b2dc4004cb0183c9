package pegbed.exchange;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import pegbed.model.InputException;

/**
 * Layers as one GeoJSON feature collection (RFC 7946): WGS 84, longitude first, outer rings against the clock and holes
 * with it. Each feature names its layer. Without a position the coordinates are those of the peg's plane, as the file
 * then says itself.
 */
final class GeoJsonFile {
    /** A tenth of a millimetre. */
    private static final int DECIMALS_OF_DEGREES = 9;

    private static final int DECIMALS_OF_METRES = 4;

    /** Numbers that are said of things: a tenth of a millimetre, or of a thousandth. */
    private static final int DECIMALS_OF_VALUES = 4;

    private final JsonGenerator out;
    private final Georeference reference;

    private GeoJsonFile(JsonGenerator out, Georeference reference) {
        this.out = out;
        this.reference = reference;
    }

    /**
     * The bytes of the file, UTF-8.
     *
     * @throws InputException if the peg lies across the 180th meridian
     */
    static byte[] bytes(List<Layer> layers, Georeference reference) throws InputException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (JsonGenerator out = new JsonFactory().createGenerator(bytes)) {
            new GeoJsonFile(out, reference).write(layers);
        } catch (IOException e) {
            throw new UncheckedIOException("Writing to memory can't fail.", e);
        }
        return bytes.toByteArray();
    }

    private void write(List<Layer> layers) throws IOException, InputException {
        out.writeStartObject();
        out.writeStringField("type", "FeatureCollection");
        out.writeStringField(
                "coordinate_system",
                reference.isLocal() ? Georeference.LOCAL : "WGS 84, longitude and latitude in degrees (RFC 7946)");
        out.writeArrayFieldStart("features");
        for (Layer layer : layers) {
            for (Layer.Feature feature : layer.features()) {
                out.writeRaw('\n');
                feature(layer, feature);
            }
        }
        out.writeEndArray();
        out.writeEndObject();
        out.writeRaw('\n');
    }

    private void feature(Layer layer, Layer.Feature feature) throws IOException, InputException {
        Geometry moved = reference.moved(feature.geometry(), Optional.empty());
        Envelope box = moved.getEnvelopeInternal();
        if (!reference.isLocal() && box.getWidth() > 180) {
            throw new InputException("The peg lies across the 180th meridian, which GeoJSON can't have in one piece;"
                    + " export a .gpkg or .tif instead.");
        }
        out.writeStartObject();
        out.writeStringField("type", "Feature");
        out.writeObjectFieldStart("geometry");
        geometry(moved);
        out.writeEndObject();
        out.writeObjectFieldStart("properties");
        out.writeStringField("layer", layer.name());
        for (int i = 0; i < layer.columns().size(); i++) {
            value(layer.columns().get(i).name(), feature.values().get(i));
        }
        out.writeEndObject();
        out.writeEndObject();
    }

    private void value(String name, Object value) throws IOException {
        out.writeFieldName(name);
        if (value == null) {
            out.writeNull();
        } else if (value instanceof Double number) {
            out.writeNumber(rounded(number, DECIMALS_OF_VALUES));
        } else if (value instanceof Integer number) {
            out.writeNumber(number);
        } else if (value instanceof Boolean flag) {
            out.writeBoolean(flag);
        } else {
            out.writeString(value.toString());
        }
    }

    private static String rounded(double number, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private void geometry(Geometry geometry) throws IOException {
        String type = geometry.getGeometryType();
        switch (type.toUpperCase(Locale.ROOT)) {
            case "POINT" -> {
                out.writeStringField("type", type);
                out.writeFieldName("coordinates");
                point(geometry.getCoordinate());
            }
            case "LINESTRING", "LINEARRING" -> {
                out.writeStringField("type", "LineString");
                out.writeFieldName("coordinates");
                points(((LineString) geometry).getCoordinates());
            }
            case "MULTIPOLYGON" -> {
                out.writeStringField("type", type);
                out.writeArrayFieldStart("coordinates");
                for (int i = 0; i < geometry.getNumGeometries(); i++) {
                    polygon((Polygon) geometry.getGeometryN(i));
                }
                out.writeEndArray();
            }
            default -> throw new IllegalStateException("No layer has a " + type + ".");
        }
    }

    private void polygon(Polygon polygon) throws IOException {
        out.writeStartArray();
        ring(polygon.getExteriorRing(), true);
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
            ring(polygon.getInteriorRingN(hole), false);
        }
        out.writeEndArray();
    }

    /** The right-hand rule (RFC 7946, 3.1.6): the area lies to the left of each ring's course. */
    private void ring(LinearRing ring, boolean outer) throws IOException {
        boolean turn = Orientation.isCCW(ring.getCoordinateSequence()) != outer;
        points((turn ? ring.reverse() : ring).getCoordinates());
    }

    private void points(Coordinate[] points) throws IOException {
        out.writeStartArray();
        for (Coordinate point : points) {
            point(point);
        }
        out.writeEndArray();
    }

    private void point(Coordinate at) throws IOException {
        int decimals = reference.isLocal() ? DECIMALS_OF_METRES : DECIMALS_OF_DEGREES;
        out.writeStartArray();
        out.writeNumber(rounded(at.x, decimals));
        out.writeNumber(rounded(at.y, decimals));
        out.writeEndArray();
    }
}
