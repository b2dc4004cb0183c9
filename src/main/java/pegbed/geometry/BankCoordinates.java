package pegbed.geometry;

/**
 * Coordinates that follow the banks, in which the bottom of a narrow water changes quickly across and slowly along.
 *
 * <p>Thread-safe.
 */
public interface BankCoordinates {
    /** Metres along the water. */
    double along(double xMetres, double yMetres);

    /**
     * Metres across the water, 0 at the near bank; between two banks stretched to the water's median width;
     * {@link Double#POSITIVE_INFINITY} where there is no bank.
     */
    default double across(double xMetres, double yMetres) {
        return acrossAt(fromNear(xMetres, yMetres), fromFar(xMetres, yMetres));
    }

    /** The same of a place so far from either bank, metres as {@link #fromNear} and {@link #fromFar} give them. */
    double acrossAt(double fromNearMetres, double fromFarMetres);

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

    /** Open water without any bank: along is x, and all else infinite. */
    BankCoordinates OPEN = new BankCoordinates() {
        @Override
        public double along(double xMetres, double yMetres) {
            return xMetres;
        }

        @Override
        public double acrossAt(double fromNearMetres, double fromFarMetres) {
            return fromNearMetres;
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
