package pegbed.bench.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.model.Visit;

/**
 * A simulated angler on a later visit to a practice peg: he gets nearly where he wants, and reads nearly what is there.
 */
public final class SecondVisit {
    private final PracticePeg practice;
    private final DoubleBinaryOperator bottom;
    private final double levelMetres;
    private final Random random;

    /**
     * @param bottom depth at the first visit's level, NaN on land
     * @param levelMetres how much higher the water stands than at the first visit
     */
    public SecondVisit(PracticePeg practice, DoubleBinaryOperator bottom, double levelMetres, Random random) {
        this.practice = practice;
        this.bottom = bottom;
        this.levelMetres = levelMetres;
        this.random = random;
    }

    /** Where an angler who wants to get to a place gets to. */
    public Place reached(Place wanted) {
        return Place.polar(
                Math.max(0.1, wanted.distanceMetres() + practice.noise().sdDistanceMetres() * random.nextGaussian()),
                wanted.angleDegrees() + practice.noise().sdDirectionDegrees() * random.nextGaussian());
    }

    /** The reading taken at a wanted place; empty where it turns out to be land. */
    public Optional<Reading> read(Place wanted) {
        return readAt(wanted, reached(wanted));
    }

    /** The reading of an angler who wants one place and gets to another. */
    public Optional<Reading> readAt(Place wanted, Place reached) {
        double depth = bottom.applyAsDouble(reached.xMetres(), reached.yMetres())
                + levelMetres
                + practice.noise().sdDepthMetres() * random.nextGaussian();
        return Double.isNaN(depth)
                ? Optional.empty()
                : Optional.of(Reading.of(wanted.distanceMetres(), wanted.angleDegrees(), Math.max(0.02, depth)));
    }

    /** Readings at some of the first visit's places, chosen by chance. */
    public List<Reading> ordinary(Peg first, int count) {
        List<Reading> places = new ArrayList<>(first.readings());
        java.util.Collections.shuffle(places, random);
        List<Reading> readings = new ArrayList<>();
        for (Reading place : places) {
            if (readings.size() < count) {
                read(place.place()).ifPresent(readings::add);
            }
        }
        return readings;
    }

    /** The peg with a second visit of these readings. */
    public static Peg after(Peg first, List<Reading> readings) {
        return first.withVisits(List.of(first.today(), Visit.EMPTY.withReadings(readings)));
    }
}
