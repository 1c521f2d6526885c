// The binder in a real browser, opened from disk.

import assert from "node:assert/strict";
import { copyFileSync, cpSync, existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { after, before, test } from "node:test";
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const at = (path) => pathToFileURL("binder/" + path).href.replace("%23", "#");
const kSet = "sets/0001-quillhaven-12/";
const kItems = "sets/0004-hartfell-k-40/";
const kDesk = { width: 1280, height: 800 };
const kPhone = { width: 390, height: 780 };

let browser;
before(async () => {
  browser = await chromium.launch({ executablePath: "/usr/bin/chromium", args: ["--no-sandbox"] });
});
after(async () => { await browser?.close(); });

// A page of a new browser whose faults fail the test.
const open = async (path, options = {}) => {
  const context = await browser.newContext({ viewport: kDesk, ...options });
  const page = await context.newPage();
  page.faults = [];
  page.asked = [];
  page.on("pageerror", (error) => page.faults.push(error.message));
  page.on("console", (message) => { if (message.type() === "error") page.faults.push(message.text()); });
  page.on("dialog", (dialog) => { page.faults.push("dialog " + dialog.message()); dialog.dismiss(); });
  page.on("request", (request) => page.asked.push(request.url()));
  await page.goto(at(path));
  page.done = async () => {
    assert.deepEqual(page.faults, []);
    assert.deepEqual(page.asked.filter((url) => !url.startsWith("file:")), [], "nothing is asked of a network");
    await context.close();
  };
  return page;
};
const ring = (page) => page.evaluate(() => {
  const spot = document.querySelector(".spot:target rect, .spot.ringed rect");
  if (!spot) return null;
  const [box, frame] = [spot.getBoundingClientRect(), document.getElementById("sheet").getBoundingClientRect()];
  return { x: (box.x + box.width / 2 - frame.x) / frame.width, y: (box.y + box.height / 2 - frame.y) / frame.height,
           height: Math.min(box.width, box.height), stroke: getComputedStyle(spot).stroke,
           seen: box.top >= 0 && box.bottom <= innerHeight };
});

test("a row leads to its place on the drawing, ringed, near and in sight", async () => {
  const page = await open(kSet + "parts.html");
  await page.click("#part-c112 td:nth-child(2)");
  await page.waitForURL(/sheet-0001\.html#at-c112$/);
  await page.waitForTimeout(300);
  const found = await ring(page);
  assert.ok(found && found.seen, "the ring is in sight");
  assert.equal(found.stroke, "rgb(196, 20, 142)");
  assert.ok(found.x > 0 && found.x < 1 && found.y > 0 && found.y < 1, JSON.stringify(found));
  assert.ok(found.height > 18, "close enough to be read: " + found.height);
  assert.match(await page.textContent("#slip"), /C112.*CAPACITOR, PAPER/s);
  await page.done();
});

test("a ringed spot leads to its entry", async () => {
  const page = await open(kSet + "sheet-0001.html#at-c112");
  await page.waitForTimeout(300);
  await page.click("#at-c112 rect");
  await page.waitForURL(/parts\.html#part-c112$/);
  assert.equal(await page.evaluate(() => document.querySelector("tr:target").id), "part-c112");
  await page.done();
});

test("a part that has a number only is found, ringed and led back from", async () => {
  const page = await open("index.html");
  await page.fill("#search", "item 12");
  await page.waitForSelector("#found a.hit");
  assert.match(await page.textContent("#found a.hit"), /item 12.*SPEAKER/s);
  await page.goto(at(kItems + "parts.html"));
  const rows = await page.$$eval("#parts tbody tr", (all) => all.map((row) => row.id));
  assert.equal(rows.length, 12);
  const tallest = await page.$$eval("#parts th .tag", (all) => Math.max(...all.map((tag) => tag.getBoundingClientRect().height)));
  assert.ok(tallest < 40, "a tag is one line: " + tallest);
  await page.click("#parts tbody tr:nth-child(12) td:nth-child(2)");
  await page.waitForURL(/sheet-0001\.html#at-/);
  await page.waitForTimeout(300);
  assert.ok((await ring(page))?.seen, "the number is ringed, in sight");
  assert.match(await page.textContent("#slip"), /item 12.*SPEAKER/s);
  await page.click(".spot:target rect");
  await page.waitForURL(new RegExp(`parts\\.html#${rows[11]}$`));
  await page.done();
});

test("an address that names a box rings the box", async () => {
  const page = await open(kSet + "sheet-0001.html#box=0.5,0.5,0.04,0.02");
  await page.waitForTimeout(200);
  const found = await ring(page);
  assert.ok(found && Math.abs(found.x - 0.5) < 0.1 && Math.abs(found.y - 0.5) < 0.1, JSON.stringify(found));
  await page.done();
});

test("search finds parts, tubes and sets, and look-alikes where nothing else fits", async () => {
  const page = await open("index.html");
  const first = async (query) => {
    await page.fill("#search", query);
    await page.waitForFunction(() => /\d found|Nothing/.test(document.getElementById("found").textContent));
    return page.textContent("#found");
  };
  assert.match(await first("C112"), /C112.*QUILLHAVEN 12/s);
  assert.match(await first("6cb6"), /6CB6A/);
  assert.match(await first("brackenford"), /BRACKENFORD T7/);
  assert.match(await first("quillhaven r7"), /R7/);
  assert.match(await first("CII2"), /looks alike.*C112/s);
  assert.match(await first("zzz"), /Nothing found/);
  await page.done();
});

test("search among 500 sets takes under 50 ms", async () => {
  cpSync("binder", "many", { recursive: true });
  copyFileSync("many.js", "many/data/find.js");
  const context = await browser.newContext({ viewport: kDesk });
  const page = await context.newPage();
  await page.goto(pathToFileURL("many/index.html").href);
  await page.focus("#search");
  await page.fill("#search", "x");
  await page.waitForFunction(() => /\d found|Nothing/.test(document.getElementById("found").textContent), null, { timeout: 20000 });
  for (const query of ["C112", "C1", "maker 7 c44", "capacitor paper 400", "217-1480", "6cb6a", "nothing at all"]) {
    const found = await page.evaluate((q) => {
      const tries = [0, 1, 2, 3, 4].map(() => globalThis.binderSearch(q)).sort((a, b) => a.milliseconds - b.milliseconds);
      return tries[2];
    }, query);
    console.log(`search '${query}': ${found.count} found in ${found.milliseconds.toFixed(1)} ms`);
    assert.ok(found.milliseconds < 50, `${query}: ${found.milliseconds} ms`);
  }
  await context.close();
});

test("the keyboard alone gets from the search to the ring to the entry", async () => {
  const page = await open("index.html");
  await page.keyboard.press("/");
  await page.keyboard.type("c112");
  await page.waitForSelector("#found a.hit");
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Enter");
  await page.waitForURL(/#at-c112$/);
  await page.waitForTimeout(200);
  await page.keyboard.press("n");
  await page.waitForFunction(() => location.hash !== "#at-c112");
  await page.keyboard.press("N");
  await page.waitForURL(/#at-c112$/);
  await page.keyboard.press("e");
  await page.waitForURL(/parts\.html#part-c112$/);
  await page.keyboard.press("f");
  await page.keyboard.type("c113");
  assert.match(await page.textContent(".narrow [role=status]"), /1 of 2 rows/);
  await page.keyboard.press("Escape");
  await page.focus("#part-c112 th a");
  await page.keyboard.press("ArrowDown");
  assert.match(await page.evaluate(() => document.activeElement.textContent), /C113/);
  await page.keyboard.press("?");
  await page.waitForURL(/help\.html$/);
  await page.click("#keys");
  await page.keyboard.press("g");
  await page.keyboard.press("s");
  await page.waitForTimeout(200);
  assert.match(page.url(), /help\.html$/, "keys of one letter can be turned off");
  await page.done();
});

test("a table is sorted by its headings, empty fields last", async () => {
  const page = await open(kSet + "parts.html");
  const parts = () => page.$$eval("#parts tbody th", (cells) => cells.map((cell) => cell.textContent.trim()));
  assert.deepEqual(await parts(), ["C112", "C113"]);
  await page.click("#parts thead th:first-child button");
  await page.click("#parts thead th:first-child button");
  assert.deepEqual(await parts(), ["C113", "C112"]);
  assert.equal(await page.getAttribute("#parts thead th:first-child", "aria-sort"), "descending");
  await page.done();
});

const kDocuments = ["index.html", "tubes.html", "help.html", "tubes/6cb6a.html",
  ...["index", "parts", "paper", "tubes", "gaps", "sheet-0001", "sheet-0002"].map((name) => kSet + name + ".html"),
  ...["parts", "paper", "sheet-0001"].map((name) => kItems + name + ".html")];

test("WCAG 2.2 AA by axe, light and dark, wide and narrow", async () => {
  for (const options of [{ colorScheme: "light" }, { colorScheme: "dark" }, { colorScheme: "light", viewport: kPhone }]) {
    const context = await browser.newContext({ viewport: kDesk, bypassCSP: true, ...options });
    const page = await context.newPage();
    for (const name of options.viewport ? [kSet + "parts.html", kSet + "sheet-0001.html"] : kDocuments) {
      await page.goto(at(name));
      await page.evaluate(axe);
      const result = await page.evaluate(() => globalThis.axe.run(document, {
        runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] }));
      const words = result.violations.map((one) => one.id + ": " + one.nodes.slice(0, 3).map((node) => node.target + " " + node.failureSummary).join("; "));
      assert.deepEqual(words, [], name + " " + JSON.stringify(options));
    }
    await context.close();
  }
});

test("a phone's width needs no sideways scrolling of the document", async () => {
  for (const name of kDocuments) {
    const page = await open(name, { viewport: kPhone });
    const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    assert.ok(over <= 0, `${name} is ${over} px too wide`);
    await page.done();
  }
});

test("without JavaScript parts, sheets and rings are there", async () => {
  const page = await open(kSet + "parts.html", { javaScriptEnabled: false });
  await page.click("#part-c112 th a");
  assert.match(page.url(), /sheet-0001\.html#at-c112$/);
  assert.equal(await page.locator("#at-c112 rect").count(), 1);
  await page.done();
});

test("every address in the binder leads to a file of it", async () => {
  const names = [...kDocuments, "sets/0003-brackenford-t7/index.html", "sets/0003-brackenford-t7/parts.html"];
  for (const name of names) {
    const page = await open(name);
    const hrefs = await page.$$eval("a, link", (all) => all.map((one) => one.href.baseVal !== undefined
      ? new URL(one.href.baseVal, document.baseURI).href : one.href));
    const rootUrl = at("");
    for (const href of new Set(hrefs)) {
      assert.ok(href.startsWith(rootUrl), `${name}: ${href} leads out of the binder`);
      assert.ok(existsSync(new URL(href.split("#")[0])), `${name}: ${href}`);
    }
    await page.done();
  }
});

test("hostile names and words run no script", async () => {
  for (const name of ["index", "parts", "paper", "tubes", "gaps", "sheet-0001", "sheet-0002"]) {
    const folder = readFileSync("binder/index.html", "utf8").match(/sets\/(0002-[a-z0-9-]+)\//)[1];
    const page = await open(`sets/${folder}/${name}.html`);
    await page.waitForTimeout(50);
    assert.equal(await page.evaluate(() => window.hurt), undefined, name);
    await page.done();
  }
  const page = await open("index.html");
  await page.fill("#search", "script");
  await page.waitForSelector("#found a.hit");
  for (const link of await page.$$("#found a.hit")) await link.hover();
  assert.equal(await page.evaluate(() => window.hurt), undefined);
  await page.done();
});

test("the policy stops a script that was let in all the same", async () => {
  mkdirSync("let-in", { recursive: true });
  cpSync("binder/look", "let-in/look", { recursive: true });
  const html = readFileSync("binder/index.html", "utf8");
  writeFileSync("let-in/index.html", html.replace("</main>", "<script>window.hurt=1</script><img src=x onerror='window.hurt=1'></main>"));
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.goto(pathToFileURL("let-in/index.html").href);
  await page.waitForTimeout(200);
  assert.equal(await page.evaluate(() => window.hurt), undefined);
  await context.close();
});

test("on paper stand the parts with ringed pictures, and no buttons", async () => {
  for (const name of ["parts", "paper", "sheet-0001"]) {
    const page = await open(kSet + name + ".html");
    await page.emulateMedia({ media: "print" });
    assert.equal(await page.locator(".bar").isVisible(), false);
    const pdf = await page.pdf({ format: "A4", printBackground: false });
    assert.ok(pdf.length > 5000, name);
    if (name === "paper") assert.equal(await page.locator("svg.crop .ring.shown").count(), 1);
    await page.done();
  }
});

test("pictures of sheets outside the view wait", async () => {
  const page = await open("index.html");
  assert.equal(await page.$$eval("img:not([loading=lazy])", (all) => all.length), 0);
  await page.done();
});
