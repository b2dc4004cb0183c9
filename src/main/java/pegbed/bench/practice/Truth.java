package pegbed.bench.practice;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pegbed.model.InputException;
import pegbed.surface.grid.Field;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.posterior.Disc;

/** A known bottom: depth on a grid of 10 cm, NaN on land. */
public final class Truth {
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

    public static Truth of(Field depth) {
        return new Truth(depth);
    }

    Field depth() {
        return depth;
    }

    /** Depth at a place; NaN on land or off the grid. */
    public double depthAt(double x, double y) {
        return depth.sample(x, y);
    }

    /** Whether a node within so many metres of a place is land. What lies off the grid is not known to be. */
    public boolean isLandWithin(double x, double y, double metres) {
        GridFrame frame = depth.frame();
        double cell = frame.cellMetres();
        int left = (int) Math.max(0, Math.ceil((x - metres - frame.xMinMetres()) / cell));
        int right = (int) Math.min(frame.columns() - 1, Math.floor((x + metres - frame.xMinMetres()) / cell));
        int bottom = (int) Math.max(0, Math.ceil((y - metres - frame.yMinMetres()) / cell));
        int top = (int) Math.min(frame.rows() - 1, Math.floor((y + metres - frame.yMinMetres()) / cell));
        for (int row = bottom; row <= top; row++) {
            for (int column = left; column <= right; column++) {
                if (Double.isNaN(depth.at(column, row))
                        && Math.hypot(frame.x(column) - x, frame.y(row) - y) <= metres) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * The disc about a place; NaN where part of it is land. Beyond the edge of what is known of the bottom the nearest
     * disc within stands for it.
     */
    public DiscMeans.Mean disc(double x, double y) {
        GridFrame frame = depth.frame();
        double inset = Disc.RADIUS_METRES;
        double right = frame.x(frame.columns() - 1) - inset;
        double top = frame.y(frame.rows() - 1) - inset;
        return DiscMeans.of(
                this::depthAt,
                Math.max(frame.xMinMetres() + inset, Math.min(right, x)),
                Math.max(frame.yMinMetres() + inset, Math.min(top, y)));
    }
}
