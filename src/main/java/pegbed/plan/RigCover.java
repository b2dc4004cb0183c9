package pegbed.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The fewest rigs for a set of depths: intervals of a fixed length that cover points on a line. From the shallowest
 * depth that is not yet covered, each interval reaches as deep as it may; this is known to give the fewest (Cormen,
 * Leiserson, Rivest & Stein, Introduction to Algorithms, exercise 16.2-5 of the third edition).
 */
public final class RigCover {
    private static final double ROUNDING = 1e-9;

    private RigCover() {}

    /**
     * Groups depths so that those of a group differ by no more than a travel, in as few groups as possible.
     *
     * @param depthsMetres depths, metres, in any order
     * @param travelMetres how far the float may be slid, metres, not negative
     * @return indices into the depths by group, shallow groups first, shallow depths first in each
     */
    public static List<List<Integer>> fewest(List<Double> depthsMetres, double travelMetres) {
        List<Integer> rising = IntStream.range(0, depthsMetres.size())
                .boxed()
                .sorted(Comparator.comparingDouble(depthsMetres::get))
                .toList();
        List<List<Integer>> groups = new ArrayList<>();
        double shallowest = Double.NEGATIVE_INFINITY;
        for (int i : rising) {
            double depth = depthsMetres.get(i);
            if (isBeyond(shallowest, depth, travelMetres)) {
                groups.add(new ArrayList<>());
                shallowest = depth;
            }
            groups.get(groups.size() - 1).add(i);
        }
        return groups.stream().map(List::copyOf).toList();
    }

    /**
     * How many groups {@link #fewest} makes.
     *
     * @param depthsMetres depths, metres; sorted in place
     */
    static int count(double[] depthsMetres, double travelMetres) {
        Arrays.sort(depthsMetres);
        int groups = 0;
        double shallowest = Double.NEGATIVE_INFINITY;
        for (double depth : depthsMetres) {
            if (isBeyond(shallowest, depth, travelMetres)) {
                groups++;
                shallowest = depth;
            }
        }
        return groups;
    }

    private static boolean isBeyond(double shallowest, double depth, double travelMetres) {
        return depth - shallowest > travelMetres + ROUNDING;
    }
}
