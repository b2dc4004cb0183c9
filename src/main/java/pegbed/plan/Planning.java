package pegbed.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import pegbed.findings.Confidence;
import pegbed.findings.Findings;
import pegbed.findings.FlatProbability;
import pegbed.findings.PegMap;
import pegbed.findings.Zone;
import pegbed.geometry.PegWater;
import pegbed.geometry.Shapes;
import pegbed.model.Bottom;
import pegbed.model.Hazard;
import pegbed.model.LineCounts;
import pegbed.model.LinePin;
import pegbed.model.LineWishes;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.model.RigTemplate;
import pegbed.model.RigWishes;
import pegbed.model.StartLine;
import pegbed.model.Wishes;
import pegbed.surface.posterior.Disc;

/** Makes one {@link Plan}. */
final class Planning {
    /** Readings further away than this say nothing of a line's ground, metres. */
    private static final double FELT_METRES = 1;

    /** A place is named as better only where it is worth so much more. */
    private static final double NOTICEABLE_WORTH = 0.03;

    /** Margins come last: fish come to them late, when all is quiet (common practice). */
    private static final int MARGINS = 4;

    private final Findings findings;
    private final PegMap map;
    private final Wishes wishes;
    private final List<Geometry> overhead;
    private final List<Shortfall> shortfalls = new ArrayList<>();

    Planning(Findings findings, Wishes wishes) {
        this.findings = findings;
        this.wishes = wishes;
        map = findings.map();
        overhead = map.peg().hazards().stream()
                .filter(hazard -> hazard.kind() == Hazard.Kind.OVERHEAD_LINE || hazard.kind() == Hazard.Kind.LOW_BRANCH)
                .map(PegWater::around)
                .toList();
    }

    Plan plan() {
        LineWishes lines = wishes.lines();
        LineCounts wantedCounts = lines.wanted();
        List<LineCandidate> all = LineCandidates.of(findings, wantedCounts);
        List<LineCandidate> allowed = new ArrayList<>(fixed());
        int fixed = allowed.size();
        all.stream().filter(this::isAllowed).forEach(allowed::add);
        int maxLines = lines.most().orElse(LineWishes.MOST);
        int maxRigs = wishes.rigs().most().orElse(RigWishes.MOST);
        List<Integer> counts = Arrays.stream(Zone.values())
                .map(zone -> LineCandidates.number(wantedCounts, zone))
                .toList();
        LineChoice.Wanted wanted = new LineChoice.Wanted(counts, Math.max(maxLines, fixed), maxRigs);
        List<LineCandidate> chosen =
                started(ordered(LineChoice.best(allowed, wanted).lines()));
        List<Rig> rigs = rigs(chosen);
        if (fixed > maxLines) {
            shortfalls.add(Shortfall.ofAll(Shortfall.Kind.FIXED_TOO_MANY));
        }
        if (rigs.size() > maxRigs) {
            shortfalls.add(Shortfall.ofAll(Shortfall.Kind.FIXED_NEED_RIGS));
        }
        shortfalls.addAll(new Shortfalls(findings, all, allowed, chosen, wanted).find());
        return new Plan(findings, wishes, planned(chosen, rigs, allowed), rigs, shortfalls);
    }

    /** The fixed lines that can be fished, in the person's order; what can't be is noted. */
    private List<LineCandidate> fixed() {
        List<LineCandidate> kept = new ArrayList<>();
        for (LinePin pin : wishes.lines().fixed()) {
            LineCandidate line = LineCandidates.fixed(findings, pin.place());
            Optional<Shortfall.Kind> trouble = trouble(line, kept);
            if (trouble.isPresent()) {
                shortfalls.add(Shortfall.ofPin(trouble.get(), line.spot()));
            } else {
                kept.add(line);
            }
        }
        return kept;
    }

    private Optional<Shortfall.Kind> trouble(LineCandidate line, List<LineCandidate> kept) {
        Geometry point = Shapes.FACTORY.createPoint(Shapes.coordinate(line.place()));
        if (!map.water().fishable().covers(point)) {
            return Optional.of(Shortfall.Kind.FIXED_OUTSIDE);
        }
        if (isUnderSomething(line.place())) {
            return Optional.of(Shortfall.Kind.FIXED_UNDER_SOMETHING);
        }
        return kept.stream().allMatch(other -> LineRules.spaced(other.place(), line.place()))
                ? Optional.empty()
                : Optional.of(Shortfall.Kind.FIXED_CROWDED);
    }

    private boolean isAllowed(LineCandidate line) {
        return !isUnderSomething(line.place())
                && wishes.lines().forbidden().stream()
                        .noneMatch(pin -> pin.place().distanceTo(line.place()) < LineRules.FORBIDDEN_METRES);
    }

    private boolean isUnderSomething(Place place) {
        Geometry pole =
                Shapes.FACTORY.createLineString(new Coordinate[] {new Coordinate(0, 0), Shapes.coordinate(place)});
        return overhead.stream().anyMatch(pole::intersects);
    }

    /** In the order in which they are fished: the first that is at least likely goes to the front, margins never. */
    private static List<LineCandidate> ordered(List<LineCandidate> lines) {
        List<LineCandidate> order = new ArrayList<>(lines);
        order.sort(Comparator.comparingInt(Planning::turn)
                .thenComparingDouble(line -> line.place().xMetres()));
        for (LineCandidate line : order) {
            if (turn(line) < MARGINS && line.spot().pFlat() >= Confidence.LIKELY.minProbability()) {
                order.remove(line);
                order.add(0, line);
                break;
            }
        }
        return order;
    }

    /** Where the person likes to start goes to the front: the surest line there; noted if there is none. */
    private List<LineCandidate> started(List<LineCandidate> lines) {
        Optional<StartLine> wished = wishes.lines().start();
        if (wished.isEmpty() || lines.isEmpty()) {
            return lines;
        }
        Optional<LineCandidate> first = lines.stream()
                .filter(line -> line.zone().map(Planning::part).equals(wished))
                .max(Comparator.comparingDouble(line -> line.spot().pFlat()));
        if (first.isEmpty()) {
            shortfalls.add(Shortfall.ofAll(Shortfall.Kind.NO_START));
            return lines;
        }
        List<LineCandidate> order = new ArrayList<>(lines);
        order.remove(first.get());
        order.add(0, first.get());
        return order;
    }

    /** The part, as a person says it, that a zone belongs to. */
    static StartLine part(Zone zone) {
        return switch (zone) {
            case TRACK -> StartLine.TRACK;
            case ACROSS -> StartLine.ACROSS;
            case SHORT -> StartLine.SHORT;
            case LEFT_MARGIN, RIGHT_MARGIN -> StartLine.MARGIN;
        };
    }

    private static int turn(LineCandidate line) {
        return line.zone()
                .map(zone -> switch (zone) {
                    case TRACK -> 0;
                    case SHORT -> 1;
                    case ACROSS -> 2;
                    case LEFT_MARGIN, RIGHT_MARGIN -> MARGINS;
                })
                .orElse(3);
    }

    private static PlannedLine.Role role(int index, LineCandidate line) {
        if (index == 0) {
            return PlannedLine.Role.START;
        }
        return turn(line) < MARGINS ? PlannedLine.Role.PRIME : PlannedLine.Role.REST;
    }

    private List<Rig> rigs(List<LineCandidate> lines) {
        List<Double> depths =
                lines.stream().map(line -> line.spot().depthMetres()).toList();
        List<Rig> rigs = new ArrayList<>();
        for (List<Integer> group : RigCover.fewest(depths, LineRules.TRAVEL_METRES)) {
            double deepest = depths.get(group.get(group.size() - 1));
            boolean slope =
                    group.stream().anyMatch(i -> lines.get(i).spot().slope() > FlatProbability.USUAL.slopeLimit());
            RigTemplate template = template(deepest, slope);
            double overdepth = wishes.rigs().overdepthMetres().orElse(template.tipToBodyMetres());
            List<Rig.Setting> settings = group.stream()
                    .map(i -> new Rig.Setting(i + 1, depths.get(i) + overdepth))
                    .toList();
            rigs.add(new Rig(rigs.size() + 1, template, overdepth, settings));
        }
        return rigs;
    }

    /** The shallowest template that is deep enough, for this ground where there is one; else the deepest. */
    private RigTemplate template(double depthMetres, boolean slope) {
        RigTemplate.Ground ground = slope ? RigTemplate.Ground.SLOPE : RigTemplate.Ground.LEVEL;
        List<RigTemplate> templates = wishes.rigs().templatesOrUsual().stream()
                .sorted(Comparator.comparing((RigTemplate template) -> template.ground() != ground)
                        .thenComparing(RigTemplate::upToMetres))
                .toList();
        return templates.stream()
                .filter(template -> template.upToMetres() >= depthMetres)
                .findFirst()
                .orElseGet(() -> templates.stream()
                        .max(Comparator.comparingDouble(RigTemplate::upToMetres))
                        .orElseThrow());
    }

    private List<PlannedLine> planned(List<LineCandidate> chosen, List<Rig> rigs, List<LineCandidate> allowed) {
        List<PlannedLine> lines = new ArrayList<>();
        for (int i = 0; i < chosen.size(); i++) {
            int number = i + 1;
            LineCandidate line = chosen.get(i);
            Rig rig = rigs.stream()
                    .filter(each -> each.settings().stream().anyMatch(setting -> setting.line() == number))
                    .findFirst()
                    .orElseThrow();
            Disc disc = map.bottom().disc(line.place().xMetres(), line.place().yMetres());
            lines.add(new PlannedLine(
                    number,
                    line,
                    rig.number(),
                    role(i, line),
                    Math.toDegrees(Math.atan2(disc.slopeX(), disc.slopeY())),
                    felt(line.place()),
                    neighbours(chosen, i),
                    givenUp(chosen, i, allowed)));
        }
        return lines;
    }

    private Bottom felt(Place place) {
        return map.peg().readings().stream()
                .filter(reading -> reading.place().distanceTo(place) <= FELT_METRES)
                .min(Comparator.comparingDouble(reading -> reading.place().distanceTo(place)))
                .map(Reading::bottom)
                .filter(Bottom::soft)
                .orElse(Bottom.UNKNOWN);
    }

    private static List<PlannedLine.Neighbour> neighbours(List<LineCandidate> chosen, int i) {
        Place place = chosen.get(i).place();
        List<PlannedLine.Neighbour> found = new ArrayList<>();
        for (int j = 0; j < chosen.size(); j++) {
            if (j != i) {
                Place other = chosen.get(j).place();
                found.add(new PlannedLine.Neighbour(j + 1, place.distanceTo(other), LineRules.inTheWay(place, other)));
            }
        }
        found.sort(Comparator.comparingDouble(PlannedLine.Neighbour::metres));
        return List.copyOf(found);
    }

    private static Optional<PlannedLine.GivenUp> givenUp(
            List<LineCandidate> chosen, int i, List<LineCandidate> allowed) {
        LineCandidate line = chosen.get(i);
        if (line.isFixed()) {
            return Optional.empty();
        }
        return allowed.stream()
                .filter(other -> !chosen.contains(other) && other.zone().equals(line.zone()))
                .filter(other -> other.worth() > line.worth() + NOTICEABLE_WORTH)
                .max(Comparator.comparingDouble(LineCandidate::worth))
                .flatMap(better -> reason(chosen, i, better));
    }

    private static Optional<PlannedLine.GivenUp> reason(List<LineCandidate> chosen, int i, LineCandidate better) {
        for (int j = 0; j < chosen.size(); j++) {
            if (j != i && !LineRules.spaced(better.place(), chosen.get(j).place())) {
                return Optional.of(new PlannedLine.GivenUp(better, PlannedLine.Reason.SPACING, j + 1));
            }
        }
        for (int j = 0; j < chosen.size(); j++) {
            if (j != i && LineRules.inTheWay(better.place(), chosen.get(j).place())) {
                return Optional.of(new PlannedLine.GivenUp(better, PlannedLine.Reason.PATH, j + 1));
            }
        }
        List<LineCandidate> swapped = new ArrayList<>(chosen);
        swapped.set(i, better);
        return rigCount(swapped) > rigCount(chosen)
                ? Optional.of(new PlannedLine.GivenUp(better, PlannedLine.Reason.RIG, 0))
                : Optional.empty();
    }

    private static int rigCount(List<LineCandidate> lines) {
        return LineRules.rigs(
                lines.stream().map(line -> line.spot().depthMetres()).toList());
    }
}
