package pegbed.bench.methods;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import pegbed.surface.plain.LinearInterpolator;
import pegbed.surface.plain.Site;

/**
 * Echo soundings of a real lake (Hay, C. R. J., IISD Experimental Lakes Area, doi:10.5281/zenodo.18237230, CC BY 4.0):
 * 51 to interpolate from, 976 to check against. Where the readings surround the place, each method must beat inverse
 * distance squared, whose predictions stand in the file (made by an independent program).
 */
class Lake227Test {
    /** SciPy 1.17.1, LinearNDInterpolator on the same 51: root mean square error 0.52287 m at 723 places. */
    @Test
    void straightLines() throws IOException {
        Outcome outcome = outcome(new LinearInterpolator(training())::depthAt);
        assertEquals(723, outcome.count);
        assertEquals(0.5228662, outcome.rmseMetres, 1e-6);
        assertTrue(outcome.rmseMetres < outcome.inverseDistanceRmseMetres);
    }

    @Test
    void naturalNeighbours() throws IOException {
        Outcome outcome = outcome(new NaturalNeighbours(training()));
        assertEquals(723, outcome.count);
        assertTrue(outcome.rmseMetres < outcome.inverseDistanceRmseMetres);
    }

    @Test
    void aThinPlateAndAGaussianProcess() throws IOException {
        for (Surface surface : List.of(ThinPlateSmoother.of(training()), new PlainGaussianProcess(training()))) {
            Outcome outcome = outcome(surface);
            assertTrue(outcome.rmseMetres < outcome.inverseDistanceRmseMetres, surface + ": " + outcome);
        }
    }

    private record Outcome(int count, double rmseMetres, double inverseDistanceRmseMetres) {}

    private static Outcome outcome(Surface surface) throws IOException {
        double ours = 0;
        double inverseDistance = 0;
        int count = 0;
        for (CSVRecord row : rows("test_every20_with_gstat.csv")) {
            double truth = Double.parseDouble(row.get("depth_m"));
            double depth = surface.depthAt(Double.parseDouble(row.get("x_m")), Double.parseDouble(row.get("y_m")));
            if (!Double.isNaN(depth)) {
                count++;
                ours += Math.pow(depth - truth, 2);
                inverseDistance += Math.pow(Double.parseDouble(row.get("idw2_pred")) - truth, 2);
            }
        }
        return new Outcome(count, Math.sqrt(ours / count), Math.sqrt(inverseDistance / count));
    }

    private static List<Site> training() throws IOException {
        List<Site> sites = new ArrayList<>();
        for (CSVRecord row : rows("train_every20.csv")) {
            sites.add(new Site(
                    Double.parseDouble(row.get("x_m")),
                    Double.parseDouble(row.get("y_m")),
                    Double.parseDouble(row.get("depth_m"))));
        }
        return sites;
    }

    private static List<CSVRecord> rows(String name) throws IOException {
        try (Reader reader = new InputStreamReader(
                Lake227Test.class.getResourceAsStream("/lake227/" + name), StandardCharsets.UTF_8)) {
            return CSVFormat.RFC4180
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(reader)
                    .getRecords();
        }
    }
}
