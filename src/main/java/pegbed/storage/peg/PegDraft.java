package pegbed.storage.peg;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Day;
import pegbed.model.DayEvent;
import pegbed.model.Hazard;
import pegbed.model.Limits;
import pegbed.model.Mark;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Pole;
import pegbed.model.Position;
import pegbed.model.Reading;
import pegbed.model.Units;
import pegbed.model.Visit;
import pegbed.model.Wishes;

/**
 * What has been read of a peg file so far. Filled from the top down, so that a file that breaks off leaves its start.
 */
final class PegDraft {
    private static final Map<String, Units.Depth> DEPTH_UNITS =
            ElementParser.words(Units.Depth.values(), PegWriter::word);
    private static final Map<String, Units.Distance> DISTANCE_UNITS =
            ElementParser.words(Units.Distance.values(), PegWriter::word);

    final Fields top;
    final List<BankPoint> near = new ArrayList<>();
    final List<BankPoint> far = new ArrayList<>();
    final List<List<BankPoint>> islands = new ArrayList<>();
    final List<Mark> marks = new ArrayList<>();
    final List<Hazard> hazards = new ArrayList<>();
    final List<VisitDraft> visits = new ArrayList<>();
    WishesDraft wishes;
    private final Set<String> markNames = new HashSet<>();

    /** A visit and those of its readings and events that stand whole in the file. */
    static final class VisitDraft {
        final Fields fields;
        final List<Reading> readings = new ArrayList<>();
        final List<DayEvent> events = new ArrayList<>();

        /** Whether its list of readings was met. */
        boolean hasReadings;

        /** Whether it was read to its end. */
        boolean isWhole;

        VisitDraft(Fields fields) {
            this.fields = fields;
        }

        Visit visit() {
            if (isWhole && !hasReadings) {
                fields.trouble("readings is missing.");
            }
            noteRepeats(fields);
            return ElementParser.visit(fields, readings, events);
        }
    }

    VisitDraft addVisit(Damage damage, int offset) {
        visits.add(new VisitDraft(new Fields(damage, "visit " + (visits.size() + 1), offset)));
        return lastVisit();
    }

    VisitDraft lastVisit() {
        return visits.get(visits.size() - 1);
    }

    PegDraft(Fields top) {
        this.top = top;
    }

    void addMark(Fields fields) {
        Mark mark = ElementParser.mark(fields);
        if (!markNames.add(mark.name().toLowerCase(Locale.ROOT))) {
            throw new IllegalArgumentException("there is another mark of that name; give each its own.");
        }
        marks.add(mark);
    }

    void addEvent(Fields fields) {
        List<DayEvent> events = lastVisit().events;
        if (events.size() == Day.MOST_EVENTS) {
            throw new IllegalArgumentException("a visit holds at most " + Day.MOST_EVENTS + " events.");
        }
        events.add(DayElements.event(fields));
    }

    int readings() {
        return visits.stream().mapToInt(visit -> visit.readings.size()).sum();
    }

    /** How many readings, bank points, marks, hazards and events there are. */
    int size() {
        int rings = islands.stream().mapToInt(List::size).sum();
        int events = visits.stream().mapToInt(visit -> visit.events.size()).sum();
        return readings() + events + near.size() + far.size() + rings + marks.size() + hazards.size();
    }

    /** The peg. Takes the fields, so that it works once. */
    Peg peg() {
        PegName name = new PegName(top.words("venue"), top.words("water"), top.words("number"));
        Optional<Position> position = position();
        Units units = new Units(
                top.oneOf("depth_unit", DEPTH_UNITS).orElse(Units.USUAL.depth()),
                top.oneOf("distance_unit", DISTANCE_UNITS).orElse(Units.USUAL.distance()));
        Pole pole = pole();
        Limits limits = limits();
        noteRepeats(top);
        return new Peg(
                name,
                position,
                units,
                pole,
                new Banks(near, far, islands),
                limits,
                marks,
                hazards,
                wishes(),
                visits(),
                top.extras());
    }

    private Wishes wishes() {
        if (wishes == null) {
            return Wishes.NONE;
        }
        noteRepeats(wishes.fields);
        return wishes.wishes();
    }

    private List<Visit> visits() {
        if (visits.isEmpty()) {
            top.trouble("visits must be a list of one visit at least.");
            return List.of(Visit.EMPTY);
        }
        return visits.stream().map(VisitDraft::visit).toList();
    }

    private static void noteRepeats(Fields fields) {
        fields.repeats().forEach((name, at) -> fields.trouble(name + " stands twice; the first was taken."));
    }

    private Optional<Position> position() {
        if (!top.has("latitude_deg") && !top.has("longitude_deg") && !top.has("bearing_deg")) {
            return Optional.empty();
        }
        try {
            double latitude = top.needed("latitude_deg", -90, 90);
            double longitude = top.needed("longitude_deg", -180, 180);
            double bearing = top.needed("bearing_deg", 0, 360);
            return Optional.of(new Position(
                    latitude, longitude, bearing, top.number("position_accuracy_m", 0, Position.WORST_METRES)));
        } catch (IllegalArgumentException e) {
            top.drop("latitude_deg", "longitude_deg", "bearing_deg");
            top.trouble("the position is lost: " + e.getMessage());
            return Optional.empty();
        }
    }

    private Pole pole() {
        if (!top.has("pole_joints_m")) {
            return Pole.USUAL;
        }
        try {
            return new Pole(top.numbers("pole_joints_m"));
        } catch (IllegalArgumentException e) {
            top.trouble("the pole is lost, and the usual one taken: " + e.getMessage());
            return Pole.USUAL;
        }
    }

    private Limits limits() {
        double most = NumberText.FARTHEST_METRES;
        OptionalDouble left = top.number("left_limit_m", -most, most);
        OptionalDouble right = top.number("right_limit_m", -most, most);
        try {
            return new Limits(left, right);
        } catch (IllegalArgumentException e) {
            top.trouble("the limits are lost: " + e.getMessage());
            return Limits.NONE;
        }
    }
}
