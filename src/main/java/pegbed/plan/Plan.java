package pegbed.plan;

import java.util.List;
import java.util.Optional;
import pegbed.findings.Findings;
import pegbed.model.Place;
import pegbed.model.StartLine;
import pegbed.model.Wishes;

/**
 * Which lines to fish, with which rigs.
 *
 * <p>Lines keep {@link LineRules#SPACING_METRES} from each other, out of every hazard and away from what the person
 * forbids; the pole to them passes under no overhead line or low branch.
 *
 * @param findings what it was made from
 * @param wishes what the person wanted
 * @param lines in the order in which they are fished, numbered from 1; may be empty
 * @param rigs the fewest that serve them, the shallowest first
 * @param shortfalls what was wanted and could not be had
 */
public record Plan(
        Findings findings, Wishes wishes, List<PlannedLine> lines, List<Rig> rigs, List<Shortfall> shortfalls) {
    public Plan {
        lines = List.copyOf(lines);
        rigs = List.copyOf(rigs);
        shortfalls = List.copyOf(shortfalls);
    }

    /** The best plan. The target depth is that of the findings; all other wishes are taken from {@code wishes}. */
    public static Plan of(Findings findings, Wishes wishes) {
        return new Planning(findings, wishes).plan();
    }

    /** Whether the line to start on is where the person likes to start. */
    public boolean startsAsWished() {
        Optional<StartLine> wished = wishes.lines().start();
        return wished.isPresent()
                && !lines.isEmpty()
                && lines.get(0).candidate().zone().map(Planning::part).equals(wished);
    }

    /** Places of the lines, in their order. */
    public List<Place> places() {
        return lines.stream().map(PlannedLine::place).toList();
    }

    /** The rig of a line. */
    public Rig rigOf(PlannedLine line) {
        return rigs.get(line.rig() - 1);
    }

    /** From hook to float tip on a line, metres. */
    public double hookToTipMetres(PlannedLine line) {
        return rigOf(line).settings().stream()
                .filter(setting -> setting.line() == line.number())
                .findFirst()
                .orElseThrow()
                .hookToTipMetres();
    }

    /** The line of a number. */
    public Optional<PlannedLine> line(int number) {
        return number >= 1 && number <= lines.size() ? Optional.of(lines.get(number - 1)) : Optional.empty();
    }
}
