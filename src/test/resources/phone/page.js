"use strict";
// Hands the questions to the worker and keeps what it answers, or what went wrong, for the test.
(async () => {
  const keep = (answers) => { window.answers = answers; };
  const questions = await (await fetch("questions.json")).json();
  const worker = new Worker("worker.js");
  worker.onmessage = (event) => keep(event.data);
  worker.onerror = (event) => keep({ error: String(event.message) });
  worker.postMessage(questions);
})();
