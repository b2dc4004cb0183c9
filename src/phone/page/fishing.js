// The day's fishing: what a tap on a line's button notes, how the lines stand, and the day as a picture.

import { button, byId, fill, make, say } from "./dom.js";
import { now } from "./peg.js";

/** Minutes are shown; so often the clock is looked at. */
const CLOCK_MILLISECONDS = 20000;

/** A picture's letters are enlarged as one of so many points would be to the phone's own size. */
const PICTURE_LETTERS = 11.5;

/** The part of the page for fishing. */
export class FishingView {
  #core;
  #edit;
  #theme;
  #section = byId("fishing");
  #cards = [];
  /** What the cards were made for: lines and buttons stay where they are while only the minutes change. */
  #made = "";
  #kindsMade = "[]";
  /** The kind of fish that a tap notes, or none. */
  #fish = "";
  #turn = 0;
  #event = byId("event");

  /**
   * @param core the worker
   * @param edit makes a change of the open peg; gives the answer once it is kept, or {refused}
   * @param theme gives the theme's name
   */
  constructor(core, edit, theme) {
    this.#core = core;
    this.#edit = edit;
    this.#theme = theme;
    byId("stop").addEventListener("click", () => this.#note({ do: "dayTap", kind: "stop" }));
    byId("day-line").addEventListener("submit", (event) => {
      event.preventDefault();
      this.#typed();
    });
    setInterval(() => this.refresh(), CLOCK_MILLISECONDS);
    document.addEventListener("visibilitychange", () => this.refresh());
    new ResizeObserver(() => this.paint()).observe(this.#section);
  }

  /** Another peg is open. */
  clear() {
    this.#turn += 1;
    this.#fish = "";
    this.#event.value = "";
    this.forget();
  }

  /** What is said belongs to an older peg. */
  forget() {
    this.#say("");
  }

  /** The lines as they stand now, if they are in sight. */
  async refresh() {
    if (!this.#isSeen()) return;
    const mine = ++this.#turn;
    const day = await this.#core.ask({ do: "day", now: now() });
    if (mine !== this.#turn) return;
    if (day.refused) this.#say(day.refused, "refused");
    else this.#show(day);
    await this.paint();
  }

  #isSeen() {
    return !this.#section.hidden && !document.hidden && !document.body.classList.contains("no-peg");
  }

  #show(day) {
    const made = JSON.stringify([day.lines.map(({ title, x, y }) => [title, x, y]), day.noLines]);
    if (made !== this.#made) {
      this.#made = made;
      this.#cards = day.lines.map((line) => this.#card(line, day.taps));
      fill(byId("fished-lines"), day.noLines ? make("p", { text: day.noLines }) : null, ...this.#cards);
      this.#event.placeholder = day.example;
      byId("stop").textContent = day.stop.words;
      byId("stop").setAttribute("aria-label", `${day.stop.words}: ${day.stop.meaning}`);
      byId("strip").setAttribute("aria-label", day.strip);
      byId("strip-title").textContent = day.strip;
      fill(byId("day-cautions"), make("h2", { text: "Cautions" }), ...day.cautions.map((text) => make("p", { text, class: "small" })));
    }
    day.lines.forEach((line, i) => showState(this.#cards[i], line));
    byId("stop").disabled = !day.fishing;
    say(byId("day-warning"), day.warning);
    say(byId("outlook"), day.outlook.join(" "));
    this.#showKinds(day.kindsOfFish);
  }

  /** A line with its buttons. */
  #card(line, taps) {
    const { title, x, y } = line;
    return make(
      "article",
      { class: "card fished-line" },
      make("h2", {}, make("span", { text: title })),
      make(
        "div",
        { class: "keys taps" },
        ...taps.map(({ kind, words }) =>
          button(words, () => this.#note({ do: "dayTap", kind, x, y, ...(kind === "fish" ? { fish: this.#fish } : {}) }), {
            "aria-label": `${words}, ${title}`,
            "data-kind": kind,
          }),
        ),
      ),
      make("p", { class: "state" }),
    );
  }

  /** The kinds that were noted before: the one that is pressed is what a tap on Fish notes. */
  #showKinds(kinds) {
    const wanted = JSON.stringify(kinds);
    if (wanted !== this.#kindsMade) {
      this.#kindsMade = wanted;
      if (!kinds.includes(this.#fish)) this.#fish = "";
      fill(
        byId("kinds"),
        make("p", { text: "Kind of fish", class: "small" }),
        ...kinds.map((kind) => button(kind, () => this.#choose(kind), { "data-kind": kind })),
      );
      byId("kinds").hidden = kinds.length === 0;
    }
    for (const key of byId("kinds").querySelectorAll("button")) {
      key.setAttribute("aria-pressed", key.dataset.kind === this.#fish ? "true" : "false");
    }
  }

  #choose(kind) {
    this.#fish = this.#fish === kind ? "" : kind;
    this.#showKinds(JSON.parse(this.#kindsMade));
  }

  async #typed() {
    const line = this.#event.value.trim();
    if (line !== "" && (await this.#note({ do: "dayLine", line }))) this.#event.value = "";
  }

  /** Notes something; true once it is kept. */
  async #note(request) {
    this.#say("Noting …");
    const answer = await this.#edit(request);
    if (answer.refused) this.#say(answer.refused, "refused");
    else this.#say(answer.noted, "added");
    return !answer.refused;
  }

  #say(words, kind = "") {
    const node = byId("noted");
    node.className = kind;
    say(node, words);
  }

  /** The day as a picture. */
  async paint() {
    const width = Math.floor(this.#section.clientWidth);
    if (!this.#isSeen() || width < 1) return;
    const mine = this.#turn;
    // The picture's letters are as for paper; here they follow the phone's own size.
    const larger = parseFloat(getComputedStyle(document.documentElement).fontSize) / PICTURE_LETTERS;
    const density = larger * Math.min(3, window.devicePixelRatio || 1);
    const picture = await this.#core.paintDay({ width: width / larger, density, theme: this.#theme(), now: now() });
    if (mine !== this.#turn) return;
    const strip = byId("strip");
    byId("strip-part").hidden = !picture.image;
    if (!picture.image) return;
    strip.width = picture.image.width;
    strip.height = picture.image.height;
    strip.style.width = `${width}px`;
    strip.style.height = `${picture.height * larger}px`;
    strip.getContext("bitmaprenderer").transferFromImageBitmap(picture.image);
  }
}

function showState(card, { state, fished }) {
  card.classList.toggle("fished", fished);
  const words = card.querySelector(".state");
  if (words.textContent !== state) words.textContent = state;
  // What is fished already can't be begun.
  card.querySelector("[data-kind=start]").disabled = fished;
}
