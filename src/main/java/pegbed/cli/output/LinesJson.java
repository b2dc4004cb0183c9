package pegbed.cli.output;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import pegbed.findings.Area;
import pegbed.findings.Deepest;
import pegbed.findings.Findings;
import pegbed.findings.FlatSpot;
import pegbed.findings.Spot;
import pegbed.findings.SteepestSlope;
import pegbed.geometry.Doubts;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.surface.posterior.ReadingCheck;
import pegbed.wording.FindingWords;
import pegbed.wording.Steepness;

/** The answers of {@code pegbed lines} in JSON. The keys are a contract. */
public final class LinesJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private LinesJson() {}

    public static ObjectNode of(Findings findings) {
        ObjectNode root = NODES.objectNode();
        root.put("readings", findings.map().bottom().soundings());
        root.put("learned", findings.map().bottom().learned());
        NeighbouringPegsJson.put(root, findings.map().bottom().lesson());
        ArrayNode structures = root.putArray("structures");
        findings.map()
                .bottom()
                .structures()
                .forEach(each -> structures
                        .addObject()
                        .put("name", each.structure().name().toLowerCase(Locale.ROOT))
                        .put("weight", Output.rounded(each.weight(), 3)));
        root.put("target_m", Output.rounded(findings.targetMetres(), 3));
        root.set("deepest", deepest(findings.map().peg(), findings.deepest()));
        ArrayNode flats = root.putArray("flats");
        findings.flats().forEach(flat -> flats.add(flat(flat)));
        ArrayNode slopes = root.putArray("slopes");
        findings.slopes().forEach(slope -> slopes.add(slope(slope)));
        ArrayNode suspicious = root.putArray("suspicious");
        findings.map().suspicious().forEach(check -> suspicious.add(suspicious(check)));
        root.set(
                "changes",
                LevelJson.changes(findings.map().peg(), findings.map().bottom().changes()));
        ArrayNode warnings = root.putArray("warnings");
        Doubts.sentences(Doubts.misplaced(findings.map().peg(), findings.map().water()))
                .forEach(warnings::add);
        return root;
    }

    private static ObjectNode deepest(Peg peg, Deepest deepest) {
        ObjectNode node = spot(deepest.spot());
        area(node, deepest.area());
        node.put("settles", FindingWords.of(peg).settles(deepest));
        return node;
    }

    private static ObjectNode flat(FlatSpot flat) {
        ObjectNode node = NODES.objectNode();
        node.put("zone", flat.zone().words());
        node.setAll(spot(flat.spot()));
        flat.area().ifPresentOrElse(area -> area(node, area), () -> node.put("area_m2", 0));
        flat.circle().ifPresent(circle -> node.put("circle_radius_m", Output.rounded(circle.radiusMetres(), 2)));
        node.put("p", Output.rounded(flat.spot().pFlat(), 3));
        node.put("words", FindingWords.confidence(flat.confidence()));
        flat.nearestMetres().ifPresent(depth -> node.put("nearest_m", Output.rounded(depth, 3)));
        return node;
    }

    private static ObjectNode spot(Spot spot) {
        return spot(NODES.objectNode(), spot);
    }

    /** Adds a spot's members to a node. */
    static ObjectNode spot(ObjectNode node, Spot spot) {
        node.setAll(place(spot.place()));
        node.put("depth_m", Output.rounded(spot.depthMetres(), 3));
        node.put("sd_m", Output.rounded(spot.sdMetres(), 3));
        node.put("slope", Output.rounded(spot.slope(), 3));
        node.put("p_flat", Output.rounded(spot.pFlat(), 3));
        return node;
    }

    private static ObjectNode place(Place place) {
        ObjectNode node = NODES.objectNode();
        node.put("distance_m", Output.rounded(place.distanceMetres(), 2));
        node.put("angle_deg", Output.rounded(place.angleDegrees(), 1));
        node.put("x_m", Output.rounded(place.xMetres(), 2));
        node.put("y_m", Output.rounded(place.yMetres(), 2));
        return node;
    }

    private static void area(ObjectNode node, Area area) {
        node.put("area_m2", Output.rounded(area.areaMetres2(), 2));
        node.put("shallowest_m", Output.rounded(area.shallowestMetres(), 3));
        node.put("deepest_m", Output.rounded(area.deepestMetres(), 3));
    }

    private static ObjectNode slope(SteepestSlope slope) {
        ObjectNode node = NODES.objectNode();
        node.put("zone", slope.zone().words());
        node.setAll(place(slope.place()));
        node.put("depth_m", Output.rounded(slope.depthMetres(), 3));
        node.put("slope", Output.rounded(slope.slope(), 3));
        node.put("slope_words", Steepness.oneIn(slope.slope()));
        node.put("downhill_deg", Output.rounded(slope.downhillDegrees(), 0));
        return node;
    }

    private static ObjectNode suspicious(ReadingCheck check) {
        ObjectNode node = NODES.objectNode();
        node.put("reading", check.sounding() + 1);
        node.put("depth_m", Output.rounded(check.readMetres(), 3));
        node.put("expected_m", Output.rounded(check.expectedMetres(), 3));
        node.put("expected_sd_m", Output.rounded(check.expectedSdMetres(), 3));
        return node;
    }
}
