package pegbed.bench.quality;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** An invented practice peg: a straight cut, 1 m deep on both shelves and 1.8 m between, water from y = −1 to 11 m. */
final class CutPeg {
    private CutPeg() {}

    /** Writes truth, banks and what is to be known about it, without readings. */
    static void write(Path made) throws IOException {
        Files.createDirectory(made);
        StringBuilder truth = new StringBuilder(
                "# depth in mm on 0.1 m nodes, -1 = land; row 0 at y=-2.0 m, column 0 at x=-13.0 m; rows run away\n");
        for (int row = 0; row <= 150; row++) {
            double y = -2 + 0.1 * row;
            for (int column = 0; column <= 260; column++) {
                truth.append(millimetres(y)).append(column < 260 ? " " : "\n");
            }
        }
        Files.writeString(made.resolve("truth.txt"), truth);
        StringBuilder banks = new StringBuilder("bank,x_m,y_m\n");
        for (String bank : List.of("near,%d,-1\n", "far,%d,11\n")) {
            for (int x = -12; x <= 12; x += 2) {
                banks.append(String.format(Locale.ROOT, bank, x));
            }
        }
        Files.writeString(made.resolve("banks.csv"), banks);
        Files.writeString(made.resolve("about.json"), """
                {"reach_m": 13, "sd_depth_firm_m": 0.01, "sd_distance_m": 0.1, "sd_direction_deg": 2,
                 "deepest_disc_m": 1.8, "tasks": [{"zone": "across", "target_m": 1.0, "feasible": true}]}
                """);
    }

    private static int millimetres(double y) {
        if (y < -1 - 1e-9 || y > 11 + 1e-9) {
            return -1;
        }
        double t = Math.max(0, Math.min(1, Math.min(y + 1 - 3, 11 - y - 3) / 1.5));
        return (int) Math.round(1000 + 800 * t);
    }
}
