package pegbed.report.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The depth bands as people see them whose eyes have two kinds of cones. The simulation is that of Machado, Oliveira &
 * Fernandes (2009), "A physiologically-based model for simulation of color vision deficiency", IEEE Transactions on
 * Visualization and Computer Graphics 15(6):1291–1298: their published matrices for severity 1, on linear sRGB.
 */
class PaletteTest {
    private static final Map<String, double[][]> EYES = Map.of(
            "all cones", new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}},
            "protanopia",
                    new double[][] {
                        {0.152286, 1.052583, -0.204868},
                        {0.114503, 0.786281, 0.099216},
                        {-0.003882, -0.048116, 1.051998}
                    },
            "deuteranopia",
                    new double[][] {
                        {0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}
                    },
            "tritanopia",
                    new double[][] {
                        {1.255528, -0.076749, -0.178779},
                        {-0.078411, 0.930809, 0.147602},
                        {0.004733, 0.691367, 0.303900}
                    });

    private static final Map<String, Theme> THEMES = Map.of(
            "light", Themes.LIGHT,
            "dark", Themes.DARK,
            "high contrast", Themes.HIGH_CONTRAST,
            "black and white", Themes.BLACK_AND_WHITE);

    /** As many bands as there can be: twelve contours and the water below the first. */
    private static final int MOST = 13;

    /** A difference in CIELAB that is just noticed: 2.3 (Mahy, Van Eycken & Oosterlinck 1994, from memory). */
    private static final double NOTICED = 2.3;

    @Test
    void deeperIsDarkerForEveryEye() {
        THEMES.forEach((name, theme) -> EYES.forEach((eyes, matrix) -> {
            for (int steps = 2; steps <= MOST; steps++) {
                for (int i = 1; i < steps; i++) {
                    double shallow = lab(theme.fill(Role.DEPTH_BAND, i - 1, steps), matrix)[0];
                    double deep = lab(theme.fill(Role.DEPTH_BAND, i, steps), matrix)[0];
                    assertTrue(
                            deep < shallow - 1,
                            name + ", " + eyes + ", band " + i + " of " + steps + ": " + shallow + " to " + deep);
                }
            }
        }));
    }

    @Test
    void neighboursCanBeToldApartByEveryEye() {
        THEMES.forEach((name, theme) -> EYES.forEach((eyes, matrix) -> {
            for (int i = 1; i < MOST; i++) {
                double[] a = lab(theme.fill(Role.DEPTH_BAND, i - 1, MOST), matrix);
                double[] b = lab(theme.fill(Role.DEPTH_BAND, i, MOST), matrix);
                double distance =
                        Math.sqrt(Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
                assertTrue(distance >= NOTICED, name + ", " + eyes + ", band " + i + ": " + distance);
            }
        }));
    }

    @Test
    void lightnessFallsInEvenSteps() {
        THEMES.forEach((name, theme) -> {
            double first = lab(theme.fill(Role.DEPTH_BAND, 0, MOST), EYES.get("all cones"))[0];
            double last = lab(theme.fill(Role.DEPTH_BAND, MOST - 1, MOST), EYES.get("all cones"))[0];
            double mean = (first - last) / (MOST - 1);
            for (int i = 1; i < MOST; i++) {
                double step = lab(theme.fill(Role.DEPTH_BAND, i - 1, MOST), EYES.get("all cones"))[0]
                        - lab(theme.fill(Role.DEPTH_BAND, i, MOST), EYES.get("all cones"))[0];
                assertTrue(step > 0.6 * mean && step < 1.4 * mean, name + ", step " + i + ": " + step + " of " + mean);
            }
        });
    }

    /**
     * WCAG 2.2, success criterion 1.4.3: 4.5 to 1, on the bare band, without a halo. High contrast has 7 to 1, 1.4.6.
     */
    @Test
    void figuresCanBeReadOnEveryBand() {
        THEMES.forEach((name, theme) -> {
            double least = theme == Themes.HIGH_CONTRAST ? 7 : 4.5;
            for (Role role : List.of(Role.READING_FIGURE, Role.CONTOUR_LABEL, Role.RING_LABEL)) {
                for (int i = 0; i < MOST; i++) {
                    double contrast = contrast(theme.ink(role).colour(), theme.fill(Role.DEPTH_BAND, i, MOST));
                    assertTrue(contrast >= least, name + ", " + role + ", band " + i + ": " + contrast);
                }
            }
        });
    }

    /**
     * Lighter figures, and those in colour, stand on a halo, so 4.5 to 1 is asked of ink on band and halo as they mix.
     */
    @Test
    void lettersWithHalosCanBeReadOnEveryBand() {
        THEMES.forEach((name, theme) -> {
            double today = theme.ink(Role.READING_FIGURE).colour().opacity();
            assertTrue(theme.ink(Role.EARLIER_READING_FIGURE).colour().opacity() < today, name);
            for (Role role : List.of(Role.EARLIER_READING_FIGURE, Role.DEEPEST_LABEL, Role.HAZARD_LABEL)) {
                Ink ink = theme.ink(role);
                for (int i = 0; i < MOST; i++) {
                    Colour ground = mixed(ink.halo().orElseThrow().colour(), theme.fill(Role.DEPTH_BAND, i, MOST));
                    double contrast = contrast(mixed(ink.colour(), ground), ground);
                    assertTrue(contrast >= 4.5, name + ", " + role + ", band " + i + ": " + contrast);
                }
            }
        });
    }

    /** Each of the signs in colour is told from the others by its form; the next place by its colour as well. */
    @Test
    void theNextPlaceHasAColourOfItsOwn() {
        for (Theme theme : List.of(Themes.LIGHT, Themes.DARK, Themes.HIGH_CONTRAST)) {
            Colour next = theme.fill(Role.NEXT_READING, 0, 1);
            for (Role role : List.of(Role.DEEPEST, Role.HAZARD, Role.MARK, Role.READING_DOT)) {
                double[] a = lab(next, EYES.get("all cones"));
                double[] b = lab(theme.fill(role, 0, 1), EYES.get("all cones"));
                double apart = Math.hypot(Math.hypot(a[0] - b[0], a[1] - b[1]), a[2] - b[2]);
                assertTrue(apart > 25, role + ": " + apart);
            }
        }
    }

    private static Colour mixed(Colour over, Colour under) {
        double share = over.opacity();
        return new Colour(
                (int) Math.round(share * over.red() + (1 - share) * under.red()),
                (int) Math.round(share * over.green() + (1 - share) * under.green()),
                (int) Math.round(share * over.blue() + (1 - share) * under.blue()),
                1);
    }

    /** WCAG 2.2, success criterion 1.4.3: 4.5 to 1 for ordinary letters. */
    @Test
    void lettersOnPaperCanBeRead() {
        THEMES.forEach((name, theme) -> {
            Colour paper = theme.fill(Role.PANEL, 0, 1);
            for (Role role : List.of(Role.TITLE, Role.SUBTITLE, Role.LEGEND_LABEL, Role.LEGEND_HEADING, Role.CAUTION)) {
                assertTrue(contrast(theme.ink(role).colour(), paper) >= 4.5, name + ", " + role);
            }
            Colour land = theme.fill(Role.LAND, 0, 1);
            for (Role role : List.of(Role.MARK_LABEL, Role.CLOCK_FIGURE)) {
                assertTrue(contrast(theme.ink(role).colour(), land) >= 4.5, name + ", " + role);
            }
            assertTrue(contrast(theme.ink(Role.FLAT_NUMBER).colour(), theme.fill(Role.FLAT_BADGE, 0, 1)) >= 4.5, name);
        });
    }

    @Test
    void confidenceIsToldByDashesNotByColour() {
        THEMES.forEach((name, theme) -> {
            Pen sure = theme.pen(Role.FLAT_SURE);
            Pen likely = theme.pen(Role.FLAT_LIKELY);
            Pen worth = theme.pen(Role.FLAT_WORTH_A_READING);
            assertTrue(sure.dashPoints().isEmpty(), name);
            assertTrue(!likely.dashPoints().isEmpty() && !worth.dashPoints().isEmpty(), name);
            assertTrue(!likely.dashPoints().equals(worth.dashPoints()), name);
        });
    }

    @Test
    void everyThemeAnswersForEveryRole() {
        THEMES.values().forEach(theme -> {
            for (Role role : Role.values()) {
                assertTrue(theme.fill(role, 0, 1).opacity() > 0, role.name());
                assertTrue(theme.pen(role).widthPoints() > 0, role.name());
                assertTrue(theme.ink(role).colour().opacity() > 0.5, role.name());
            }
        });
    }

    @Test
    void blackAndWhiteHasNoHue() {
        for (Role role : Role.values()) {
            for (Colour colour : List.of(
                    Themes.BLACK_AND_WHITE.fill(role, 0, 2),
                    Themes.BLACK_AND_WHITE.pen(role).colour(),
                    Themes.BLACK_AND_WHITE.ink(role).colour())) {
                assertTrue(colour.red() == colour.green() && colour.green() == colour.blue(), role + " " + colour);
            }
        }
    }

    /** Ottosson (2020): white, and the pure red of sRGB, in OKLab (values of the article's table, from memory). */
    @Test
    void okLabGivesKnownColours() {
        assertEquals(Colour.of(0xffffff), new OkLab(1, 0, 0).colour());
        assertEquals(Colour.of(0x000000), new OkLab(0, 0, 0).colour());
        assertEquals(Colour.of(0xff0000), new OkLab(0.62796, 0.22486, 0.12585).colour());
    }

    private static double contrast(Colour one, Colour other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Colour colour) {
        return 0.2126 * linear(colour.red()) + 0.7152 * linear(colour.green()) + 0.0722 * linear(colour.blue());
    }

    /** CIELAB (CIE 15) under D65 of what the eyes make of a colour. */
    private static double[] lab(Colour colour, double[][] eyes) {
        double[] rgb = {linear(colour.red()), linear(colour.green()), linear(colour.blue())};
        double[] seen = new double[3];
        for (int i = 0; i < 3; i++) {
            double sum = eyes[i][0] * rgb[0] + eyes[i][1] * rgb[1] + eyes[i][2] * rgb[2];
            seen[i] = Math.max(0, Math.min(1, sum));
        }
        double x = root((0.4124 * seen[0] + 0.3576 * seen[1] + 0.1805 * seen[2]) / 0.95047);
        double y = root(0.2126 * seen[0] + 0.7152 * seen[1] + 0.0722 * seen[2]);
        double z = root((0.0193 * seen[0] + 0.1192 * seen[1] + 0.9505 * seen[2]) / 1.08883);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    private static double root(double value) {
        return value > 216.0 / 24389 ? Math.cbrt(value) : (24389.0 / 27 * value + 16) / 116;
    }

    private static double linear(int channel) {
        double value = channel / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}
