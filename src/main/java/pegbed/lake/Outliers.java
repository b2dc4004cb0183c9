package pegbed.lake;

import java.util.Arrays;
import java.util.BitSet;
import java.util.stream.IntStream;

/**
 * Soundings that stand out from what the others around them expect, each a hole or a hump of its own: there the bottom
 * may differ by as much as the sounding says, falling off as exp(−(d/r)⁴) with the distance d, r four fifths of the
 * usual way to the next soundings: half way to them nearly all is left, at them nearly nothing. A field that is learned
 * from all the water would level such a place; this keeps it, and keeps what is around it as it is. Not changed after
 * it is made.
 */
final class Outliers {
    static final Outliers NONE = new Outliers(new double[0], new double[0]);

    private final double[] height;
    private final double[] radius;
    private final BitSet which = new BitSet();

    /**
     * Soundings that stand out.
     *
     * @param height by how much each sounding differs, metres; 0 for one that does not stand out
     * @param radius how far a hole or hump reaches there, metres
     */
    Outliers(double[] height, double[] radius) {
        this.height = height;
        this.radius = radius;
        for (int i = 0; i < height.length; i++) {
            which.set(i, height[i] != 0);
        }
    }

    boolean contains(int sounding) {
        return which.get(sounding);
    }

    IntStream all() {
        return which.stream();
    }

    /** Those among some soundings. */
    int[] among(int[] soundings) {
        return which.isEmpty()
                ? new int[0]
                : Arrays.stream(soundings).filter(which::get).toArray();
    }

    /** Its height at a distance of so much squared, metres. */
    double at(int sounding, double distance2) {
        double way2 = distance2 / (radius[sounding] * radius[sounding]);
        return height[sounding] * Math.exp(-way2 * way2);
    }

    /** What the change of its height over the distance, over that distance, is of its height. */
    double slopeShare(int sounding, double distance2) {
        double radius2 = radius[sounding] * radius[sounding];
        return -4 * distance2 / (radius2 * radius2);
    }

    /** By how much it stands out, metres; positive for a hole. */
    double heightMetres(int sounding) {
        return height[sounding];
    }
}
