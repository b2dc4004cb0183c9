package pegbed.report.drawing;

import java.util.List;

/**
 * The colours of depth: a curve through a few colours of OKLab along which the lightness falls evenly from shallow to
 * deep, so that the order of depths can be seen without any sense of hue.
 */
final class DepthRamp {
    private final List<OkLab> stops;

    /** @param stops at even distances, shallowest first; their lightness is put right by this class */
    DepthRamp(List<OkLab> stops) {
        this.stops = List.copyOf(stops);
    }

    /** The colour of a step, 0 the shallowest. */
    Colour colour(int step, int steps) {
        // One or two bands keep off the ends, which would shout.
        double from = steps < 4 ? 0.5 - (steps - 1) / 8.0 : 0;
        double share = steps == 1 ? from : from + (1 - 2 * from) * step / (steps - 1);
        double place = share * (stops.size() - 1);
        int i = (int) Math.min(stops.size() - 2, Math.floor(place));
        OkLab between = stops.get(i).towards(stops.get(i + 1), place - i);
        double first = stops.get(0).lightness();
        double last = stops.get(stops.size() - 1).lightness();
        return new OkLab(first + share * (last - first), between.a(), between.b()).colour();
    }
}
