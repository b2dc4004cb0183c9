package pegbed.session;

import java.time.Month;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pegbed.day.DepthAt;
import pegbed.day.Lesson;
import pegbed.day.Lessons;
import pegbed.day.PastVisit;
import pegbed.day.TargetLesson;
import pegbed.findings.PegMap;
import pegbed.findings.Zone;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Units;
import pegbed.model.Visit;
import pegbed.notation.FeetAndInches;

/**
 * What a peg's finished visits teach. Depths are those of the map at the level that the water had on each visit.
 *
 * @param visits how many visits were fished
 * @param bandMetres width of the depth bands, metres
 * @param byDepth by depth band, named by its middle in steps of the width, the shallowest first
 * @param byDistance by distance from the seat in steps of {@link #DISTANCE_METRES}, the nearest first
 * @param byPart by part of the peg
 * @param byMonth by month
 * @param target the target depth that they speak for, if there is one
 * @param halfDeepestMetres half the deepest of today, metres
 */
public record VisitLessons(
        int visits,
        double bandMetres,
        List<Lesson<Integer>> byDepth,
        List<Lesson<Integer>> byDistance,
        List<Lesson<Zone>> byPart,
        List<Lesson<Month>> byMonth,
        Optional<TargetLesson> target,
        double halfDeepestMetres) {
    /** Width of the bands of distance, metres (our choice: about a section of a pole). */
    public static final double DISTANCE_METRES = 1.5;

    /** Width of the depth bands: what one rig serves (common practice), or a round number beside it. */
    private static final double BAND_INCHES = 3;

    private static final double BAND_METRES = 0.1;

    public VisitLessons {
        byDepth = List.copyOf(byDepth);
        byDistance = List.copyOf(byDistance);
        byPart = List.copyOf(byPart);
        byMonth = List.copyOf(byMonth);
    }

    /**
     * The lessons of a peg's visits.
     *
     * @param map the bottom; a visit that it does not know yet has no depths
     * @param peg the peg with its logs
     * @param now the visit that goes on then teaches nothing yet
     */
    public static VisitLessons of(PegMap map, Peg peg, OffsetDateTime now) {
        List<PastVisit> past = new ArrayList<>();
        List<Visit> finished = finished(peg, now);
        for (int v = 0; v < finished.size(); v++) {
            PastVisit.of(v, finished.get(v), List.of()).ifPresent(past::add);
        }
        Lessons lessons = Lessons.of(past);
        DepthAt depth = depth(map);
        double band = peg.units().depth() == Units.Depth.FEET ? BAND_INCHES * FeetAndInches.INCH_METRES : BAND_METRES;
        double deepest = map.deepest().spot().depthMetres();
        return new VisitLessons(
                past.size(),
                band,
                lessons.byDepth(depth, band),
                lessons.byDistance(DISTANCE_METRES),
                lessons.byPart(place -> zone(map, place)),
                lessons.byMonth(),
                lessons.target(depth, deepest, band),
                deepest / 2);
    }

    /** The visits that are over. */
    public static List<Visit> finished(Peg peg, OffsetDateTime now) {
        int visits = peg.visits().size();
        return peg.visits().subList(0, DayEdits.isOver(peg.today(), now) ? visits : visits - 1);
    }

    private static DepthAt depth(PegMap map) {
        int known = map.bottom().survey().levels().visits();
        int shown = map.bottom().survey().shown();
        Map<Place, Double> today = new HashMap<>();
        Map<Integer, Double> higher = new HashMap<>();
        return (place, visit) -> {
            if (visit >= known || map.nodeAt(place.xMetres(), place.yMetres()) < 0) {
                return OptionalDouble.empty();
            }
            return OptionalDouble.of(today.computeIfAbsent(
                            place,
                            at -> map.bottom().at(at.xMetres(), at.yMetres()).depthMetres())
                    + higher.computeIfAbsent(visit, of -> map.bottom().higher(of, shown)));
        };
    }

    private static Optional<Zone> zone(PegMap map, Place place) {
        int node = map.nodeAt(place.xMetres(), place.yMetres());
        for (Zone zone : Zone.values()) {
            if (node >= 0 && map.zones().contains(zone, node)) {
                return Optional.of(zone);
            }
        }
        return Optional.empty();
    }
}
