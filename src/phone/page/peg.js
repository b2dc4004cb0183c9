// The open peg: every change is kept before anybody is told of it, and the answers follow stage by stage.

import { KeepError } from "./keep.js";

/** Date and time of the phone's clock, as a peg file has them. */
export function now() {
  const local = new Date(Date.now() - new Date().getTimezoneOffset() * 60000);
  return local.toISOString().slice(0, 19);
}

/** The peg that is open in the worker, with its record in the store. */
export class OpenPeg {
  #core;
  #keep;
  #shown;
  #record = null;
  #letGo = () => {};
  #edits = Promise.resolve();
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

  /**
   * Opens a kept record.
   *
   * @param neighbours records of other pegs
   * @param letGo called when another peg is opened
   * @return the core's answer
   */
  async open(record, neighbours, letGo) {
    const time = now();
    const answer = await this.#core.ask({
      do: "open",
      name: record.name,
      text: record.text,
      neighbours: neighbours.map(({ name, text }) => ({ name, text })),
      today: time.slice(0, 10),
      now: time,
    });
    if (answer.refused) {
      letGo();
      return answer;
    }
    this.#letGo();
    this.#letGo = letGo;
    this.#record = record;
    this.#shown.state(answer.state);
    return answer;
  }

  /** A change: the core's answer once it is kept, or one with "refused" where nothing was changed. */
  edit(request) {
    const edit = this.#edits.then(() => this.#edit(request));
    this.#edits = edit.catch(() => {});
    return edit;
  }

  async #edit(request) {
    const answer = await this.#core.ask(request);
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
    this.follow(true);
    return answer;
  }

  /**
   * Asks for the answers one after the other; a newer change ends it between two of them.
   *
   * @param quick whether a quick map with the parameters of the last one comes first
   */
  async follow(quick) {
    const mine = ++this.#following;
    const stages = [
      ...(quick ? [[{ do: "map", provisional: true }, this.#shown.map]] : []),
      [{ do: "map", provisional: false }, this.#shown.map],
      [{ do: "next" }, this.#shown.next],
      [{ do: "plan" }, this.#shown.plan],
    ];
    for (const [request, show] of stages) {
      const answer = await this.#core.ask(request);
      if (mine !== this.#following) return;
      await show(answer);
    }
  }
}
