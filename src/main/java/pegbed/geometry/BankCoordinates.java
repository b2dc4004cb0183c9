package pegbed.geometry;

/**
 * Coordinates that follow the banks, in which the bottom of a narrow water changes quickly across and slowly along.
 *
 * <p>Thread-safe.
 */
public interface BankCoordinates {
    /** Metres along the water. */
    double along(double xMetres, double yMetres);

    /** Metres across the water, 0 at the near bank; between two banks stretched to the water's median width. */
    double across(double xMetres, double yMetres);

    /** Metres from the near bank, positive in the water; {@link Double#POSITIVE_INFINITY} where there is none. */
    double fromNear(double xMetres, double yMetres);

    /** Metres from the far bank, positive in the water; {@link Double#POSITIVE_INFINITY} where there is none. */
    double fromFar(double xMetres, double yMetres);

    /** Metres from the nearest island's edge, 0 on it; {@link Double#POSITIVE_INFINITY} where there is none. */
    default double fromIsland(double xMetres, double yMetres) {
        return Double.POSITIVE_INFINITY;
    }

    /** Whether there is a bank opposite. */
    boolean hasFarBank();

    /** Open water without any bank: x and y themselves. */
    BankCoordinates OPEN = new BankCoordinates() {
        @Override
        public double along(double xMetres, double yMetres) {
            return xMetres;
        }

        @Override
        public double across(double xMetres, double yMetres) {
            return yMetres;
        }

        @Override
        public double fromNear(double xMetres, double yMetres) {
            return Double.POSITIVE_INFINITY;
        }

        @Override
        public double fromFar(double xMetres, double yMetres) {
            return Double.POSITIVE_INFINITY;
        }

        @Override
        public boolean hasFarBank() {
            return false;
        }
    };
}
