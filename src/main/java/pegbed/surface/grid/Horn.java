package pegbed.surface.grid;

import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;

/**
 * The slope of a field of depths by Horn's rule: at each node the weighted differences over its eight neighbours, which
 * even out the roughness of a single cell.
 *
 * <p>A node on the rim of the grid, or with a neighbour without a value, has no slope (NaN). The node's own value is
 * not used.
 *
 * <p>Horn, B. K. P. (1981), "Hill shading and the reflectance map", Proceedings of the IEEE 69(1), 14–47.
 */
public final class Horn {
    private final GridFrame frame;
    private final double[] acrossSlope;
    private final double[] outwardSlope;

    /** @param depths depths in metres, positive down; not changed */
    public Horn(Field depths) {
        frame = depths.frame();
        acrossSlope = new double[frame.size()];
        outwardSlope = new double[frame.size()];
        Arrays.fill(acrossSlope, Double.NaN);
        Arrays.fill(outwardSlope, Double.NaN);
        double span = 8 * frame.cellMetres();
        for (int row = 1; row < frame.rows() - 1; row++) {
            for (int column = 1; column < frame.columns() - 1; column++) {
                double nearLeft = depths.at(column - 1, row - 1);
                double near = depths.at(column, row - 1);
                double nearRight = depths.at(column + 1, row - 1);
                double left = depths.at(column - 1, row);
                double right = depths.at(column + 1, row);
                double farLeft = depths.at(column - 1, row + 1);
                double far = depths.at(column, row + 1);
                double farRight = depths.at(column + 1, row + 1);
                double across = ((nearRight + 2 * right + farRight) - (nearLeft + 2 * left + farLeft)) / span;
                double outward = ((farLeft + 2 * far + farRight) - (nearLeft + 2 * near + nearRight)) / span;
                // Either difference passes over two neighbours; together they pass over none.
                if (!Double.isNaN(across + outward)) {
                    acrossSlope[frame.index(column, row)] = across;
                    outwardSlope[frame.index(column, row)] = outward;
                }
            }
        }
    }

    /** How fast it deepens to the right, dz/dx, metres per metre. */
    public Field acrossSlope() {
        return new Field(frame, acrossSlope);
    }

    /** How fast it deepens away from the angler, dz/dy, metres per metre. */
    public Field outwardSlope() {
        return new Field(frame, outwardSlope);
    }

    /** Steepness as rise over run, 0 or more: 0.25 is "1 in 4". */
    public Field steepness() {
        return each(Math::hypot);
    }

    /** Steepness in degrees from level, 0 to 90. */
    public Field steepnessDegrees() {
        return each((across, outward) -> Math.toDegrees(Math.atan(Math.hypot(across, outward))));
    }

    /** Where it deepens fastest: degrees from straight out, positive to the right, above −180 to 180; NaN on the level. */
    public Field downslopeDegrees() {
        return each((across, outward) ->
                across == 0 && outward == 0 ? Double.NaN : Math.toDegrees(Math.atan2(across, outward)));
    }

    private Field each(DoubleBinaryOperator operator) {
        double[] values = new double[frame.size()];
        for (int node = 0; node < values.length; node++) {
            values[node] = operator.applyAsDouble(acrossSlope[node], outwardSlope[node]);
        }
        return new Field(frame, values);
    }
}
