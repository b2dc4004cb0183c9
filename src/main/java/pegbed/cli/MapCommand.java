package pegbed.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import pegbed.cli.output.LevelJson;
import pegbed.cli.output.NeighbouringPegsJson;
import pegbed.cli.output.Output;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Theme;
import pegbed.report.drawing.Themes;
import pegbed.report.map.MapDrawing;
import pegbed.report.map.MapOptions;
import pegbed.report.paint.AwtLetters;
import pegbed.report.paint.PngWriter;
import pegbed.report.paint.SvgWriter;
import pegbed.storage.disk.AtomicFileWriter;
import pegbed.storage.disk.WholeFile;
import pegbed.wording.LevelWords;
import pegbed.wording.MapWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code pegbed map}: the picture of the bottom. */
@Command(
        name = "map",
        mixinStandardHelpOptions = true,
        description = "Draws the bottom as the angler sees it, as a PNG or SVG picture.")
final class MapCommand implements Callable<Integer> {
    private static final int MIN_WIDTH = 600;
    private static final int MIN_HEIGHT = 450;
    private static final int MAX_PIXELS = 8000;

    /** What the picture is drawn for. */
    enum Look {
        LIGHT(Themes.LIGHT),
        DARK(Themes.DARK),
        GREY(Themes.BLACK_AND_WHITE);

        private final Theme theme;

        Look(Theme theme) {
            this.theme = theme;
        }
    }

    @Parameters(paramLabel = "PEG", description = "The peg file.")
    private Path path;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "A name that ends in .png or .svg.")
    private Path picture;

    @Option(names = "--target", paramLabel = "D", description = "As for pegbed lines.")
    private String target;

    @Option(
            names = "--size",
            paramLabel = "WxH",
            defaultValue = "1200x900",
            description = "Width and height in pixels; ${DEFAULT-VALUE} if not given.")
    private String size;

    @Option(
            names = "--scale",
            paramLabel = "N",
            defaultValue = "1",
            description = "Pixels for each point of lettering, 0.5 to 4; ${DEFAULT-VALUE} if not given.")
    private double scale;

    @Option(
            names = "--look",
            defaultValue = "light",
            description = "light, dark, or grey for a printer without colour.")
    private String look;

    @Option(names = "--zones", description = "Draw the zones as well.")
    private boolean zones;

    @Mixin
    private NeighbouringPegsOption others;

    @Mixin
    private Output output;

    @Override
    public Integer call() throws InputException {
        if (picture.toString().isBlank()) {
            throw new InputException("--out is empty; give the name of a file that ends in .png or .svg.");
        }
        String name = AtomicFileWriter.name(picture).toLowerCase(Locale.ROOT);
        if (!name.endsWith(".png") && !name.endsWith(".svg")) {
            throw new InputException("--out: " + AtomicFileWriter.name(picture) + " must end in .png or .svg.");
        }
        Theme theme = theme();
        int[] pixels = pixels();
        Peg peg = PegArgument.look(path, output.err()).peg();
        PegMap map = others.map(path, peg, output.err());
        OptionalDouble wished = target == null ? OptionalDouble.empty() : OptionalDouble.of(Target.metres(target));
        MapOptions options = MapOptions.USUAL.with(Layer.ZONES, zones);
        Drawing drawing = MapDrawing.of(map, Findings.of(map, wished), options)
                .sheet(pixels[0] / scale, pixels[1] / scale, AwtLetters.MEASURE);
        byte[] bytes = name.endsWith(".png")
                ? PngWriter.write(drawing, theme, scale)
                : SvgWriter.write(drawing, theme, peg.name().title(), scale);
        WholeFile.write(picture, bytes);
        if (output.json()) {
            ObjectNode node = output.object().put("picture", picture.toString());
            node.set("changes", LevelJson.changes(peg, map.bottom().changes()));
            NeighbouringPegsJson.put(node, map.bottom().lesson());
            output.print(node);
        } else {
            output.out().println("Drew " + picture + ".");
            MapWords.neighbours(map).ifPresent(output.out()::println);
            LevelWords.changes(map).forEach(change -> output.out().println("! " + change));
        }
        return 0;
    }

    private Theme theme() throws InputException {
        try {
            return Look.valueOf(look.toUpperCase(Locale.ROOT)).theme;
        } catch (IllegalArgumentException e) {
            throw new InputException("--look: '" + look + "' is not one of light, dark or grey.", e);
        }
    }

    private int[] pixels() throws InputException {
        if (!(scale >= 0.5 && scale <= 4)) {
            throw new InputException("--scale: " + scale + " is not between 0.5 and 4.");
        }
        String[] sides = size.toLowerCase(Locale.ROOT).split("x", -1);
        try {
            int width = Integer.parseInt(sides[0]);
            int height = sides.length == 2 ? Integer.parseInt(sides[1]) : -1;
            if (width >= MIN_WIDTH * scale
                    && height >= MIN_HEIGHT * scale
                    && width <= MAX_PIXELS
                    && height <= MAX_PIXELS) {
                return new int[] {width, height};
            }
        } catch (NumberFormatException e) {
            // Said below.
        }
        throw new InputException(String.format(
                Locale.ROOT,
                "--size: '%s' is not a width and height in pixels such as 1200x900, at least %.0fx%.0f and at most %dx%d.",
                size,
                MIN_WIDTH * scale,
                MIN_HEIGHT * scale,
                MAX_PIXELS,
                MAX_PIXELS));
    }
}
