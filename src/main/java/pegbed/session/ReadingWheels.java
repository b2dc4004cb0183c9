package pegbed.session;

import java.util.ArrayList;
import java.util.List;
import pegbed.model.Bottom;
import pegbed.model.Decimals;
import pegbed.model.Mark;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.model.Units;
import pegbed.notation.Clock;
import pegbed.notation.FeetAndInches;
import pegbed.notation.ShortForm;

/**
 * What wheels and large buttons for a reading hold at a peg, and the line that they stand for: distances at and beyond
 * the pole's joints, directions by the clock or beside a mark, depths in small steps.
 */
public final class ReadingWheels {
    /** Next places are said to this many minutes, and the clock goes by as many. */
    public static final int CLOCK_STEP_MINUTES = 5;

    /** The clock goes so far either way from twelve: to the side. */
    public static final int CLOCK_MAX_MINUTES = 180;

    /** Places beside a mark go by so much along the far bank. */
    public static final double BESIDE_STEP_METRES = 0.5;

    /** Places beside a mark go so far from it. */
    public static final double BESIDE_MAX_METRES = 20;

    private static final double CENTIMETRE_STEP_METRES = 0.02;
    private static final double PART_METRES = 0.5;
    private static final double ALIKE_METRES = 1e-6;

    private final Peg peg;
    private final ShortForm form;

    public ReadingWheels(Peg peg) {
        this.peg = peg;
        form = new ShortForm(peg.units(), peg.pole(), '.');
    }

    /** Whether depths go by inches. */
    public boolean feet() {
        return peg.units().depth() == Units.Depth.FEET;
    }

    /** From one depth to the next: an inch, or 2 cm. */
    public double depthStepMetres() {
        return feet() ? FeetAndInches.INCH_METRES : CENTIMETRE_STEP_METRES;
    }

    /** The deepest, in steps from the surface. */
    public int deepestStep() {
        return (int) Math.floor(Reading.DEEPEST_METRES / depthStepMetres());
    }

    /** The step nearest to a depth. */
    public int depthStep(double metres) {
        return (int) Math.max(0, Math.min(deepestStep(), Math.round(metres / depthStepMetres())));
    }

    /** Where the depth begins while none is expected: a yard, or a metre. */
    public int usualDepthStep() {
        return feet() ? 36 : 50;
    }

    /** Where the distance begins while no place is proposed, metres: at the fourth joint, where most plumb first. */
    public double usualDistance() {
        List<Double> joints = peg.pole().jointMetres();
        return joints.get(Math.min(3, joints.size() - 1));
    }

    /** Minutes on the clock nearest to a direction, 0 straight out, negative to the left. */
    public static int clockMinutes(double angleDegrees) {
        long said = Math.round(angleDegrees * 2 / CLOCK_STEP_MINUTES) * CLOCK_STEP_MINUTES;
        return (int) Math.max(-CLOCK_MAX_MINUTES, Math.min(CLOCK_MAX_MINUTES, said));
    }

    /** Every distance, metres, the nearest first: by sections, feet or half metres, as the person says distances. */
    public List<Double> distances() {
        double step = switch (peg.units().distance()) {
            case SECTIONS -> 0;
            case FEET -> FeetAndInches.FOOT_METRES;
            case METRES -> PART_METRES;
        };
        if (step == 0) {
            return new SectionStops(peg.pole().jointMetres()).all();
        }
        List<Double> all = new ArrayList<>();
        for (int i = 1; i * step <= peg.pole().reachMetres() + ALIKE_METRES; i++) {
            all.add(i * step);
        }
        return all;
    }

    /** A distance by the pole's joints, to be shown: {@code 6 + 0.5 m}. */
    public String section(double metres) {
        return ShortForm.section(peg.pole(), metres)
                .replaceFirst("^s(\\d+)([+-])(.*)$", "$1 $2 $3 m")
                .replaceFirst("^s", "");
    }

    /** A distance as the person says it, to be shown. */
    public String distance(double metres) {
        return switch (peg.units().distance()) {
            case SECTIONS -> section(metres);
            case FEET -> FeetAndInches.words(metres, 1);
            case METRES -> Decimals.text(metres, 1) + " m";
        };
    }

    /** A distance as it would be typed. */
    public String distanceTyped(double metres) {
        return form.printDistance(metres);
    }

    /** A time on the clock, to be shown and typed. */
    public static String clock(int minutes) {
        return Clock.print(minutes / 2.0, CLOCK_STEP_MINUTES);
    }

    /**
     * A place beside a mark as it would be typed.
     *
     * @param metres to the right along the far bank
     */
    public static String besideTyped(Mark mark, double metres) {
        String name = "@" + mark.name();
        return Math.abs(metres) < ALIKE_METRES
                ? name
                : name + (metres > 0 ? "+" : "-") + Decimals.text(Math.abs(metres), 1);
    }

    /**
     * The same to be shown: {@code at it}, {@code 1.5 m left}.
     *
     * @param metres to the right along the far bank
     */
    public static String beside(double metres) {
        return Math.abs(metres) < ALIKE_METRES
                ? "at it"
                : Decimals.text(Math.abs(metres), 1).replaceFirst("\\.0$", "") + " m "
                        + (metres > 0 ? "right" : "left");
    }

    /** A depth as it would be typed. */
    public String depthTyped(int step) {
        return form.printDepth(step * depthStepMetres());
    }

    /** A bottom as it would be typed behind the depth; nothing where none was felt. */
    public static String bottomTyped(Bottom bottom) {
        return bottom == Bottom.UNKNOWN ? "" : " " + bottom.word();
    }
}
