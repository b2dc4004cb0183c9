// The peg's visit and level, pegs kept on the phone, files in and out, and settings.

import { button, byId, fill, make, say } from "./dom.js";
import { readFiles, saveFile, shareFile } from "./files.js";
import { cautionCards } from "./lines.js";
import { LOOKS } from "./look.js";
import { radios } from "./newpeg.js";

/** The part of the page for the peg as a whole. */
export class PegsView {
  #core;
  #keep;
  #peg;
  #does;
  #state = null;

  /** @param does what the page does: open(id), make(), take(files), change(request), tell(words) */
  constructor(core, keep, peg, look, does) {
    this.#core = core;
    this.#keep = keep;
    this.#peg = peg;
    this.#does = does;
    fill(byId("looks"), radios("look", LOOKS, look.at, (at) => look.wish(at)));
    byId("new").addEventListener("click", () => does.make());
    byId("files").addEventListener("change", async ({ target }) => {
      const files = await readFiles(target.files);
      target.value = "";
      await does.take(files);
    });
    byId("save").addEventListener("click", () => this.#out(saveFile));
    byId("share").addEventListener("click", () => this.#out(shareFile));
    byId("share").hidden = !navigator.canShare;
    byId("save-as-it-was").addEventListener("click", () => {
      const { name, damaged } = this.#peg.record;
      saveFile(`damaged-${name}`, damaged);
    });
    byId("begin-visit").addEventListener("click", () => does.change({ do: "visit" }));
    byId("level").addEventListener("submit", (event) => {
      event.preventDefault();
      this.#level();
    });
    byId("read-cautions").addEventListener("click", () => this.#cautions());
  }

  /** The open peg is another one, or changed. */
  showState(state) {
    this.#state = state;
    byId("this-peg").hidden = false;
    byId("as-it-was").hidden = this.#peg.record.damaged === undefined;
    const { visit } = state;
    say(byId("visit-words"), [visit.words, state.readingsWords].filter(Boolean).join(", "));
    byId("begin-visit").hidden = visit.canBegin !== true;
    say(byId("warning"), state.warning);
  }

  /** The pegs that are kept. */
  async show() {
    const kept = await this.#keep.pegs();
    const open = this.#peg.record?.id;
    fill(
      byId("kept-pegs"),
      ...kept.map((peg) =>
        make(
          "li",
          { class: "card" },
          make("h3", { text: peg.title }),
          make("p", { class: "small", text: `${peg.name}, changed ${peg.changed.replace("T", " ").slice(0, 16)}` }),
          make(
            "div",
            { class: "row" },
            peg.id === open
              ? make("p", { text: "Open now" })
              : button("Open", () => this.#does.open(peg.id), { "aria-label": `Open ${peg.title}` }),
            peg.id === open
              ? null
              : button("Take away", () => this.#remove(peg), { class: "quiet", "aria-label": `Take away ${peg.title}` }),
          ),
        ),
      ),
    );
    byId("none-kept").hidden = kept.length > 0;
  }

  /** Whether the browser promises to keep what is in its store. */
  showKept(persisted) {
    say(
      byId("how-kept"),
      persisted
        ? "The phone keeps your pegs until you take them away."
        : "The phone keeps your pegs, but may clear them when it runs short of space, and a private window forgets them. Save them to files too.",
    );
  }

  async #out(hand) {
    const { text } = await this.#core.ask({ do: "text" });
    await hand(this.#peg.record.name, text);
  }

  async #level() {
    const words = byId("level-words");
    const typed = byId("board").value.trim();
    if (!typed) return;
    const answer = await this.#peg.edit({ do: "level", board: typed });
    words.classList.toggle("refused", Boolean(answer.refused));
    const checks = (answer.checks ?? []).map(({ what, why }) => `${what} ${why}`);
    say(words, answer.refused ?? [answer.level, ...(answer.changes ?? []), ...checks].filter(Boolean).join(" "));
    if (!answer.refused) byId("board").value = "";
  }

  #remove(peg) {
    const sheet = byId("choices");
    fill(
      sheet,
      make("h2", { text: `Take ${peg.title} away?`, id: "choices-title" }),
      make("p", { text: "Its readings are gone from this phone, unless you saved the peg to a file." }),
      button("Save to a file first", () => saveFile(peg.name, peg.text)),
      button(
        "Take away",
        async () => {
          await this.#keep.remove(peg.id);
          sheet.close();
          await this.show();
        },
        { class: "danger" },
      ),
      button("Keep it", () => sheet.close(), { class: "main" }),
    );
    sheet.showModal();
  }

  async #cautions() {
    const { cautions } = await this.#core.ask({ do: "cautions" });
    const sheet = byId("cautions");
    fill(
      sheet,
      make("h2", { text: "Cautions", id: "cautions-title" }),
      ...cautionCards(cautions),
      button("Close", () => sheet.close(), { class: "main" }),
    );
    sheet.showModal();
    sheet.scrollTop = 0;
  }
}
