// The page's side of the worker that has the core: every request gets the answer with its number.

import { byId } from "./dom.js";

/** The core in its worker. */
export class Core {
  #worker;
  #waiting = new Map();
  #number = 0;

  /** @param lost told in words when the worker has failed; nothing is answered after that */
  constructor(lost) {
    this.#worker = openWorker();
    this.#worker.onmessage = ({ data }) => {
      const answered = this.#waiting.get(data.id);
      this.#waiting.delete(data.id);
      answered?.(data.answer);
    };
    this.#worker.onerror = (event) => {
      event.preventDefault();
      lost(event.message ?? "");
    };
  }

  /** One request as the core's Conversation lists them; a refusal is an answer with "refused". */
  ask(request) {
    return this.#send({ ask: request });
  }

  /** Hands over the canvas on which the map is painted from now on. */
  hand(canvas) {
    return this.#send({ canvas }, [canvas]);
  }

  /** Paints the open peg's map: width and height in CSS px, density in pixels of the screen for each. */
  paint(view) {
    return this.#send({ paint: view });
  }

  /** Paints the day's fishing: {image, height}, the image as a bitmap, or none where there is nothing to paint. */
  paintDay(view) {
    return this.#send({ paintDay: view });
  }

  #send(message, handed = []) {
    this.#number += 1;
    const id = this.#number;
    return new Promise((answered) => {
      this.#waiting.set(id, answered);
      this.#worker.postMessage({ id, ...message }, handed);
    });
  }
}

/** The worker of its own file, or of the text in the page where all is in one file. */
function openWorker() {
  const packed = byId("packed-worker");
  if (!packed) return new Worker("worker.js");
  const address = URL.createObjectURL(new Blob([packed.textContent], { type: "text/javascript" }));
  const worker = new Worker(address);
  worker.postMessage({ packed: byId("packed-core").textContent });
  return worker;
}
