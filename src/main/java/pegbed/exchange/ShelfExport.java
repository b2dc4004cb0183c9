package pegbed.exchange;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.geodesy.UtmZone;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Parallel;
import pegbed.model.Peg;
import pegbed.model.Position;
import pegbed.plan.Plan;
import pegbed.storage.disk.AtomicFileWriter;
import pegbed.storage.disk.PegFile;

/**
 * All pegs of a folder in one GeoPackage. Each is fitted by itself, from its own readings alone.
 *
 * @param file the bytes of the GeoPackage
 * @param pegs how many are in it
 * @param local how many of these have no position
 * @param leftOut the pegs that can't be in it, a sentence each
 */
public record ShelfExport(byte[] file, int pegs, int local, List<String> leftOut) {
    /** So many pegs are fitted at a time, so that few are held in memory. */
    private static final int TOGETHER = 16;

    public ShelfExport {
        leftOut = List.copyOf(leftOut);
    }

    /** A peg ready to be put in, or why it can't be. */
    private record Ready(List<Layer> layers, Georeference reference, Instant visited, String trouble) {}

    /**
     * Makes the GeoPackage.
     *
     * @param files the peg files
     * @throws InputException if no peg can be in it
     * @throws IOException if the temporary file can't be written
     */
    public static ShelfExport of(List<Path> files, Monitor monitor) throws InputException, IOException {
        List<String> leftOut = new ArrayList<>();
        int[] counts = new int[2];
        Optional<UtmZone> zone = commonZone(files);
        byte[] bytes = GeoPackageFile.bytes(zone, into -> {
            for (int first = 0; first < files.size(); first += TOGETHER) {
                monitor.check();
                int from = first;
                List<Path> together = files.subList(from, Math.min(files.size(), from + TOGETHER));
                List<Ready> ready = Parallel.map(together, ShelfExport::ready);
                for (Ready peg : ready) {
                    if (peg.trouble() != null) {
                        leftOut.add(peg.trouble());
                        continue;
                    }
                    into.add(peg.layers(), peg.reference(), peg.visited());
                    counts[0]++;
                    counts[1] += peg.reference().isLocal() ? 1 : 0;
                }
                monitor.progress((double) Math.min(files.size(), from + TOGETHER) / files.size());
            }
        });
        if (counts[0] == 0) {
            throw new InputException(
                    leftOut.isEmpty()
                            ? "There are no pegs to export."
                            : "None of these pegs can be exported. The first: " + leftOut.get(0));
        }
        return new ShelfExport(bytes, counts[0], counts[1], leftOut);
    }

    /** The zone in which all pegs with a position lie; empty where they lie in several, or none has one. */
    private static Optional<UtmZone> commonZone(List<Path> files) throws InputException {
        TreeMap<Integer, UtmZone> zones = new TreeMap<>();
        for (Path file : files) {
            Optional<Position> position;
            try {
                position = PegFile.read(file).peg().position();
            } catch (InputException e) {
                continue; // It is left out, with its sentence, below.
            }
            if (position.isPresent() && Math.abs(position.get().latitudeDegrees()) <= 80) {
                UtmZone zone = UtmZone.of(
                        position.get().latitudeDegrees(), position.get().longitudeDegrees());
                zones.putIfAbsent(zone.epsgCode(), zone);
            }
        }
        return zones.size() == 1 ? Optional.of(zones.firstEntry().getValue()) : Optional.empty();
    }

    private static Ready ready(Path file) {
        try {
            Peg peg = PegFile.read(file).peg();
            Georeference reference = Georeference.of(peg.position());
            PegMap map = PegMap.of(peg, Monitor.NONE);
            Plan plan = Plan.of(Findings.of(map, OptionalDouble.empty()), peg.wishes());
            return new Ready(PegLayers.of(plan), reference, PegLayers.visited(peg), null);
        } catch (InputException e) {
            return new Ready(List.of(), null, Instant.EPOCH, AtomicFileWriter.name(file) + ": " + e.getMessage());
        }
    }
}
