package pegbed.exchange;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;
import pegbed.exchange.Layer.Column;
import pegbed.exchange.Layer.Feature;
import pegbed.exchange.Layer.Shape;
import pegbed.findings.FlatSpot;
import pegbed.findings.PegMap;
import pegbed.findings.Spot;
import pegbed.geometry.PegWater;
import pegbed.geometry.Shapes;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Hazard;
import pegbed.model.Mark;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Position;
import pegbed.model.Reading;
import pegbed.model.Visit;
import pegbed.plan.Plan;
import pegbed.plan.PlannedLine;
import pegbed.report.map.GroundShapes;
import pegbed.surface.grid.Field;
import pegbed.surface.posterior.ReadingCheck;
import pegbed.wording.FindingWords;

/** What is known of a peg, as layers; each thing says of which peg it is. */
final class PegLayers {
    private static final List<Column> OF_WHICH_PEG = List.of(text("venue"), text("water"), text("peg"));

    private final Plan plan;
    private final PegMap map;
    private final Peg peg;
    private final List<Layer> layers = new ArrayList<>();

    private PegLayers(Plan plan) {
        this.plan = plan;
        map = plan.findings().map();
        peg = map.peg();
    }

    /** When a peg was last visited; the epoch where no visit has a time. */
    static Instant visited(Peg peg) {
        return peg.visits().stream()
                .flatMap(visit -> visit.start().stream())
                .map(OffsetDateTime::toInstant)
                .max(Comparator.naturalOrder())
                .orElse(Instant.EPOCH);
    }

    /** The layers of a peg, always the same ones in the same order; a layer may be empty. */
    static List<Layer> of(Plan plan) {
        PegLayers of = new PegLayers(plan);
        of.seat();
        of.water();
        of.ground();
        of.banks();
        of.readings();
        of.flats();
        of.lines();
        of.hazards();
        of.marks();
        return List.copyOf(of.layers);
    }

    private static Column text(String name) {
        return new Column(name, Layer.Type.TEXT);
    }

    private static Column real(String name) {
        return new Column(name, Layer.Type.REAL);
    }

    private static Column whole(String name) {
        return new Column(name, Layer.Type.INTEGER);
    }

    private void add(String name, Shape shape, List<Column> columns, List<Feature> features) {
        List<Column> all = new ArrayList<>(OF_WHICH_PEG);
        all.addAll(columns);
        List<Feature> named = new ArrayList<>();
        for (Feature feature : features) {
            if (feature.geometry().isEmpty()) {
                continue;
            }
            List<Object> values = new ArrayList<>(
                    List.of(peg.name().venue(), peg.name().water(), peg.name().number()));
            values.addAll(feature.values());
            named.add(new Feature(feature.geometry(), values));
        }
        layers.add(new Layer(name, shape, all, named));
    }

    private static Geometry point(Place place) {
        return Shapes.FACTORY.createPoint(Shapes.coordinate(place));
    }

    private static MultiPolygon areas(Geometry shape) {
        List<Polygon> parts = new ArrayList<>();
        for (int i = 0; i < shape.getNumGeometries(); i++) {
            if (shape.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                parts.add(polygon);
            }
        }
        return Shapes.FACTORY.createMultiPolygon(parts.toArray(Polygon[]::new));
    }

    private static Double value(OptionalDouble number) {
        return number.isPresent() ? number.getAsDouble() : null;
    }

    private static Double known(double number) {
        return Double.isNaN(number) ? null : number;
    }

    private static String time(Optional<OffsetDateTime> time) {
        return time.map(DateTimeFormatter.ISO_OFFSET_DATE_TIME::format).orElse(null);
    }

    private void seat() {
        Position at = peg.position().orElse(null);
        add(
                "seat",
                Shape.POINT,
                List.of(
                        real("bearing_deg"),
                        real("position_accuracy_m"),
                        text("visit"),
                        real("reach_m"),
                        real("deepest_m"),
                        real("deepest_sd_m"),
                        real("target_m")),
                List.of(Feature.of(
                        point(new Place(0, 0)),
                        at == null ? null : (Double) at.bearingDegrees(),
                        at == null ? null : value(at.accuracyMetres()),
                        time(peg.today().start()),
                        peg.pole().reachMetres(),
                        map.deepest().spot().depthMetres(),
                        map.deepest().spot().sdMetres(),
                        plan.findings().targetMetres())));
    }

    private void water() {
        Geometry water = map.water().water();
        add("water", Shape.MULTIPOLYGON, List.of(real("area_m2")), List.of(Feature.of(areas(water), water.getArea())));
    }

    private void ground() {
        GroundShapes shapes = GroundShapes.of(map);
        Field sd = map.grid().sd();
        List<Feature> contours = new ArrayList<>();
        for (GroundShapes.Piece piece : shapes.contours()) {
            double sum = 0;
            int count = 0;
            for (Coordinate at : piece.line().getCoordinates()) {
                double doubt = sd.sample(at.x, at.y);
                sum += Double.isNaN(doubt) ? 0 : doubt;
                count += Double.isNaN(doubt) ? 0 : 1;
            }
            contours.add(Feature.of(
                    piece.line(), piece.levelMetres(), count == 0 ? null : (Double) (sum / count), piece.isGuess()));
        }
        add(
                "contours",
                Shape.LINESTRING,
                List.of(real("depth_m"), real("sd_m"), new Column("guess", Layer.Type.BOOLEAN)),
                contours);
        add(
                "guess",
                Shape.MULTIPOLYGON,
                List.of(real("area_m2")),
                List.of(Feature.of(areas(shapes.guess()), shapes.guess().getArea())));
    }

    private void banks() {
        Banks banks = peg.banks();
        List<Feature> lines = new ArrayList<>();
        bank(lines, "near", banks.near(), false);
        bank(lines, "far", banks.far(), false);
        banks.islands().forEach(island -> bank(lines, "island", island, true));
        add("banks", Shape.LINESTRING, List.of(text("bank"), real("depth_m")), lines);
    }

    private static void bank(List<Feature> to, String name, List<BankPoint> points, boolean closed) {
        if (points.size() >= 2) {
            LineString line = Shapes.line(points, closed && points.size() > 2);
            OptionalDouble depth = points.stream()
                    .filter(point -> point.depthMetres().isPresent())
                    .mapToDouble(point -> point.depthMetres().getAsDouble())
                    .average();
            to.add(Feature.of(line, name, value(depth)));
        }
    }

    private void readings() {
        Map<Integer, ReadingCheck> checks = new HashMap<>();
        map.checks().forEach(check -> checks.put(check.sounding(), check));
        List<Feature> points = new ArrayList<>();
        int number = 0;
        for (int v = 0; v < peg.visits().size(); v++) {
            Visit visit = peg.visits().get(v);
            double higher = map.bottom().level(v).higherMetres();
            for (Reading reading : visit.readings()) {
                ReadingCheck check = checks.get(number++);
                points.add(Feature.of(
                        point(reading.place()),
                        number,
                        v + 1,
                        time(visit.start()),
                        reading.place().distanceMetres(),
                        reading.place().angleDegrees(),
                        reading.depthMetres(),
                        reading.depthMetres() + higher,
                        reading.precision().sdDistanceMetres(),
                        reading.precision().sdAngleDegrees(),
                        reading.bottom().word(),
                        reading.note(),
                        time(reading.time()),
                        check == null ? null : (Double) check.expectedMetres(),
                        check == null ? null : (Double) check.wrongProbability()));
            }
        }
        add(
                "readings",
                Shape.POINT,
                List.of(
                        whole("reading"),
                        whole("visit"),
                        text("visit_start"),
                        real("distance_m"),
                        real("angle_deg"),
                        real("depth_m"),
                        real("depth_today_m"),
                        real("sd_distance_m"),
                        real("sd_direction_deg"),
                        text("bottom"),
                        text("note"),
                        text("time"),
                        real("expected_m"),
                        real("wrong_probability")),
                points);
    }

    private void flats() {
        List<Feature> areas = new ArrayList<>();
        Spot deepest = map.deepest().spot();
        areas.add(Feature.of(
                areas(map.deepest().area().shape()),
                "deepest",
                null,
                deepest.depthMetres(),
                deepest.sdMetres(),
                deepest.slope(),
                deepest.pFlat(),
                null,
                map.deepest().area().areaMetres2(),
                deepest.place().distanceMetres(),
                deepest.place().angleDegrees()));
        for (FlatSpot flat : plan.findings().flats()) {
            Spot spot = flat.spot();
            flat.area()
                    .ifPresent(area -> areas.add(Feature.of(
                            areas(area.shape()),
                            flat.zone().words(),
                            flat.targetMetres(),
                            spot.depthMetres(),
                            spot.sdMetres(),
                            spot.slope(),
                            spot.pFlat(),
                            FindingWords.confidence(flat.confidence()),
                            area.areaMetres2(),
                            spot.place().distanceMetres(),
                            spot.place().angleDegrees())));
        }
        add(
                "flats",
                Shape.MULTIPOLYGON,
                List.of(
                        text("zone"),
                        real("target_m"),
                        real("depth_m"),
                        real("sd_m"),
                        real("slope"),
                        real("p_flat"),
                        text("words"),
                        real("area_m2"),
                        real("distance_m"),
                        real("angle_deg")),
                areas);
    }

    private void lines() {
        List<Feature> points = new ArrayList<>();
        for (PlannedLine line : plan.lines()) {
            Spot spot = line.spot();
            points.add(Feature.of(
                    point(line.place()),
                    line.number(),
                    line.candidate().zone().map(zone -> zone.words()).orElse(null),
                    line.place().distanceMetres(),
                    line.place().angleDegrees(),
                    spot.depthMetres(),
                    spot.sdMetres(),
                    known(spot.slope()),
                    spot.pFlat(),
                    line.rig(),
                    plan.hookToTipMetres(line)));
        }
        add(
                "lines",
                Shape.POINT,
                List.of(
                        whole("line"),
                        text("zone"),
                        real("distance_m"),
                        real("angle_deg"),
                        real("depth_m"),
                        real("sd_m"),
                        real("slope"),
                        real("p_flat"),
                        whole("rig"),
                        real("hook_to_tip_m")),
                points);
    }

    private void hazards() {
        List<Feature> areas = new ArrayList<>();
        for (Hazard hazard : peg.hazards()) {
            Geometry around = PegWater.around(hazard);
            if (around.isEmpty()) {
                around = point(hazard.outline().get(0)).buffer(0.05);
            }
            areas.add(Feature.of(areas(around), hazard.kind().word(), hazard.radiusMetres(), hazard.note()));
        }
        add("hazards", Shape.MULTIPOLYGON, List.of(text("kind"), real("radius_m"), text("note")), areas);
    }

    private void marks() {
        List<Feature> points = new ArrayList<>();
        for (Mark mark : peg.marks()) {
            points.add(Feature.of(
                    point(mark.place()),
                    mark.name(),
                    mark.place().distanceMetres(),
                    mark.place().angleDegrees()));
        }
        add("marks", Shape.POINT, List.of(text("name"), real("distance_m"), real("angle_deg")), points);
    }
}
