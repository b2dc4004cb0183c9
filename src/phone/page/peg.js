// The open peg: every change is kept before anybody is told of it, and the answers follow stage by stage.

import { KeepError, takeTurn } from "./keep.js";

/** Date and time by the phone's clock with its offset from UTC (ISO 8601), as a peg file has them. */
export function now() {
  const minutes = -new Date().getTimezoneOffset();
  const local = new Date(Date.now() + minutes * 60000).toISOString().slice(0, 19);
  const two = (number) => String(Math.floor(number)).padStart(2, "0");
  const offset = Math.abs(minutes);
  return `${local}${minutes < 0 ? "-" : "+"}${two(offset / 60)}:${two(offset % 60)}`;
}

/** The peg that is open in the worker, with its record in the store. */
export class OpenPeg {
  #core;
  #keep;
  #shown;
  #record = null;
  #letGo = () => {};
  /** Changes and openings come one after the other. */
  #queue = Promise.resolve();
  /** The id of the record that the core has open; null while it has another peg, or none. */
  #inCore = null;
  #following = 0;

  /**
   * @param core the worker
   * @param keep the store
   * @param shown told the answers: state, provisional, map, next and plan
   */
  constructor(core, keep, shown) {
    this.#core = core;
    this.#keep = keep;
    this.#shown = shown;
  }

  /** The record that is kept, or null. */
  get record() {
    return this.#record;
  }

  /** Does work while no change is made and no other peg is opened. */
  alone(work) {
    const done = this.#queue.then(work);
    this.#queue = done.catch(() => {});
    return done;
  }

  /** Has the core open a peg that is not kept yet; nothing can be changed until a kept one is opened. */
  tryOut(request) {
    this.#inCore = null;
    this.#following += 1;
    document.body.dataset.done = "false";
    return this.#core.ask({ ...request, now: now() });
  }

  /** Takes a kept peg for this page alone: what lets go of it again, or null if another tab has it. */
  async turn(id) {
    if (this.#record?.id !== id) return takeTurn(id);
    const letGo = this.#letGo;
    this.#letGo = () => {};
    return letGo;
  }

  /**
   * Opens a kept record.
   *
   * @param neighbours records of other pegs
   * @param letGo called when another peg is opened
   * @return the core's answer
   */
  async open(record, neighbours, letGo) {
    const answer = await this.tryOut({
      do: "open",
      name: record.name,
      text: record.text,
      neighbours: neighbours.map(({ name, text }) => ({ name, text })),
    });
    if (answer.refused) {
      letGo();
      return answer;
    }
    this.#letGo();
    this.#letGo = letGo;
    this.#record = record;
    this.#inCore = record.id;
    this.#shown.state(answer.state);
    return answer;
  }

  /** A change: the core's answer once it is kept, or one with "refused" where nothing was changed. */
  edit(request) {
    const meant = this.#record?.id;
    return this.alone(() => this.#edit(request, meant));
  }

  async #edit(request, meant) {
    if (meant === undefined || meant !== this.#inCore) {
      return { refused: "Another peg was opened meanwhile, so nothing was changed." };
    }
    const answer = await this.#core.ask({ ...request, now: now() });
    if (answer.refused || answer.text === undefined) return answer;
    const kept = { ...this.#record, text: answer.text, title: answer.state.title, changed: now() };
    try {
      kept.stamp = await this.#keep.put(kept);
    } catch (error) {
      if (!(error instanceof KeepError)) throw error;
      // What could not be kept is taken back, so that the page shows what the store holds.
      await this.#core.ask({ do: request.do === "undo" ? "redo" : "undo" });
      return { refused: error.message };
    }
    this.#record = kept;
    this.#shown.state(answer.state);
    if (!answer.state.answered) this.follow();
    return answer;
  }

  /**
   * Asks for the answers one after the other, a quick map first if there is one; a newer change ends it between two of
   * them.
   */
  async follow() {
    const mine = ++this.#following;
    const stages = [
      [{ do: "map", provisional: true }, this.#shown.map],
      [{ do: "map", provisional: false }, this.#shown.map],
      [{ do: "next" }, this.#shown.next],
      [{ do: "plan" }, this.#shown.plan],
    ];
    document.body.dataset.done = "false";
    for (const [request, show] of stages) {
      const answer = await this.#core.ask({ ...request, now: now() });
      if (mine !== this.#following) return;
      await show(answer);
      if (mine !== this.#following) return;
    }
    document.body.dataset.done = "true";
  }
}
