package pegbed.samples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Extras;
import pegbed.model.InputException;
import pegbed.model.Mark;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.model.Visit;
import pegbed.notation.Entry;
import pegbed.notation.Notation;
import pegbed.notation.ShortForm;
import pegbed.storage.disk.PegFile;

/**
 * Makes the sample pegs: an invented place, invented bottoms, and readings simulated from them with the errors of a
 * careful angler, typed in his own words. The same seed gives the same files.
 *
 * <p>Run {@code mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=pegbed.samples.SamplePegs} to
 * write them.
 */
public final class SamplePegs {
    static final String INVENTED = "Invented: place, bottom and readings are made up to show the program.";

    static final String INVENTED_FISHING = "Invented: what was fished, fed and caught is made up to show the program.";

    private SamplePegs() {}

    /** A bank beyond everything, metres. */
    private static double never(double xMetres) {
        return 1000;
    }

    public static void main(String[] args) throws IOException, InputException {
        Path folder = Path.of("sample-pegs");
        Files.createDirectories(folder);
        for (Map.Entry<String, Peg> sample : all().entrySet()) {
            Path file = folder.resolve(sample.getKey());
            Files.deleteIfExists(file);
            PegFile.save(file, sample.getValue(), Optional.empty());
        }
    }

    /** File name to peg. */
    static Map<String, Peg> all() throws InputException {
        Map<String, Peg> pegs = new TreeMap<>();
        pegs.put("tansy-cut-9.peg.json", tansyCut9());
        pegs.put("tansy-cut-14.peg.json", tansyCut14());
        pegs.put("hobbrel-pond-3.peg.json", hobbrelPond3());
        pegs.put("sallow-cut-5.peg.json", sallowCut5());
        return pegs;
    }

    private static Peg tansyCut14() throws InputException {
        InventedBottom bottom = new InventedBottom(
                x -> -0.9 + 0.15 * Math.sin(x / 5),
                x -> 12.3 + 0.35 * Math.sin(x / 6 + 1),
                x -> 0.84 + 0.01 * x / 5,
                2.0,
                0.83,
                3.2,
                x -> 1.66 + 0.05 * Math.exp(-(x + 2) * (x + 2) / 8),
                new double[] {1.2, 2.2});
        Sampler sampler = new Sampler(bottom, 14, 0);
        Peg peg = Peg.EMPTY
                .withName(new PegName("Mallowfield Pools", "Tansy Cut", "14"))
                .withBanks(new Banks(
                        sampler.bank(bottom.near(), -12, 12, 1.5), sampler.bank(bottom.far(), -12, 12, 1.5), List.of()))
                .withMarks(List.of(
                        mark("leaning post", -4.6, 13.0), mark("split ash", 0.7, 13.4), mark("white pipe", 5.2, 12.9)))
                .withToday(v -> visit("2026-06-13T07:20:00+01:00", OptionalDouble.of(0.31)));
        // The deepest first, then across along the ledge, then both margins.
        String[] places = {
            "s2 @ash",
            "s3 @ash",
            "s4 @ash",
            "s5 @ash",
            "s5+0.8 @ash",
            "s6 @ash",
            "s6+0.8 @ash",
            "s7 @ash",
            "s3 @post-1",
            "s4 @post-1",
            "s5 @post",
            "s6 @post",
            "s6+0.7 @post",
            "s7+0.4 @post",
            "s3 @pipe+1",
            "s4 @pipe+1",
            "s5 @pipe",
            "s6 @pipe",
            "s7 @pipe",
            "s7+0.6 @pipe",
            "s6+0.5 @post+1.5",
            "s7 @post+1.5",
            "s6+0.4 @ash-1.5",
            "s6+1.2 @ash-1.5",
            "s6+0.6 @ash+1.5",
            "s7 @ash+1.5",
            "s1 80L",
            "s2 82L",
            "s2+0.8 84L",
            "s3+0.5 88L",
            "s1+0.5 60L",
            "s2 70L",
            "s1 80R",
            "s2 82R",
            "s2+0.8 84R",
            "s3+0.5 88R",
            "s1+0.5 60R",
            "s2 70R"
        };
        return sampler.plumb(peg, places);
    }

    private static Peg tansyCut9() throws InputException {
        InventedBottom bottom = new InventedBottom(
                x -> -0.8 + 0.012 * x * x,
                x -> 11.6 + 0.02 * x * x,
                x -> 0.74,
                1.7,
                0.76,
                2.6,
                x -> 1.52 + 0.03 * Math.sin(x / 3),
                new double[] {1.4, 2.0});
        Sampler first = new Sampler(bottom, 9, 0);
        Peg peg = Peg.EMPTY
                .withName(new PegName("Mallowfield Pools", "Tansy Cut", "9"))
                .withBanks(new Banks(
                        first.bank(bottom.near(), -12, 12, 2), first.bank(bottom.far(), -12, 12, 2), List.of()))
                .withMarks(List.of(mark("white pipe", -3.4, 12.4), mark("leaning post", 3.9, 12.6)))
                .withToday(v -> visit("2026-05-02T08:05:00+01:00", OptionalDouble.empty()));
        String[] places = {
            "s2 12:00",
            "s3 12:00",
            "s4 12:00",
            "s5 12:00",
            "s6 12:00",
            "s6+0.9 12:00",
            "s3 @pipe",
            "s4 @pipe",
            "s5 @pipe",
            "s6 @pipe",
            "s6+0.8 @pipe",
            "s7 @pipe-1",
            "s3 @post",
            "s4 @post",
            "s5 @post",
            "s6 @post",
            "s6+0.8 @post",
            "s7 @post+1",
            "s1 80L",
            "s2 80L",
            "s3 84L",
            "s1 80R",
            "s2 80R",
            "s3 84R",
            "s1+0.6 65L",
            "s1+0.6 65R"
        };
        peg = first.plumb(peg, places);
        List<Visit> visits = new ArrayList<>(peg.visits());
        visits.add(visit("2026-07-18T07:40:00+01:00", OptionalDouble.empty()));
        // The water stands 8 cm higher: the same places read 8 cm deeper.
        return new Sampler(bottom, 90, 0.08)
                .plumb(peg.withVisits(visits), "s4 12:00", "s3 @post", "s6+0.8 @pipe", "s2 80R");
    }

    /** Plumbed once, fished on twelve visits. */
    private static Peg sallowCut5() throws InputException {
        InventedBottom bottom = new InventedBottom(
                x -> -0.8 + 0.1 * Math.sin(x / 4),
                x -> 12.0 + 0.02 * x,
                x -> 0.62,
                1.9,
                0.76,
                3.0,
                x -> 1.68,
                new double[] {1.2, 2.2});
        Sampler sampler = new Sampler(bottom, 5, 0);
        Peg peg = Peg.EMPTY
                .withName(new PegName("Mallowfield Pools", "Sallow Cut", "5"))
                .withBanks(new Banks(
                        sampler.bank(bottom.near(), -12, 12, 2), sampler.bank(bottom.far(), -12, 12, 2), List.of()))
                .withMarks(List.of(mark("stump", -3.0, 12.8), mark("forked willow", 4.2, 12.9)))
                .withToday(v -> new Visit(
                        Optional.of(InventedVisits.firstStart()),
                        InventedVisits.firstBoard(),
                        List.of(),
                        INVENTED,
                        Extras.NONE));
        String[] places = {
            "s2 12:00",
            "s3 12:00",
            "s4 12:00",
            "s5 12:00",
            "s6 12:00",
            "s6+0.9 12:00",
            "s3 @stump",
            "s4 @stump",
            "s5 @stump",
            "s6 @stump",
            "s6+0.8 @stump",
            "s7 @stump-1",
            "s3 @willow",
            "s4 @willow",
            "s5 @willow",
            "s6 @willow",
            "s6+0.8 @willow",
            "s7 @willow+1",
            "s1 80L",
            "s2 80L",
            "s3 84L",
            "s1 80R",
            "s2 80R",
            "s3 84R",
            "s1+0.6 65L",
            "s1+0.6 65R"
        };
        return new InventedVisits(new Place(-1.6, 10.4), new Place(0.4, 6.2), new Place(-2.5, 0.8), new Place(0, 3))
                .over(sampler.plumb(peg, places));
    }

    private static Peg hobbrelPond3() throws InputException {
        InventedBottom bottom = new InventedBottom(
                x -> -0.7 + 0.1 * Math.cos(x / 4), SamplePegs::never, x -> 0.78, 3.0, 0, 0, x -> 2.3, new double[] {
                    5.5, 1
                });
        Sampler sampler = new Sampler(bottom, 3, 0);
        Peg peg = Peg.EMPTY
                .withName(new PegName("Mallowfield Pools", "Hobbrel Pond", "3"))
                .withBanks(new Banks(sampler.bank(bottom.near(), -14, 14, 2), List.of(), List.of()))
                .withMarks(List.of(mark("gate", 9.0, 38.0)))
                .withToday(v -> visit("2026-08-22T06:50:00+01:00", OptionalDouble.of(0.55)));
        String[] places = {
            "s1 0",
            "s2 0",
            "s3 0",
            "s4 0",
            "s5 0",
            "s6 0",
            "s8 0",
            "s10 0",
            "s2 30L",
            "s3 25L",
            "s5 25L",
            "s7 30L",
            "s9 30L",
            "s2 30R",
            "s3 25R",
            "s5 25R",
            "s7 30R",
            "s9 @gate+10deg",
            "s1 80L",
            "s2 82L",
            "s3 84L",
            "s1 80R",
            "s2 82R",
            "s3 84R",
            "s4 50L",
            "s4 50R",
            "s6 55L",
            "s6 55R"
        };
        return sampler.plumb(peg, places);
    }

    private static Mark mark(String name, double x, double y) {
        return new Mark(name, new Place(x, y), Extras.NONE);
    }

    private static Visit visit(String start, OptionalDouble board) {
        return new Visit(Optional.of(OffsetDateTime.parse(start)), board, List.of(), INVENTED, Extras.NONE);
    }

    /** An angler at work: aims at a place, gets there nearly, reads the depth nearly, and types what he read. */
    private static final class Sampler {
        private final InventedBottom bottom;
        private final double level;
        private final Random random;

        Sampler(InventedBottom bottom, long seed, double level) {
            this.bottom = bottom;
            this.level = level;
            this.random = new Random(seed);
        }

        List<BankPoint> bank(DoubleUnaryOperator line, double from, double to, double step) {
            List<BankPoint> points = new ArrayList<>();
            for (double x = from; x <= to; x += step) {
                double y = line.applyAsDouble(x) + 0.08 * random.nextGaussian();
                points.add(BankPoint.at(x, Math.round(y * 100) / 100.0));
            }
            return points;
        }

        Peg plumb(Peg empty, String... places) throws InputException {
            Peg peg = empty;
            Notation notation = Notation.of(peg);
            ShortForm shortForm = new ShortForm(peg.units(), peg.pole(), '.');
            for (String place : places) {
                Reading aimed = ((pegbed.notation.Line.ReadingLine) notation.parse(place + " 1m")).reading();
                double r =
                        aimed.place().distanceMetres() + aimed.precision().sdDistanceMetres() * random.nextGaussian();
                double a = aimed.place().angleDegrees() + aimed.precision().sdAngleDegrees() * random.nextGaussian();
                Place reached = Place.polar(r, a);
                double depth =
                        bottom.depth(reached.xMetres(), reached.yMetres()) + level + 0.012 * random.nextGaussian();
                String halfInch = shortForm.printDepth(Math.max(1, Math.round(depth / 0.0127)) * 0.0127);
                String felt = bottom.depth(reached.xMetres(), reached.yMetres()) > 1.4 ? " silt" : " firm";
                peg = Entry.in(peg, notation.parse(place + " " + halfInch + felt));
            }
            return peg;
        }
    }
}
