package pegbed.cli.output;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import pegbed.plan.Plan;
import pegbed.plan.PlannedLine;
import pegbed.plan.Rig;
import pegbed.wording.CardWords;
import pegbed.wording.PlanWords;
import pegbed.wording.RigWords;

/** Lines and rigs as tables. */
final class PlanText {
    private final Plan plan;
    private final PrintWriter out;

    private PlanText(Plan plan, PrintWriter out) {
        this.plan = plan;
        this.out = out;
    }

    static void print(Plan plan, PrintWriter out) {
        new PlanText(plan, out).print();
    }

    private void print() {
        PlanWords words = PlanWords.of(plan);
        out.println("Lines");
        List<List<String>> rows = new ArrayList<>();
        for (PlannedLine line : plan.lines()) {
            rows.add(List.of(
                    Integer.toString(line.number()),
                    words.where(line),
                    words.distance(line),
                    words.direction(line),
                    words.clock(line),
                    words.aim(line),
                    words.depth(line) + " " + words.plusMinus(line),
                    "rig " + line.rig()));
        }
        table(rows);
        if (plan.lines().isEmpty()) {
            out.println("  " + CardWords.NO_LINES);
        }
        for (PlannedLine line : plan.lines()) {
            out.println("  " + line.number() + ": " + words.why(line));
            words.checks(line).forEach(check -> out.println("     " + check));
            words.confirming(line).ifPresent(sentence -> out.println("     " + sentence));
        }
        if (!plan.lines().isEmpty()) {
            out.println("  " + words.order());
        }
        words.shortfalls().forEach(sentence -> out.println("  " + sentence));
        out.println();
        rigs();
    }

    private void rigs() {
        RigWords words = RigWords.of(plan.findings().map().peg());
        out.println("Rigs");
        for (Rig rig : plan.rigs()) {
            out.println("  " + rig.number() + " for " + words.lines(rig) + ": float " + words.floatSize(rig)
                    + ", hook length " + words.hookLength(rig) + "; " + words.shotting(rig));
            List<List<String>> rows = new ArrayList<>();
            rig.settings()
                    .forEach(setting -> rows.add(List.of(
                            "  line " + setting.line(),
                            "hook to tip " + words.hookToTip(setting),
                            words.mark(setting))));
            table(rows);
            out.println("    " + words.overdepth(rig) + "; " + words.travel(rig));
        }
    }

    private void table(List<List<String>> rows) {
        table(rows, out);
    }

    /** Rows in columns as wide as their widest cell. */
    static void table(List<List<String>> rows, PrintWriter out) {
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < row.size(); column++) {
                int at = column;
                int width = rows.stream()
                        .mapToInt(each -> each.get(at).length())
                        .max()
                        .orElse(0);
                line.append("  ")
                        .append(row.get(column))
                        .append(" ".repeat(width - row.get(column).length()));
            }
            out.println(line.toString().stripTrailing());
        }
    }
}
