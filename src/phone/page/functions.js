// TeaVM's loader makes its functions from text, which the page's policy forbids (no eval). This stands in the loader's
// scope under the name Function and gives functions written out here instead: for each text that the loader makes, and
// for each script of a Java annotation @JSBody that the core has.

/** What scripts of the core do; each is told by its text without blanks, braces about it, and the last semicolon. */
const SCRIPTS = new Map([
  ["returnstr", (text) => text],
  [
    "canvas.width=width;canvas.height=height",
    (canvas, width, height) => {
      canvas.width = width;
      canvas.height = height;
    },
  ],
  ["returnsurface.getContext('2d')", (surface) => surface.getContext("2d")],
  [
    "canvas.setLineDash(dashes===''?[]:(dashes.split('')).map(Number))",
    (canvas, dashes) => canvas.setLineDash(dashes === "" ? [] : dashes.split(" ").map(Number)),
  ],
]);

function functionOfText(...words) {
  const body = words.pop().replace(/\s+/g, " ").trim();
  for (const [form, given] of FORMS) {
    const found = form.exec(body);
    if (found) return given(found, words);
  }
  throw new Error(`No function is written out for: ${body}`);
}

const FORMS = [
  [/^return ([\w.]+);$/, ([, name]) => () => name.split(".").reduce((owner, part) => owner[part], globalThis)],
  [/^(\w+) = value;$/, ([, name]) => (value) => (globalThis[name] = value)],
  [/^return function \w*\(marker, javaObject\)/, () => (constructor) => renamed(constructor)],
  [/^return function\(.*\{ try \{ return fn\(this\b/, () => (rethrow, fn) => asMethod(rethrow, fn)],
  [/^return function\(.*\{ try \{ return fn\(/, () => (rethrow, fn) => asFunction(rethrow, fn)],
  [/^return new Function\('wrapCallFromJavaToJs'/, () => (wrap, ...words) => scriptOf(wrap, words)],
  [/^try \{ return fn\(/, () => (rethrow, fn, ...values) => tried(rethrow, () => fn(...values))],
  [/^try \{ return instance !== null/, () => callMethod],
  [/^try \{ return new constructor\(/, () => (rethrow, made, ...values) => tried(rethrow, () => new made(...values))],
  [/^return \[.*\]$/, () => (...values) => values],
];

function renamed(constructor) {
  return function (marker, javaObject) {
    return constructor.call(this, marker, javaObject);
  };
}

function asMethod(rethrow, fn) {
  return function (...values) {
    return tried(rethrow, () => fn(this, ...values));
  };
}

function asFunction(rethrow, fn) {
  return (...values) => tried(rethrow, () => fn(...values));
}

function callMethod(rethrow, globalOf, instance, method, ...values) {
  try {
    return instance === null ? globalOf(method)(...values) : instance[method](...values);
  } catch (error) {
    return rethrow(error);
  }
}

function tried(rethrow, work) {
  try {
    return work();
  } catch (error) {
    return rethrow(error);
  }
}

function scriptOf(wrap, words) {
  const body = words.pop();
  const script = SCRIPTS.get(body.replace(/\s+/g, "").replace(/^\{(.*)\}$/, "$1").replace(/;$/, ""));
  if (!script) throw new Error(`No function is written out for the script: ${body}`);
  return (...values) => wrap(() => script(...values));
}
