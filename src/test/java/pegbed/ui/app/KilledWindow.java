package pegbed.ui.app;

import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import pegbed.session.Session;

/**
 * The window's models without their views, in a process of their own: types readings one after the other and prints the
 * number of each when the box says that it is added. Started to be killed.
 */
public final class KilledWindow {
    private KilledWindow() {}

    /**
     * Works until it is killed.
     *
     * @param args the program's own folder, the peg file
     */
    public static void main(String[] args) throws Exception {
        ExecutorService owner = Executors.newSingleThreadExecutor();
        Session.Executors executors = new Session.Executors(owner, work -> {}, Executors.newSingleThreadExecutor());
        owner.submit(() -> {
                    WindowViewModels desk = WindowViewModels.of(
                            Path.of(args[0]), executors, work -> {}, work -> {}, work -> {}, Clock.systemUTC());
                    desk.box().keptProperty().addListener((property, before, now) -> {
                        if (now && desk.box().addedProperty().get()) {
                            System.out.println(desk.session().peg().readings().size());
                            System.out.flush();
                            owner.execute(() -> typeNext(desk));
                        }
                    });
                    desk.document().open(Path.of(args[1]));
                    desk.session().onChange(new Runnable() {
                        private boolean begun;

                        @Override
                        public void run() {
                            if (!begun && desk.session().file().isPresent()) {
                                begun = true;
                                owner.execute(() -> typeNext(desk));
                            }
                        }
                    });
                })
                .get(1, TimeUnit.MINUTES);
    }

    private static void typeNext(WindowViewModels desk) {
        int next = desk.session().peg().readings().size() + 1;
        // Every few readings the peg is saved, so that the kill may come while a file is being replaced.
        if (next % 4 == 0) {
            desk.document().save(() -> {});
        }
        desk.box().textProperty().set("s" + (1 + next % 10) + " " + next % 60 + "L 4'" + next % 12 + " note " + next);
        desk.box().enter();
    }
}
