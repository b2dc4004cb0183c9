package pegbed.geodesy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import pegbed.model.InputException;
import pegbed.model.Place;
import pegbed.model.Position;

/**
 * A peg's position from marks whose positions are known: the turn and shift of the peg's plane that bring its marks
 * nearest to them, by least squares (two-dimensional rigid fit: Umeyama, S. (1991), "Least-squares estimation of
 * transformation parameters between two point patterns", IEEE Transactions on Pattern Analysis and Machine Intelligence
 * 13, 376–380, with scale 1).
 *
 * @param position the seat and the true bearing of straight out
 * @param residualMetres for each mark, how far from its known position it comes to lie, metres
 * @param rmsMetres the root of the mean square of these, metres
 */
public record Resection(Position position, List<Double> residualMetres, double rmsMetres) {
    /** Marks nearer together than this say too little about the bearing, metres (our choice). */
    static final double LEAST_APART_METRES = 2;

    /** Farther than this from each other no two marks of a peg stand, metres (our choice). */
    private static final double MOST_APART_METRES = 20_000;

    /** The plane's natural origin is moved to the seat; twice brings it there to a nanometre. */
    private static final int ROUNDS = 3;

    public Resection {
        residualMetres = List.copyOf(residualMetres);
    }

    /**
     * Seat and bearing from two marks or more.
     *
     * @param accuracyMetres how well the result is known, as the person says it
     * @throws InputException if the marks say too little, or lie near a pole
     */
    public static Resection of(List<SightedMark> marks, OptionalDouble accuracyMetres) throws InputException {
        if (marks.size() < 2) {
            throw new InputException("A position from marks needs two marks or more whose positions are known; give"
                    + " another, or the seat's own position with one mark for the bearing.");
        }
        for (SightedMark mark : marks) {
            LocalFrame.refuseNearPole(mark.latitudeDegrees());
        }
        Position seat =
                new Position(marks.get(0).latitudeDegrees(), marks.get(0).longitudeDegrees(), 0);
        for (int round = 0; round < ROUNDS; round++) {
            seat = moved(seat, marks, true);
        }
        return result(seat, marks, accuracyMetres);
    }

    /**
     * The bearing from marks where the seat is known: one mark will do.
     *
     * @throws InputException if a mark stands where the seat is
     */
    public static Resection bearing(
            double latitudeDegrees, double longitudeDegrees, List<SightedMark> marks, OptionalDouble accuracyMetres)
            throws InputException {
        LocalFrame.refuseNearPole(latitudeDegrees);
        Position seat = new Position(latitudeDegrees, longitudeDegrees, 0);
        return result(moved(seat, marks, false), marks, accuracyMetres);
    }

    /** The seat after one fit in the plane about where it was thought to be. */
    private static Position moved(Position seat, List<SightedMark> marks, boolean free) throws InputException {
        LocalFrame north = LocalFrame.of(new Position(seat.latitudeDegrees(), seat.longitudeDegrees(), 0));
        List<Place> known = known(north, marks);
        double meanX = 0;
        double meanY = 0;
        double meanEast = 0;
        double meanNorth = 0;
        if (free) {
            for (int i = 0; i < marks.size(); i++) {
                meanX += marks.get(i).place().xMetres() / marks.size();
                meanY += marks.get(i).place().yMetres() / marks.size();
                meanEast += known.get(i).xMetres() / marks.size();
                meanNorth += known.get(i).yMetres() / marks.size();
            }
        }
        // East and north as a complex number are those of x and y times e^(-i·bearing): the sum of products has the
        // turn.
        double real = 0;
        double imaginary = 0;
        double spread = 0;
        double knownSpread = 0;
        for (int i = 0; i < marks.size(); i++) {
            double x = marks.get(i).place().xMetres() - meanX;
            double y = marks.get(i).place().yMetres() - meanY;
            double e = known.get(i).xMetres() - meanEast;
            double n = known.get(i).yMetres() - meanNorth;
            real += e * x + n * y;
            imaginary += n * x - e * y;
            spread = Math.max(spread, Math.hypot(x, y));
            knownSpread = Math.max(knownSpread, Math.hypot(e, n));
        }
        double least = free ? LEAST_APART_METRES / 2 : LEAST_APART_METRES;
        if (spread < least || knownSpread < least) {
            throw new InputException(
                    free
                            ? "These marks stand within 2 m of each other, which says too little about the bearing; take"
                                    + " marks that stand wide apart."
                            : "The mark stands within 2 m of the seat, which says too little about the bearing; take one"
                                    + " on the far bank.");
        }
        if (knownSpread > MOST_APART_METRES) {
            throw new InputException(String.format(
                    Locale.ROOT,
                    "The positions given lie %.0f km apart, and no two marks of a peg do; check the signs and the order:"
                            + " latitude first, then longitude, such as 52.1234,-1.2345.",
                    2 * knownSpread / 1000));
        }
        double turn = Math.atan2(imaginary, real);
        double bearing = (Math.toDegrees(-turn) % 360 + 360) % 360;
        if (!free) {
            return new Position(seat.latitudeDegrees(), seat.longitudeDegrees(), bearing);
        }
        double cosine = Math.cos(turn);
        double sine = Math.sin(turn);
        double[] at = {meanEast - (meanX * cosine - meanY * sine), meanNorth - (meanX * sine + meanY * cosine)};
        north.toEarth(at);
        return new Position(at[1], at[0], bearing);
    }

    private static List<Place> known(LocalFrame frame, List<SightedMark> marks) {
        return marks.stream()
                .map(mark -> frame.place(mark.latitudeDegrees(), mark.longitudeDegrees()))
                .toList();
    }

    private static Resection result(Position seat, List<SightedMark> marks, OptionalDouble accuracyMetres)
            throws InputException {
        Position position = new Position(
                rounded(seat.latitudeDegrees(), 9),
                rounded(seat.longitudeDegrees(), 9),
                rounded(seat.bearingDegrees(), 4),
                accuracyMetres);
        List<Place> known = known(LocalFrame.of(position), marks);
        List<Double> residuals = new ArrayList<>();
        double squares = 0;
        for (int i = 0; i < marks.size(); i++) {
            double residual = known.get(i).distanceTo(marks.get(i).place());
            residuals.add(residual);
            squares += residual * residual;
        }
        return new Resection(position, residuals, Math.sqrt(squares / marks.size()));
    }

    /** As many digits as a tenth of a millimetre needs. */
    private static double rounded(double value, int decimals) {
        return java.math.BigDecimal.valueOf(value)
                .setScale(decimals, java.math.RoundingMode.HALF_UP)
                .doubleValue();
    }
}
