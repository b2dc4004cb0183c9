package pegbed.report.card;

import pegbed.report.drawing.Colour;
import pegbed.report.drawing.Ink;
import pegbed.report.drawing.Pen;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Theme;

/**
 * A theme for paper: what it leaves bare is white, so that a printer puts nothing there.
 *
 * @param theme for all else
 */
record OnWhite(Theme theme) implements Theme {
    private static final Colour WHITE = Colour.of(0xffffff);

    @Override
    public Colour fill(Role role, int step, int steps) {
        return role == Role.SHEET || role == Role.PANEL ? WHITE : theme.fill(role, step, steps);
    }

    @Override
    public Pen pen(Role role) {
        return theme.pen(role);
    }

    @Override
    public Ink ink(Role role) {
        return theme.ink(role);
    }
}
