package pegbed.report.drawing;

import java.util.List;

/**
 * The themes: for a bright screen or paper, for a dark screen, for the sun on a screen, and for a printer without
 * colour. The deepest band of each is as far from the ink as letters of 4.5 to 1 need (WCAG 2.2, success criterion
 * 1.4.3); that of high contrast as letters of 7 to 1 (1.4.6).
 */
public final class Themes {
    /** Bright paper, pale shallows, ink-blue depths. */
    public static final Theme LIGHT = new Scheme(
            OkLab.polar(0.985, 0.006, 95).colour(),
            Colour.of(0x0c1620),
            Colour.of(0x4d5a63),
            OkLab.polar(0.89, 0.026, 128).colour(),
            OkLab.polar(0.945, 0.006, 230).colour(),
            OkLab.polar(0.97, 0.006, 225).colour(),
            Colour.of(0x4a4534),
            Colour.of(0xb23a0e),
            Colour.of(0x8c1d40),
            Colour.of(0xa3008f),
            new DepthRamp(List.of(
                    OkLab.polar(0.965, 0.038, 115),
                    OkLab.polar(0.88, 0.062, 172),
                    OkLab.polar(0.80, 0.082, 208),
                    OkLab.polar(0.72, 0.096, 234),
                    OkLab.polar(0.63, 0.105, 254))));

    /** Dark sheet, muted bands, bright letters. */
    public static final Theme DARK = new Scheme(
            OkLab.polar(0.16, 0.012, 250).colour(),
            Colour.of(0xf2f5f4),
            Colour.of(0xa9b5ba),
            OkLab.polar(0.30, 0.018, 128).colour(),
            OkLab.polar(0.185, 0.010, 245).colour(),
            OkLab.polar(0.20, 0.010, 240).colour(),
            Colour.of(0xb9b394),
            Colour.of(0xffb37a),
            Colour.of(0xff9fb5),
            Colour.of(0xf29bff),
            new DepthRamp(List.of(
                    OkLab.polar(0.538, 0.050, 150),
                    OkLab.polar(0.47, 0.066, 195),
                    OkLab.polar(0.395, 0.086, 228),
                    OkLab.polar(0.32, 0.095, 250),
                    OkLab.polar(0.215, 0.090, 270))));

    /** White paper, black letters, pale bands: for a screen in the sun. */
    public static final Theme HIGH_CONTRAST = new Scheme(
            Colour.of(0xffffff),
            Colour.of(0x000000),
            Colour.of(0x2b2b2b),
            OkLab.polar(0.91, 0.020, 128).colour(),
            OkLab.polar(0.96, 0.006, 230).colour(),
            OkLab.polar(0.985, 0.004, 225).colour(),
            Colour.of(0x000000),
            Colour.of(0x8f2400),
            Colour.of(0x7a0030),
            Colour.of(0x8a0079),
            new DepthRamp(List.of(
                    OkLab.polar(0.98, 0.030, 112),
                    OkLab.polar(0.91, 0.060, 172),
                    OkLab.polar(0.84, 0.080, 208),
                    OkLab.polar(0.77, 0.095, 235),
                    OkLab.polar(0.70, 0.110, 258))));

    /** Greys alone: for a printer or a copier. */
    public static final Theme BLACK_AND_WHITE = new Scheme(
            Colour.of(0xffffff),
            Colour.of(0x000000),
            Colour.of(0x3c3c3c),
            Colour.of(0xf2f2f2),
            Colour.of(0xffffff),
            Colour.of(0xffffff),
            Colour.of(0x000000),
            Colour.of(0x000000),
            Colour.of(0x000000),
            Colour.of(0x000000),
            new DepthRamp(List.of(OkLab.polar(0.985, 0, 0), OkLab.polar(0.64, 0, 0))));

    private Themes() {}
}
