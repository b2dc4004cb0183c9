package pegbed.bench.practice;

import java.util.Random;
import pegbed.model.Place;
import pegbed.model.Reading;

/**
 * A simulated angler: wants a reading at a place, lands the plummet beside it, and reads the depth there with some
 * error. The same seed gives the same errors, reading by reading.
 */
public final class SimulatedPlumbing {
    private static final int TRIES = 50;

    /** What is read where every try lands on dry ground: the water's edge, metres. */
    private static final double EDGE_METRES = 0.1;

    private final PracticePeg peg;
    private final Random random;

    public SimulatedPlumbing(PracticePeg peg, long seed) {
        this.peg = peg;
        random = new Random(seed);
    }

    /** One reading meant for a place. A plummet that lands on dry ground is thrown again. */
    public Reading read(Place meant) {
        PracticePeg.ReadingNoise noise = peg.noise();
        double depth = Double.NaN;
        for (int i = 0; i < TRIES && Double.isNaN(depth); i++) {
            Place landed = Place.polar(
                    meant.distanceMetres() + noise.sdDistanceMetres() * random.nextGaussian(),
                    meant.angleDegrees() + noise.sdDirectionDegrees() * random.nextGaussian());
            depth = peg.truth().depthAt(landed.xMetres(), landed.yMetres());
        }
        double read = (Double.isNaN(depth) ? EDGE_METRES : depth) + noise.sdDepthMetres() * random.nextGaussian();
        return Reading.of(meant.distanceMetres(), meant.angleDegrees(), Math.max(0, read));
    }
}
