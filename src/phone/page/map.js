// The map: a canvas that the worker paints, moved by fingers, wheel or buttons. The worker keeps where it looks.

import { button, byId, fill, pause } from "./dom.js";

const TAP_PIXELS = 8;
const ZOOM_STEP = 1.6;
const MOVE_PART = 0.3;

/** A move of the picture: what stood at x stands at scale * x + right. */
const STILL = { scale: 1, right: 0, down: 0 };

/** The map on the page. */
export class MapView {
  #core;
  #look;
  #told;
  #frame = byId("map-frame");
  #canvas = byId("map");
  /** Fingers on the map by their ids: where each is, CSS px from the frame's corner. */
  #fingers = new Map();
  #travelled = 0;
  /** Moves that the worker has not been told. */
  #untold = STILL;
  #moveButtons;
  #painting = null;
  #stale = false;
  #begun = false;

  /**
   * @param core the worker
   * @param look gives the theme's name and what else a painting takes
   * @param taken told the place of a tap, CSS px from the map's corner
   * @param told told a sentence where the map could not be painted
   */
  constructor(core, look, taken, told) {
    this.#core = core;
    this.#look = look;
    this.#told = told;
    this.#moveButtons = [
      ["map-left", "◀", "Look further left", 1, 0],
      ["map-right", "▶", "Look further right", -1, 0],
      ["map-up", "▲", "Look further out", 0, 1],
      ["map-down", "▼", "Look nearer", 0, -1],
    ].map(([id, sign, name, right, down]) =>
      button(
        sign,
        () =>
          this.#move({
            scale: 1,
            right: right * MOVE_PART * this.#frame.clientWidth,
            down: down * MOVE_PART * this.#frame.clientHeight,
          }),
        { id, class: "map-button", "aria-label": name, hidden: true },
      ),
    );
    this.#moveButtons.push(
      button("Whole peg", () => this.#whole(), { id: "map-whole", class: "map-button words", hidden: true }),
    );
    fill(
      byId("map-buttons"),
      button("+", () => this.#zoomMiddle(ZOOM_STEP), { id: "map-closer", class: "map-button", "aria-label": "Closer" }),
      button("−", () => this.#zoomMiddle(1 / ZOOM_STEP), {
        id: "map-farther",
        class: "map-button",
        "aria-label": "Farther",
        hidden: true,
      }),
      ...this.#moveButtons,
    );
    this.#moveButtons.push(byId("map-farther"));
    this.#listen(taken);
    core.hand(this.#canvas.transferControlToOffscreen());
    new ResizeObserver(() => this.paint()).observe(this.#frame);
  }

  /** A peg is open: there is something to paint. */
  begin() {
    this.#begun = true;
    return this.#whole();
  }

  /** Paints as it is now; wishes that come meanwhile are one more painting. */
  paint() {
    if (!this.#begun) return Promise.resolve();
    this.#stale = true;
    this.#painting ??= this.#paintAll().finally(() => (this.#painting = null));
    return this.#painting;
  }

  async #paintAll() {
    while (this.#stale) {
      this.#stale = false;
      // What was just put into the page is laid out by itself before its sizes are read.
      await pause();
      const width = Math.floor(this.#frame.clientWidth);
      const height = Math.floor(this.#frame.clientHeight);
      if (width < 1 || height < 1) return;
      await this.#tell();
      const told = this.#untold;
      const density = Math.min(3, window.devicePixelRatio || 1);
      const moving = this.#fingers.size > 0;
      const painted = await this.#core.paint({ width, height, density, moving, ...this.#look() });
      if (painted.refused) this.#told(painted.refused);
      this.#canvas.style.width = `${width}px`;
      this.#canvas.style.height = `${height}px`;
      if (told === this.#untold) this.#showMoved();
    }
  }

  /** Tells the worker the moves so far: a zoom about the point that stays where it is, or a move aside. */
  async #tell() {
    const { scale, right, down } = this.#untold;
    if (this.#untold === STILL) return;
    this.#untold = STILL;
    const camera =
      Math.abs(scale - 1) < 1e-6
        ? { panX: right, panY: down }
        : { zoom: scale, x: right / (1 - scale), y: down / (1 - scale) };
    this.#closer(await this.#core.ask({ do: "camera", ...camera }));
  }

  async #whole() {
    this.#untold = STILL;
    this.#closer(await this.#core.ask({ do: "camera", all: true }));
    return this.paint();
  }

  #closer({ all }) {
    for (const shown of this.#moveButtons) shown.hidden = all !== false;
  }

  #zoomMiddle(scale) {
    const x = this.#frame.clientWidth / 2;
    const y = this.#frame.clientHeight / 2;
    this.#move({ scale, right: x * (1 - scale), down: y * (1 - scale) });
  }

  /** The picture follows at once as it is; it is painted anew as soon as the worker can. */
  #move({ scale, right, down }) {
    const before = this.#untold;
    this.#untold = {
      scale: before.scale * scale,
      right: before.right * scale + right,
      down: before.down * scale + down,
    };
    this.#showMoved();
    this.paint();
  }

  #showMoved() {
    const { scale, right, down } = this.#untold;
    this.#canvas.style.transform =
      this.#untold === STILL ? "" : `translate(${right}px, ${down}px) scale(${scale})`;
  }

  #listen(taken) {
    const canvas = this.#canvas;
    canvas.addEventListener("pointerdown", (event) => {
      canvas.setPointerCapture(event.pointerId);
      this.#travelled = this.#fingers.size === 0 ? 0 : TAP_PIXELS + 1;
      this.#fingers.set(event.pointerId, this.#at(event));
    });
    canvas.addEventListener("pointermove", (event) => {
      const from = this.#fingers.get(event.pointerId);
      if (!from) return;
      const before = spread(this.#fingers);
      const to = this.#at(event);
      this.#travelled += Math.hypot(to.x - from.x, to.y - from.y);
      this.#fingers.set(event.pointerId, to);
      if (this.#travelled <= TAP_PIXELS) return;
      const now = spread(this.#fingers);
      const scale = now.width / before.width;
      this.#move({ scale, right: now.x - before.x * scale, down: now.y - before.y * scale });
    });
    const lifted = (event) => {
      const last = this.#fingers.get(event.pointerId);
      this.#fingers.delete(event.pointerId);
      if (!last || this.#fingers.size > 0) return;
      if (this.#travelled <= TAP_PIXELS && event.type === "pointerup") taken(last.x, last.y);
      else this.paint();
    };
    canvas.addEventListener("pointerup", lifted);
    canvas.addEventListener("pointercancel", lifted);
    canvas.addEventListener(
      "wheel",
      (event) => {
        event.preventDefault();
        const { x, y } = this.#at(event);
        const scale = event.deltaY < 0 ? ZOOM_STEP : 1 / ZOOM_STEP;
        this.#move({ scale, right: x * (1 - scale), down: y * (1 - scale) });
      },
      { passive: false },
    );
  }

  #at(event) {
    const box = this.#frame.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  }
}

/** Middle of one or two fingers, and how far apart they are. */
function spread(fingers) {
  const [one, other = one] = [...fingers.values()];
  return {
    x: (one.x + other.x) / 2,
    y: (one.y + other.y) / 2,
    width: one === other ? 1 : Math.max(1, Math.hypot(one.x - other.x, one.y - other.y)),
  };
}
