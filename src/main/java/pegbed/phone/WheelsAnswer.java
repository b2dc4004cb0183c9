package pegbed.phone;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import pegbed.findings.PegMap;
import pegbed.guidance.NextReading;
import pegbed.model.Bottom;
import pegbed.model.InputException;
import pegbed.model.Mark;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Units;
import pegbed.notation.Line;
import pegbed.notation.Notation;
import pegbed.session.ReadingWheels;
import pegbed.wording.MapWords;
import pegbed.wording.Quantities;
import pegbed.wording.Sentences;

/** What the wheels and keys for a reading hold. */
final class WheelsAnswer {
    /** As many keys for depths are shown at once: the inches of a foot. */
    private static final int KEYS = 12;

    /** Of the keys so many are shallower than the depth expected. */
    private static final int SHALLOWER_KEYS = 6;

    /** Distances as near as this are one, metres. */
    private static final double SAME_METRES = 0.005;

    /** Keys for whole depths go so much beyond the deepest that the map shows, metres. */
    private static final double BEYOND_DEEPEST_METRES = 1.5;

    private static final double USUAL_DEEPEST_METRES = 3;

    private final PhonePeg phone;
    private final Peg peg;
    private final ReadingWheels wheels;

    WheelsAnswer(PhonePeg phone) {
        this.phone = phone;
        peg = phone.peg();
        wheels = new ReadingWheels(peg);
    }

    /** All wheels, standing at a place. */
    JsonText all(Place at) {
        double distance = at.distanceMetres();
        List<Double> distances = new ArrayList<>(wheels.distances());
        int nearest = nearest(distances, distance);
        if (Math.abs(distances.get(nearest) - distance) > SAME_METRES && distance > SAME_METRES) {
            nearest = distances.get(nearest) < distance ? nearest + 1 : nearest;
            distances.add(nearest, distance);
        }
        int minutes = ReadingWheels.clockMinutes(at.angleDegrees());
        JsonText answer = new JsonText()
                .put(
                        "distance",
                        wheel(
                                peg.units().distance() == Units.Distance.SECTIONS ? "Section" : "Distance",
                                distances.stream()
                                        .map(metres -> item(wheels.distance(metres), wheels.distanceTyped(metres)))
                                        .toList(),
                                nearest))
                .put("clock", clock(minutes))
                .put("marks", peg.marks().stream().map(WheelsAnswer::beside).toList())
                .put(
                        "bottoms",
                        Arrays.stream(Bottom.values())
                                .map(bottom -> item(
                                        bottom == Bottom.UNKNOWN ? "not felt" : bottom.word(),
                                        ReadingWheels.bottomTyped(bottom).strip()))
                                .toList());
        Place said = Place.polar(distances.get(nearest), minutes / 2.0);
        return answer.put("depth", depths(said, Optional.empty()))
                .put("wholes", wholes())
                .put("here", here(said));
    }

    private static int nearest(List<Double> distances, double metres) {
        int nearest = 0;
        for (int i = 1; i < distances.size(); i++) {
            if (Math.abs(distances.get(i) - metres) < Math.abs(distances.get(nearest) - metres)) {
                nearest = i;
            }
        }
        return nearest;
    }

    private static JsonText wheel(String title, List<JsonText> items, int at) {
        return new JsonText().put("title", title).put("items", items).put("at", at);
    }

    private static JsonText item(String label, String typed) {
        return new JsonText().put("label", label).put("typed", typed);
    }

    private static JsonText clock(int minutes) {
        List<JsonText> items = new ArrayList<>();
        for (int i = -ReadingWheels.CLOCK_MAX_MINUTES;
                i <= ReadingWheels.CLOCK_MAX_MINUTES;
                i += ReadingWheels.CLOCK_STEP_MINUTES) {
            items.add(item(ReadingWheels.clock(i), ReadingWheels.clock(i)));
        }
        return wheel("Clock", items, (minutes + ReadingWheels.CLOCK_MAX_MINUTES) / ReadingWheels.CLOCK_STEP_MINUTES);
    }

    private static JsonText beside(Mark mark) {
        int most = (int) Math.round(ReadingWheels.BESIDE_MAX_METRES / ReadingWheels.BESIDE_STEP_METRES);
        List<JsonText> items = new ArrayList<>();
        for (int i = -most; i <= most; i++) {
            double metres = i * ReadingWheels.BESIDE_STEP_METRES;
            items.add(item(ReadingWheels.beside(metres), ReadingWheels.besideTyped(mark, metres)));
        }
        return wheel(mark.name(), items, most);
    }

    /** The place that two wheels stand for. */
    Place place(String distance, String direction) throws InputException {
        Line line = Notation.of(peg).parse(distance + " " + direction + " 1m");
        if (line instanceof Line.ReadingLine reading) {
            return reading.reading().place();
        }
        throw new InputException("'" + distance + " " + direction + "' is no place; give a distance and a direction.");
    }

    /**
     * Keys for depths.
     *
     * @param place where
     * @param from the first key's step from the surface; empty for keys about the depth expected there
     */
    JsonText depths(Place place, Optional<Integer> from) {
        Optional<Double> expected = depthAt(place);
        int middle = expected.map(wheels::depthStep).orElse(wheels.usualDepthStep());
        int first = Math.max(0, Math.min(wheels.deepestStep() - KEYS + 1, from.orElse(middle - SHALLOWER_KEYS)));
        Quantities quantities = Quantities.of(peg);
        List<JsonText> keys = new ArrayList<>();
        for (int step = first; step < first + KEYS; step++) {
            keys.add(item(quantities.depth(step * wheels.depthStepMetres()), wheels.depthTyped(step))
                    .put("step", step)
                    .put("expected", isFound() && expected.isPresent() && step == middle));
        }
        return new JsonText()
                .put("expected", expectedWords(place))
                .put("from", first)
                .put("keys", keys)
                .put("here", here(place));
    }

    /** The place nearest to another, within the pole's reach, that the wheels of distances and the clock have. */
    Place nearest(Place other) {
        List<Double> distances = wheels.distances();
        return Place.polar(
                distances.get(nearest(distances, other.distanceMetres())),
                ReadingWheels.clockMinutes(other.angleDegrees()) / 2.0);
    }

    /** Keys for whole feet, or 20 cm, each of which stands for the keys of its part. */
    private List<JsonText> wholes() {
        double deepest = phone.shown()
                .filter(shown -> isFound())
                .map(shown -> shown.map().deepest().spot().depthMetres())
                .orElse(USUAL_DEEPEST_METRES);
        int most = wheels.depthStep(deepest + BEYOND_DEEPEST_METRES);
        int whole = wheels.feet() ? KEYS : 10;
        List<JsonText> wholes = new ArrayList<>();
        for (int step = 0; step <= most; step += whole) {
            String label =
                    wheels.feet() ? step / whole + " ft" : Quantities.of(peg).depth(step * wheels.depthStepMetres());
            wholes.add(new JsonText().put("label", label).put("from", step));
        }
        return wholes;
    }

    private boolean isFound() {
        return phone.shown().filter(shown -> !shown.placeAlone()).isPresent();
    }

    private Optional<Double> depthAt(Place place) {
        return phone.shown()
                .map(PhonePeg.Shown::map)
                .map(map -> map.grid().depth().sample(place.xMetres(), place.yMetres()))
                .filter(Double::isFinite);
    }

    private Optional<String> expectedWords(Place place) {
        Optional<PegMap> map =
                phone.shown().filter(shown -> !shown.placeAlone()).map(PhonePeg.Shown::map);
        return map.flatMap(known -> {
            double depth = known.grid().depth().sample(place.xMetres(), place.yMetres());
            double sd = known.grid().sd().sample(place.xMetres(), place.yMetres());
            return Double.isFinite(depth) && Double.isFinite(sd)
                    ? Optional.of(MapWords.of(peg).shortDepth(Math.max(0, depth), sd))
                    : Optional.empty();
        });
    }

    /** Where the wheels begin: at the proposed place, else where most begin. */
    Place begin() {
        return phone.knownNext().map(NextReading::place).orElse(Place.polar(wheels.usualDistance(), 0));
    }

    /** A place in words and in metres. */
    JsonText here(Place place) {
        return new JsonText()
                .put("words", Sentences.capital(MapWords.of(peg).place(wheels.distance(place.distanceMetres()), place)))
                .put("x", place.xMetres())
                .put("y", place.yMetres());
    }
}
