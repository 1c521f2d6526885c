// What the binder does beyond plain HTML: search, sorting and narrowing of tables, zoom and rings on sheets, keys, lamp.
// All foreign text goes into the document as text (textContent), never as markup; the page's policy forbids the rest.
"use strict";

(() => {
  const root = document.body.dataset.root;
  const find = (id) => document.getElementById(id);

  // Whatever the browser lets a file remember.
  const kept = {
    get(name) { try { return localStorage.getItem("binder-" + name); } catch { return null; } },
    set(name, value) { try { localStorage.setItem("binder-" + name, value); } catch { /* not remembered */ } },
  };
  const make = (tag, className, text) => {
    const element = document.createElement(tag);
    if (className) element.className = className;
    if (text !== undefined) element.textContent = text;
    return element;
  };

  // ---- lamp and keys -------------------------------------------------------------------------------------------
  const html = document.documentElement;
  const lamp = kept.get("lamp");
  if (lamp === "light" || lamp === "dark") html.dataset.lamp = lamp;
  const isDark = () => html.dataset.lamp ? html.dataset.lamp === "dark" : matchMedia("(prefers-color-scheme: dark)").matches;
  let keysOn = kept.get("keys") !== "off";
  const tellSwitches = () => {
    find("lamp").setAttribute("aria-pressed", String(isDark()));
    find("keys").setAttribute("aria-pressed", String(keysOn));
  };
  document.querySelector(".switches").hidden = false;
  document.querySelector(".search").hidden = false;
  find("lamp").addEventListener("click", () => {
    html.dataset.lamp = isDark() ? "light" : "dark";
    kept.set("lamp", html.dataset.lamp);
    tellSwitches();
  });
  find("keys").addEventListener("click", () => {
    keysOn = !keysOn;
    kept.set("keys", keysOn ? "on" : "off");
    tellSwitches();
  });
  tellSwitches();

  // ---- search --------------------------------------------------------------------------------------------------
  const kMostFound = 60;
  let index = null;  // { fold, sets, rows, words, terms }, the last two joined texts
  let asked = false;
  const plain = (text) => text.toUpperCase().replace(/\s+/g, " ").trim();
  const key = (text) => plain(text).replace(/[\s.-]/g, "");

  globalThis.binderFind = (data) => {
    const rows = [];
    const sets = data.sets.map(([name, folder, lines], number) => {
      const first = rows.length;
      for (const line of lines.split("\n")) {
        if (!line) continue;
        const [kind, term, words, to, more] = line.split("\t");
        rows.push({ set: number, kind, term, key: key(term), words, to, more,
                    bare: key(term).replace(/^A\d+(?=[A-Z])/, "") });
      }
      return { name, folder, hay: plain(name), first, end: rows.length };
    });
    index = { fold: data.fold, sets, rows, words: wordsOf(rows) };
    index.terms = termsOf((text) => text);
    show();
  };
  const load = () => {
    if (asked) return;
    asked = true;
    const script = document.createElement("script");
    script.src = root + "data/find.js";
    script.addEventListener("error", () => tell("The search's data, data/find.js, cannot be loaded."));
    document.head.append(script);
  };

  const folded = (text) => {
    let out = "";
    for (const c of text) {
      const digit = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ".indexOf(c);
      out += digit < 0 ? c : index.fold[digit];
    }
    return out;
  };
  // Texts in one long one, a line each: looking through it is many times as quick as through each.
  const joined = (texts) => {
    const starts = new Int32Array(texts.length + 1);
    let length = 1;
    texts.forEach((text, i) => { starts[i] = length; length += text.length + 1; });
    starts[texts.length] = length;
    return { text: "\n" + texts.join("\n") + "\n", starts };
  };
  // Calls `visit` once with each line that holds the needle, and where it does.
  const visitLines = ({ text, starts }, needle, visit) => {
    let line = 0;
    for (let at = text.indexOf(needle); at >= 0; at = text.indexOf(needle, starts[line + 1] - 1)) {
      const inside = needle[0] === "\n" ? at + 1 : at;
      while (starts[line + 1] <= inside) ++line;
      if (line + 1 >= starts.length) return;
      visit(line, at);
      if (starts[line + 1] >= text.length) return;
    }
  };
  // Every word of the rows once, with the rows that hold it.
  const wordsOf = (rows) => {
    const rowsOf = new Map();
    rows.forEach((row, i) => {
      for (const word of plain(row.term + " " + row.words).split(/[ ,;]+/)) {
        const known = rowsOf.get(word);
        if (!known) rowsOf.set(word, [i]);
        else if (known[known.length - 1] !== i) known.push(i);
      }
    });
    return { ...joined([...rowsOf.keys()]), rows: [...rowsOf.values()] };
  };
  // The terms of all rows, and those of assemblies (A4C12) once more without them; `of` is the row of each.
  const termsOf = (change) => {
    const texts = index.rows.map((row) => change(row.key));
    const of = index.rows.map((row, i) => i);
    index.rows.forEach((row, i) => {
      if (row.bare !== row.key) { texts.push(change(row.bare)); of.push(i); }
    });
    return { ...joined(texts), of };
  };
  // How well each row answers, 0 for not at all: every word must be its term, the start of it, or stand in its text or
  // in its set's name.
  const scoresOf = (words, terms) => {
    const count = index.rows.length;
    const sum = new Uint16Array(count);
    const answered = new Uint8Array(count);
    for (const word of words) {
      const best = new Uint8Array(count);
      index.sets.forEach((set) => { if (set.hay.includes(word.text)) best.fill(1, set.first, set.end); });
      // One or two letters stand within too much; they begin a word.
      visitLines(index.words, word.text.length < 3 ? "\n" + word.text : word.text, (line) => {
        const rows = index.words.rows[line];
        for (let i = 0; i < rows.length; ++i) best[rows[i]] = 2;
      });
      if (word.key) {
        visitLines(terms, "\n" + word.key, (line, at) => {
          const row = terms.of[line];
          const whole = terms.text[at + 1 + word.key.length] === "\n";
          best[row] = Math.max(best[row], whole ? (line < count ? 8 : 6) : 4);
        });
      }
      for (let i = 0; i < count; ++i) {
        if (best[i] > 0) { sum[i] += best[i]; ++answered[i]; }
      }
    }
    for (let i = 0; i < count; ++i) if (answered[i] < words.length) sum[i] = 0;
    return sum;
  };
  const order = { s: 0, p: 1, t: 1, d: 2, h: 3 };
  const search = (query) => {
    const words = plain(query).split(/[ ,;]+/).filter(Boolean).slice(0, 12).map((text) => ({ text, key: key(text) }));
    if (words.length === 0) return { rows: [], alike: false };
    let sum = scoresOf(words, index.terms);
    const alike = !sum.some((score) => score > 0);
    if (alike) {
      index.alikes ??= termsOf(folded);
      sum = scoresOf(words.map((word) => ({ text: word.text, key: folded(word.key) })), index.alikes);
    }
    // By score, then kind; the sets are in order already.
    const shelves = [];
    index.rows.forEach((row, i) => {
      if (sum[i] > 0) (shelves[sum[i] * 4 + 3 - order[row.kind]] ??= []).push(row);
    });
    return { rows: shelves.reverse().flat(), alike };
  };
  // For measuring: what a search finds and how long it takes, without the list.
  globalThis.binderSearch = (query) => {
    const start = performance.now();
    const found = search(query);
    return { count: found.rows.length, alike: found.alike, milliseconds: performance.now() - start,
             first: found.rows.slice(0, 5).map((row) => row.term + " in " + index.sets[row.set].name) };
  };

  const field = find("search");
  const list = find("found");
  const tell = (text) => {
    list.replaceChildren(make("p", "", text));
    list.firstChild.setAttribute("role", "status");
    list.hidden = false;
  };
  const resultLine = (row) => {
    const item = make("li");
    const set = index.sets[row.set];
    const hit = make("a", "hit");
    hit.href = root + "sets/" + set.folder + "/" + row.to;
    hit.append(make("b", "", row.term), " " + row.words, make("span", "of", row.kind === "s" ? "set" : set.name));
    item.append(hit);
    if (row.kind === "p" || row.kind === "t") {
      const entry = make("a", "entry", row.kind === "p" ? "row" : "every set");
      entry.href = row.kind === "p" ? root + "sets/" + set.folder + "/parts.html#" + row.more : root + "tubes/" + row.more;
      entry.setAttribute("aria-label", row.term + ", " + set.name + ": " + entry.textContent);
      item.append(entry);
    }
    return item;
  };
  function show() {
    const query = field.value.trim();
    if (!query) { list.hidden = true; return; }
    if (!index) { tell("Loading what can be found ..."); return; }
    const { rows, alike } = search(query);
    const shown = rows.slice(0, kMostFound);
    let words = rows.length === 0 ? "Nothing found. Fewer letters find more." : rows.length + " found";
    if (rows.length > shown.length) words += ", the first " + shown.length + " shown: add a word, a set's name for one";
    if (alike && rows.length > 0) words = "Nothing by that name; what looks alike in print: " + words;
    tell(words);
    const items = make("ol");
    items.append(...shown.map(resultLine));
    list.append(items);
  }
  field.addEventListener("focus", load);
  field.addEventListener("input", () => { load(); show(); });
  const hits = () => [...list.querySelectorAll("a.hit")];
  field.addEventListener("keydown", (event) => {
    if (event.key === "ArrowDown" && hits().length > 0) { hits()[0].focus(); event.preventDefault(); }
    if (event.key === "Enter" && hits().length > 0) { hits()[0].click(); event.preventDefault(); }
    if (event.key === "Escape") { field.value = ""; list.hidden = true; field.blur(); }
  });
  list.addEventListener("keydown", (event) => {
    const all = hits();
    const at = all.indexOf(document.activeElement.closest("li")?.querySelector("a.hit"));
    if (event.key === "ArrowDown") { all[Math.min(at + 1, all.length - 1)]?.focus(); event.preventDefault(); }
    if (event.key === "ArrowUp") { (at <= 0 ? field : all[at - 1]).focus(); event.preventDefault(); }
    if (event.key === "Escape") { list.hidden = true; field.focus(); }
  });
  // A place on the sheet that is open already changes the address only.
  list.addEventListener("click", (event) => { if (event.target.closest("a")) list.hidden = true; });
  document.addEventListener("click", (event) => { if (!event.target.closest(".search")) list.hidden = true; });

  // ---- tables --------------------------------------------------------------------------------------------------
  // 4.7K, .05MFD, 470 MMF: their size; nothing for other text.
  const size = (text) => {
    const parts = /^\s*(\d*[.,]?\d+)\s*([A-ZΩµ]*)/i.exec(text);
    if (!parts) return null;
    const unit = parts[2].toUpperCase();
    const scale = /^(MMF|MMFD|UUF|PF|P)$/.test(unit) ? 1e-12 : /^(MF|MFD|UF|µF|UFD)$/.test(unit) ? 1e-6
      : /^(MEG|MEGOHMS?|M)$/.test(unit) ? 1e6 : /^(K|KOHMS?)$/.test(unit) ? 1e3 : 1;
    return Number(parts[1].replace(",", ".")) * scale;
  };
  const collator = new Intl.Collator("en", { numeric: true });
  const compare = (a, b, bySize) => {
    if ((a === "") !== (b === "")) return a === "" ? 1 : -1;  // empty fields last
    const [x, y] = bySize ? [size(a), size(b)] : [null, null];
    return x !== null && y !== null && x !== y ? x - y : collator.compare(a, b);
  };
  const sortBy = (table, column, heading) => {
    const down = heading.getAttribute("aria-sort") === "ascending";
    for (const other of table.tHead.rows[0].cells) other.removeAttribute("aria-sort");
    heading.setAttribute("aria-sort", down ? "descending" : "ascending");
    const body = table.tBodies[0];
    const bySize = heading.classList.contains("value");
    const rows = [...body.rows].map((row) => ({ row, text: row.cells[column].textContent.trim() }));
    rows.sort((a, b) => {
      const way = compare(a.text, b.text, bySize);
      return a.text === "" || b.text === "" || !down ? way : -way;
    });
    body.append(...rows.map((one) => one.row));
  };
  let narrowField = null;
  for (const table of document.querySelectorAll("table.data")) {
    const body = table.tBodies[0];
    if (body.rows.length < 2) continue;
    [...table.tHead.rows[0].cells].forEach((heading, column) => {
      const button = make("button", "", heading.textContent);
      button.type = "button";
      heading.replaceChildren(button);
      button.addEventListener("click", () => sortBy(table, column, heading));
    });
    const frame = table.closest(".frame");
    const box = make("div", "narrow");
    const label = make("label", "", "Show rows with");
    const input = make("input");
    input.type = "search";
    input.id = "narrow-" + table.id;
    label.htmlFor = input.id;
    const count = make("span", "faint", body.rows.length + " rows");
    count.setAttribute("role", "status");
    box.append(label, input, count);
    frame.before(box);
    const texts = [...body.rows].map((row) => [row, plain(row.textContent)]);
    input.addEventListener("input", () => {
      const words = plain(input.value).split(" ").filter(Boolean);
      let shown = 0;
      for (const [row, text] of texts) {
        row.hidden = !words.every((word) => text.includes(word));
        shown += row.hidden ? 0 : 1;
      }
      count.textContent = shown + " of " + texts.length + " rows";
    });
    input.addEventListener("keydown", (event) => {
      if (event.key === "Escape") { input.value = ""; input.dispatchEvent(new Event("input")); }
    });
    narrowField ??= input;
    // A click anywhere in a row is one on its first link, unless it is on another link or marks text.
    body.addEventListener("click", (event) => {
      const row = event.target.closest("tr[data-go]");
      if (row && !event.target.closest("a") && !String(getSelection())) row.querySelector("th a").click();
    });
    body.addEventListener("keydown", (event) => {
      const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
      if (!step) return;
      const links = [...body.querySelectorAll("tr:not([hidden]) th a")];
      const at = links.indexOf(event.target.closest("tr")?.querySelector("th a"));
      links[at + step]?.focus();
      event.preventDefault();
    });
  }

  // ---- a sheet -------------------------------------------------------------------------------------------------
  const sheet = find("sheet");
  const page = sheet?.querySelector("svg.page");
  const nearest = 12;   // times the sheet's width in its frame
  const wide = page ? page.viewBox.baseVal.width : 1;
  let zoom = 1;
  // Keeps the point of the picture that lies at (x, y) of the frame where it is.
  const zoomTo = (next, x = sheet.clientWidth / 2, y = sheet.clientHeight / 2) => {
    next = Math.min(nearest, Math.max(wholeZoom(), next));
    const ratio = next / zoom;
    const left = (sheet.scrollLeft + x) * ratio - x;
    const top = (sheet.scrollTop + y) * ratio - y;
    zoom = next;
    page.style.width = zoom * 100 + "%";
    sheet.scrollTo({ left, top, behavior: "instant" });
  };
  // The whole sheet in its frame.
  function wholeZoom() {
    const box = page.viewBox.baseVal;
    return Math.min(1, (sheet.clientHeight / sheet.clientWidth) * (box.width / box.height));
  }
  const centre = (x, y, width, height) => {  // px of the picture
    // Lettering of the ringed spot at some 26 px of the screen.
    const lettering = Math.max(4, Math.min(width, height));
    const fits = sheet.clientWidth / wide;
    zoomTo(Math.min(26 / lettering, (0.7 * sheet.clientWidth) / width) / fits);
    const scale = (zoom * sheet.clientWidth) / wide;
    sheet.scrollTo({ left: (x + width / 2) * scale - sheet.clientWidth / 2,
                     top: (y + height / 2) * scale - sheet.clientHeight / 2, behavior: "instant" });
  };
  let ringed = null;  // id of the spot
  const tellSpot = (id) => {
    ringed = id;
    for (const item of document.querySelectorAll("#spots li")) {
      item.classList.toggle("on", item.dataset.spot === id);
      if (item.dataset.spot !== id) continue;
      const beside = item.closest(".beside");
      beside.scrollTop += item.getBoundingClientRect().top - beside.getBoundingClientRect().top - beside.clientHeight / 3;
      find("slip").replaceChildren(...[...item.children].map((child) => child.cloneNode(true)));
      const line = make("div", "on");
      line.append(...find("slip").childNodes);
      find("slip").append(line);
    }
  };
  const boxInAddress = () => {
    const sides = /^#box=([\d.]+),([\d.]+),([\d.]+),([\d.]+)$/.exec(location.hash);
    return sides ? sides.slice(1).map(Number) : null;
  };
  const ringAddress = () => {
    page.querySelector("#spot-of-address")?.remove();
    const given = boxInAddress();
    const box = page.viewBox.baseVal;
    if (given) {
      const gap = 5;
      const group = document.createElementNS("http://www.w3.org/2000/svg", "g");
      group.id = "spot-of-address";
      group.setAttribute("class", "spot ringed");
      const rect = document.createElementNS("http://www.w3.org/2000/svg", "rect");
      const [x, y, width, height] = [given[0] * box.width, given[1] * box.height, given[2] * box.width, given[3] * box.height];
      for (const [name, value] of [["class", "ring"], ["x", x - gap], ["y", y - gap], ["width", width + 2 * gap],
                                   ["height", height + 2 * gap], ["rx", 4]]) rect.setAttribute(name, value);
      group.append(rect);
      page.append(group);
      centre(x, y, width, height);
      return;
    }
    let id = "";
    try { id = decodeURIComponent(location.hash.slice(1)); } catch { return; }
    const spot = id && find(id);
    if (!spot || !page.contains(spot)) return;
    const rect = spot.querySelector("rect");
    centre(...["x", "y", "width", "height"].map((name) => Number(rect.getAttribute(name))));
    tellSpot(id);
    scrollTo({ top: 0, behavior: "instant" });
    sheet.scrollIntoView({ block: "nearest", behavior: "instant" });
  };
  const nextSpot = (step) => {
    const items = [...document.querySelectorAll("#spots li")];
    if (items.length === 0) return;
    const at = items.findIndex((item) => item.dataset.spot === ringed);
    const next = at < 0 ? (step > 0 ? 0 : items.length - 1) : (at + step + items.length) % items.length;
    // At once, not when the address has changed: the next key may come first.
    ringed = items[next].dataset.spot;
    location.hash = ringed;
  };
  if (page) {
    document.querySelector(".tools").hidden = false;
    find("closer").addEventListener("click", () => zoomTo(zoom * 1.4));
    find("farther").addEventListener("click", () => zoomTo(zoom / 1.4));
    find("whole").addEventListener("click", () => zoomTo(wholeZoom()));
    const black = find("turn-black");
    const setBlack = (on) => {
      sheet.classList.toggle("black", on);
      black.setAttribute("aria-pressed", String(on));
    };
    setBlack(kept.get("black") === "on");
    black.addEventListener("click", () => {
      setBlack(!sheet.classList.contains("black"));
      kept.set("black", sheet.classList.contains("black") ? "on" : "off");
    });
    sheet.addEventListener("wheel", (event) => {
      if (!event.ctrlKey && !event.metaKey) return;
      const frame = sheet.getBoundingClientRect();
      zoomTo(zoom * Math.exp(-event.deltaY / 300), event.clientX - frame.left, event.clientY - frame.top);
      event.preventDefault();
    }, { passive: false });
    // A mouse drags the sheet; a finger scrolls it by itself.
    let held = null;
    sheet.addEventListener("pointerdown", (event) => {
      if (event.pointerType !== "mouse" || event.button !== 0) return;
      held = { x: event.clientX, y: event.clientY, left: sheet.scrollLeft, top: sheet.scrollTop, moved: false };
    });
    addEventListener("pointermove", (event) => {
      if (!held) return;
      const [x, y] = [event.clientX - held.x, event.clientY - held.y];
      if (!held.moved && Math.hypot(x, y) < 5) return;
      held.moved = true;
      sheet.classList.add("held");
      sheet.scrollTo({ left: held.left - x, top: held.top - y, behavior: "instant" });
    });
    let dragged = false;
    addEventListener("pointerup", () => {
      dragged = Boolean(held?.moved);
      held = null;
      sheet.classList.remove("held");
    });
    sheet.addEventListener("dragstart", (event) => event.preventDefault());
    sheet.addEventListener("click", (event) => { if (dragged) event.preventDefault(); dragged = false; }, true);
    addEventListener("hashchange", ringAddress);
    ringAddress();
    // Once the page stands, the browser itself scrolls to the address, and to the corner of the spot only.
    addEventListener("load", () => requestAnimationFrame(ringAddress));
  }

  // ---- keys ----------------------------------------------------------------------------------------------------
  const inSet = Boolean(document.querySelector(".tabs"));
  const go = (to) => { if (to) location.href = to; };
  let afterG = false;
  const keys = {
    "/": () => { field.focus(); field.select(); },
    "?": () => (document.body.classList.contains("help") ? history.back() : go(root + "help.html")),
    f: () => narrowField?.focus(),
    "[": () => go(document.querySelector('a[rel="prev"]')?.href),
    "]": () => go(document.querySelector('a[rel="next"]')?.href),
    n: () => page && nextSpot(1),
    N: () => page && nextSpot(-1),
    e: () => page && ringed && go(find(ringed)?.getAttribute("href")),
    "+": () => page && zoomTo(zoom * 1.4),
    "=": () => page && zoomTo(zoom * 1.4),
    "-": () => page && zoomTo(zoom / 1.4),
    0: () => page && zoomTo(wholeZoom()),
    b: () => find("turn-black")?.click(),
  };
  const keysAfterG = { s: "index.html", t: "tubes.html", p: "parts.html", i: "index.html" };
  document.addEventListener("keydown", (event) => {
    if (!keysOn || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.target.closest("input, textarea, select")) return;
    if (afterG) {
      afterG = false;
      const to = keysAfterG[event.key];
      if (to && (event.key === "s" || event.key === "t")) go(root + to);
      else if (to && inSet) go(to);
      return;
    }
    if (event.key === "g") { afterG = true; return; }
    const act = keys[event.key];
    if (!act) return;
    event.preventDefault();
    act();
  });
})();
