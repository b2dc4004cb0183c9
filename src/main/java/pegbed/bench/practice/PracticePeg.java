package pegbed.bench.practice;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Pole;
import pegbed.model.Reading;
import pegbed.storage.table.BanksTable;
import pegbed.storage.table.ReadingsTable;

/**
 * A simulated peg whose bottom is known.
 *
 * @param name of its folder
 * @param empty the peg with its banks and reach, without readings
 * @param truth the bottom
 * @param deepestMetres mean depth of its deepest disc, metres
 * @param noise with which readings are simulated
 * @param tasks flat spots to find
 */
public record PracticePeg(
        String name, Peg empty, Truth truth, double deepestMetres, ReadingNoise noise, List<Task> tasks) {
    /**
     * A flat spot to find.
     *
     * @param zone in words
     * @param targetMetres depth sought, metres
     * @param feasible whether there is one of 0.75 m² within 5 cm and no steeper than 0.20
     */
    public record Task(String zone, double targetMetres, boolean feasible) {}

    /**
     * How readings are disturbed.
     *
     * @param sdDistanceMetres along the pole, metres
     * @param sdDirectionDegrees across it, degrees
     * @param sdDepthMetres on firm ground, metres
     */
    public record ReadingNoise(double sdDistanceMetres, double sdDirectionDegrees, double sdDepthMetres) {}

    /** All pegs of a folder, by name. */
    public static List<PracticePeg> all(Path folder) throws IOException, InputException {
        if (!Files.isDirectory(folder)) {
            throw new InputException(
                    "There is no folder " + folder + "; give --practice one that holds practice pegs.");
        }
        List<PracticePeg> pegs = new ArrayList<>();
        try (Stream<Path> entries = Files.list(folder)) {
            for (Path peg : entries.filter(p -> Files.exists(p.resolve("truth.txt")))
                    .sorted()
                    .toList()) {
                pegs.add(read(peg));
            }
        }
        if (pegs.isEmpty()) {
            throw new InputException(
                    folder + " has no practice pegs: folders with banks.csv, truth.txt and about.json.");
        }
        return pegs;
    }

    /** The peg of one folder. */
    static PracticePeg read(Path folder) throws IOException, InputException {
        JsonNode about =
                new ObjectMapper().readTree(folder.resolve("about.json").toFile());
        List<Task> tasks = new ArrayList<>();
        for (JsonNode task : about.path("tasks")) {
            tasks.add(new Task(
                    task.path("zone").asText(),
                    task.path("target_m").asDouble(),
                    task.path("feasible").asBoolean()));
        }
        Peg peg = Peg.EMPTY
                .withPole(Pole.USUAL.withReach(about.path("reach_m").asDouble()))
                .withBanks(BanksTable.read(folder.resolve("banks.csv")).banks());
        return new PracticePeg(
                folder.getFileName().toString(),
                peg,
                Truth.read(folder.resolve("truth.txt")),
                about.path("deepest_disc_m").asDouble(),
                new ReadingNoise(
                        about.path("sd_distance_m").asDouble(),
                        about.path("sd_direction_deg").asDouble(),
                        about.path("sd_depth_firm_m").asDouble()),
                tasks);
    }

    /** The peg with the readings of a table of its folder. */
    public Peg with(Path table) throws InputException {
        return with(ReadingsTable.read(table).readings());
    }

    public Peg with(List<Reading> readings) {
        return empty.withToday(visit -> visit.withReadings(readings));
    }
}
