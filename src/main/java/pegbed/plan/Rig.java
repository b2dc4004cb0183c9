package pegbed.plan;

import java.util.Comparator;
import java.util.List;
import pegbed.model.RigTemplate;

/**
 * A rig and the lines that it serves.
 *
 * @param number from 1, the shallowest first
 * @param template how it is tied
 * @param overdepthMetres line that lies on the bottom when the float's tip just shows, metres
 * @param settings how the float is set for each line, shallowest first, one at least
 */
public record Rig(int number, RigTemplate template, double overdepthMetres, List<Setting> settings) {
    /**
     * How the float is set for a line.
     *
     * @param line number of the line
     * @param hookToTipMetres from the hook to the tip of the float: depth and overdepth, metres; with the hook held at
     *     one end of the top kit, the mark goes this far along it
     */
    public record Setting(int line, double hookToTipMetres) {}

    public Rig {
        settings = settings.stream()
                .sorted(Comparator.comparingDouble(Setting::hookToTipMetres))
                .toList();
        if (settings.isEmpty()) {
            throw new IllegalArgumentException("A rig serves one line at least.");
        }
    }

    /** How far the float is slid between its shallowest and its deepest line, metres. */
    public double travelMetres() {
        return settings.get(settings.size() - 1).hookToTipMetres()
                - settings.get(0).hookToTipMetres();
    }
}
