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

/**
 * Makes simulated pegs (invented: no real water) by a recipe of its own, so that nothing is chosen by the practice pegs
 * alone. Run with a folder, a number of pegs and a seed; the folder can be given to {@code bench quality --practice}.
 */
public final class MadePegs {
    private MadePegs() {}

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        int count = Integer.parseInt(args[1]);
        long seed = Long.parseLong(args[2]);
        for (int i = 0; i < count; i++) {
            write(
                    folder.resolve(String.format(Locale.ROOT, "made-%d-%02d", seed, i)),
                    new MadeBottom(new Random(seed * 7919 + i), i % 5 == 4));
        }
    }

    /** Writes one peg in the form of a practice peg, without readings. */
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
