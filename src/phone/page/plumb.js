// Taking readings: where to plumb next, the wheels and keys for one, the typed line, and what was understood.

import { button, byId, fill, make, say } from "./dom.js";
import { Wheel, choose } from "./wheel.js";

const COLUMNS = 6;
const KEY_PIXELS = 56;
const GAP_PIXELS = 3;
/** A key holds this many widths of the letters' size. */
const KEY_REM = 3.2;
/** The sheet of the clock shows every quarter of an hour: one of so many values. */
const CLOCK_CHOICES = 3;

/** The part of the page for readings. */
export class PlumbView {
  #core;
  #add;
  #pointed;
  #wheels = null;
  /** The wheel of directions that is shown: the clock's, or a mark's. */
  #direction = null;
  #depths = null;
  /** The key of a depth that was tapped. */
  #plumbed = null;
  #distanceWheel;
  #directionWheel;
  #felt = byId("felt");
  #keys = byId("depth-keys");
  #line = byId("line");
  /** Whether the wheels were turned by hand since the last reading: then they are left where they are. */
  #byHand = false;
  /** Answers to older questions are dropped: those about places, and those about lines. */
  #placeTurn = 0;
  #lineTurn = 0;

  /**
   * @param core the worker
   * @param add takes the line and gives {understood} or {refused}
   * @param pointed told where the wheels point, metres
   */
  constructor(core, add, pointed) {
    this.#core = core;
    this.#add = add;
    this.#pointed = pointed;
    this.#distanceWheel = new Wheel(
      byId("distance-wheel"),
      ["nearer", "further out"],
      (at) => this.#turned(this.#wheels.distance, at),
      () => this.#chooseDistance(),
    );
    this.#directionWheel = new Wheel(
      byId("direction-wheel"),
      ["further left", "further right"],
      (at) => this.#turned(this.#direction, at),
      () => this.#chooseDirection(),
    );
    byId("shallower").addEventListener("click", () => this.#page(-1));
    byId("deeper").addEventListener("click", () => this.#page(1));
    byId("expected").addEventListener("click", () => this.#chooseWhole());
    this.#felt.addEventListener("change", () => this.#write());
    this.#line.addEventListener("input", () => this.#typed());
    byId("entry").addEventListener("submit", (event) => {
      event.preventDefault();
      this.#enter();
    });
    byId("to-next").addEventListener("click", () => this.#begin());
    new ResizeObserver(() => this.#fit()).observe(this.#keys);
  }

  /** Another peg is open. */
  clear() {
    this.#placeTurn += 1;
    this.#lineTurn += 1;
    this.#byHand = false;
    this.#wheels = null;
    this.#plumbed = null;
    this.#line.value = "";
    fill(byId("next"));
    this.#say("");
  }

  /** Where to plumb next, and why. */
  showNext(next) {
    if (next.refused) {
      fill(byId("next"), next.refused);
      return;
    }
    const where = [next.where, next.aim].filter(Boolean).join(", ");
    fill(byId("next"), make("strong", { text: `Next: ${where}.` }), ` ${next.why ?? ""}`);
  }

  /** The next place is another one: the wheels go on to it, unless a reading has been begun somewhere. */
  async goOn() {
    const begun = this.#byHand || this.#plumbed || this.#line.value !== this.#lineOfWheels();
    if (!begun) await this.#begin();
  }

  /** The wheels begin at the next place, about the depth that is expected there. */
  async #begin() {
    const mine = ++this.#placeTurn;
    const wheels = await this.#core.ask({ do: "wheels" });
    if (mine !== this.#placeTurn || wheels.refused) return;
    this.#take(wheels);
    this.#byHand = false;
  }

  /** The wheels begin at a place that was tapped on the map. */
  async takePlace(xPx, yPx) {
    const mine = ++this.#placeTurn;
    const place = await this.#core.ask({ do: "place", x: xPx, y: yPx });
    const wheels = place.refused ? place : await this.#core.ask({ do: "wheels", x: place.x, y: place.y });
    if (mine !== this.#placeTurn) return;
    if (wheels.refused) {
      this.#say(wheels.refused, "refused");
      return;
    }
    this.#take(wheels);
    this.#byHand = true;
    this.#say(wheels.here.words);
  }

  /** What is said belongs to an older peg. */
  forget() {
    this.#say("");
  }

  #take(wheels) {
    this.#wheels = wheels;
    this.#direction = wheels.clock;
    this.#plumbed = null;
    const felt = this.#felt.value;
    fill(this.#felt, ...wheels.bottoms.map(({ label, typed }) => make("option", { value: typed, text: label })));
    this.#felt.value = felt;
    this.#showWheels();
    this.#showDepths(wheels.depth);
    this.#write();
  }

  #showWheels() {
    const { distance } = this.#wheels;
    this.#distanceWheel.hold(distance.title, distance.items.map(label), distance.at);
    this.#directionWheel.hold(this.#direction.title, this.#direction.items.map(label), this.#direction.at);
    byId("wheels").classList.toggle("stacked", this.#direction !== this.#wheels.clock);
  }

  #turned(wheel, at) {
    wheel.at = at;
    this.#moved();
  }

  #chooseDistance() {
    const { distance } = this.#wheels ?? {};
    if (!distance) return;
    choose(distance.title, distance.items.map((item, at) => this.#choice(distance, item, at)));
  }

  #chooseDirection() {
    if (!this.#wheels) return;
    const { clock, marks } = this.#wheels;
    const all = marks.map((mark) => ({
      label: mark.title,
      here: mark === this.#direction,
      chosen: () => {
        this.#direction = mark;
        this.#moved();
      },
    }));
    clock.items.forEach((item, at) => {
      if (at % CLOCK_CHOICES === 0) all.push(this.#choice(clock, item, at));
    });
    choose(marks.length > 0 ? "Clock or mark" : clock.title, all);
  }

  #choice(wheel, item, at) {
    return {
      label: item.label,
      here: at === wheel.at && (wheel === this.#direction || wheel === this.#wheels.distance),
      chosen: () => {
        if (wheel !== this.#wheels.distance) this.#direction = wheel;
        wheel.at = at;
        this.#moved();
      },
    };
  }

  #chooseWhole() {
    if (!this.#wheels) return;
    choose(
      "Depth",
      this.#wheels.wholes.map(({ label: words, from }) => ({ label: words, here: false, chosen: () => this.#ask(from) })),
    );
  }

  /** The wheels were turned: a depth that was tapped for another place is forgotten. */
  #moved() {
    this.#showWheels();
    this.#plumbed = null;
    this.#byHand = true;
    this.#write();
    this.#ask();
  }

  #page(by) {
    if (this.#depths) this.#ask(Math.max(0, this.#depths.from + by * this.#depths.keys.length));
  }

  /** Keys for depths where the wheels point: about the one expected, or from a step on. */
  async #ask(from) {
    const mine = ++this.#placeTurn;
    const depths = await this.#core.ask({
      do: "depths",
      distance: typed(this.#wheels.distance),
      direction: typed(this.#direction),
      ...(from === undefined ? {} : { from }),
    });
    if (mine !== this.#placeTurn) return;
    if (depths.refused) this.#say(depths.refused, "refused");
    else this.#showDepths(depths);
  }

  #showDepths(depths) {
    this.#depths = depths;
    byId("shallower").disabled = depths.from === 0;
    fill(
      byId("expected"),
      make("span", { class: "small", text: "Depth" }),
      " ",
      make("strong", { text: depths.expected ? `about ${depths.expected}` : "not known" }),
    );
    fill(
      this.#keys,
      ...depths.keys.map((key) =>
        button(key.label, () => this.#tapped(key), {
          class: key.expected ? "key expected" : "key",
          "data-step": key.step,
          "aria-pressed": "false",
          "aria-label": key.expected ? `${key.label}, as expected` : null,
        }),
      ),
    );
    this.#press();
    this.#pointed(depths.here);
  }

  #tapped(key) {
    this.#plumbed = key;
    byId("understood").className = "";
    this.#press();
    this.#write();
  }

  #press() {
    for (const key of this.#keys.children) {
      key.setAttribute("aria-pressed", Number(key.dataset.step) === this.#plumbed?.step ? "true" : "false");
    }
  }

  /** As many keys in a row as have room for a thumb and their letters. */
  #fit() {
    const rem = parseFloat(getComputedStyle(document.documentElement).fontSize);
    const key = Math.max(KEY_PIXELS, KEY_REM * rem);
    const room = Math.floor((this.#keys.clientWidth + GAP_PIXELS) / (key + GAP_PIXELS));
    const columns = [COLUMNS, 4, 3, 2].find((each) => each <= room) ?? 1;
    this.#keys.style.setProperty("--columns", columns);
  }

  #lineOfWheels() {
    if (!this.#wheels) return "";
    const words = [typed(this.#wheels.distance), typed(this.#direction)];
    if (this.#plumbed) words.push(this.#plumbed.typed, this.#felt.value);
    return words.filter(Boolean).join(" ");
  }

  /** The line that the wheels stand for goes into the box. */
  #write() {
    this.#line.value = this.#lineOfWheels();
    byId("add").disabled = !this.#plumbed;
    if (this.#plumbed) this.#typed();
    else if (!byId("understood").classList.contains("added")) this.#say("");
  }

  /** How the line would be understood. */
  async #typed() {
    const mine = ++this.#lineTurn;
    const line = this.#line.value.trim();
    byId("add").disabled = line === "";
    if (line === "") {
      this.#say("");
      return;
    }
    const said = await this.#core.ask({ do: "understood", line });
    if (mine !== this.#lineTurn) return;
    if (said.refused) this.#say(said.refused, "refused");
    else this.#say(said.understood);
  }

  #say(words, kind = "") {
    const node = byId("understood");
    node.className = kind;
    say(node, words);
  }

  async #enter() {
    const line = this.#line.value.trim();
    if (line === "") return;
    this.#lineTurn += 1;
    byId("add").disabled = true;
    byId("understood").className = "";
    const answer = await this.#add(line);
    if (answer.refused) {
      this.#say(answer.refused, "refused");
      byId("add").disabled = false;
      return;
    }
    this.#felt.value = "";
    this.#plumbed = null;
    this.#byHand = false;
    this.#press();
    if (this.#wheels) this.#write();
    else this.#line.value = "";
    this.#say(answer.understood, "added");
  }

  /** Tells what speaks against the reading that was added last; it is kept all the same. */
  question(words) {
    const node = byId("understood");
    if (!words || !node.classList.contains("added") || node.textContent.endsWith(words)) return;
    this.#say(`${node.textContent}. ${words}`, "added questioned");
  }
}

function label(item) {
  return item.label;
}

function typed(wheel) {
  return wheel.items[wheel.at].typed;
}
