package pegbed.report.drawing;

/**
 * A colour in OKLab, in which equal steps look about equal: Ottosson, B. (2020), "A perceptual color space for image
 * processing".
 *
 * @param lightness 0 (black) to 1 (white)
 * @param a green to red, about -0.4 to 0.4
 * @param b blue to yellow, about -0.4 to 0.4
 */
record OkLab(double lightness, double a, double b) {
    /** From lightness, chroma (0 grey, about 0.3 the most vivid) and hue in degrees. */
    static OkLab polar(double lightness, double chroma, double hueDegrees) {
        double hue = Math.toRadians(hueDegrees);
        return new OkLab(lightness, chroma * Math.cos(hue), chroma * Math.sin(hue));
    }

    /** So far of the way to another colour, 0 to 1. */
    OkLab towards(OkLab other, double share) {
        return new OkLab(
                lightness + share * (other.lightness - lightness),
                a + share * (other.a - a),
                b + share * (other.b - b));
    }

    /** The colour in sRGB; what a screen can't show is clipped channel by channel. */
    Colour colour() {
        double l = cube(lightness + 0.3963377774 * a + 0.2158037573 * b);
        double m = cube(lightness - 0.1055613458 * a - 0.0638541728 * b);
        double s = cube(lightness - 0.0894841775 * a - 1.2914855480 * b);
        return new Colour(
                channel(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s),
                channel(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s),
                channel(-0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s),
                1);
    }

    private static double cube(double value) {
        return value * value * value;
    }

    /** IEC 61966-2-1, linear light to sRGB. */
    private static int channel(double linear) {
        double value = linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
        return (int) Math.round(255 * Math.max(0, Math.min(1, value)));
    }
}
