package pegbed.session;

import java.util.ArrayList;
import java.util.List;

/** Where the wheel of sections stops: at the pole's joints, and every half metre on from one. */
public final class SectionStops {
    private static final double PART_METRES = 0.5;

    /** What is no farther from the next joint is left to it. */
    private static final double NEAR_JOINT_METRES = 0.25;

    private static final double ALIKE_METRES = 1e-6;

    private final List<Double> joints;

    /** @param joints of the pole, metres from the seat, the nearest first */
    public SectionStops(List<Double> joints) {
        this.joints = joints;
    }

    /**
     * The next stop outwards or inwards; the same where there is none.
     *
     * @param distanceMetres where the wheel stands, metres from the seat
     */
    public double next(double distanceMetres, boolean out) {
        return out
                ? all().stream()
                        .filter(stop -> stop > distanceMetres + ALIKE_METRES)
                        .findFirst()
                        .orElse(distanceMetres)
                : all().stream()
                        .filter(stop -> stop < distanceMetres - ALIKE_METRES)
                        .reduce((nearer, farther) -> farther)
                        .orElse(distanceMetres);
    }

    /** Every stop, metres from the seat, the nearest first. */
    public List<Double> all() {
        List<Double> stops = new ArrayList<>();
        for (double stop = joints.get(0) - PART_METRES; stop >= PART_METRES; stop -= PART_METRES) {
            stops.add(0, stop);
        }
        for (int i = 0; i < joints.size(); i++) {
            double end = i + 1 < joints.size() ? joints.get(i + 1) - NEAR_JOINT_METRES : joints.get(i) + ALIKE_METRES;
            for (double stop = joints.get(i); stop < end || stop == joints.get(i); stop += PART_METRES) {
                stops.add(stop);
            }
        }
        return stops;
    }

    /**
     * So many whole sections on, as far beyond the joint as before.
     *
     * @param distanceMetres where the wheel stands, metres from the seat
     */
    public double sectionsOn(double distanceMetres, int sections) {
        int at = 0;
        while (at < joints.size() - 1 && joints.get(at + 1) <= distanceMetres + ALIKE_METRES) {
            at++;
        }
        int to = Math.max(0, Math.min(joints.size() - 1, at + sections));
        double metres = joints.get(to) + distanceMetres - joints.get(at);
        return Math.min(metres, joints.get(joints.size() - 1));
    }
}
