package pegbed.reliability;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pegbed.model.InputException;
import pegbed.model.Reading;
import pegbed.session.Pegs;
import pegbed.storage.disk.PegFile;

/** Two processes that add readings to one file at the same time. */
final class Races {
    private Races() {}

    /**
     * @param each how many readings each of the two adds
     * @return how many saves were confirmed; all of them are there
     * @throws AssertionError if a confirmed reading is not in the file
     */
    static int run(Path folder, int each) throws IOException, InterruptedException, InputException {
        Path file = Files.createDirectories(folder).resolve("both.peg.json");
        PegFile.save(file, Pegs.bare(), Optional.empty());
        Process a = Children.start(Adding.class, file.toString(), "a", Integer.toString(each));
        Process b = Children.start(Adding.class, file.toString(), "b", Integer.toString(each));
        Set<String> confirmed = notes(a);
        confirmed.addAll(notes(b));
        Set<String> there =
                PegFile.read(file).peg().readings().stream().map(Reading::note).collect(Collectors.toSet());
        if (a.waitFor() != 0 || b.waitFor() != 0 || !there.containsAll(confirmed)) {
            confirmed.removeAll(there);
            throw new AssertionError("Confirmed but not there: " + confirmed);
        }
        return confirmed.size();
    }

    private static Set<String> notes(Process process) throws IOException {
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return said.lines().collect(Collectors.toSet());
    }
}
