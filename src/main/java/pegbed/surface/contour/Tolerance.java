package pegbed.surface.contour;

/** The tolerances of this package, all derived from the cell; the one spot where they are set. They are empirical. */
final class Tolerance {
    /** A contour crosses the side of a cell at least this share of the side away from its nodes. */
    private static final double CROSSING = 1e-5;

    /** A ring or piece of less than this many cells is a sliver. */
    private static final double SLIVER = 0.01;

    private Tolerance() {}

    /**
     * Where a level crosses the side of a cell, as a share of the way from the node above to the node below. It keeps a
     * little off the nodes: so a level that is exactly a node's value makes no double points and no touching rings.
     *
     * @param above value of the node at or above the level
     * @param below value of the node below it; NaN counts as far below
     */
    static double crossing(double above, double below, double level) {
        double share = (above - level) / (above - below);
        return share >= CROSSING ? Math.min(share, 1 - CROSSING) : CROSSING;
    }

    /** The area below which a ring or piece is left out, square metres. */
    static double sliverSquareMetres(double cellMetres) {
        return SLIVER * cellMetres * cellMetres;
    }
}
