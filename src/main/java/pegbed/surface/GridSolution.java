package pegbed.surface;

import pegbed.surface.prior.PlaceCoordinates;

/**
 * What was solved for to fill a {@link BottomGrid}. It is kept so that a bottom with one more reading costs one more
 * row ({@link IncrementalUpdate}). Not changed after it is made.
 *
 * @param nodes where values are
 * @param places those nodes in all coordinates
 * @param whitened L⁻¹k of each slot, one after the other
 * @param mean expected depth by slot, metres
 * @param variance of the bottom alone by slot, square metres
 */
record GridSolution(GridNodes nodes, PlaceCoordinates places, double[] whitened, double[] mean, double[] variance) {
    /** How many observations it was solved for. */
    int observations() {
        return whitened.length / mean.length;
    }
}
