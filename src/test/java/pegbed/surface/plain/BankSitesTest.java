package pegbed.surface.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pegbed.geometry.PegWater;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Pole;
import pegbed.model.Reading;

class BankSitesTest {
    private static List<BankPoint> points(double... xy) {
        return Stream.iterate(0, i -> i < xy.length, i -> i + 2)
                .map(i -> BankPoint.at(xy[i], xy[i + 1]))
                .toList();
    }

    @Test
    void readingsComeFirstThenTheEdgesAtTheirDepths() throws InputException {
        Peg peg = Peg.EMPTY
                .withPole(Pole.USUAL.withReach(13))
                .withBanks(new Banks(
                        points(-12, -0.5, 12, -0.5), points(-12, 11, 12, 11), List.of(points(2, 5, 4, 5, 3, 7))))
                .withToday(visit -> visit.withReadings(
                        List.of(Reading.of(6, -20, 1.7), Reading.of(0.3, 0, 0.4), Reading.of(5, 0, 1.5))));
        List<Site> sites = BankSites.of(peg, PegWater.of(peg));

        assertEquals(
                List.of(1.7, 0.4, 1.5),
                sites.subList(0, 3).stream().map(Site::depthMetres).toList());
        List<Site> edges = sites.subList(3, sites.size());
        for (Site edge : edges) {
            double depth = edge.yMetres() < 1 ? 0.20 : edge.yMetres() > 10 ? 0.30 : 0.25;
            assertEquals(depth, edge.depthMetres(), 1e-12);
            assertTrue(Math.hypot(edge.xMetres(), edge.yMetres()) <= 15);
            assertTrue(Math.hypot(edge.xMetres(), edge.yMetres() - 0.3) >= 1, "the reading at the edge knows better");
        }
        assertEquals(
                3.0,
                (double) edges.stream().filter(e -> e.depthMetres() == 0.25).count(),
                2.0,
                "round the island");
        List<Double> near = edges.stream()
                .filter(e -> e.depthMetres() == 0.20 && e.xMetres() > 1)
                .map(Site::xMetres)
                .sorted()
                .toList();
        for (int i = 1; i < near.size(); i++) {
            assertEquals(1.5, near.get(i) - near.get(i - 1), 0.05);
        }
    }
}
