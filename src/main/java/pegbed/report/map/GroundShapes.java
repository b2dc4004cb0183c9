package pegbed.report.map;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.MultiLineString;
import pegbed.findings.PegMap;
import pegbed.geometry.Overlay;
import pegbed.surface.contour.Contour;

/**
 * The shapes of the bottom as the map shows them, metres in the peg's plane.
 *
 * @param known the area in which anything is known
 * @param guess the area in it where the doubt makes the map a guess
 * @param contours the contours in it, the guessed parts by themselves
 */
public record GroundShapes(Geometry known, Geometry guess, List<Piece> contours) {
    /** From this standard deviation of the depth on nothing is drawn, metres. */
    public static final double UNKNOWN_METRES = Ground.UNKNOWN_METRES;

    /** Shorter pieces, which cutting leaves where lines touch, are nothing, metres. */
    private static final double LEAST_METRES = 0.01;

    /**
     * A piece of a contour.
     *
     * @param levelMetres its depth, metres
     * @param line its course, deeper water to the right
     * @param isGuess whether it lies where the map is a guess
     */
    public record Piece(double levelMetres, LineString line, boolean isGuess) {}

    public GroundShapes {
        contours = List.copyOf(contours);
    }

    public static GroundShapes of(PegMap map) {
        Ground ground = Ground.of(map);
        List<Piece> pieces = new ArrayList<>();
        for (Contour contour : ground.contours()) {
            add(pieces, contour.levelMetres(), Overlay.difference(contour.lines(), ground.guess()), false);
            add(pieces, contour.levelMetres(), Overlay.intersection(contour.lines(), ground.guess()), true);
        }
        return new GroundShapes(ground.known(), ground.guess(), pieces);
    }

    private static void add(List<Piece> to, double level, Geometry lines, boolean isGuess) {
        MultiLineString joined = Lines.of(lines);
        for (int i = 0; i < joined.getNumGeometries(); i++) {
            LineString line = (LineString) joined.getGeometryN(i);
            if (line.getLength() >= LEAST_METRES) {
                to.add(new Piece(level, line, isGuess));
            }
        }
    }
}
