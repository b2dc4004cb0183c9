package pegbed.model;

/**
 * A place on the water's plane.
 *
 * @param xMetres metres to the right of the seat, along the bank; finite; less than 1e-12 either way is 0
 * @param yMetres metres straight out from the seat; finite; less than 1e-12 either way is 0
 */
public record Place(double xMetres, double yMetres) {
    /** Less than this is nothing: squares of it would leave the range of a double, metres. */
    private static final double NOTHING_METRES = 1e-12;

    public Place {
        Check.finite(xMetres, "x");
        Check.finite(yMetres, "y");
        xMetres = Math.abs(xMetres) < NOTHING_METRES ? 0 : xMetres;
        yMetres = Math.abs(yMetres) < NOTHING_METRES ? 0 : yMetres;
    }

    /**
     * The place at a distance and direction from the seat: x = r·sin a, y = r·cos a.
     *
     * @param distanceMetres r, metres
     * @param angleDegrees a, degrees from straight out, positive to the right
     */
    public static Place polar(double distanceMetres, double angleDegrees) {
        double a = Math.toRadians(angleDegrees);
        return new Place(distanceMetres * Math.sin(a), distanceMetres * Math.cos(a));
    }

    /** Metres from the seat. */
    public double distanceMetres() {
        return Math.hypot(xMetres, yMetres);
    }

    /** Degrees from straight out, positive to the right, in (-180, 180]; zero at the seat itself. */
    public double angleDegrees() {
        return Math.toDegrees(Math.atan2(xMetres, yMetres));
    }

    /** Metres from here to another place. */
    public double distanceTo(Place other) {
        return Math.hypot(xMetres - other.xMetres, yMetres - other.yMetres);
    }
}
