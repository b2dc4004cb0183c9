package pegbed.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pegbed.model.InputException;
import pegbed.surface.Field;
import pegbed.surface.GridFrame;

/** A known bottom: depth on a grid of 10 cm, NaN on land. */
final class Truth {
    private static final Pattern HEADER = Pattern.compile(
            "# depth in mm on ([\\d.]+) m nodes.*row 0 at y=(-?[\\d.]+) m, column 0 at x=(-?[\\d.]+) m.*");

    private final Field depth;

    private Truth(Field depth) {
        this.depth = depth;
    }

    static Truth read(Path file) throws IOException, InputException {
        List<String> lines = Files.readAllLines(file);
        Matcher header = HEADER.matcher(lines.isEmpty() ? "" : lines.get(0));
        if (!header.matches()) {
            throw new InputException(file + " does not begin with the line that says where its nodes lie.");
        }
        List<double[]> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] words = line.trim().split(" +");
            double[] row = new double[words.length];
            for (int i = 0; i < row.length; i++) {
                int millimetres = Integer.parseInt(words[i]);
                row[i] = millimetres < 0 ? Double.NaN : millimetres / 1000.0;
            }
            rows.add(row);
        }
        int columns = rows.get(0).length;
        double[] values = new double[columns * rows.size()];
        for (int r = 0; r < rows.size(); r++) {
            System.arraycopy(rows.get(r), 0, values, r * columns, columns);
        }
        GridFrame frame = new GridFrame(
                Double.parseDouble(header.group(3)),
                Double.parseDouble(header.group(2)),
                Double.parseDouble(header.group(1)),
                columns,
                rows.size());
        return new Truth(new Field(frame, values));
    }

    Field depth() {
        return depth;
    }

    /** Depth at a place; NaN on land or off the grid. */
    double depthAt(double x, double y) {
        return depth.sample(x, y);
    }

    /**
     * Mean depth and gradient over a disc of 0.5 m, on the same 13 nodes as the model's disc.
     *
     * @return depth and slope, or null where part of the disc is land
     */
    DiscTruth disc(double x, double y) {
        double sum = 0;
        double gx = 0;
        double gy = 0;
        for (int i = -2; i <= 2; i++) {
            for (int j = -2; j <= 2; j++) {
                if (i * i + j * j > 4) {
                    continue;
                }
                double d = depthAt(x + i * 0.25, y + j * 0.25);
                sum += d / 13;
                gx += d * i * 0.25 / 0.875;
                gy += d * j * 0.25 / 0.875;
            }
        }
        return Double.isNaN(sum) ? null : new DiscTruth(sum, Math.hypot(gx, gy));
    }

    /**
     * The true disc.
     *
     * @param depth mean depth, metres
     * @param slope rise over run
     */
    record DiscTruth(double depth, double slope) {}
}
