package pegbed.bench.quality;

import java.util.OptionalDouble;
import java.util.function.Function;
import pegbed.bench.practice.DiscMeans;
import pegbed.findings.Confidence;
import pegbed.findings.PegMap;
import pegbed.findings.Zone;
import pegbed.findings.Zones;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.plain.Interpolator;
import pegbed.surface.plain.Site;

/**
 * The bottom as a plain interpolator sees it through the same readings and the bank points at depth 0. Zones are the
 * model's, so that only the surface differs.
 */
final class InterpolatedBottom implements SurveyedBottom {
    private static final double SLOPE_LIMIT = 0.20;

    private final Interpolator interpolator;
    private final GridFrame frame;
    private final Zones zones;
    private final DiscMeans.Mean[] discs;

    InterpolatedBottom(Peg peg, Function<java.util.List<Site>, Interpolator> method) throws InputException {
        java.util.List<Site> sites = new java.util.ArrayList<>();
        for (Reading reading : peg.readings()) {
            sites.add(new Site(reading.place().xMetres(), reading.place().yMetres(), reading.depthMetres()));
        }
        Banks banks = peg.banks();
        java.util.stream.Stream.concat(java.util.stream.Stream.of(banks.near(), banks.far()), banks.islands().stream())
                .flatMap(java.util.List::stream)
                .map(BankPoint::place)
                .forEach(place -> sites.add(new Site(place.xMetres(), place.yMetres(), 0)));
        interpolator = method.apply(sites);
        PegMap map = PegMap.of(peg, Monitor.NONE);
        frame = map.grid().frame();
        zones = map.zones();
        discs = new DiscMeans.Mean[frame.size()];
        for (int i = 0; i < discs.length; i++) {
            if (zones.isFishable(i)) {
                discs[i] = DiscMeans.of(interpolator::depthAt, x(i), y(i));
            }
        }
    }

    private double x(int i) {
        return frame.x(i % frame.columns());
    }

    private double y(int i) {
        return frame.y(i / frame.columns());
    }

    @Override
    public boolean answers(double x, double y) {
        return !Double.isNaN(interpolator.depthAt(x, y));
    }

    @Override
    public double depthAt(double x, double y) {
        return interpolator.depthAt(x, y);
    }

    @Override
    public double sdAt(double x, double y) {
        return Double.NaN;
    }

    @Override
    public Place deepest() {
        int best = -1;
        for (int i = 0; i < discs.length; i++) {
            if (discs[i] != null
                    && discs[i].slope() <= SLOPE_LIMIT
                    && (best < 0 || discs[i].depth() > discs[best].depth())) {
                best = i;
            }
        }
        return best < 0 ? new Place(0, 0) : new Place(x(best), y(best));
    }

    @Override
    public Answer flat(Zone zone, double targetMetres) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < discs.length; i++) {
            if (discs[i] != null && !Double.isNaN(discs[i].depth()) && zones.contains(zone, i)) {
                double cost = Math.abs(discs[i].depth() - targetMetres) / 0.05 + discs[i].slope() / SLOPE_LIMIT;
                if (cost < least) {
                    least = cost;
                    best = i;
                }
            }
        }
        return best < 0 ? null : new Answer(new Place(x(best), y(best)), Confidence.NONE, OptionalDouble.empty());
    }
}
