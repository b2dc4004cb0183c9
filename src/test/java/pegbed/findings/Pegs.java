package pegbed.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;

/** Pegs with bottoms that are known by formula, for tests. */
public final class Pegs {
    private Pegs() {}

    /** Two straight banks, 12 m apart, the near one 1 m behind the seat. */
    public static Peg straight() {
        return Peg.EMPTY.withBanks(new Banks(line(-1), line(11), List.of()));
    }

    public static List<BankPoint> line(double y) {
        List<BankPoint> points = new ArrayList<>();
        for (int x = -14; x <= 14; x += 2) {
            points.add(BankPoint.at(x, y));
        }
        return points;
    }

    /** A ledge of 0.8 m under each bank, 2.5 m and 3.5 m wide, slopes, and a track of 1.7 m. */
    public static double ledges(double x, double y) {
        return Math.min(step((y + 1 - 2.5) / 1.2), step((11 - y - 3.5) / 2));
    }

    private static double step(double t) {
        double c = Math.max(0, Math.min(1, t));
        return 0.8 + 0.9 * c * c * (3 - 2 * c);
    }

    /** A fan with readings every metre and a half on every fifteen degrees, read without error. */
    public static Peg plumbed(Peg peg, DoubleBinaryOperator depth) {
        List<Reading> readings = new ArrayList<>();
        for (int a = -60; a <= 60; a += 15) {
            for (double r = 1.5; r <= 14; r += 1.5) {
                Place p = Place.polar(r, a);
                if (p.yMetres() < 10.7) {
                    readings.add(Reading.of(r, a, depth.applyAsDouble(p.xMetres(), p.yMetres())));
                }
            }
        }
        for (int a : new int[] {-85, 85}) {
            for (double r = 2; r <= 6; r += 1) {
                Place p = Place.polar(r, a);
                readings.add(Reading.of(r, a, depth.applyAsDouble(p.xMetres(), p.yMetres())));
            }
        }
        return peg.withToday(visit -> visit.withReadings(readings));
    }
}
