package pegbed.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Bottom;
import pegbed.model.Extras;
import pegbed.model.Hazard;
import pegbed.model.InputException;
import pegbed.model.Mark;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Pole;
import pegbed.model.Precision;
import pegbed.model.Reading;
import pegbed.model.Typed;
import pegbed.model.Wishes;
import pegbed.plan.Plan;

/** Pegs over bottoms of known shape, plumbed well; invented. */
public final class Grounds {
    public static final double FOOT = 0.3048;

    /** A cut 13 m wide: ledges of 2 ft 6 in under both banks, a track of 5 ft 6 in. */
    public static final Peg LEDGES = peg((x, y) -> {
        double near = step(y, 2.0, 4.0);
        double far = step(13 - y, 3.5, 5.5);
        return FOOT * (2.5 + 3 * Math.min(near, far));
    });

    /** As {@link #LEDGES}, but the right margin goes down to 2 ft 1 in only. */
    public static final Peg SHALLOW_RIGHT = peg((x, y) -> {
        double near = step(y, 2.0, 4.0);
        double far = step(13 - y, 3.5, 5.5);
        double ledge = x > 0.8 && y < 4 ? 2 + 1 / 12.0 : 2.5;
        return FOOT * (ledge + (5.5 - ledge) * Math.min(near, far));
    });

    /** As {@link #LEDGES}, but across 2 ft 6 in only within 1 m of straight out, and 3 ft beside. */
    public static final Peg ONE_BAR = peg((x, y) -> {
        double near = step(y, 2.0, 4.0);
        double far = step(13 - y, 3.5, 5.5);
        double ledge = y > 6 ? 2.5 + 0.5 * step(Math.abs(x), 0.9, 1.6) : 2.5;
        return FOOT * (ledge + (5.5 - ledge) * Math.min(near, far));
    });

    private Grounds() {}

    private static double step(double at, double from, double to) {
        double share = Math.min(1, Math.max(0, (at - from) / (to - from)));
        return share * share * (3 - 2 * share);
    }

    static Peg peg(DoubleBinaryOperator depth) {
        List<Reading> readings = new ArrayList<>();
        for (int angle = -90; angle <= 90; angle += 15) {
            for (double distance = 1.5; distance <= 13; distance += 0.9) {
                Place place = Place.polar(distance, angle);
                double y = place.yMetres();
                if (y > 0.3 && y < 12.8 && Math.abs(place.xMetres()) < 9 && (Math.abs(angle) < 70 || distance < 7)) {
                    readings.add(reading(place, depth.applyAsDouble(place.xMetres(), y)));
                }
            }
        }
        return Peg.EMPTY
                .withPole(Pole.USUAL.withReach(13))
                .withBanks(new Banks(
                        List.of(BankPoint.at(-12, -0.3), BankPoint.at(0, -0.3), BankPoint.at(12, -0.3)),
                        List.of(BankPoint.at(-12, 13), BankPoint.at(0, 13), BankPoint.at(12, 13)),
                        List.of()))
                .withMarks(List.of(
                        new Mark("leaning post", new Place(-3, 13.2), Extras.NONE),
                        new Mark("white pipe", new Place(3, 13.2), Extras.NONE)))
                .withToday(visit -> visit.withReadings(readings));
    }

    private static Reading reading(Place place, double depth) {
        Reading plain = Reading.of(place.distanceMetres(), place.angleDegrees(), depth);
        return new Reading(
                Typed.NOTHING, place, new Precision(0.03, 0.3), depth, Bottom.FIRM, "", plain.time(), Extras.NONE);
    }

    public static Hazard hazard(Hazard.Kind kind, double radius, Place... outline) {
        return new Hazard(kind, List.of(outline), radius, "", Typed.NOTHING, Extras.NONE);
    }

    public static Findings findings(Peg peg) {
        try {
            return Findings.of(PegMap.of(peg, Monitor.NONE), OptionalDouble.empty());
        } catch (InputException e) {
            throw new IllegalStateException(e);
        }
    }

    public static Findings findings(Peg peg, double target) {
        try {
            return Findings.of(PegMap.of(peg, Monitor.NONE), OptionalDouble.of(target));
        } catch (InputException e) {
            throw new IllegalStateException(e);
        }
    }

    static Plan plan(Peg peg) {
        return Plan.of(findings(peg), Wishes.NONE);
    }
}
