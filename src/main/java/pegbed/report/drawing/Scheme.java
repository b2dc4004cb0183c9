package pegbed.report.drawing;

import java.util.List;
import java.util.Optional;

/**
 * A theme made of a few colours.
 *
 * @param paper of the sheet
 * @param ink of letters and contours
 * @param soft ink of what stands back: rings, clock, legends
 * @param land dry ground
 * @param beyond water beyond reach
 * @param unknown water within reach of which nothing is known
 * @param bank where water meets land
 * @param accent the deepest and the flats
 * @param warning hazards and suspicious readings
 * @param next where to read next
 * @param ramp depth bands
 */
record Scheme(
        Colour paper,
        Colour ink,
        Colour soft,
        Colour land,
        Colour beyond,
        Colour unknown,
        Colour bank,
        Colour accent,
        Colour warning,
        Colour next,
        DepthRamp ramp)
        implements Theme {
    private static final List<Double> DASHED = List.of(5.0, 3.5);
    private static final List<Double> DOTTED = List.of(0.1, 3.4);
    private static final List<Double> FINE = List.of(2.0, 3.0);

    @Override
    public Colour fill(Role role, int step, int steps) {
        return switch (role) {
            case DEPTH_BAND -> ramp.colour(step, steps);
            case LAND -> land;
            case BEYOND -> beyond;
            case UNKNOWN_WATER -> unknown;
            case DOUBT_VEIL -> unknown.withOpacity(0.30);
            case STRONG_DOUBT_VEIL -> unknown.withOpacity(0.45);
            case HAZARD_AREA -> warning.withOpacity(0.14);
            case FLAT_SURE, FLAT_LIKELY, FLAT_WORTH_A_READING -> paper.withOpacity(0.30);
            case FLAT_BADGE, LINE_BADGE, DEEPEST, DAY_FISH -> accent;
            case DAY_FISHED -> soft.withOpacity(0.30);
            case CATCH_BAR -> soft.withOpacity(0.55);
            case DAY_FEED -> ink;
            case DEEPEST_BADGE, PANEL, SHEET, SUSPICIOUS_FRAME, HAZARD_BADGE, NEXT_READING_BADGE -> paper;
            case READING_DOT, LEADER_END, SCALE_BAR -> ink;
            case MARK -> bank;
            case NEXT_READING -> next;
            case SEAT -> land;
            case ANGLER -> ink;
            case HAZARD -> warning;
            case BANK,
                    LIMIT,
                    DOUBT_HATCH,
                    MORE_DOUBT_HATCH,
                    STRONG_DOUBT_HATCH,
                    DOUBT_EDGE,
                    KNOWN_EDGE,
                    CONTOUR,
                    INDEX_CONTOUR,
                    CONTOUR_LABEL,
                    RING,
                    RIM,
                    RING_LABEL,
                    CLOCK_TICK,
                    CLOCK_FIGURE,
                    ZONE_OUTLINE,
                    ZONE_LABEL,
                    READING_FIGURE,
                    READING_LEADER,
                    EARLIER_READING_FIGURE,
                    SUSPICIOUS_FIGURE,
                    CHANGED,
                    CHANGED_BADGE,
                    CHANGED_LABEL,
                    MARK_BEYOND,
                    MARK_LABEL,
                    LEADER,
                    HAZARD_OUTLINE,
                    HAZARD_LABEL,
                    FLAT_NUMBER,
                    DEEPEST_LABEL,
                    DEEPEST_AREA,
                    LINE_PATH,
                    LINE_NUMBER,
                    SEAT_OUTLINE,
                    TITLE,
                    SUBTITLE,
                    JOINED_UP,
                    LEGEND_RULE,
                    LEGEND_LABEL,
                    LEGEND_HEADING,
                    DAY_HOUR,
                    DAY_BITE,
                    DAY_LOST,
                    CAUTION -> soft;
        };
    }

    @Override
    public Pen pen(Role role) {
        return switch (role) {
            case CONTOUR -> Pen.of(ink.withOpacity(0.55), 0.6);
            case INDEX_CONTOUR -> Pen.of(ink.withOpacity(0.75), 1.15);
            case BANK -> Pen.of(bank, 1.8);
            case LIMIT -> new Pen(bank, 1.2, List.of(9.0, 3.0, 1.0, 3.0));
            case DOUBT_HATCH, MORE_DOUBT_HATCH, STRONG_DOUBT_HATCH -> Pen.of(soft.withOpacity(0.60), 0.75);
            case DOUBT_EDGE -> new Pen(soft, 0.8, List.of(4.0, 2.0));
            case KNOWN_EDGE -> new Pen(soft, 0.9, FINE);
            case RING -> new Pen(soft.withOpacity(0.55), 0.6, FINE);
            case RIM -> Pen.of(soft, 1);
            case CLOCK_TICK -> Pen.of(soft, 1);
            case ZONE_OUTLINE -> new Pen(ink.withOpacity(0.8), 1.2, List.of(8.0, 4.0));
            case SUSPICIOUS_FRAME -> Pen.of(warning, 1.3);
            case CHANGED -> Pen.of(ink, 1.3);
            case CHANGED_BADGE -> Pen.of(paper.withOpacity(0.75), 3.2);
            case HAZARD_OUTLINE -> new Pen(warning, 1.1, DASHED);
            case HAZARD -> Pen.of(warning, 1.5);
            case MARK, MARK_BEYOND -> Pen.of(bank, 1.5);
            case LEADER -> Pen.of(ink, 0.9);
            case READING_LEADER -> Pen.of(ink, 0.6);
            case FLAT_SURE -> Pen.of(accent, 2);
            case FLAT_LIKELY -> new Pen(accent, 1.8, DASHED);
            case FLAT_WORTH_A_READING -> new Pen(accent, 1.8, DOTTED);
            case DEEPEST -> Pen.of(accent, 1.8);
            case DEEPEST_BADGE, FLAT_BADGE, LINE_BADGE -> Pen.of(paper, 1.4);
            case HAZARD_BADGE -> Pen.of(warning, 1);
            case NEXT_READING_BADGE -> Pen.of(paper, 3);
            case DEEPEST_AREA -> new Pen(accent.withOpacity(0.8), 0.9, FINE);
            case LINE_PATH -> Pen.of(ink.withOpacity(0.6), 1);
            case NEXT_READING -> Pen.of(next, 1.4);
            case SEAT, SEAT_OUTLINE -> Pen.of(bank, 1.3);
            case LEGEND_RULE -> Pen.of(soft, 0.7);
            case SCALE_BAR -> Pen.of(ink, 1);
            case DAY_HOUR -> new Pen(soft.withOpacity(0.55), 0.6, FINE);
            case DAY_FISH -> Pen.of(paper, 0.8);
            case DAY_BITE -> Pen.of(ink, 1);
            case DAY_LOST -> Pen.of(warning, 1.4);
            case SHEET,
                    UNKNOWN_WATER,
                    BEYOND,
                    DEPTH_BAND,
                    LAND,
                    DOUBT_VEIL,
                    STRONG_DOUBT_VEIL,
                    CONTOUR_LABEL,
                    RING_LABEL,
                    CLOCK_FIGURE,
                    ZONE_LABEL,
                    READING_DOT,
                    READING_FIGURE,
                    EARLIER_READING_FIGURE,
                    LEADER_END,
                    SUSPICIOUS_FIGURE,
                    CHANGED_LABEL,
                    MARK_LABEL,
                    HAZARD_AREA,
                    HAZARD_LABEL,
                    FLAT_NUMBER,
                    DEEPEST_LABEL,
                    LINE_NUMBER,
                    ANGLER,
                    TITLE,
                    SUBTITLE,
                    JOINED_UP,
                    PANEL,
                    LEGEND_LABEL,
                    LEGEND_HEADING,
                    DAY_FISHED,
                    DAY_FEED,
                    CATCH_BAR,
                    CAUTION -> Pen.of(ink, 1);
        };
    }

    @Override
    public Ink ink(Role role) {
        return switch (role) {
            case CONTOUR_LABEL, RING_LABEL -> haloed(ink, 2.2, 0.5);
            case CLOCK_FIGURE -> plain(soft);
            case READING_FIGURE, ZONE_LABEL -> haloed(ink, 2.4, 0.6);
            case EARLIER_READING_FIGURE -> haloed(ink.withOpacity(0.88), 2.4, 0.6);
            case SUSPICIOUS_FIGURE -> plain(warning);
            case MARK_LABEL -> haloed(ink, 3, 0.5, land);
            case CHANGED_LABEL -> haloed(ink, 3, 0.8);
            case HAZARD_LABEL -> haloed(warning, 3, 0.9);
            case JOINED_UP -> plain(warning);
            case FLAT_NUMBER, LINE_NUMBER -> plain(paper);
            case DEEPEST_LABEL -> haloed(accent, 3.2, 0.92);
            case SUBTITLE, LEGEND_LABEL, CAUTION -> plain(soft);
            case SHEET,
                    UNKNOWN_WATER,
                    BEYOND,
                    DEPTH_BAND,
                    LAND,
                    BANK,
                    LIMIT,
                    DOUBT_VEIL,
                    DOUBT_HATCH,
                    MORE_DOUBT_HATCH,
                    STRONG_DOUBT_VEIL,
                    STRONG_DOUBT_HATCH,
                    DOUBT_EDGE,
                    KNOWN_EDGE,
                    CONTOUR,
                    INDEX_CONTOUR,
                    RING,
                    RIM,
                    CLOCK_TICK,
                    ZONE_OUTLINE,
                    READING_DOT,
                    READING_LEADER,
                    SUSPICIOUS_FRAME,
                    CHANGED,
                    CHANGED_BADGE,
                    MARK,
                    MARK_BEYOND,
                    LEADER,
                    LEADER_END,
                    HAZARD_AREA,
                    HAZARD_OUTLINE,
                    HAZARD,
                    HAZARD_BADGE,
                    FLAT_SURE,
                    FLAT_LIKELY,
                    FLAT_WORTH_A_READING,
                    FLAT_BADGE,
                    DEEPEST,
                    DEEPEST_BADGE,
                    DEEPEST_AREA,
                    LINE_PATH,
                    LINE_BADGE,
                    NEXT_READING,
                    NEXT_READING_BADGE,
                    SEAT,
                    SEAT_OUTLINE,
                    ANGLER,
                    TITLE,
                    PANEL,
                    LEGEND_RULE,
                    LEGEND_HEADING,
                    SCALE_BAR,
                    DAY_HOUR,
                    DAY_FISHED,
                    DAY_FISH,
                    DAY_BITE,
                    DAY_LOST,
                    DAY_FEED,
                    CATCH_BAR -> plain(ink);
        };
    }

    private static Ink plain(Colour colour) {
        return new Ink(colour, Optional.empty());
    }

    private Ink haloed(Colour colour, double widthPoints, double opacity) {
        return haloed(colour, widthPoints, opacity, paper);
    }

    private static Ink haloed(Colour colour, double widthPoints, double opacity, Colour about) {
        return new Ink(colour, Optional.of(Pen.of(about.withOpacity(opacity), widthPoints)));
    }
}
