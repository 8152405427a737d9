"use strict";
// The page of the kiosk: shows what the kiosk shows, and tells it what was touched.

const canvas = document.getElementById("cells");
const mirror = document.getElementById("text");
const watching = document.getElementById("watching");
const lost = document.getElementById("lost");
const trouble = document.getElementById("trouble");
const typing = document.getElementById("typing");
const painter = new Painter(canvas);

// Cells that a screen has at least room for: see the sizes that the screens are drawn for.
const LARGE = new URLSearchParams(location.search).has("large");
const WIDE = LARGE ? [60, 18] : [80, 24];
const TALL = [60, 24];
const LONGEST_WAIT = 10000;
// Both sides of the frame around what is only watched: see look.css.
const FRAME = 24;

let cells = new Cells(80, 24);
let line = null;
let holds = false;
let wait = 500;

function tell(...said) {
  if (line !== null && line.readyState === WebSocket.OPEN) line.send(JSON.stringify(said));
}

function room(frame = 0) {
  const bars = document.getElementById("bars").offsetHeight;
  return [document.documentElement.clientWidth - frame, window.innerHeight - bars - frame];
}

// As large as may be, with room for as many cells as the screens need.
function wanted() {
  const [width, height] = room();
  const [columns, rows] = width >= height ? WIDE : TALL;
  const cell = Math.max(4, Math.floor(Math.min(width / columns, height / rows / 2)));
  return [Math.floor(width / cell), Math.floor(height / (2 * cell))];
}

function fit() {
  const [width, height] = room(holds ? 0 : FRAME);
  const cell = Math.min(width / cells.columns, height / cells.rows / 2);
  painter.fit(cells.columns, cells.rows, cell, Math.min(2 * cell, height / cells.rows));
  cells.changed = new Set(cells.grid.keys());
  show();
}

let waiting = false;
function show() {
  if (waiting) return;
  waiting = true;
  requestAnimationFrame(() => {
    waiting = false;
    painter.paint(cells);
    mirror.textContent = cells.lines().join("\n");
  });
}

// The line to the kiosk.

function connect() {
  line = new WebSocket(`${location.protocol === "https:" ? "wss" : "ws"}://${location.host}/screen`);
  line.onopen = () => {
    wait = 500;
    missed(false);
    tell("fit", ...wanted());
  };
  line.onmessage = (message) => take(JSON.parse(message.data));
  line.onclose = () => {
    missed(true);
    down = null;
    setTimeout(again, wait);
    wait = Math.min(wait * 2, LONGEST_WAIT);
  };
}

// Without a line what stands on the screen may be old, and looks it.
function missed(now) {
  if (lost.hidden !== now) return;
  lost.hidden = !now;
  document.body.classList.toggle("lost", now);
  fit();
}

// A screen that is no longer paired gets the page that asks for the code.
async function again() {
  try {
    const page = await fetch("/", { headers: { Accept: "text/html" } });
    if (page.ok && !(await page.text()).includes('id="cells"')) return location.reload();
  } catch {
    // The kiosk is not there; it may be soon.
  }
  return connect();
}

function take(said) {
  if ("paint" in said) {
    cells.write(said.paint);
    show();
  } else if ("trouble" in said) {
    trouble.textContent = said.trouble;
    trouble.hidden = false;
  } else {
    const other = holds !== said.holds;
    holds = said.holds;
    document.body.classList.toggle("watches", !holds);
    watching.hidden = holds;
    document.getElementById("hidden").hidden = !said.hidden;
    trouble.hidden = true;
    cells = new Cells(said.columns, said.rows);
    fit();
    // There is more room without the bar that tells of watching.
    if (other) tell("fit", ...wanted());
  }
}

document.getElementById("take").addEventListener("click", () => tell("take"));

window.addEventListener("resize", () => {
  fit();
  tell("fit", ...wanted());
});

// Touch. One finger counts; what it presses is decided by the kiosk.

let down = null;

function cellAt(event) {
  const box = canvas.getBoundingClientRect();
  const part = (at, from, size, cells) =>
    Math.min(cells - 1, Math.max(0, Math.floor((at - from) / size * cells)));
  return [
    part(event.clientX, box.left, box.width, cells.columns),
    part(event.clientY, box.top, box.height, cells.rows),
  ];
}

canvas.addEventListener("pointerdown", (event) => {
  event.preventDefault();
  if (!holds || down !== null || event.button !== 0) return;
  const [x, y] = cellAt(event);
  down = { finger: event.pointerId, x, y, from: y };
  canvas.setPointerCapture(event.pointerId);
  tell("down", x, y);
});

canvas.addEventListener("pointermove", (event) => {
  if (down === null || event.pointerId !== down.finger) return;
  const [x, y] = cellAt(event);
  if (x === down.x && y === down.y) return;
  Object.assign(down, { x, y });
  tell("move", x, y);
  // A text follows the finger that drags it.
  for (; down.from > y; down.from--) tell("scroll", x, y, true);
  for (; down.from < y; down.from++) tell("scroll", x, y, false);
});

canvas.addEventListener("pointerup", (event) => {
  if (down === null || event.pointerId !== down.finger) return;
  down = null;
  tell("up", ...cellAt(event));
});

function slide() {
  if (down === null) return;
  down = null;
  tell("away");
}

canvas.addEventListener("pointercancel", slide);
window.addEventListener("blur", slide);
document.addEventListener("visibilitychange", slide);
document.addEventListener("contextmenu", (event) => event.preventDefault());
canvas.addEventListener("wheel", (event) => {
  event.preventDefault();
  if (holds && event.deltaY !== 0) tell("scroll", ...cellAt(event), event.deltaY > 0);
}, { passive: false });

// Keys, and the tablet's own keyboard.

const NAMES = new Set([
  "Enter", "Escape", "Backspace", "Delete", "Tab", "ArrowUp", "ArrowDown", "ArrowLeft",
  "ArrowRight", "PageUp", "PageDown", "Home", "End",
]);

window.addEventListener("keydown", (event) => {
  if (!holds || event.ctrlKey || event.altKey || event.metaKey || event.isComposing) return;
  const typed = [...event.key].length === 1;
  if (!typed && !NAMES.has(event.key)) return;
  if (typed && event.target === typing) return;
  event.preventDefault();
  tell("key", event.key);
});

// A first character stays in the field, so that rubbing out is seen.
const KEPT = "·";

function settle() {
  typing.value = KEPT;
}

typing.addEventListener("input", (event) => {
  if (event.isComposing) return;
  if (typing.value === "") tell("key", "Backspace");
  for (const one of typing.value.replace(KEPT, "")) tell("key", one);
  settle();
});
typing.addEventListener("compositionend", () => {
  for (const one of typing.value.replace(KEPT, "")) tell("key", one);
  settle();
});

document.getElementById("keyboard").addEventListener("click", () => {
  settle();
  typing.focus();
});

fit();
connect();
