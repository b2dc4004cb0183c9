package pegbed.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import pegbed.findings.Findings;
import pegbed.findings.FlatSpot;
import pegbed.findings.PegMap;
import pegbed.findings.Zone;

/** Finds what was wanted in each zone and could not be had, and why. */
final class Shortfalls {
    private final Findings findings;
    private final List<LineCandidate> all;
    private final List<LineCandidate> allowed;
    private final List<LineCandidate> chosen;
    private final LineChoice.Wanted wanted;

    /**
     * @param all every candidate
     * @param allowed those that no hazard and no wish rules out, and the fixed lines
     * @param chosen the lines in the order of their numbers
     * @param wanted what was to be chosen
     */
    Shortfalls(
            Findings findings,
            List<LineCandidate> all,
            List<LineCandidate> allowed,
            List<LineCandidate> chosen,
            LineChoice.Wanted wanted) {
        this.findings = findings;
        this.all = all;
        this.allowed = allowed;
        this.chosen = chosen;
        this.wanted = wanted;
    }

    List<Shortfall> find() {
        List<Shortfall> found = new ArrayList<>();
        for (Zone zone : Zone.values()) {
            int wish = wanted.counts().get(zone.ordinal());
            if (wish > 0) {
                int got = 0;
                for (int i = 0; i < chosen.size(); i++) {
                    if (isIn(zone, chosen.get(i))) {
                        got++;
                        if (chosen.get(i).origin() == LineCandidate.Origin.NEAREST_FLAT) {
                            found.add(otherDepth(zone, i));
                        }
                    }
                }
                if (got < wish) {
                    found.add(missing(zone));
                }
            }
        }
        return found;
    }

    private static boolean isIn(Zone zone, LineCandidate line) {
        return line.zone().equals(Optional.of(zone));
    }

    private Shortfall otherDepth(Zone zone, int index) {
        LineCandidate line = chosen.get(index);
        return new Shortfall(
                Shortfall.Kind.OTHER_DEPTH,
                Optional.of(zone),
                OptionalDouble.of(line.spot().depthMetres()),
                Optional.of(line.spot()),
                OptionalInt.of(index + 1));
    }

    private Shortfall missing(Zone zone) {
        PegMap map = findings.map();
        if (zone != Zone.TRACK
                && IntStream.range(0, map.grid().frame().size())
                        .noneMatch(i -> map.zones().contains(zone, i))) {
            return Shortfall.of(Shortfall.Kind.NO_WATER, zone);
        }
        if (all.stream().noneMatch(line -> isIn(zone, line))) {
            Optional<FlatSpot> best = findings.flats().stream()
                    .filter(flat -> flat.zone() == zone)
                    .findFirst();
            return new Shortfall(
                    Shortfall.Kind.NO_FLAT,
                    Optional.of(zone),
                    best.map(FlatSpot::nearestMetres).orElse(OptionalDouble.empty()),
                    best.map(FlatSpot::spot),
                    OptionalInt.empty());
        }
        List<LineCandidate> free = allowed.stream()
                .filter(line -> isIn(zone, line) && !chosen.contains(line))
                .toList();
        if (free.isEmpty()) {
            boolean ruledOut = all.stream().anyMatch(line -> isIn(zone, line) && !allowed.contains(line));
            return Shortfall.of(ruledOut ? Shortfall.Kind.KEPT_AWAY : Shortfall.Kind.CROWDED, zone);
        }
        return new Shortfall(
                whyNot(free),
                Optional.of(zone),
                OptionalDouble.empty(),
                free.stream()
                        .max(Comparator.comparingDouble(LineCandidate::worth))
                        .map(LineCandidate::spot),
                OptionalInt.empty());
    }

    private Shortfall.Kind whyNot(List<LineCandidate> free) {
        if (chosen.size() >= wanted.maxLines()) {
            return Shortfall.Kind.ENOUGH_LINES;
        }
        List<LineCandidate> spaced = free.stream()
                .filter(line -> chosen.stream().allMatch(other -> LineRules.spaced(line.place(), other.place())))
                .toList();
        if (spaced.isEmpty()) {
            return Shortfall.Kind.CROWDED;
        }
        return spaced.stream().allMatch(line -> rigsWith(line) > wanted.maxRigs())
                ? Shortfall.Kind.ENOUGH_RIGS
                : Shortfall.Kind.NOT_WORTH_IT;
    }

    private int rigsWith(LineCandidate line) {
        List<Double> depths = new ArrayList<>(
                chosen.stream().map(each -> each.spot().depthMetres()).toList());
        depths.add(line.spot().depthMetres());
        return LineRules.rigs(depths);
    }
}
