package pegbed.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.model.Visit;
import pegbed.surface.prior.Hyperparameters;
import pegbed.surface.prior.Structure;
import pegbed.surface.survey.Survey;

/** Invented pegs for the tests of this package. */
public final class TestPegs {
    private TestPegs() {}

    /** A bent cut some 12 m wide without readings. */
    public static Peg bend() {
        List<BankPoint> near = new ArrayList<>();
        List<BankPoint> far = new ArrayList<>();
        for (double x = -12; x <= 12; x += 2) {
            near.add(BankPoint.at(x, -0.4 + 0.05 * x + 0.01 * x * x));
            far.add(BankPoint.at(x, 11.8 + 0.1 * x - 0.005 * x * x));
        }
        return Peg.EMPTY.withBanks(new Banks(near, far, List.of()));
    }

    /** The same with an island in the middle. */
    public static Peg bendWithIsland() {
        Banks banks = bend().banks();
        return bend().withBanks(new Banks(
                banks.near(),
                banks.far(),
                List.of(List.of(
                        BankPoint.at(2, 6), BankPoint.at(4, 6.2), BankPoint.at(4.2, 8), BankPoint.at(2.3, 7.7)))));
    }

    /** A pond: a straight near bank and no other. */
    public static Peg pond() {
        return Peg.EMPTY.withBanks(
                new Banks(List.of(BankPoint.at(-12, -0.5), BankPoint.at(12, -0.3)), List.of(), List.of()));
    }

    /** An invented bottom: dished, deeper to the right, with a hump. */
    static double bottom(double x, double y) {
        double across = Math.min(1, Math.max(0, y / 4)) * Math.min(1, Math.max(0, (12 - y) / 4));
        return 0.3 + 1.3 * across + 0.02 * x - 0.3 * Math.exp(-((x + 2) * (x + 2) + (y - 6) * (y - 6)) / 2);
    }

    /** Readings of the invented bottom in a fan of radials, with a repeatable scatter. */
    static List<Reading> fan(int count, long seed) {
        Random random = new Random(seed);
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double distance = 1.5 + 9.5 * random.nextDouble();
            double angle = -60 + 120 * random.nextDouble();
            readings.add(reading(distance, angle, 0.02 * random.nextGaussian()));
        }
        return readings;
    }

    private static Reading reading(double distance, double angle, double error) {
        Place place = Place.polar(distance, angle);
        return Reading.of(distance, angle, Math.max(0.05, bottom(place.xMetres(), place.yMetres()) + error));
    }

    static Peg with(Peg peg, List<Reading> readings) {
        return peg.withToday(visit -> visit.withReadings(readings));
    }

    static FittedBottom fit(Peg peg) throws InputException {
        return BottomModel.fit(Survey.of(peg), Monitor.NONE);
    }

    /** The fit of one structure; where readings are doubted, the one that was made before. */
    static StructureFit fit(FittedBottom bottom, Structure structure) {
        return bottom.fits().stream()
                .filter(fit -> fit.structure() == structure)
                .findFirst()
                .orElseThrow();
    }

    /** Hyperparameters of each structure. */
    static List<Hyperparameters> hyperparameters(FittedBottom bottom) {
        return bottom.fits().stream().map(StructureFit::hyperparameters).toList();
    }

    /** Hyperparameters of a whole water without banks. */
    public static Hyperparameters basin(FittedBottom bottom) {
        return fit(bottom, Structure.BASIN).hyperparameters();
    }

    /** Every structure fitted to other soundings with the hyperparameters and the weights of a bottom. */
    static FittedBottom refitted(FittedBottom bottom, Survey survey) {
        List<StructureFit> fits = bottom.fits().stream()
                .map(fit -> BottomModel.fitWith(survey, fit.structure(), fit.hyperparameters(), Monitor.NONE))
                .toList();
        return new FittedBottom(survey, NeighbouringPegs.NONE, fits, bottom.weights(), true, List.of());
    }

    /** One structure alone, as a bottom of its own. */
    static FittedBottom alone(StructureFit fit) {
        return new FittedBottom(fit.survey(), NeighbouringPegs.NONE, List.of(fit), new double[] {1}, true, List.of());
    }

    static Visit visit(OptionalDouble board, List<Reading> readings) {
        return new Visit(Visit.EMPTY.start(), board, readings, "", Visit.EMPTY.extras());
    }
}
