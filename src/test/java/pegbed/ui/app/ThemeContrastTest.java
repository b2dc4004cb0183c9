package pegbed.ui.app;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.paint.Color;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Contrasts of the window's colours, from the values of the sheets themselves: WCAG 2.2, success criteria 1.4.3 (text
 * 4.5 to 1) and 1.4.11 (parts of controls 3 to 1).
 */
class ThemeContrastTest {
    private static final double TEXT = 4.5;
    private static final double CONTROL = 3;
    private static final Pattern DECLARATION = Pattern.compile("(-(?:color|pegbed)-[a-z0-9-]+)\\s*:\\s*([^;}]+)");

    /** The theme's colours that its rules paint with, all blue in the theme itself. */
    private static final List<String> ACCENTS = List.of(
            "-color-accent-fg",
            "-color-accent-emphasis",
            "-color-accent-muted",
            "-color-accent-subtle",
            "-color-accent-6");

    enum Look {
        LIGHT,
        DARK
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void lettersCanBeRead(Look look) throws IOException {
        Map<String, String> colours = colours(look);
        for (String ground : List.of("-color-bg-default", "-color-bg-subtle", "-color-accent-subtle")) {
            assertContrast(TEXT, colours, "-color-fg-default", ground);
        }
        for (String ground : List.of("-color-bg-default", "-color-bg-subtle")) {
            assertContrast(TEXT, colours, "-color-fg-muted", ground);
            assertContrast(TEXT, colours, "-color-accent-fg", ground);
            assertContrast(TEXT, colours, "-pegbed-warn", ground);
        }
        assertContrast(TEXT, colours, "-pegbed-warn", "-pegbed-warn-ground");
        assertContrast(TEXT, colours, "-color-fg-default", "-pegbed-warn-ground");
        assertContrast(TEXT, colours, "-color-fg-emphasis", "-color-accent-emphasis");
        assertContrast(TEXT, colours, "-pegbed-primary-text", "-pegbed-primary");
        assertContrast(TEXT, colours, "-color-bg-default", "-pegbed-accent");
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void controlsAndTheFocusCanBeSeen(Look look) throws IOException {
        Map<String, String> colours = colours(look);
        for (String ground : List.of("-color-bg-default", "-color-bg-subtle")) {
            assertContrast(CONTROL, colours, "-color-accent-emphasis", ground);
            assertContrast(CONTROL, colours, "-pegbed-primary", ground);
        }
    }

    /** Hue from red to yellow, 0 to 60 degrees. */
    @ParameterizedTest
    @EnumSource(Look.class)
    void noAccentIsTheThemesOwnBlue(Look look) throws IOException {
        Map<String, String> colours = colours(look);
        Map<String, String> theme = root(look);
        for (String name : ACCENTS) {
            Color colour = colour(colours, name);
            assertTrue(colour.getHue() < 60, name + " is " + colour);
            assertFalse(colour(theme, name).getHue() < 60, name + " of the theme");
        }
    }

    private static void assertContrast(double least, Map<String, String> colours, String over, String ground) {
        double a = luminance(colour(colours, over));
        double b = luminance(colour(colours, ground));
        double contrast = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
        assertTrue(contrast >= least, over + " on " + ground + ": " + contrast);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(double share) {
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    private static Color colour(Map<String, String> colours, String name) {
        String value = colours.get(name);
        return value.startsWith("-") ? colour(colours, value) : Color.web(value);
    }

    private static Map<String, String> colours(Look look) throws IOException {
        Map<String, String> colours = root(look);
        String sheet = text("/pegbed/ui/app/window.css");
        colours.putAll(declared(sheet, ".window"));
        if (look == Look.DARK) {
            colours.putAll(declared(sheet, ".window:dark"));
        }
        return colours;
    }

    private static Map<String, String> root(Look look) throws IOException {
        String sheet = (look == Look.DARK ? new PrimerDark() : new PrimerLight()).getUserAgentStylesheet();
        return declared(text(sheet), ".root");
    }

    private static Map<String, String> declared(String sheet, String selector) {
        Matcher block = Pattern.compile("(?:^|[}\\s])" + Pattern.quote(selector) + "\\s*\\{([^}]*)}")
                .matcher(sheet);
        assertTrue(block.find(), selector);
        Map<String, String> found = new HashMap<>();
        Matcher declaration = DECLARATION.matcher(block.group(1));
        while (declaration.find()) {
            found.put(declaration.group(1), declaration.group(2).strip());
        }
        return found;
    }

    private static String text(String resource) throws IOException {
        try (InputStream in = PrimerLight.class.getResourceAsStream(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
