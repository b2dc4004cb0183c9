package pegbed.lake;

/**
 * The plane through the soundings of a small cell by least squares; level where they are too few or lie in a line.
 *
 * @param middleX mean place, metres
 * @param middleY mean place, metres
 * @param level depth there, metres
 * @param slopeX change of depth per metre in x
 * @param slopeY change of depth per metre in y
 */
record CellPlane(double middleX, double middleY, double level, double slopeX, double slopeY) {
    /** Fewer soundings than this have no plane of their own. */
    static final int LEAST = 6;

    double depth(double x, double y) {
        return level + slopeX * (x - middleX) + slopeY * (y - middleY);
    }

    /** Sums over the soundings, about a place near all of them. */
    static final class Sums {
        private int n;
        private double x;
        private double y;
        private double z;
        private double xx;
        private double xy;
        private double yy;
        private double xz;
        private double yz;

        void add(double dx, double dy, double depth) {
            n++;
            x += dx;
            y += dy;
            z += depth;
            xx += dx * dx;
            xy += dx * dy;
            yy += dy * dy;
            xz += dx * depth;
            yz += dy * depth;
        }

        /** The plane of all that was added; one at least. */
        CellPlane plane(double aboutX, double aboutY) {
            double mx = x / n;
            double my = y / n;
            double mz = z / n;
            double sxx = xx - n * mx * mx;
            double sxy = xy - n * mx * my;
            double syy = yy - n * my * my;
            double determinant = sxx * syy - sxy * sxy;
            boolean tilted = n >= LEAST && determinant > 1e-6 * (sxx + syy) * (sxx + syy);
            double sxz = xz - n * mx * mz;
            double syz = yz - n * my * mz;
            return new CellPlane(
                    aboutX + mx,
                    aboutY + my,
                    mz,
                    tilted ? (syy * sxz - sxy * syz) / determinant : 0,
                    tilted ? (sxx * syz - sxy * sxz) / determinant : 0);
        }
    }
}
