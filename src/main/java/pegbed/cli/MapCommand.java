package pegbed.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
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
import pegbed.report.map.MapDrawing;
import pegbed.report.map.MapOptions;
import pegbed.report.paint.LetterOutlines;
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
    private static final double USUAL_WIDTH = 1200;
    private static final double MAX_SCALE = 4;
    private static final int MAX_PIXELS = 8000;

    @Parameters(paramLabel = "PEG", description = "The peg file.")
    private Path path;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "A name that ends in .png or .svg.")
    private Path picture;

    @Option(names = "--target", paramLabel = "D", description = "As for pegbed lines.")
    private String target;

    @Option(
            names = "--size",
            paramLabel = "WxH",
            description = "Width and height in pixels, such as 1200x900;"
                    + " if not given, 1200 wide for each point of --scale and as high as the water needs.")
    private String size;

    @Option(
            names = "--scale",
            paramLabel = "N",
            description = "Pixels for each point of lettering, 0.5 to 4;"
                    + " if not given, 1, and more on pictures larger than 1000x720, so that letters grow with them.")
    private Double scale;

    @Option(
            names = "--look",
            defaultValue = "light",
            description = "light, dark, contrast for a screen in the sun, or grey for a printer without colour.")
    private String look;

    @Option(names = "--zones", description = "Draw the zones as well.")
    private boolean zones;

    @Option(
            names = "--joined-up",
            description = "Draw the readings and the banks alone, joined up straight between neighbours: no model, no"
                    + " doubt, no answers. The picture says so.")
    private boolean joinedUp;

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
        Theme theme = Look.theme(look);
        Optional<int[]> pixels = pixels();
        double letters = letters(pixels);
        Peg peg = PegArgument.look(path, output.err()).peg();
        PegMap map = others.map(path, peg, output.err());
        OptionalDouble wished = target == null ? OptionalDouble.empty() : OptionalDouble.of(Target.metres(target));
        MapOptions options = MapOptions.USUAL.with(Layer.ZONES, zones).withJoinedUp(joinedUp);
        MapDrawing made = MapDrawing.of(map, Findings.of(map, wished), options);
        double width = pixels.map(size -> size[0] / letters).orElse(USUAL_WIDTH);
        double height = pixels.map(size -> size[1] / letters)
                .orElseGet(() -> Math.ceil(made.sheetHeight(USUAL_WIDTH, LetterOutlines.MEASURE)));
        Drawing drawing = made.sheet(width, height, LetterOutlines.MEASURE);
        byte[] bytes = name.endsWith(".png")
                ? PngWriter.write(drawing, theme, letters)
                : SvgWriter.write(drawing, theme, peg.name().title(), letters);
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

    private Optional<int[]> pixels() throws InputException {
        double least = scale == null ? 1 : scale;
        if (!(least >= 0.5 && least <= MAX_SCALE)) {
            throw new InputException("--scale: " + least + " is not between 0.5 and 4.");
        }
        if (size == null) {
            return Optional.empty();
        }
        String[] sides = size.toLowerCase(Locale.ROOT).split("x", -1);
        try {
            int width = Integer.parseInt(sides[0]);
            int height = sides.length == 2 ? Integer.parseInt(sides[1]) : -1;
            if (width >= MIN_WIDTH * least
                    && height >= MIN_HEIGHT * least
                    && width <= MAX_PIXELS
                    && height <= MAX_PIXELS) {
                return Optional.of(new int[] {width, height});
            }
        } catch (NumberFormatException e) {
            // Said below.
        }
        throw new InputException(String.format(
                Locale.ROOT,
                "--size: '%s' is not a width and height in pixels such as 1200x900, at least %.0fx%.0f and at most %dx%d.",
                size,
                MIN_WIDTH * least,
                MIN_HEIGHT * least,
                MAX_PIXELS,
                MAX_PIXELS));
    }

    /** Pixels for each point of lettering. */
    private double letters(Optional<int[]> pixels) {
        if (scale != null) {
            return scale;
        }
        return pixels.map(size -> Math.min(MAX_SCALE, MapDrawing.pixelsPerPoint(size[0], size[1])))
                .orElse(1.0);
    }
}
