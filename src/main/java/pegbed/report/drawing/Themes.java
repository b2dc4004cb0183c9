package pegbed.report.drawing;

import java.util.List;

/** The themes: for a bright screen or paper, for a dark screen, and for a printer without colour. */
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
            new DepthRamp(List.of(
                    OkLab.polar(0.955, 0.040, 115),
                    OkLab.polar(0.85, 0.062, 172),
                    OkLab.polar(0.74, 0.080, 208),
                    OkLab.polar(0.63, 0.094, 235),
                    OkLab.polar(0.53, 0.102, 256))));

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
            new DepthRamp(List.of(
                    OkLab.polar(0.635, 0.058, 160),
                    OkLab.polar(0.54, 0.070, 190),
                    OkLab.polar(0.45, 0.080, 222),
                    OkLab.polar(0.36, 0.085, 248),
                    OkLab.polar(0.27, 0.085, 266))));

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
            new DepthRamp(List.of(OkLab.polar(0.985, 0, 0), OkLab.polar(0.62, 0, 0))));

    private Themes() {}
}
