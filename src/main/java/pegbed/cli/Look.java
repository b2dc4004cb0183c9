package pegbed.cli;

import java.util.Locale;
import pegbed.model.InputException;
import pegbed.report.drawing.Theme;
import pegbed.report.drawing.Themes;

/** What a picture can look like, as {@code --look} names it. */
enum Look {
    LIGHT(Themes.LIGHT),
    DARK(Themes.DARK),
    CONTRAST(Themes.HIGH_CONTRAST),
    GREY(Themes.BLACK_AND_WHITE);

    private final Theme theme;

    Look(Theme theme) {
        this.theme = theme;
    }

    /**
     * The theme of a name.
     *
     * @throws InputException if there is none of that name
     */
    static Theme theme(String name) throws InputException {
        try {
            return valueOf(name.toUpperCase(Locale.ROOT)).theme;
        } catch (IllegalArgumentException e) {
            throw new InputException("--look: '" + name + "' is not one of light, dark, contrast or grey.", e);
        }
    }
}
