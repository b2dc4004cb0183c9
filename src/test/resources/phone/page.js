"use strict";
// Hands the questions to the worker and sends what it answers, or what went wrong, back to the test.
(async () => {
  const send = (answers) => fetch("result", { method: "POST", body: JSON.stringify(answers) });
  const questions = await (await fetch("questions.json")).json();
  const worker = new Worker("worker.js");
  worker.onmessage = (event) => send(event.data);
  worker.onerror = (event) => send({ error: String(event.message) });
  worker.postMessage(questions);
})();
