package pegbed.notation;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;
import pegbed.geometry.Shapes;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Hazard;
import pegbed.model.Peg;

/** What a typed line makes of a peg. */
public final class Entry {
    /** Without any bank yet, an edge further out than this is the far bank's, metres (empirical). */
    private static final double NEAR_METRES = 4;

    private Entry() {}

    /** The peg with the line's reading at today's visit, its edge in the bank it lies at, or its snag among the hazards. */
    public static Peg in(Peg peg, Line line) {
        if (line instanceof Line.ReadingLine reading) {
            return peg.withReading(reading.reading());
        }
        if (line instanceof Line.EdgeLine edge) {
            return peg.withBanks(withEdge(peg.banks(), edge.point()));
        }
        List<Hazard> hazards = new ArrayList<>(peg.hazards());
        hazards.add(((Line.SnagLine) line).hazard());
        return peg.withHazards(hazards);
    }

    private static Banks withEdge(Banks banks, BankPoint edge) {
        double near = distance(banks.near(), edge, false);
        double far = distance(banks.far(), edge, false);
        int island = -1;
        double islandDistance = Double.POSITIVE_INFINITY;
        for (int i = 0; i < banks.islands().size(); i++) {
            double d = distance(banks.islands().get(i), edge, true);
            if (d < islandDistance) {
                islandDistance = d;
                island = i;
            }
        }
        if (islandDistance < Math.min(near, far)) {
            List<List<BankPoint>> islands = new ArrayList<>(banks.islands());
            islands.set(island, inserted(islands.get(island), edge, true));
            return new Banks(banks.near(), banks.far(), islands);
        }
        boolean nearer = near == far ? edge.place().distanceMetres() < NEAR_METRES : near < far;
        if (banks.far().isEmpty() && edge.place().distanceMetres() >= NEAR_METRES && near > NEAR_METRES) {
            nearer = false;
        }
        return nearer
                ? new Banks(inserted(banks.near(), edge, false), banks.far(), banks.islands())
                : new Banks(banks.near(), inserted(banks.far(), edge, false), banks.islands());
    }

    private static double distance(List<BankPoint> bank, BankPoint edge, boolean ring) {
        if (bank.isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        if (bank.size() == 1) {
            return bank.get(0).place().distanceTo(edge.place());
        }
        return line(bank, ring).distance(Shapes.FACTORY.createPoint(Shapes.coordinate(edge.place())));
    }

    private static LineString line(List<BankPoint> bank, boolean ring) {
        List<Coordinate> corners = new ArrayList<>(
                bank.stream().map(point -> Shapes.coordinate(point.place())).toList());
        if (ring) {
            corners.add(corners.get(0));
        }
        return Shapes.FACTORY.createLineString(corners.toArray(new Coordinate[0]));
    }

    /** The bank with the edge in its order along it: between the two points it projects between, or beyond an end. */
    private static List<BankPoint> inserted(List<BankPoint> bank, BankPoint edge, boolean ring) {
        List<BankPoint> longer = new ArrayList<>(bank);
        if (bank.size() < 2) {
            boolean left = !bank.isEmpty()
                    && edge.place().xMetres() < bank.get(0).place().xMetres();
            longer.add(left ? 0 : bank.size(), edge);
            return longer;
        }
        LengthIndexedLine along = new LengthIndexedLine(line(bank, ring));
        double place = along.project(Shapes.coordinate(edge.place()));
        double walked = 0;
        int at = place <= 0 ? 0 : bank.size();
        for (int i = 1; i < bank.size() && place > 0; i++) {
            walked += bank.get(i - 1).place().distanceTo(bank.get(i).place());
            if (place < walked) {
                at = i;
                break;
            }
        }
        longer.add(at, edge);
        return longer;
    }
}
