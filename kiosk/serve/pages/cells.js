"use strict";
// What a terminal would show, as far as the kiosk uses one: cells, and a canvas that draws them.

// A letter that grows is drawn over so many cells across and down; the kiosk leaves them empty.
const PLAIN = { fg: null, bg: null, bold: false, dim: false, italic: false, under: false, turned: false, grows: 1 };
const BLANK = { text: " ", wide: 1, style: PLAIN };
const PAGE = { fg: "#ffffff", bg: "#000000" };

// The 16 named colours, as xterm has them; the kiosk's own colours come as red, green and blue.
const NAMED = [
  "#000000", "#cd0000", "#00cd00", "#cdcd00", "#0000ee", "#cd00cd", "#00cdcd", "#e5e5e5",
  "#7f7f7f", "#ff0000", "#00ff00", "#ffff00", "#5c5cff", "#ff00ff", "#00ffff", "#ffffff",
];

// Unicode: characters that take two cells (East Asian Width W and F), and those that take none.
const TWO = /[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\ua960-\ua97c\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{1f300}-\u{1f64f}\u{1f680}-\u{1f6ff}\u{1f900}-\u{1f9ff}\u{20000}-\u{3fffd}]/u;
const NONE = /[\p{Mn}\p{Me}\u200b-\u200f\ufe00-\ufe0f\u1160-\u11ff]/u;

const ESCAPES = /\x1b\[([0-9;:?<=>]*)[ -/]*([@-~])|\x1b\][^\x07\x1b]*(?:\x07|\x1b\\)|\x1b[ -/]*[0-~]|[\x00-\x1f\x7f]|[^\x00-\x1f\x7f\x1b]+/gu;

class Cells {
  constructor(columns, rows) {
    this.columns = columns;
    this.rows = rows;
    this.x = this.y = 0;
    this.style = PLAIN;
    this.grid = Array.from({ length: rows }, () => Array(columns).fill(BLANK));
    this.changed = new Set(this.grid.keys());
  }

  write(data) {
    for (const [piece, numbers, letter] of data.matchAll(ESCAPES)) {
      if (letter === "m") this.dress(numbers);
      else if (letter === "H") this.move(numbers);
      else if (piece === "\r") this.x = 0;
      else if (piece === "\n") this.y = Math.min(this.y + 1, this.rows - 1);
      else if (piece >= " " && piece !== "\x7f") for (const one of piece) this.put(one);
    }
  }

  move(numbers) {
    const [y = 1, x = 1] = numbers.split(";").map((one) => Number(one) || 1);
    this.x = Math.min(Math.max(x, 1), this.columns) - 1;
    this.y = Math.min(Math.max(y, 1), this.rows) - 1;
  }

  put(text) {
    const row = this.grid[this.y];
    if (NONE.test(text)) {
      const at = this.x - 1;
      if (at >= 0) row[at] = { ...row[at], text: row[at].text + text };
      return;
    }
    const wide = TWO.test(text) ? 2 : 1;
    if (this.x + wide > this.columns) return;
    row[this.x] = { text, wide, style: this.style };
    if (wide === 2) row[this.x + 1] = { text: "", wide: 0, style: this.style };
    this.x += wide;
    this.changed.add(this.y);
  }

  dress(numbers) {
    const codes = numbers.split(/[;:]/).map(Number);
    let style = this.style;
    for (let at = 0; at < codes.length; at++) {
      const code = codes[at];
      const set = (change) => { style = { ...style, ...change }; };
      const ground = code >= 40 && code < 50 || code >= 100 ? "bg" : "fg";
      if (code === 0) style = PLAIN;
      else if (code === 1) set({ bold: true });
      else if (code === 2) set({ dim: true });
      else if (code === 3) set({ italic: true });
      else if (code === 4) set({ under: true });
      else if (code === 7) set({ turned: true });
      else if (code === 22) set({ bold: false, dim: false });
      else if (code === 23) set({ italic: false });
      else if (code === 24) set({ under: false });
      else if (code === 27) set({ turned: false });
      // Framed and encircled text (ECMA-48, 8.3.117): one cell more, two more, and both together.
      else if (code === 51) set({ grows: 1 + ((style.grows - 1) | 1) });
      else if (code === 52) set({ grows: 1 + ((style.grows - 1) | 2) });
      else if (code === 54) set({ grows: 1 });
      else if (code === 38 || code === 48) {
        const deep = codes[at + 1] === 2;
        set({ [ground]: deep ? mixed(codes.slice(at + 2, at + 5)) : indexed(codes[at + 2]) });
        at += deep ? 4 : 2;
      } else if (code === 39 || code === 49) set({ [ground]: null });
      else if (code >= 30 && code < 48) set({ [ground]: NAMED[code % 10] });
      else if (code >= 90 && code < 108) set({ [ground]: NAMED[8 + code % 10] });
    }
    this.style = style;
  }

  lines() {
    return this.grid.map((row) => {
      let text = "";
      for (let x = 0; x < row.length; x += row[x].style.grows > 1 ? row[x].style.grows * row[x].wide : 1) {
        text += row[x].text;
      }
      return text.trimEnd();
    });
  }
}

function mixed(parts) {
  return "#" + parts.map((one) => Math.min(one || 0, 255).toString(16).padStart(2, "0")).join("");
}

function indexed(number) {
  if (number < 16) return NAMED[number];
  if (number >= 232) return mixed(Array(3).fill(8 + 10 * (number - 232)));
  const cube = number - 16;
  const level = (one) => (one ? 55 + 40 * one : 0);
  return mixed([level(Math.floor(cube / 36)), level(Math.floor(cube / 6) % 6), level(cube % 6)]);
}

// Drawing. Blocks, lines and dots are drawn as what they are, so that they join in any font.

// Fonts with all letters of Vietnamese before those without, and Chinese forms before Korean ones.
const FAMILY = 'ui-monospace, "Noto Sans Mono", "DejaVu Sans Mono", Menlo, Consolas, "Noto Sans CJK SC", "PingFang SC", "Microsoft YaHei", "Noto Sans CJK KR", "Apple SD Gothic Neo", "Malgun Gothic", monospace';

// Quarters of ▖ to ▟: 1 upper left, 2 upper right, 4 lower left, 8 lower right.
const QUARTERS = [4, 8, 1, 13, 9, 7, 11, 2, 6, 14];

// Arms of ─ │ and their corners: left, right, up, down; 1 light, 2 heavy.
const ARMS = {
  "─": "1100", "━": "2200", "│": "0011", "┃": "0022", "┌": "0101", "┐": "1001", "└": "0110",
  "┘": "1010", "┏": "0202", "┓": "2002", "┗": "0220", "┛": "2020", "├": "0111", "┤": "1011",
  "┬": "1101", "┴": "1110", "┼": "1111", "╭": "0101", "╮": "1001", "╰": "0110", "╯": "1010",
  "╸": "2000", "╺": "0200", "╹": "0020", "╻": "0002", "╴": "1000", "╶": "0100", "╵": "0010",
  "╷": "0001", "┣": "0222", "┫": "2022", "┳": "2202", "┻": "2220", "╋": "2222", "┷": "2210",
};

class Painter {
  constructor(canvas) {
    this.canvas = canvas;
    this.drawn = [];
    this.to = canvas.getContext("2d", { alpha: false });
  }

  // Make room for cells of a width and a height, both in pixels of the page.
  fit(columns, rows, width, height) {
    const scale = window.devicePixelRatio || 1;
    this.width = Math.max(1, Math.floor(width * scale));
    this.height = Math.max(1, Math.floor(height * scale));
    this.canvas.width = columns * this.width;
    this.canvas.height = rows * this.height;
    this.canvas.style.width = `${this.canvas.width / scale}px`;
    this.canvas.style.height = `${this.canvas.height / scale}px`;
    this.to.font = `100px ${FAMILY}`;
    const seen = this.to.measureText("M");
    const tall = seen.fontBoundingBoxAscent + seen.fontBoundingBoxDescent;
    this.size = 100 * Math.min(this.width / seen.width, this.height / tall);
    const free = this.height - tall * this.size / 100;
    this.base = free / 2 + seen.fontBoundingBoxAscent * this.size / 100;
    this.line = Math.max(1, Math.round(this.width / 8));
  }

  paint(cells) {
    const rows = this.reached(cells);
    // Grounds first: a letter may lean over its cell, or be drawn over several.
    for (const y of rows) cells.grid[y].forEach((one, x) => this.ground(one, x, y));
    for (const y of rows) cells.grid[y].forEach((one, x) => this.letter(one, x, y));
    cells.changed.clear();
  }

  // The rows to draw: those that changed, and those that share a letter with one of them.
  reached(cells) {
    const rows = new Set(cells.changed);
    const high = cells.grid.map((row) => Math.max(...row.map((one) => one.style.grows)));
    for (const y of rows) {
      const deep = Math.max(high[y], this.drawn[y] ?? 1);
      for (let down = 1; down < deep && y + down < cells.rows; down++) rows.add(y + down);
      for (let up = 1; up < 4 && up <= y; up++) if (high[y - up] > up) rows.add(y - up);
    }
    for (const y of rows) this.drawn[y] = high[y];
    return rows;
  }

  colours({ style }) {
    const fg = style.fg ?? PAGE.fg, bg = style.bg ?? PAGE.bg;
    return style.turned ? [bg, fg] : [fg, bg];
  }

  ground(one, x, y) {
    this.to.fillStyle = this.colours(one)[1];
    this.to.fillRect(x * this.width, y * this.height, this.width, this.height);
  }

  letter(one, x, y) {
    const code = one.text.codePointAt(0);
    if (code === undefined || one.text === " " && !one.style.under) return;
    const { to, width, height } = this;
    const left = x * width, top = y * height;
    [to.fillStyle] = this.colours(one);
    to.globalAlpha = one.style.dim ? 0.6 : 1;
    const box = (a, b, c, d) => {
      const x0 = Math.round(a * width), y0 = Math.round(b * height);
      const x1 = Math.round(c * width), y1 = Math.round(d * height);
      to.fillRect(left + x0, top + y0, x1 - x0, y1 - y0);
    };
    if (code >= 0x2580 && code <= 0x259f) this.block(code, box);
    else if (code >= 0x2800 && code <= 0x28ff) this.dots(code - 0x2800, left, top);
    else if (one.text in ARMS) this.arms(ARMS[one.text], left, top);
    else {
      const grows = one.style.grows, room = width * one.wide * grows;
      to.font = `${one.style.italic ? "italic " : ""}${one.style.bold ? "bold " : ""}${this.size * grows}px ${FAMILY}`;
      to.textAlign = "center";
      to.fillText(one.text, left + room / 2, top + this.base * grows, room);
      if (one.style.under) to.fillRect(left, top + height - 2 * this.line, width * one.wide, this.line);
    }
    to.globalAlpha = 1;
  }

  block(code, box) {
    if (code === 0x2580) box(0, 0, 1, 0.5);
    else if (code <= 0x2588) box(0, 1 - (code - 0x2580) / 8, 1, 1);
    else if (code <= 0x258f) box(0, 0, (0x2590 - code) / 8, 1);
    else if (code === 0x2590) box(0.5, 0, 1, 1);
    else if (code <= 0x2593) {
      this.to.globalAlpha *= (code - 0x2590) / 4;
      box(0, 0, 1, 1);
    } else if (code === 0x2594) box(0, 0, 1, 1 / 8);
    else if (code === 0x2595) box(7 / 8, 0, 1, 1);
    else {
      const quarters = QUARTERS[code - 0x2596];
      if (quarters & 1) box(0, 0, 0.5, 0.5);
      if (quarters & 2) box(0.5, 0, 1, 0.5);
      if (quarters & 4) box(0, 0.5, 0.5, 1);
      if (quarters & 8) box(0.5, 0.5, 1, 1);
    }
  }

  dots(bits, left, top) {
    // Unicode numbers the dots down the left column, down the right one, and then the last row.
    const places = [[0, 0], [0, 1], [0, 2], [1, 0], [1, 1], [1, 2], [0, 3], [1, 3]];
    const round = Math.min(this.width / 4, this.height / 8) * 0.75;
    places.forEach(([across, down], bit) => {
      if (!(bits & (1 << bit))) return;
      this.to.beginPath();
      this.to.arc(left + this.width * (0.25 + across / 2), top + this.height * (0.125 + down / 4), round, 0, 7);
      this.to.fill();
    });
  }

  arms(arms, left, top) {
    const [w, h] = [this.width, this.height];
    [...arms].forEach((heavy, arm) => {
      const thick = this.line * Number(heavy);
      if (!thick) return;
      const x = left + Math.round((w - thick) / 2), y = top + Math.round((h - thick) / 2);
      if (arm === 0) this.to.fillRect(left, y, x + thick - left, thick);
      else if (arm === 1) this.to.fillRect(x, y, left + w - x, thick);
      else if (arm === 2) this.to.fillRect(x, top, thick, y + thick - top);
      else this.to.fillRect(x, y, thick, top + h - y);
    });
  }
}
