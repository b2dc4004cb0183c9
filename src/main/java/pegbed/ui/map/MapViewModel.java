package pegbed.ui.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import pegbed.model.BankPoint;
import pegbed.model.Extras;
import pegbed.model.Hazard;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Typed;
import pegbed.notation.ShortForm;
import pegbed.session.Answer;
import pegbed.session.Edit;
import pegbed.session.PlaceEdits;
import pegbed.session.PlaceEdits.Bank;
import pegbed.session.Session;
import pegbed.wording.MapWords;

/** What the pointer does on the map. */
public final class MapViewModel {
    private final Session session;
    private final ObjectProperty<Tool> tool = new SimpleObjectProperty<>(Tool.READ);
    private final ReadOnlyObjectWrapper<Optional<Handle>> selected = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Place> pointer = new ReadOnlyObjectWrapper<>(new Place(0, 6));
    private final ReadOnlyStringWrapper pointerWords = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper pointerShort = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper error = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper heldMark = new ReadOnlyStringWrapper("");
    private final ObjectProperty<Hazard.Kind> hazardKind = new SimpleObjectProperty<>(Hazard.Kind.SNAG);
    private Runnable markAdded = () -> {};

    public MapViewModel(Session session) {
        this.session = session;
        tool.addListener((property, before, now) -> {
            selected.set(Optional.empty());
            error.set("");
        });
        selected.addListener((property, before, now) -> tellHeld());
        hazardKind.addListener((property, before, now) -> changeHeldKind(now));
        session.onChange(this::refresh);
        point(pointer.get());
    }

    public ObjectProperty<Tool> toolProperty() {
        return tool;
    }

    /** What is taken hold of; it stays so until something else is. */
    ReadOnlyObjectProperty<Optional<Handle>> selectedProperty() {
        return selected.getReadOnlyProperty();
    }

    /** The place pointed at, by the mouse or by the keys. */
    public ReadOnlyObjectProperty<Place> pointerProperty() {
        return pointer.getReadOnlyProperty();
    }

    /** That place in few words. */
    public ReadOnlyStringProperty pointerShortProperty() {
        return pointerShort.getReadOnlyProperty();
    }

    /** That place in words, with the depth there where it is known. */
    public ReadOnlyStringProperty pointerWordsProperty() {
        return pointerWords.getReadOnlyProperty();
    }

    /** Why the last change was refused, one sentence; empty if it was not. */
    public ReadOnlyStringProperty errorProperty() {
        return error.getReadOnlyProperty();
    }

    /** The kind of the hazard that is taken hold of, else of the next one; setting it changes the hazard. */
    ObjectProperty<Hazard.Kind> hazardKindProperty() {
        return hazardKind;
    }

    /** The name of the mark that is taken hold of; empty while none is. */
    ReadOnlyStringProperty heldMarkProperty() {
        return heldMark.getReadOnlyProperty();
    }

    /** Run when a mark was put on the map, whose name is made up. */
    void onMarkAdded(Runnable listener) {
        markAdded = listener;
    }

    /**
     * Gives the mark that is taken hold of another name.
     *
     * @return whether it has it; if not, {@link #errorProperty} says why
     */
    boolean renameHeld(String name) {
        return held(Tool.MARK)
                .filter(handle ->
                        !session.peg().marks().get(handle.index()).name().equals(name.strip()))
                .map(handle -> tried(PlaceEdits.renameMark(handle.index(), name)))
                .orElse(true);
    }

    private void changeHeldKind(Hazard.Kind kind) {
        held(Tool.HAZARD).ifPresent(handle -> {
            Hazard old = session.peg().hazards().get(handle.index());
            if (old.kind() != kind) {
                tried(PlaceEdits.changeHazard(
                        handle.index(),
                        new Hazard(kind, old.outline(), old.radiusMetres(), old.note(), old.typed(), old.extras())));
            }
        });
    }

    private Optional<Handle> held(Tool kind) {
        return selected.get().filter(handle -> handle.tool() == kind);
    }

    private void tellHeld() {
        heldMark.set(held(Tool.MARK)
                .map(handle -> session.peg().marks().get(handle.index()).name())
                .orElse(""));
        held(Tool.HAZARD)
                .ifPresent(handle -> hazardKind.set(
                        session.peg().hazards().get(handle.index()).kind()));
    }

    /** What can be taken hold of with the tool in hand. */
    List<Handle> handles() {
        Peg peg = session.peg();
        List<Handle> handles = new ArrayList<>();
        switch (tool.get()) {
            case NEAR_BANK -> bankHandles(handles, Tool.NEAR_BANK, peg.banks().near());
            case FAR_BANK -> bankHandles(handles, Tool.FAR_BANK, peg.banks().far());
            case MARK -> {
                for (int i = 0; i < peg.marks().size(); i++) {
                    handles.add(new Handle(
                            Tool.MARK,
                            i,
                            peg.marks().get(i).place(),
                            "mark " + peg.marks().get(i).name()));
                }
            }
            case HAZARD -> {
                for (int i = 0; i < peg.hazards().size(); i++) {
                    Hazard hazard = peg.hazards().get(i);
                    handles.add(new Handle(
                            Tool.HAZARD,
                            i,
                            hazard.outline().get(0),
                            hazard.kind().word()));
                }
            }
            default -> {
                // Nothing to take hold of.
            }
        }
        return handles;
    }

    private static void bankHandles(List<Handle> handles, Tool tool, List<BankPoint> points) {
        for (int i = 0; i < points.size(); i++) {
            handles.add(new Handle(
                    tool,
                    i,
                    points.get(i).place(),
                    tool.words().toLowerCase(java.util.Locale.ROOT) + " point " + (i + 1)));
        }
    }

    /** Points at a place. */
    public void point(Place place) {
        pointer.set(place);
        Peg peg = session.peg();
        MapWords words = MapWords.of(peg);
        String distance = new ShortForm(peg.units(), peg.pole(), '.').printDistance(place.distanceMetres());
        Optional<Depth> depth = depth(place);
        pointerWords.set(words.place(place)
                + depth.map(known -> ", " + words.depth(known.metres(), known.sdMetres()))
                        .orElse(""));
        pointerShort.set(words.place(distance, place)
                + depth.map(known -> ", " + words.shortDepth(known.metres(), known.sdMetres()))
                        .orElse(""));
    }

    /** A depth and its standard deviation. */
    private record Depth(double metres, double sdMetres) {}

    private Optional<Depth> depth(Place place) {
        return session.answer()
                .shown()
                .map(Answer.Ready::map)
                .filter(map -> map.water().isWater(place.xMetres(), place.yMetres()))
                .map(map -> new Depth(
                        map.grid().depth().sample(place.xMetres(), place.yMetres()),
                        map.grid().sd().sample(place.xMetres(), place.yMetres())))
                .filter(known -> !Double.isNaN(known.metres()) && !Double.isNaN(known.sdMetres()))
                .map(known -> new Depth(Math.max(0, known.metres()), known.sdMetres()));
    }

    /** Takes hold of the handle nearest to a place, if one is near enough. */
    Optional<Handle> take(Place place, double withinMetres) {
        Optional<Handle> nearest = handles().stream()
                .filter(handle -> handle.place().distanceTo(place) <= withinMetres)
                .min(Comparator.comparingDouble(handle -> handle.place().distanceTo(place)));
        selected.set(nearest);
        return nearest;
    }

    /** Takes hold of the next handle, or the one before. */
    void takeNext(int step) {
        List<Handle> handles = handles();
        if (!handles.isEmpty()) {
            int now = selected.get().map(Handle::index).orElse(step > 0 ? -1 : 0);
            selected.set(Optional.of(handles.get(Math.floorMod(now + step, handles.size()))));
        }
    }

    /** Moves what is taken hold of; a drag is undone as one. */
    void moveTo(Place place) {
        selected.get()
                .ifPresent(handle -> tried(
                        switch (handle.tool()) {
                            case NEAR_BANK -> PlaceEdits.moveBankPoint(Bank.NEAR, handle.index(), place);
                            case FAR_BANK -> PlaceEdits.moveBankPoint(Bank.FAR, handle.index(), place);
                            case MARK -> PlaceEdits.moveMark(handle.index(), place);
                            default -> PlaceEdits.moveHazard(handle.index(), place);
                        }));
    }

    /** The drag is over. */
    void letGo() {
        session.endBurst();
    }

    /** Puts a new point, mark or hazard at a place, as the tool in hand says. */
    void add(Place place) {
        switch (tool.get()) {
            case NEAR_BANK -> tried(PlaceEdits.addBankPoint(Bank.NEAR, BankPoint.at(place.xMetres(), place.yMetres())));
            case FAR_BANK -> tried(PlaceEdits.addBankPoint(Bank.FAR, BankPoint.at(place.xMetres(), place.yMetres())));
            case MARK -> tried(PlaceEdits.addMark(freeName(), place));
            case HAZARD ->
                tried(PlaceEdits.addHazard(
                        new Hazard(hazardKind.get(), List.of(place), 0.5, "", Typed.NOTHING, Extras.NONE)));
            default -> {
                return;
            }
        }
        take(place, 0.01);
        if (held(Tool.MARK).isPresent()) {
            markAdded.run();
        }
    }

    private String freeName() {
        List<String> names = session.peg().marks().stream()
                .map(mark -> mark.name().toLowerCase(java.util.Locale.ROOT))
                .toList();
        int number = 1;
        while (names.contains("mark " + number)) {
            number++;
        }
        return "mark " + number;
    }

    /** Takes away what is taken hold of. */
    void deleteSelected() {
        selected.get()
                .ifPresent(handle -> tried(
                        switch (handle.tool()) {
                            case NEAR_BANK -> PlaceEdits.deleteBankPoint(Bank.NEAR, handle.index());
                            case FAR_BANK -> PlaceEdits.deleteBankPoint(Bank.FAR, handle.index());
                            case MARK -> PlaceEdits.deleteMark(handle.index());
                            default -> PlaceEdits.deleteHazard(handle.index());
                        }));
        selected.set(Optional.empty());
    }

    private boolean tried(Edit edit) {
        try {
            session.edit(edit);
            error.set("");
            return true;
        } catch (InputException e) {
            error.set(e.getMessage());
            return false;
        }
    }

    private void refresh() {
        selected.get()
                .ifPresent(handle -> selected.set(handles().stream()
                        .filter(other -> other.index() == handle.index())
                        .findFirst()));
        tellHeld();
        point(pointer.get());
    }
}
