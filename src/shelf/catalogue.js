"use strict";
(() => {
  // Letters that are one to somebody who searches. Everything else is decomposed and loses its marks.
  const same = {"ٱ": "ا", "ى": "ي", "ة": "ه", "ک": "ك", "ی": "ي", "ہ": "ه", "ـ": "", "ı": "i", "ß": "ss", "æ": "ae", "œ": "oe", "ø": "o", "đ": "d", "ł": "l", "ð": "d", "þ": "th", "ħ": "h"};
  const marks = /[\u0300-\u036f\u0591-\u05c7\u0610-\u061a\u064b-\u065f\u0670\u06d6-\u06ed\u200b-\u200f\u2060-\u2069\ufeff]/g;
  const fold = text => text.normalize("NFKD").toLowerCase().replace(marks, "")
    .replace(/[ٱىةکیہـıßæœøđłðþħ]/g, letter => same[letter])
    .replace(/[\u0660-\u0669]/g, digit => digit.charCodeAt(0) - 0x660)
    .replace(/[\s\-‐-―·,.;:()'’«»"]+/g, " ").trim();

  const by = id => document.getElementById(id);
  const now = new Date();
  const day = (date, later) => {
    const one = new Date(date.getFullYear(), date.getMonth(), date.getDate() + later);
    return [one.getFullYear(), one.getMonth() + 1, one.getDate()].map(part => String(part).padStart(2, "0")).join("-");
  };
  const today = day(now, 0), soon = day(now, 31);
  const found = by("found"), more = by("more"), none = by("none"), query = by("q");
  const choices = ["condition", "language", "words", "print", "review"].map(name => [name, by(name)]).filter(([, one]) => one);

  const items = [...document.querySelectorAll(".item")].map(node => {
    const next = node.dataset.review;
    const review = next === undefined ? "" : next === "never" || next <= today ? "due" : next <= soon ? "soon" : "fine";
    const badge = review === "due" ? found.dataset.due : review === "soon" ? found.dataset.soon : "";
    if (badge) {
      const strong = document.createElement("strong");
      strong.textContent = badge;
      if (review === "due") strong.className = "late";
      node.querySelector(".review").prepend(strong);
    }
    const entries = [...node.querySelectorAll("li")].map(line => ({
      node: line,
      text: fold([...line.children].slice(0, 3).map(one => one.textContent).join(" ")),
      language: line.dataset.l, words: line.dataset.s,
      files: [...line.querySelectorAll("a")].map(link => ({node: link, print: link.dataset.p})),
    }));
    return {
      node, review, entries, text: fold(node.dataset.names + " " + node.querySelector("h3").textContent),
      conditions: node.dataset.conditions.split(" "),
    };
  });

  // So many lines are shown at first, and so many more each time they are asked for.
  const page = 150;
  let room = page, said = 0;
  const hide = (node, away) => { if (node.hidden !== away) node.hidden = away; };
  const apply = () => {
    const words = fold(query.value).split(" ").filter(word => word);
    const chosen = Object.fromEntries(choices.map(([name, one]) => [name, one.value]));
    let left = room, count = 0, files = 0, cut = false;
    for (const item of items) {
      const open = words.filter(word => !item.text.includes(word));
      const fits = (!chosen.condition || item.conditions.includes(chosen.condition)) && (!chosen.review || item.review === chosen.review);
      let lines = 0;
      const shown = left > 0;
      if (fits) for (const entry of item.entries) {
        const good = (!chosen.language || entry.language === chosen.language) && (!chosen.words || entry.words === chosen.words)
          && open.every(word => entry.text.includes(word));
        let links = 0;
        if (good) for (const file of entry.files) {
          const wanted = !chosen.print || !file.print || file.print === chosen.print;
          if (wanted) links += 1;
          if (shown) hide(file.node, !wanted);
        }
        if (links) { lines += 1; files += links; }
        if (shown) hide(entry.node, !links);
      }
      if (lines) count += 1;
      if (lines && !shown) cut = true;
      if (lines && shown) left -= lines;
      hide(item.node, !lines || !shown);
    }
    hide(more, !cut);
    hide(none, count > 0);
    clearTimeout(said);
    const text = found.dataset.text.replace("{items}", count).replace("{files}", files);
    // A reader who listens hears the number once, when typing rests.
    said = setTimeout(() => { if (found.textContent !== text) found.textContent = text; }, 200);
  };
  const anew = () => { room = page; apply(); };
  query.addEventListener("input", anew);
  query.addEventListener("keydown", event => { if (event.key === "Escape" && query.value) { query.value = ""; anew(); } });
  for (const [, one] of choices) one.addEventListener("change", anew);
  by("clear").addEventListener("click", () => {
    query.value = "";
    for (const [, one] of choices) one.value = "";
    anew();
    query.focus();
  });
  by("more").addEventListener("click", () => {
    const before = items.filter(item => !item.node.hidden).length;
    room += page;
    apply();
    // Who pressed the button goes on where the new ones begin.
    const next = items.filter(item => !item.node.hidden)[before];
    if (next) { const head = next.node.querySelector("h3"); head.tabIndex = -1; head.focus(); }
  });
  addEventListener("beforeprint", () => { room = Infinity; apply(); });
  by("tools").hidden = false;
  apply();
})();
