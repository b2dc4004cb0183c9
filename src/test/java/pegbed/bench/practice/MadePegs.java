package pegbed.bench.practice;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import pegbed.geometry.PegWater;
import pegbed.model.InputException;
import pegbed.model.Place;

/**
 * Makes folders of practice pegs (invented: no real water) by {@link MadeBottom}'s recipe, for {@code bench quality
 * --practice} and {@code bench visits --practice}: {@code mvn -q test-compile exec:java
 * -Dexec.mainClass=pegbed.bench.practice.MadePegs -Dexec.classpathScope=test -Dexec.args="FOLDER COUNT SEED"}. The same
 * seed makes the same pegs; every fifth is open water.
 */
public final class MadePegs {
    private static final String USAGE =
            "Give a folder to write to, how many pegs to make (1 to 1000) and a seed, such as: practice-made 24 1";

    private static final int MOST = 1000;

    /** The tables of readings, with how many readings each has. */
    private static final Map<String, Integer> TABLES =
            new TreeMap<>(Map.of("fan15.csv", 15, "stagger20.csv", 20, "fan30.csv", 30));

    private MadePegs() {}

    /**
     * Writes made pegs.
     *
     * @param args folder, number of pegs, seed
     * @throws IllegalArgumentException if they are not these three
     */
    public static void main(String[] args) throws IOException, InputException {
        if (args.length != 3 || !args[1].matches("\\d{1,4}") || !args[2].matches("-?\\d{1,9}")) {
            throw new IllegalArgumentException(USAGE);
        }
        Path folder = Path.of(args[0]);
        int count = Integer.parseInt(args[1]);
        long seed = Long.parseLong(args[2]);
        if (count < 1 || count > MOST) {
            throw new IllegalArgumentException(USAGE);
        }
        for (int i = 0; i < count; i++) {
            Path peg = folder.resolve(String.format(Locale.ROOT, "made-%d-%02d", seed, i));
            long bottom = seed * 7919 + i;
            write(peg, new MadeBottom(new Random(bottom), i % 5 == 4));
            writeReadings(peg, bottom);
        }
    }

    /** Writes the banks, the truth and the figures of one peg, without readings. */
    public static void write(Path folder, MadeBottom bottom) throws IOException {
        Files.createDirectories(folder);
        Random errors = bottom.random();
        int reach = bottom.reachMetres();
        Files.writeString(folder.resolve("truth.txt"), truth(bottom));
        Files.writeString(folder.resolve("banks.csv"), banks(bottom, errors));
        Map<String, Object> about = new LinkedHashMap<>();
        about.put("reach_m", reach);
        about.put("sd_depth_firm_m", between(errors, 0.01, 0.02));
        about.put("sd_distance_m", between(errors, 0.10, 0.20));
        about.put("sd_direction_deg", between(errors, 2, 4));
        MadeTasks tasks = new MadeTasks(bottom);
        about.put("deepest_disc_m", tasks.deepestMetres());
        List<Map<String, Object>> list = new ArrayList<>();
        for (PracticePeg.Task task : tasks.all()) {
            Map<String, Object> written = new LinkedHashMap<>();
            written.put("zone", task.zone());
            written.put("target_m", task.targetMetres());
            written.put("feasible", task.feasible());
            list.add(written);
        }
        about.put("tasks", list);
        new ObjectMapper().writeValue(folder.resolve("about.json").toFile(), about);
    }

    /** Reads the peg by plain fans and by one whose alternate radials are shifted, with its own errors of reading. */
    private static void writeReadings(Path folder, long seed) throws IOException, InputException {
        PracticePeg peg = PracticePeg.read(folder);
        PegWater water = PegWater.of(peg.empty());
        for (Map.Entry<String, Integer> table : TABLES.entrySet()) {
            int count = table.getValue();
            SimulatedPlumbing plumbing = new SimulatedPlumbing(peg, 31 * seed + count);
            StringBuilder text = new StringBuilder("distance_m,angle_deg,depth_m\n");
            for (Place place : Fan.of(water, count, table.getKey().startsWith("stagger"))) {
                Place rounded = Place.polar(rounded(place.distanceMetres(), 100), rounded(place.angleDegrees(), 10));
                text.append(String.format(
                        Locale.ROOT,
                        "%.2f,%.1f,%.3f%n",
                        rounded.distanceMetres(),
                        rounded.angleDegrees(),
                        plumbing.read(rounded).depthMetres()));
            }
            Files.writeString(folder.resolve(table.getKey()), text);
        }
    }

    private static double rounded(double value, double steps) {
        return Math.round(steps * value) / steps;
    }

    static double between(Random random, double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    private static String truth(MadeBottom bottom) {
        int reach = bottom.reachMetres();
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                "# depth in mm on 0.1 m nodes, -1 = land; row 0 at y=-3.0 m, column 0 at x=%.1f m; rows run away%n",
                (double) -reach));
        for (int row = 0; row <= 10 * (reach + 3); row++) {
            for (int column = 0; column <= 20 * reach; column++) {
                double depth = bottom.depthAt(-reach + 0.1 * column, -3 + 0.1 * row);
                text.append(Double.isNaN(depth) ? -1 : Math.round(1000 * depth))
                        .append(column < 20 * reach ? ' ' : '\n');
            }
        }
        return text.toString();
    }

    private static String banks(MadeBottom bottom, Random errors) {
        StringBuilder text = new StringBuilder("bank,x_m,y_m\n");
        int reach = bottom.reachMetres();
        for (int x = -reach; x <= reach; x++) {
            text.append(
                    String.format(Locale.ROOT, "near,%d,%.2f%n", x, bottom.nearAt(x) + 0.10 * errors.nextGaussian()));
        }
        for (int x = -reach; x <= reach && !bottom.isOpen(); x++) {
            text.append(String.format(Locale.ROOT, "far,%d,%.2f%n", x, bottom.farAt(x) + 0.20 * errors.nextGaussian()));
        }
        return text.toString();
    }
}
