"use strict";
// The digits of the page that asks for the code, for a tablet without a keyboard.

const code = document.getElementById("code");
document.getElementById("pad").addEventListener("click", (event) => {
  const digit = event.target.dataset.digit;
  if (digit === undefined) return;
  code.value = digit === "" ? code.value.slice(0, -1) : code.value + digit;
});
