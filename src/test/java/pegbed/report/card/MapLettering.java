package pegbed.report.card;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import pegbed.plan.Plan;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Stroke;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.Theme;
import pegbed.report.drawing.Themes;
import pegbed.report.map.MapDrawing;
import pegbed.report.map.MapOptions;
import pegbed.report.map.Pegs;
import pegbed.report.paint.LetterOutlines;
import pegbed.report.paint.PngWriter;
import pegbed.session.VisitedPegs;

/** Prints the table in {@code docs/map-lettering.md}: contrast of letters and overlaps on maps and cards. */
public final class MapLettering {
    /** WCAG 2.2, success criterion 1.4.3, for ordinary letters. */
    static final double LEAST_CONTRAST = 4.5;

    static final Map<String, Theme> THEMES = new LinkedHashMap<>();

    static {
        THEMES.put("light", Themes.LIGHT);
        THEMES.put("dark", Themes.DARK);
        THEMES.put("high contrast", Themes.HIGH_CONTRAST);
        THEMES.put("print", new OnWhite(Themes.LIGHT));
        THEMES.put("grey", Themes.BLACK_AND_WHITE);
    }

    /** Where a map is looked at. */
    enum Size {
        CARD("card"),
        PHONE("phone"),
        LAPTOP("1366×768"),
        TWICE("200 %"),
        LARGE("2560×1440"),
        SHEET("picture");

        final String words;

        Size(String words) {
            this.words = words;
        }
    }

    /**
     * A map in one size.
     *
     * @param area the part of the sheet that the map has
     */
    record Shown(Drawing drawing, Envelope area) {}

    private MapLettering() {}

    /** The pegs that are drawn, by name. */
    static Map<String, Plan> pegs() throws Exception {
        Map<String, Plan> pegs = new LinkedHashMap<>();
        pegs.put("Tansy Cut 14", Plans.SAMPLES.get(1));
        pegs.put("Tansy Cut 9, two visits", Plans.SAMPLES.get(0));
        pegs.put("Hobbrel Pond 3", Plans.SAMPLES.get(2));
        pegs.put("Tansy Cut 9, dug out", Plans.plan(VisitedPegs.dugOut()));
        pegs.put("a cut with every hazard", Plans.plan(Pegs.full()));
        return pegs;
    }

    /** A map, with lines or with flat spots where it is a window's. */
    static List<Shown> shown(Plan plan, Size size) {
        return switch (size) {
            case CARD -> {
                Drawing card = CardDrawing.of(plan, LetterOutlines.MEASURE);
                Stroke frame = (Stroke) card.of(Role.LEGEND_RULE).get(0);
                yield List.of(new Shown(card, frame.lines().getEnvelopeInternal()));
            }
            case PHONE -> {
                MapDrawing map = CardDrawing.map(plan);
                yield List.of(fitted(map, 380, Math.min(520, map.frameHeight(380))));
            }
            // A window's map has about these points, beside its panels.
            case LAPTOP -> window(plan, 953, 446);
            case TWICE -> window(plan, 560, 290);
            case LARGE -> window(plan, 1800, 1080);
            case SHEET -> {
                MapDrawing map = MapDrawing.of(plan.findings().map(), plan.findings(), MapOptions.USUAL);
                double height = map.sheetHeight(1200, LetterOutlines.MEASURE);
                Drawing sheet = map.sheet(1200, height, LetterOutlines.MEASURE);
                Stroke frame = (Stroke) sheet.items().stream()
                        .filter(item -> item.role() == Role.LEGEND_RULE && item.frame() == Frame.SHEET)
                        .findFirst()
                        .orElseThrow();
                yield List.of(new Shown(sheet, frame.lines().getEnvelopeInternal()));
            }
        };
    }

    private static List<Shown> window(Plan plan, double width, double height) {
        double enlarged = MapDrawing.pixelsPerPoint(width, height);
        List<Shown> shown = new ArrayList<>();
        for (Layer left : List.of(Layer.FLATS, Layer.LINES)) {
            Set<Layer> layers = EnumSet.copyOf(Layer.usual());
            layers.remove(left);
            MapDrawing map = MapDrawing.of(plan.findings().map(), plan.findings(), new MapOptions(layers))
                    .with(plan);
            shown.add(fitted(map, width / enlarged, height / enlarged));
        }
        return shown;
    }

    private static Shown fitted(MapDrawing map, double width, double height) {
        Envelope area = new Envelope(0, width, 0, height);
        return new Shown(map.at(map.fitted(area, width, height), LetterOutlines.MEASURE), area);
    }

    /** The contrast of every label in a theme. */
    static Map<Text, Double> contrasts(Shown shown, Theme theme, double pixelsPerPoint) {
        BufferedImage picture = PngWriter.image(shown.drawing(), theme, pixelsPerPoint);
        Map<Text, Double> contrasts = new LinkedHashMap<>();
        for (Text text : texts(shown)) {
            double contrast = LetterContrast.of(text, shown.drawing().view(), picture, pixelsPerPoint);
            if (!Double.isNaN(contrast)) {
                contrasts.put(text, contrast);
            }
        }
        return contrasts;
    }

    static List<Text> texts(Shown shown) {
        return overlaps(shown).texts();
    }

    static MapOverlaps overlaps(Shown shown) {
        return new MapOverlaps(shown.drawing(), shown.area(), LetterOutlines.MEASURE);
    }

    /**
     * Prints the table, or paints what it measures.
     *
     * @param args {@code why} to name each fault; {@code pictures} and a folder to look at each map
     */
    public static void main(String[] args) throws Exception {
        boolean why = List.of(args).contains("why");
        StringBuilder head = new StringBuilder("| peg | size | labels | signs |");
        THEMES.keySet().forEach(name -> head.append(' ').append(name).append(" |"));
        System.out.println(head + " below 4.5 | overlaps |");
        System.out.println("|---|---|--:|--:|" + "--:|".repeat(THEMES.size()) + "--:|--:|");
        for (Map.Entry<String, Plan> peg : pegs().entrySet()) {
            for (Size size : Size.values()) {
                List<Shown> shown = shown(peg.getValue(), size);
                if (args.length == 2 && args[0].equals("pictures")) {
                    paint(Path.of(args[1]), peg.getKey() + " " + size.words, shown);
                } else {
                    row(peg.getKey(), size, shown, why);
                }
            }
        }
    }

    private static void paint(Path folder, String name, List<Shown> all) throws IOException {
        for (int i = 0; i < all.size(); i++) {
            for (Map.Entry<String, Theme> theme : THEMES.entrySet()) {
                String file = (name + " " + i + " " + theme.getKey()).replaceAll("[^\\w]+", "-") + ".png";
                Files.write(folder.resolve(file), PngWriter.write(all.get(i).drawing(), theme.getValue(), 2));
            }
        }
    }

    private static void row(String peg, Size size, List<Shown> all, boolean why) {
        int labels = 0;
        int signs = 0;
        int below = 0;
        int overlapping = 0;
        double[] least = new double[THEMES.size()];
        java.util.Arrays.fill(least, 21);
        for (Shown shown : all) {
            MapOverlaps overlaps = overlaps(shown);
            labels += overlaps.texts().size();
            signs += overlaps.signs();
            overlapping += overlaps.found.size();
            if (why) {
                overlaps.found.forEach(fault -> System.out.println("  " + fault));
            }
            int column = 0;
            for (Map.Entry<String, Theme> theme : THEMES.entrySet()) {
                for (Map.Entry<Text, Double> label :
                        contrasts(shown, theme.getValue(), 2).entrySet()) {
                    least[column] = Math.min(least[column], label.getValue());
                    if (label.getValue() < LEAST_CONTRAST) {
                        below++;
                        if (why) {
                            System.out.println(
                                    "  " + theme.getKey() + " " + label.getKey().role() + " '"
                                            + label.getKey().words() + "' " + label.getValue());
                        }
                    }
                }
                column++;
            }
        }
        StringBuilder row = new StringBuilder("| " + peg + " | " + size.words + " | " + labels + " | " + signs + " |");
        for (double value : least) {
            row.append(String.format(Locale.ROOT, " %.1f |", Math.floor(value * 10) / 10));
        }
        System.out.println(row + " " + below + " | " + overlapping + " |");
    }
}
