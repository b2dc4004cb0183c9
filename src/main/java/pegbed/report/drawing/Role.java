package pegbed.report.drawing;

/** What an item of a drawing means. Kinds of one thing differ in shape or dashes too, never by colour alone. */
public enum Role {
    /** The sheet itself. */
    SHEET,
    /** Water of whose bottom nothing is known. */
    UNKNOWN_WATER,
    /** Water beyond the reach or the limits. */
    BEYOND,
    /** Step i of n, shallowest first. */
    DEPTH_BAND,
    /** Dry ground beyond the banks, and islands. */
    LAND,
    /** Where water meets land. */
    BANK,
    /** The limit of the angler's own water. */
    LIMIT,
    /** Veil over depths with an sd above 10 cm. */
    DOUBT_VEIL,
    /** Wide hatching of that veil. */
    DOUBT_HATCH,
    /** Lines between those of the wide hatching, where the sd is above 15 cm. */
    MORE_DOUBT_HATCH,
    /** Veil over depths with an sd above 20 cm. */
    STRONG_DOUBT_VEIL,
    /** Lines across the others under that veil. */
    STRONG_DOUBT_HATCH,
    /** Line round the veil. */
    DOUBT_EDGE,
    /** Line between what is known and what is not. */
    KNOWN_EDGE,
    CONTOUR,
    /** Contours of whole feet, or of half metres. */
    INDEX_CONTOUR,
    CONTOUR_LABEL,
    /** Ring at a joint of the pole. */
    RING,
    /** Ring at the reach. */
    RIM,
    RING_LABEL,
    /** Tick of the clock at the rim. */
    CLOCK_TICK,
    CLOCK_FIGURE,
    ZONE_OUTLINE,
    ZONE_LABEL,
    /** Dot at a reading whose figure stands beside it. */
    READING_DOT,
    /** Depth of a reading. */
    READING_FIGURE,
    /** Depth of an earlier visit's reading, brought to the level of the latest. */
    EARLIER_READING_FIGURE,
    /** From a reading to its figure, where that stands off. */
    READING_LEADER,
    /** Frame about a reading that the others contradict. */
    SUSPICIOUS_FRAME,
    SUSPICIOUS_FIGURE,
    /** Toothed ring about a place where the bottom has changed between visits; the teeth point down the slope. */
    CHANGED,
    /** Paper under that ring. */
    CHANGED_BADGE,
    CHANGED_LABEL,
    /** Symbol of a mark. */
    MARK,
    /** Arrow head at a mark that stands beyond the edge of the map, in its direction. */
    MARK_BEYOND,
    MARK_LABEL,
    /** From a sign or name that had to move to its place. */
    LEADER,
    /** Dot at that place. */
    LEADER_END,
    /** Ground that a hazard takes. */
    HAZARD_AREA,
    HAZARD_OUTLINE,
    /** Symbol of the hazard's kind. */
    HAZARD,
    /** Paper under that symbol. */
    HAZARD_BADGE,
    HAZARD_LABEL,
    FLAT_SURE,
    FLAT_LIKELY,
    FLAT_WORTH_A_READING,
    /** Disc under a flat spot's number. */
    FLAT_BADGE,
    FLAT_NUMBER,
    /** Symbol of the deepest place. */
    DEEPEST,
    /** Paper under that symbol. */
    DEEPEST_BADGE,
    DEEPEST_LABEL,
    /** Outline of the ground about the deepest place. */
    DEEPEST_AREA,
    /** From the seat to a line that is fished. */
    LINE_PATH,
    /** Disc under a line's number. */
    LINE_BADGE,
    LINE_NUMBER,
    /** Four wedges about the place where the next reading is worth most. */
    NEXT_READING,
    /** Paper under them. */
    NEXT_READING_BADGE,
    /** Platform under the angler. */
    SEAT,
    SEAT_OUTLINE,
    /** The angler on it. */
    ANGLER,
    TITLE,
    SUBTITLE,
    /** What says that the map is joined up. */
    JOINED_UP,
    /** Paper under a title or legend. */
    PANEL,
    /** Rule and outlines in a legend. */
    LEGEND_RULE,
    LEGEND_LABEL,
    LEGEND_HEADING,
    SCALE_BAR,
    /** Upright at a figure of a day's time. */
    DAY_HOUR,
    /** Bar while a line was fished. */
    DAY_FISHED,
    /** Disc of a fish. */
    DAY_FISH,
    /** Ring of a bite. */
    DAY_BITE,
    /** Cross of a lost fish or a snag. */
    DAY_LOST,
    /** Triangle of feed. */
    DAY_FEED,
    /** Bar of what a depth gave. */
    CATCH_BAR,
    CAUTION
}
