package pegbed.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import pegbed.cli.output.Output;
import pegbed.geodesy.LocalFrame;
import pegbed.geodesy.Resection;
import pegbed.geodesy.SightedMark;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Position;
import pegbed.notation.LatitudeLongitude;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code pegbed position}: where on the earth a peg is, and which way it looks. */
@Command(
        name = "position",
        mixinStandardHelpOptions = true,
        description =
                "Says or sets where on the earth the seat is (WGS 84) and the true bearing of straight out; exit 1"
                        + " if it is not known. By typing both, by two marks whose positions are known, or by the seat and one"
                        + " mark.")
final class PositionCommand implements Callable<Integer> {
    /** From this residual on the marks' distances or positions are worth another look, metres (our choice). */
    private static final double LARGE_RESIDUAL_METRES = 2;

    @Parameters(paramLabel = "PEG", description = "The peg file.")
    private Path path;

    @Option(
            names = "--at",
            paramLabel = "LAT,LON",
            description = "The seat, such as 52.1234,-1.2345 or \"52°07'24\\\"N 1°14'04\\\"W\".")
    private String at;

    @Option(
            names = "--bearing",
            paramLabel = "DEG",
            description = "The true bearing of straight out, degrees clockwise from north; not the compass's.")
    private Double bearing;

    @Option(
            names = "--mark",
            paramLabel = "NAME=LAT,LON",
            description = "A mark of the peg and its position; two or more, or one beside --at.")
    private Map<String, String> marks = new LinkedHashMap<>();

    @Option(
            names = "--accuracy",
            paramLabel = "M",
            description = "How well the seat's position is known, as a phone's fix tells it, metres.")
    private Double accuracy;

    @Option(names = "--none", description = "Takes the position out of the peg.")
    private boolean none;

    @Mixin
    private Output output;

    @Override
    public Integer call() throws InputException {
        if (none && (at != null || bearing != null || accuracy != null || !marks.isEmpty())) {
            throw new InputException("--none takes the position out and goes with no other option.");
        }
        if (!none && at == null && bearing == null && accuracy == null && marks.isEmpty()) {
            Optional<Position> known =
                    PegArgument.look(path, output.err()).peg().position();
            say(known, Optional.empty(), List.of());
            return known.isPresent() ? 0 : Cli.NO;
        }
        PegArgument.Changed<Found> changed = PegArgument.change(path, output.err(), peg -> {
            Found found = found(peg);
            return new PegArgument.Changed<>(peg.withPosition(found.position()), found);
        });
        say(
                changed.answer().position(),
                changed.answer().fit(),
                changed.answer().marks());
        return 0;
    }

    /**
     * What was found.
     *
     * @param position the new position
     * @param fit how it was found, where by marks
     * @param marks those marks
     */
    private record Found(Optional<Position> position, Optional<Resection> fit, List<SightedMark> marks) {}

    private Found found(Peg peg) throws InputException {
        if (none) {
            return new Found(Optional.empty(), Optional.empty(), List.of());
        }
        if (bearing != null && !(bearing >= 0 && bearing <= 360)) {
            throw new InputException(
                    "--bearing is a true bearing between 0 and 360 degrees, such as 312; not " + bearing + ".");
        }
        if (accuracy != null && !(accuracy >= 0 && accuracy <= Position.WORST_METRES)) {
            throw new InputException(
                    "--accuracy is a number of metres between 0 and 1000000, such as 4; not " + accuracy + ".");
        }
        OptionalDouble known = accuracy == null ? OptionalDouble.empty() : OptionalDouble.of(accuracy);
        if (!marks.isEmpty()) {
            if (bearing != null) {
                throw new InputException(
                        "--mark finds the bearing, so that --bearing is one too many; leave one of them out.");
            }
            List<SightedMark> sighted = sighted(peg);
            Resection fit;
            if (at == null) {
                fit = Resection.of(sighted, known);
            } else {
                LatitudeLongitude seat = LatitudeLongitude.parse(at);
                fit = Resection.bearing(seat.latitudeDegrees(), seat.longitudeDegrees(), sighted, known);
            }
            return new Found(Optional.of(fit.position()), Optional.of(fit), sighted);
        }
        Optional<Position> before = peg.position();
        if (at == null) {
            if (before.isEmpty()) {
                throw new InputException((bearing == null ? "--accuracy" : "A bearing")
                        + " alone says nothing without a position; give --at as well, such as"
                        + " --at 52.1234,-1.2345 --bearing 312.");
            }
            Position own = before.get();
            return new Found(
                    Optional.of(new Position(
                            own.latitudeDegrees(),
                            own.longitudeDegrees(),
                            bearing == null ? own.bearingDegrees() : bearing,
                            accuracy == null ? own.accuracyMetres() : known)),
                    Optional.empty(),
                    List.of());
        }
        if (bearing == null && before.isEmpty()) {
            throw new InputException("A position alone does not say which way the peg looks; give the true bearing of"
                    + " straight out as well, such as --bearing 312, or a mark with its position.");
        }
        LatitudeLongitude seat = LatitudeLongitude.parse(at);
        LocalFrame.refuseNearPole(seat.latitudeDegrees());
        double straightOut = bearing != null ? bearing : before.orElseThrow().bearingDegrees();
        return new Found(
                Optional.of(new Position(seat.latitudeDegrees(), seat.longitudeDegrees(), straightOut, known)),
                Optional.empty(),
                List.of());
    }

    private List<SightedMark> sighted(Peg peg) throws InputException {
        List<SightedMark> sighted = new ArrayList<>();
        for (Map.Entry<String, String> each : marks.entrySet()) {
            sighted.add(SightedMark.of(peg, each.getKey(), each.getValue()));
        }
        return sighted;
    }

    private void say(Optional<Position> position, Optional<Resection> fit, List<SightedMark> sighted) {
        if (output.json()) {
            ObjectNode node = output.object();
            position.ifPresent(known -> {
                node.put("latitude_deg", known.latitudeDegrees());
                node.put("longitude_deg", known.longitudeDegrees());
                node.put("bearing_deg", known.bearingDegrees());
                known.accuracyMetres().ifPresent(metres -> node.put("position_accuracy_m", metres));
            });
            fit.ifPresent(found -> {
                node.put("residual_rms_m", Output.rounded(found.rmsMetres(), 3));
                ArrayNode residuals = node.putArray("residuals");
                for (int i = 0; i < sighted.size(); i++) {
                    residuals
                            .addObject()
                            .put("mark", sighted.get(i).name())
                            .put(
                                    "residual_m",
                                    Output.rounded(found.residualMetres().get(i), 3));
                }
            });
            output.print(node);
        } else {
            output.out().println(position.map(PositionCommand::sentence).orElse("The peg's position is not known."));
            fit.ifPresent(found -> {
                for (int i = 0; i < sighted.size(); i++) {
                    output.out()
                            .println(String.format(
                                    Locale.ROOT,
                                    "  %s comes to lie %.2f m from its position",
                                    sighted.get(i).name(),
                                    found.residualMetres().get(i)));
                }
            });
        }
        if (fit.isPresent() && fit.get().rmsMetres() > LARGE_RESIDUAL_METRES) {
            output.err()
                    .println(String.format(
                            Locale.ROOT,
                            "Warning: the marks disagree by %.1f m (root mean square); check their distances in the peg"
                                    + " and the positions given.",
                            fit.get().rmsMetres()));
        }
    }

    private static String sentence(Position position) {
        String at = new LatitudeLongitude(position.latitudeDegrees(), position.longitudeDegrees()).text();
        return "Seat at " + at
                + (position.accuracyMetres().isPresent()
                        ? String.format(
                                Locale.ROOT,
                                " within %.1f m (95 in 100)",
                                position.accuracyMetres().getAsDouble())
                        : "")
                + String.format(Locale.ROOT, "; straight out is %.1f degrees true.", position.bearingDegrees());
    }
}
