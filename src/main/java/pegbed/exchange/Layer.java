package pegbed.exchange;

import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/**
 * Things of one kind with the same columns (a simple feature table, OGC 06-103r4).
 *
 * @param name what they are, such as {@code readings}
 * @param shape the kind of their geometries
 * @param columns what is said of each
 * @param features the things
 */
record Layer(String name, Shape shape, List<Column> columns, List<Feature> features) {
    /** Kinds of geometry. */
    enum Shape {
        POINT,
        LINESTRING,
        MULTIPOLYGON
    }

    /** Kinds of values. */
    enum Type {
        TEXT,
        REAL,
        INTEGER,
        BOOLEAN
    }

    /** The name, with its unit at the end, and kind of a value. */
    record Column(String name, Type type) {}

    /**
     * One thing.
     *
     * @param geometry where it is, metres in its peg's plane
     * @param values one for each column: String, Double, Integer, Boolean, or null where not known
     */
    record Feature(Geometry geometry, List<Object> values) {
        Feature {
            values = java.util.Collections.unmodifiableList(new java.util.ArrayList<>(values));
        }

        static Feature of(Geometry geometry, Object... values) {
            return new Feature(geometry, Arrays.asList(values));
        }
    }

    Layer {
        columns = List.copyOf(columns);
        features = List.copyOf(features);
        for (Feature feature : features) {
            if (feature.values().size() != columns.size()) {
                throw new IllegalArgumentException("A thing of layer " + name + " has "
                        + feature.values().size() + " values for " + columns.size() + " columns.");
            }
        }
    }
}
