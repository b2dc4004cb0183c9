package pegbed.bench.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;

/**
 * A peg one of whose readings was made grossly wrong.
 *
 * @param peg with the wrong reading
 * @param reading its number, from 0
 * @param metres by how much it reads too deep
 */
public record GrossError(Peg peg, int reading, double metres) {
    /** The least error that is called gross, metres. */
    public static final double LEAST_METRES = 0.3;

    private static final double MOST_METRES = 1.5;

    /** How far a plummet may have landed from where it was meant, in standard deviations. */
    private static final double LANDED_SDS = 2;

    /**
     * Makes a reading wrong that was not, drawn by chance, by 0.3 to 1.5 m too deep or too shallow; too deep where it
     * would come out of the water.
     */
    public static GrossError in(PracticePeg practice, Peg peg, Random random) {
        List<Reading> readings = new ArrayList<>(peg.readings());
        int number = random.nextInt(readings.size());
        while (isGross(practice, readings.get(number))) {
            number = (number + 1) % readings.size();
        }
        double size = LEAST_METRES + (MOST_METRES - LEAST_METRES) * random.nextDouble();
        double depth = readings.get(number).depthMetres();
        double error = random.nextBoolean() || depth - size < 0 ? size : -size;
        readings.set(number, read(readings.get(number), depth + error));
        return new GrossError(practice.with(readings), number, error);
    }

    private static Reading read(Reading reading, double depthMetres) {
        return new Reading(
                reading.typed(),
                reading.place(),
                reading.precision(),
                depthMetres,
                reading.bottom(),
                reading.note(),
                reading.time(),
                reading.extras());
    }

    /**
     * Whether a reading is {@value #LEAST_METRES} m or more from every true depth within two standard deviations of the
     * place for which it was meant.
     */
    public static boolean isGross(PracticePeg practice, Reading reading) {
        Place meant = reading.place();
        double along = LANDED_SDS * practice.noise().sdDistanceMetres();
        double aside = LANDED_SDS * practice.noise().sdDirectionDegrees();
        for (int i = -2; i <= 2; i++) {
            for (int j = -2; j <= 2; j++) {
                Place landed = Place.polar(
                        Math.max(0, meant.distanceMetres() + along * i / 2), meant.angleDegrees() + aside * j / 2);
                double depth = practice.truth().depthAt(landed.xMetres(), landed.yMetres());
                if (Math.abs(reading.depthMetres() - depth) < LEAST_METRES) {
                    return false;
                }
            }
        }
        return true;
    }
}
