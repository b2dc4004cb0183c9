package pegbed.surface;

import pegbed.surface.posterior.Disc;

/**
 * The three disc functionals of {@link Disc}, {@link Disc#weight} written out, for one disc of a grid after the other.
 * Belongs to one thread.
 */
public final class DiscStencil {
    private static final double MEAN = 1.0 / Disc.NODES;
    private static final double SLOPE = Disc.CELL_METRES / 0.875;

    private final GridNodes nodes;
    /** Slots of the disc's nodes, in the order of {@link Disc#DX}. */
    private final int[] slots = new int[Disc.NODES];

    private double depth;
    private double slopeX;
    private double slopeY;

    public DiscStencil(GridNodes nodes) {
        this.nodes = nodes;
    }

    /** Goes to the disc about a water node of the frame. */
    public void to(int node) {
        for (int m = 0; m < slots.length; m++) {
            slots[m] = nodes.slot(node, Disc.DX[m], Disc.DY[m]);
        }
    }

    /** Slot of one of the disc's nodes. */
    public int slot(int m) {
        return slots[m];
    }

    /** Looks at values by slot. */
    public void look(double[] v) {
        double left = v[slots[1]];
        double right = v[slots[2]];
        double farLeft = v[slots[3]];
        double farRight = v[slots[4]];
        double near = v[slots[5]];
        double far = v[slots[6]];
        double nearest = v[slots[7]];
        double farthest = v[slots[8]];
        double nearLeft = v[slots[9]];
        double leftFar = v[slots[10]];
        double nearRight = v[slots[11]];
        double rightFar = v[slots[12]];
        double lefts = nearLeft + leftFar;
        double rights = nearRight + rightFar;
        depth = (v[slots[0]] + left + right + farLeft + farRight + near + far + nearest + farthest + lefts + rights)
                * MEAN;
        slopeX = (right - left + 2 * (farRight - farLeft) + rights - lefts) * SLOPE;
        slopeY = (far - near + 2 * (farthest - nearest) + leftFar + rightFar - nearLeft - nearRight) * SLOPE;
    }

    /**
     * Looks at many values of each slot and takes the products of the three, of one value after the other, from C_DD,
     * C_DX, C_DY, C_XX, C_XY, C_YY.
     *
     * @param v as many values of each slot as there are, slot after slot
     * @param many how many
     */
    public void takeProducts(double[] v, int many, double[] covariances) {
        int middle = slots[0] * many;
        int left = slots[1] * many;
        int right = slots[2] * many;
        int farLeft = slots[3] * many;
        int farRight = slots[4] * many;
        int near = slots[5] * many;
        int far = slots[6] * many;
        int nearest = slots[7] * many;
        int farthest = slots[8] * many;
        int nearLeft = slots[9] * many;
        int leftFar = slots[10] * many;
        int nearRight = slots[11] * many;
        int rightFar = slots[12] * many;
        double dd = 0;
        double dx = 0;
        double dy = 0;
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (int j = 0; j < many; j++) {
            double lefts = v[nearLeft + j] + v[leftFar + j];
            double rights = v[nearRight + j] + v[rightFar + j];
            double fars = v[leftFar + j] + v[rightFar + j];
            double nears = v[nearLeft + j] + v[nearRight + j];
            double beside = v[left + j] + v[right + j] + v[farLeft + j] + v[farRight + j];
            double before = v[near + j] + v[far + j] + v[nearest + j] + v[farthest + j];
            double d = v[middle + j] + beside + before + lefts + rights;
            double x = v[right + j] - v[left + j] + 2 * (v[farRight + j] - v[farLeft + j]) + rights - lefts;
            double y = v[far + j] - v[near + j] + 2 * (v[farthest + j] - v[nearest + j]) + fars - nears;
            dd += d * d;
            dx += d * x;
            dy += d * y;
            xx += x * x;
            xy += x * y;
            yy += y * y;
        }
        covariances[0] -= dd * (MEAN * MEAN);
        covariances[1] -= dx * (MEAN * SLOPE);
        covariances[2] -= dy * (MEAN * SLOPE);
        covariances[3] -= xx * (SLOPE * SLOPE);
        covariances[4] -= xy * (SLOPE * SLOPE);
        covariances[5] -= yy * (SLOPE * SLOPE);
    }

    /** D of what was looked at last. */
    public double depth() {
        return depth;
    }

    /** gx of it. */
    public double slopeX() {
        return slopeX;
    }

    /** gy of it. */
    public double slopeY() {
        return slopeY;
    }

    /**
     * Adds products of the three to C_DD, C_DX, C_DY, C_XX, C_XY, C_YY.
     *
     * @param weight times which
     */
    public void addProducts(double weight, double[] covariances) {
        double d = weight * depth;
        double x = weight * slopeX;
        covariances[0] += d * depth;
        covariances[1] += d * slopeX;
        covariances[2] += d * slopeY;
        covariances[3] += x * slopeX;
        covariances[4] += x * slopeY;
        covariances[5] += weight * slopeY * slopeY;
    }
}
