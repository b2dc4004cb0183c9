package pegbed.ui.app;

import com.sun.management.HotSpotDiagnosticMXBean;
import com.sun.management.UnixOperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javax.management.JMException;
import javax.management.ObjectName;
import pegbed.model.Peg;
import pegbed.session.Pegs;

/**
 * Hours of use of one window: readings added and undone, the tabs one after the other, both themes, visits begun and
 * undone, the target moved, the large buttons, the sheets, the card above all, opened and closed. What grows with it?
 *
 * <p>{@code mvn -P run test-compile exec:exec -Drun.main=pegbed.ui.app.WindowUse "-Drun.args=20000 10"
 * "-Drun.jvm=-Xmx1g -XX:SoftRefLRUPolicyMSPerMB=0"}; without the last option the heap is told and not judged. The
 * second word is how many readings are typed, as quickly as the window takes them, for each step of what else is done;
 * 1 if left out.
 */
public final class WindowUse {
    private static final List<String> TABS =
            List.of("tab-plan", "tab-fishing", "tab-readings", "tab-visits", "tab-place", "tab-findings");

    /** Pictures of letters are kept up to so many bytes, by which the heap differs from one moment to another. */
    private static final long LETTERS_BYTES = 16_000_000;

    /** Steps after which every kind of use has come once. */
    private static final int ROUND = 20;

    private final Scenes scenes;
    private final Peg peg;
    private final int readingsPerStep;

    private WindowUse(Scenes scenes, Peg peg, int readingsPerStep) {
        this.scenes = scenes;
        this.peg = peg;
        this.readingsPerStep = readingsPerStep;
    }

    /**
     * What a window at rest holds.
     *
     * @param heapBytes the heap in use, when what nobody needs is thrown away
     * @param handles open files, pipes and sockets of the process; 0 on a system that does not count them
     * @param nodes nodes of the scene
     * @param controls how many controls and panes are alive, in the scene or out of it
     * @param threads live threads
     */
    record Held(long heapBytes, long handles, int nodes, long controls, int threads) {}

    /**
     * What came of it.
     *
     * @param readings how many were added and undone
     * @param early what was held after a fifth of them, when every tab and sheet has been looked at
     * @param end what was held after all
     */
    record Result(int readings, Held early, Held end) {
        /** What has grown by more than a window at rest varies by, in words; empty if nothing has. */
        String grown() {
            StringBuilder words = new StringBuilder();
            if (dropsSoftReferences()) {
                add(words, "heap bytes", early.heapBytes(), end.heapBytes(), LETTERS_BYTES + 4_000_000);
            }
            add(words, "handles", early.handles(), end.handles(), 3);
            add(words, "nodes", early.nodes(), end.nodes(), 20);
            add(words, "controls", early.controls(), end.controls(), 40);
            add(words, "threads", early.threads(), end.threads(), 3);
            return words.toString();
        }

        private static void add(StringBuilder words, String what, long before, long after, long more) {
            if (after > before + more) {
                words.append(what)
                        .append(" from ")
                        .append(before)
                        .append(" to ")
                        .append(after)
                        .append("; ");
            }
        }
    }

    /**
     * Whether a collection drops what is only softly referenced. The toolkit pools the pictures of its effects so, one
     * for each sheet's shadow, and lets go of them when memory is short; the heap says nothing of leaks until then.
     */
    private static boolean dropsSoftReferences() {
        return ManagementFactory.getPlatformMXBean(HotSpotDiagnosticMXBean.class)
                .getVMOption("SoftRefLRUPolicyMSPerMB")
                .getValue()
                .equals("0");
    }

    public static void main(String[] args) throws Exception {
        int readings = args.length > 0 ? Integer.parseInt(args[0]) : 20_000;
        Scenes.startToolkit();
        Path folder = Files.createTempDirectory("pegbed-use");
        Scenes scenes = new Scenes(folder.resolve("own"));
        Result result = run(scenes, folder, readings, args.length > 1 ? Integer.parseInt(args[1]) : 1);
        scenes.close();
        System.out.println(result.grown().isEmpty() ? "nothing grows" : "grown: " + result.grown());
        System.exit(result.grown().isEmpty() ? 0 : 1);
    }

    /**
     * Uses a window, which it opens.
     *
     * @param folder for the card's files
     * @param readings how many are added and undone; at least twice {@value #ROUND} steps
     * @param readingsPerStep how many of them belong to a step; of {@value #ROUND} steps each does something else too
     */
    static Result run(Scenes scenes, Path folder, int readings, int readingsPerStep) throws IOException {
        Files.createDirectories(folder);
        Peg peg = Pegs.plumbed(12);
        scenes.open(peg);
        WindowUse use = new WindowUse(scenes, peg, readingsPerStep);
        int round = ROUND * readingsPerStep;
        int stretch = Math.max(round, readings / 10 / round * round);
        Held early = null;
        Held held = null;
        for (int i = 1; i <= readings; i++) {
            use.reading(i);
            if (i % stretch == 0 || i == readings) {
                held = use.held();
                early = i <= 2 * stretch ? held : early;
                System.out.println(i + " readings: " + held);
            }
        }
        return new Result(readings, early, held);
    }

    /** One reading in ten steps stays until its answer is there; the others are undone while it is worked out. */
    private void reading(int i) {
        add((4 + i % 7) + " " + i % 20 + "R 1." + (10 + i % 40) + "m");
        boolean endsStep = i % readingsPerStep == 0;
        if (endsStep && i / readingsPerStep % 10 == 0) {
            scenes.waitForAnswers();
        }
        undo();
        if (endsStep) {
            step(i / readingsPerStep);
        }
    }

    private void add(String line) {
        scenes.on(() -> {
            scenes.desk().box().textProperty().set(line);
            scenes.desk().box().enter();
        });
        if (scenes.peg().equals(peg)) {
            throw new AssertionError(line + " was not taken: "
                    + scenes.desk().box().textProperty().get());
        }
    }

    private void step(int i) {
        if (i % 5 == 0) {
            scenes.tab(TABS.get(i / 5 % TABS.size()));
        }
        switch (i % ROUND) {
            case 3, 13 -> theme();
            case 6 -> target(i);
            case 9 -> largeButtons();
            case 12 -> visit();
            case 18 -> sheets();
            default -> {}
        }
    }

    private void undo() {
        scenes.on(() -> scenes.desk().document().undo());
        if (!scenes.peg().equals(peg)) {
            throw new AssertionError("The undo did not bring the peg back.");
        }
    }

    private void theme() {
        scenes.on(() ->
                scenes.frame().darkProperty().set(!scenes.frame().darkProperty().get()));
    }

    private void visit() {
        scenes.tab("tab-visits");
        scenes.on(() -> scenes.desk().visits().begin());
        if (scenes.peg().visits().size() != peg.visits().size() + 1) {
            throw new AssertionError(scenes.desk().visits().errorProperty().get());
        }
        scenes.settle();
        undo();
    }

    private void sheets() {
        scenes.waitForAnswers();
        scenes.waitUntil(() -> scenes.desk().plan().planProperty().get().isPresent());
        sheet(scenes.frame()::showCard);
        sheet(scenes.frame()::showShelf);
        sheet(scenes.frame()::showRigs);
        sheet(scenes.frame()::newPeg);
        sheet(scenes.frame()::showCautions);
    }

    private void sheet(Runnable open) {
        scenes.on(open);
        scenes.settle();
        if (scenes.<Sheets>find(".sheets").getChildren().size() != 1) {
            throw new AssertionError("The sheet did not open.");
        }
        scenes.on(() -> scenes.<Sheets>find(".sheets").close());
        scenes.settle();
    }

    private void largeButtons() {
        scenes.on(scenes.frame()::toBankside);
        scenes.settle();
        scenes.on(scenes.frame()::toMain);
        scenes.settle();
    }

    private void target(int i) {
        scenes.on(() -> scenes.desk().target().metresProperty().set(0.6 + i % 300 / 1000.0));
        scenes.settle();
        undo();
    }

    private Held held() {
        scenes.tab(TABS.get(0));
        scenes.waitForAnswers();
        scenes.waitUntil(() -> scenes.frame().main().map().settled());
        scenes.settle();
        int[] nodes = new int[1];
        scenes.on(() -> nodes[0] = nodes(scenes.scene().getRoot()));
        return new Held(
                heap(),
                handles(),
                nodes[0],
                controls(),
                ManagementFactory.getThreadMXBean().getThreadCount());
    }

    /** By the collector's own count of what is alive. */
    private static long controls() {
        try {
            Object histogram = ManagementFactory.getPlatformMBeanServer()
                    .invoke(
                            new ObjectName("com.sun.management:type=DiagnosticCommand"),
                            "gcClassHistogram",
                            new Object[] {new String[0]},
                            new String[] {String[].class.getName()});
            return histogram.toString().lines().mapToLong(WindowUse::controls).sum();
        } catch (JMException e) {
            throw new IllegalStateException(e);
        }
    }

    /** How many are alive by one line of the histogram: rank, instances, bytes, class. */
    private static long controls(String line) {
        String[] columns = line.strip().split("\\s+");
        boolean counts = columns.length > 3
                && (columns[3].matches(
                                "javafx\\.scene\\.(control|layout)\\.[A-Za-z]+(Field|Box|Button|Label|Pane|Area)")
                        || columns[3].matches("pegbed\\.ui\\.[a-z.]+[A-Za-z]*(View|Sheet|Model|Pane)"));
        return counts ? Long.parseLong(columns[1]) : 0;
    }

    /** Between collections the toolkit gets time to let go of what it holds by weak references. */
    private long heap() {
        for (int i = 0; i < 4; i++) {
            System.gc();
            scenes.settle();
        }
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
    }

    private static long handles() {
        return ManagementFactory.getOperatingSystemMXBean() instanceof UnixOperatingSystemMXBean unix
                ? unix.getOpenFileDescriptorCount()
                : 0;
    }

    private static int nodes(Node node) {
        int count = 1;
        if (node instanceof Parent parent) {
            for (Node child : parent.getChildrenUnmodifiable()) {
                count += nodes(child);
            }
        }
        return count;
    }
}
