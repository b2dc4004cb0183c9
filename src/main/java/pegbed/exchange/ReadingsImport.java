package pegbed.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import pegbed.geodesy.LocalFrame;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.storage.disk.AtomicFileWriter;
import pegbed.storage.peg.NumberText;
import pegbed.storage.table.SpreadsheetReadings;

/**
 * Readings of a file of another program: CSV of a spreadsheet, or the points of a GeoJSON or GeoPackage file with a
 * depth each. Nothing is taken by reading them: a person looks at {@link #recognised} first.
 *
 * @param readings in the file's order, in the peg's plane
 * @param recognised how each column was understood, a few words each
 * @param ignored columns that were passed over
 * @param passedOver how many things of the file are no readings: no points, or without a depth
 */
public record ReadingsImport(List<Reading> readings, List<String> recognised, List<String> ignored, int passedOver) {
    private static final long LARGEST_BYTES = 200_000_000;

    public ReadingsImport {
        readings = List.copyOf(readings);
        recognised = List.copyOf(recognised);
        ignored = List.copyOf(ignored);
    }

    /**
     * Reads a file.
     *
     * @param layer the layer of a GeoPackage; empty for the one that has readings
     * @throws InputException with what is wrong
     */
    public static ReadingsImport of(Path file, Peg peg, Optional<String> layer) throws InputException {
        String name = AtomicFileWriter.name(file);
        String end = name.toLowerCase(Locale.ROOT);
        boolean json = end.endsWith(".geojson") || end.endsWith(".json");
        if (layer.isPresent() && !end.endsWith(".gpkg")) {
            throw new InputException("Only a GeoPackage (.gpkg) has layers to choose from; " + name + " is none.");
        }
        if (json || end.endsWith(".gpkg")) {
            lookAt(file, name);
            return json ? geoJson(file, name, peg) : geoPackage(file, name, peg, layer);
        }
        SpreadsheetReadings table = SpreadsheetReadings.read(file, earth(peg));
        return new ReadingsImport(table.readings(), table.recognised(), table.ignoredColumns(), 0);
    }

    private static void lookAt(Path file, String name) throws InputException {
        if (!Files.exists(file)) {
            throw new InputException("There is no file " + file + ".");
        }
        try {
            if (Files.isDirectory(file) || Files.size(file) > LARGEST_BYTES) {
                throw new InputException(name + " is a folder or larger than 200 MB; give a file of points.");
            }
        } catch (IOException e) {
            throw new InputException(name + " could not be read: " + AtomicFileWriter.reasonOfReading(e) + ".", e);
        }
    }

    private static SpreadsheetReadings.EarthPlaces earth(Peg peg) {
        return new SpreadsheetReadings.EarthPlaces() {
            private LocalFrame frame;

            @Override
            public Place place(double latitudeDegrees, double longitudeDegrees) throws InputException {
                if (frame == null) {
                    frame = LocalFrame.of(peg.position()
                            .orElseThrow(
                                    () -> new InputException("These readings lie at places on the earth, and the peg"
                                            + " has no position; give it one first, such as --at 52.1234,-1.2345 --bearing 312"
                                            + " with pegbed position.")));
                }
                return frame.place(latitudeDegrees, longitudeDegrees);
            }
        };
    }

    /** Points with what is said of them, before it is known which column is what. */
    static final class Points {
        private final String name;
        private final boolean local;
        private final Set<String> titles = new LinkedHashSet<>();
        private final List<List<String>> cells = new ArrayList<>();
        private final List<java.util.Map<String, String>> values = new ArrayList<>();
        private final List<double[]> places = new ArrayList<>();
        private int passedOver;

        Points(String name, boolean local) {
            this.name = name;
            this.local = local;
        }

        /**
         * Adds a point, or counts it where it has no depth.
         *
         * @param place x and y, or longitude and latitude
         */
        void add(double[] place, java.util.Map<String, String> said) {
            boolean deep = said.entrySet().stream()
                    .anyMatch(each -> isDepth(each.getKey()) && !each.getValue().isBlank());
            if (!deep) {
                passedOver++;
                return;
            }
            titles.addAll(said.keySet());
            values.add(said);
            places.add(place);
        }

        void passOver() {
            passedOver++;
        }

        private static boolean isDepth(String title) {
            return SpreadsheetReadings.known(title).matches("depth(_.*)?");
        }

        ReadingsImport readings(Peg peg) throws InputException {
            if (places.isEmpty()) {
                throw new InputException(name
                        + " has no points with a depth; each point needs a property such as depth_m" + " or depth_ft.");
            }
            // Where they lie is said by the points themselves.
            List<String> own = titles.stream().filter(Points::isOfUse).toList();
            List<String> header = new ArrayList<>(own);
            header.addAll(local ? List.of("x_m", "y_m") : List.of("latitude_deg", "longitude_deg"));
            for (int i = 0; i < places.size(); i++) {
                List<String> row = new ArrayList<>();
                for (String title : own) {
                    row.add(values.get(i).getOrDefault(title, ""));
                }
                double[] at = places.get(i);
                row.add(NumberText.text(local ? at[0] : at[1]));
                row.add(NumberText.text(local ? at[1] : at[0]));
                cells.add(row);
            }
            SpreadsheetReadings table = SpreadsheetReadings.of(name, header, cells, earth(peg));
            List<String> recognised = new ArrayList<>(table.recognised());
            recognised.removeIf(words -> words.startsWith("x_m:")
                    || words.startsWith("y_m:")
                    || words.startsWith("latitude_deg:")
                    || words.startsWith("longitude_deg:"));
            recognised.add(local ? "points: x and y in metres from the seat" : "points: places on the earth");
            List<String> ignored = new ArrayList<>(titles);
            ignored.removeAll(own);
            ignored.addAll(table.ignoredColumns());
            return new ReadingsImport(table.readings(), recognised, ignored, passedOver);
        }

        private static boolean isOfUse(String title) {
            String known = SpreadsheetReadings.known(title);
            return (known.startsWith("depth_") && !title.equalsIgnoreCase("depth_today_m"))
                    || known.equals("depth")
                    || known.equals("bottom")
                    || known.equals("note");
        }
    }

    private static ReadingsImport geoJson(Path file, String name, Peg peg) throws InputException {
        JsonNode root;
        try {
            root = new ObjectMapper().readTree(file.toFile());
        } catch (JsonProcessingException e) {
            throw new InputException(
                    name + " is not JSON: it breaks off or is damaged at line "
                            + e.getLocation().getLineNr() + ".",
                    e);
        } catch (IOException e) {
            throw new InputException(name + " could not be read: " + AtomicFileWriter.reasonOfReading(e) + ".", e);
        }
        List<JsonNode> features = new ArrayList<>();
        switch (root.path("type").asText()) {
            case "FeatureCollection" -> root.path("features").forEach(features::add);
            case "Feature" -> features.add(root);
            default ->
                throw new InputException(
                        name + " is no GeoJSON of features (RFC 7946); its type must be" + " FeatureCollection.");
        }
        refuseOtherReference(root.path("crs"), name);
        boolean local = root.path("coordinate_system").asText().startsWith("Local frame");
        boolean layered = features.stream()
                .anyMatch(each -> each.path("properties").path("layer").asText().equals("readings"));
        Points points = new Points(name, local);
        for (JsonNode feature : features) {
            JsonNode at = feature.path("geometry").path("coordinates");
            boolean point = feature.path("geometry").path("type").asText().equals("Point")
                    && at.path(0).isNumber()
                    && at.path(1).isNumber();
            if (!point
                    || (layered
                            && !feature.path("properties")
                                    .path("layer")
                                    .asText()
                                    .equals("readings"))) {
                points.passOver();
                continue;
            }
            java.util.Map<String, String> said = new java.util.LinkedHashMap<>();
            feature.path("properties").properties().forEach(each -> {
                if (!each.getKey().equals("layer") && each.getValue().isValueNode()) {
                    said.put(
                            each.getKey(),
                            each.getValue().isNull() ? "" : each.getValue().asText());
                }
            });
            points.add(new double[] {at.get(0).asDouble(), at.get(1).asDouble()}, said);
        }
        return points.readings(peg);
    }

    /** Files of before RFC 7946 may name another reference system; WGS 84 by its two names is let pass. */
    private static void refuseOtherReference(JsonNode crs, String name) throws InputException {
        String reference = crs.path("properties").path("name").asText();
        if (!crs.isMissingNode() && !crs.isNull() && !reference.matches(".*(CRS84|EPSG:(:[\\d.]*:)?:?4326)")) {
            throw new InputException(
                    name + " has coordinates in \"" + (reference.isEmpty() ? "a reference of its own" : reference)
                            + "\"; GeoJSON has WGS 84 (RFC 7946), so export it anew in that, or as a GeoPackage.");
        }
    }

    private static ReadingsImport geoPackage(Path file, String name, Peg peg, Optional<String> layer)
            throws InputException {
        return GeoPackagePoints.read(file, name, layer).readings(peg);
    }
}
