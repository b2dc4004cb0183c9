package pegbed.ui.map;

/** What a click on the map does. */
public enum Tool {
    READ("Reading", "Click where the plummet went down; type the depth and press Enter."),
    COURSE("Profile line", "Drag a line over the water to see the bottom along it."),
    NEAR_BANK("Near bank", "Click along the near edge of the water; drag a point to move it."),
    FAR_BANK("Far bank", "Click along the far edge of the water; drag a point to move it."),
    MARK("Marks", "Click where a mark stands on the far bank; drag it to move it."),
    HAZARD("Hazards", "Click where a snag or another hazard is; drag it to move it.");

    private final String words;
    private final String help;

    Tool(String words, String help) {
        this.words = words;
        this.help = help;
    }

    public String words() {
        return words;
    }

    /** What to do with it, one sentence. */
    public String help() {
        return help;
    }
}
