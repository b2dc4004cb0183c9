// Taking readings: where to plumb next, section, direction and depth, the typed line, and what was understood.

import { button, byId, fill, make, say } from "./dom.js";
import { Wheel } from "./wheel.js";

const KEY_PIXELS = 56;
const GAP_PIXELS = 6;
const ROWS = 2;

/** The part of the page for readings. */
export class PlumbView {
  #core;
  #add;
  #wheels = null;
  /** Where the wheels stand; the depth is not known until it is tapped. */
  #at = { section: 0, direction: 0, depth: null };
  #expected = 0;
  /** The first depth on the keypad. */
  #first = 0;
  #section;
  #direction;
  #felt = byId("felt");
  #keys = byId("depth-keys");
  #line = byId("line");
  #columns = 0;
  #turn = 0;

  /**
   * @param core the worker
   * @param add takes the line and gives {understood, warning} or {refused}
   */
  constructor(core, add) {
    this.#core = core;
    this.#add = add;
    this.#section = new Wheel(byId("section-wheel"), "Section", ["nearer", "further out"], (at) =>
      this.#turned({ section: at }),
    );
    this.#direction = new Wheel(byId("direction-wheel"), "Clock or mark", ["the one before", "the next"], (at) =>
      this.#turned({ direction: at }),
    );
    this.#felt.addEventListener("change", () => this.#say());
    byId("entry").addEventListener("submit", (event) => {
      event.preventDefault();
      this.#enter();
    });
    byId("to-next").addEventListener("click", () => this.begin());
    new ResizeObserver(() => this.#fit()).observe(this.#keys);
  }

  /** Another peg is open. */
  clear() {
    fill(byId("next"));
    say(byId("understood"), "");
    byId("understood").classList.remove("refused");
  }

  /** Where to plumb next, and why. */
  showNext(next) {
    const words = [
      make("strong", { text: next.where ? `Next: ${next.where}` : "" }),
      next.aim ? make("span", { text: next.aim }) : null,
      make("span", { text: next.why ?? "" }),
      next.stop ? make("span", { class: "stop", text: next.stop }) : null,
    ];
    fill(byId("next"), ...words.filter((word) => word?.textContent));
    byId("next").hidden = false;
  }

  /** The wheels begin at the next place, with the depth that is expected there. */
  async begin() {
    const mine = ++this.#turn;
    const wheels = await this.#core.ask({ do: "wheels" });
    if (mine !== this.#turn || wheels.refused) return;
    this.#take(wheels);
  }

  #take(wheels) {
    this.#wheels = wheels;
    this.#section.hold(
      wheels.sections.map((each) => each.label),
      wheels.at.section,
    );
    this.#direction.hold(
      wheels.directions.map((each) => each.label),
      wheels.at.direction,
    );
    byId("wheels").classList.toggle(
      "stacked",
      wheels.directions.some((each) => each.label.length > 6),
    );
    this.#expect(wheels.at.depth);
    this.#at = { section: wheels.at.section, direction: wheels.at.direction, depth: null };
    this.#say();
  }

  /** A place was tapped on the map. */
  async takePlace(xPx, yPx) {
    const mine = ++this.#turn;
    const place = await this.#core.ask({ do: "place", xPx, yPx });
    if (mine !== this.#turn || !this.#wheels) return;
    if (place.refused) {
      this.#understood(place.refused, true);
      return;
    }
    this.#section.show(place.at.section);
    this.#direction.show(place.at.direction);
    this.#expect(place.at.depth);
    this.#at = { section: place.at.section, direction: place.at.direction, depth: null };
    await this.#say();
    this.#understood(place.words, false);
  }

  /** Undo may have brought a typed line back: what was said is about an older peg. */
  forget() {
    this.#understood("", false);
  }

  #turned(change) {
    this.#at = { ...this.#at, ...change };
    this.#say();
  }

  #expect(depth) {
    this.#expected = depth;
    this.#first = this.#begins(depth);
    this.#layKeys();
  }

  #count() {
    return Math.max(1, this.#columns * ROWS - 2);
  }

  #begins(depth) {
    const last = this.#wheels.depths.length - this.#count();
    return Math.max(0, Math.min(last, depth - Math.floor(this.#count() / 2)));
  }

  /** As many keys as have room; the first and the last turn to shallower and deeper ones. */
  #fit() {
    const columns = Math.max(3, Math.floor((this.#keys.clientWidth + GAP_PIXELS) / (this.#keySize() + GAP_PIXELS)));
    if (columns === this.#columns) return;
    this.#columns = columns;
    if (this.#wheels) this.#expect(this.#expected);
  }

  /** A key is as wide as the letters need, and never too small for a thumb. */
  #keySize() {
    return Math.max(KEY_PIXELS, 3.4 * parseFloat(getComputedStyle(document.documentElement).fontSize));
  }

  #layKeys() {
    if (!this.#wheels || this.#columns === 0) return;
    const { depths } = this.#wheels;
    const keys = [];
    const count = this.#count();
    for (let depth = this.#first; depth < Math.min(depths.length, this.#first + count); depth++) {
      keys.push(
        button(depths[depth], () => this.#plumbed(depth), {
          class: depth === this.#expected ? "key expected" : "key",
          "aria-pressed": depth === this.#at.depth ? "true" : "false",
          "aria-label": depth === this.#expected ? `${depths[depth]}, as expected` : depths[depth],
        }),
      );
    }
    const page = (by) => () => {
      this.#first = Math.max(0, Math.min(depths.length - count, this.#first + by));
      this.#layKeys();
      byId(by < 0 ? "shallower" : "deeper").focus();
    };
    this.#keys.style.setProperty("--columns", this.#columns);
    fill(
      this.#keys,
      button("◀", page(-count), { id: "shallower", class: "turn", "aria-label": "Shallower", disabled: this.#first <= 0 }),
      ...keys,
      button("▶", page(count), {
        id: "deeper",
        class: "turn",
        "aria-label": "Deeper",
        disabled: this.#first + count >= depths.length,
      }),
    );
  }

  #plumbed(depth) {
    this.#at = { ...this.#at, depth };
    for (const key of this.#keys.querySelectorAll(".key")) {
      key.setAttribute("aria-pressed", key.textContent === this.#wheels.depths[depth] ? "true" : "false");
    }
    this.#say();
  }

  /** The line that the wheels stand for goes into the box, and how it is understood under it. */
  async #say() {
    const mine = ++this.#turn;
    const felt = this.#felt.value;
    const said = await this.#core.ask({ do: "wheelLine", ...this.#at, ...(felt ? { felt } : {}) });
    if (mine !== this.#turn) return;
    this.#line.value = said.line ?? "";
    this.#understood(this.#at.depth === null ? "" : (said.refused ?? said.understood), Boolean(said.refused));
  }

  #understood(words, refused) {
    const node = byId("understood");
    node.classList.toggle("refused", refused);
    node.classList.remove("added");
    say(node, words);
  }

  async #enter() {
    const typed = this.#line.value.trim();
    if (!typed) return;
    const answer = await this.#add(typed);
    if (answer.refused) {
      this.#understood(answer.refused, true);
      return;
    }
    this.#turn += 1;
    this.#line.value = "";
    this.#at = { ...this.#at, depth: null };
    this.#felt.value = "";
    this.#layKeys();
    this.#understood([answer.understood, answer.warning].filter(Boolean).join(" "), false);
    byId("understood").classList.add("added");
  }
}
