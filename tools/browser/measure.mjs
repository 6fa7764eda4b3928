// Measures one sheet: as it prints, as a screen shows it, as a screen reader finds it. Says what is wrong in sentences.

import { createRequire } from 'node:module';
import { readFile, writeFile } from 'node:fs/promises';
import { pathToFileURL } from 'node:url';
import path from 'node:path';
import { measureForPrint, measureOnScreen, whatItIs } from './in_page.mjs';
import { pageSizes, paperSize, sameSize, sizeText } from './pdf.mjs';

const axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** White around a page, in millimetres, as in the crate `report`, style.rs. */
const MARGIN = 13;
const MM_PER_POINT = 25.4 / 72;
/** Screens: a small phone, a laptop, a usual phone, which stays for what is looked at after it. CSS px; low, as only widths matter. */
const SCREENS = [[320, 200], [1280, 200], [390, 200]];
/** The smallest letters on a screen, in px; in drawings, which can be made larger by hand, those of print. */
const LEAST = { text: 12, drawing: 9 };

/**
 * The smallest letters on paper, in points: 7 as the crate `report` promises; less on tags, whose number is what is read
 * from afar. Drawings are drawn for the width of a page and stand in half of it where two languages stand side by side.
 */
const LEAST_ON_PAPER = { text: 7, tag: 5.4, drawing: 6.7, drawingBeside: 4.4 };

/**
 * Measures a sheet of a folder on a browser page that `watch` watches. `more` says what is done besides printing.
 * Returns what is wrong, how many pages there are, and each block's height as laid out and as reckoned.
 */
export async function measure(page, folder, sheet, more) {
  const wrong = [];
  const seen = watch(page, wrong);
  const file = path.join(folder, `${sheet.name}.html`);
  seen.own = pathToFileURL(file).href;
  await page.setViewportSize({ width: 1280, height: 200 });
  await page.goto(seen.own);

  wrong.push(...isWhatItShouldBe(await page.evaluate(whatItIs), sheet));
  const laid = await print(page, file, sheet, wrong);
  if (more.screens) await onScreens(page, file, more, wrong);
  if (more.heard) await forAll(page, wrong);
  seen.stop();
  return { wrong, ...laid };
}

/** Nothing is fetched and nothing complains while a page is open. */
function watch(page, wrong) {
  const seen = { own: '' };
  const request = (one) => {
    if (one.url() !== seen.own && !one.url().startsWith('data:')) wrong.push(`fetches ${one.url()}`);
  };
  const said = (one) => wrong.push(`the console says: ${one.text()}`);
  const failed = (error) => wrong.push(`a script failed: ${error.message}`);
  page.on('request', request).on('console', said).on('pageerror', failed);
  seen.stop = () => page.off('request', request).off('console', said).off('pageerror', failed);
  return seen;
}

function isWhatItShouldBe(found, sheet) {
  const wrong = [];
  if (found.language !== sheet.language) wrong.push(`lang is "${found.language}", should be "${sheet.language}"`);
  const columns = sheet.pages.map((page) => page.columns.map((column) => column.language));
  if (JSON.stringify(found.columns) !== JSON.stringify(columns)) {
    wrong.push(`columns are in ${JSON.stringify(found.columns)}, should be in ${JSON.stringify(columns)}`);
  }
  if (!found.title.trim()) wrong.push('the page has no title');
  if (found.ran || found.title === 'ran') wrong.push('something in a name ran');
  wrong.push(...found.fonts.map((font) => `a font cannot be read: ${font}`));
  wrong.push(...found.live.map((element) => `holds what no sheet should: ${element}`));
  return wrong;
}

async function print(page, file, sheet, wrong) {
  await page.emulateMedia({ media: 'print' });
  const pages = sheet.pages.map((one) => ({
    one: one.one,
    width_mm: paperSize(sheet.paper, one.on_its_side)[0] * MM_PER_POINT - 2 * MARGIN,
  }));
  const laid = await page.evaluate(measureForPrint, pages);
  wrong.push(...laid.wrong);
  await page.evaluate(() => document.querySelectorAll('section.page').forEach((section) => { section.style.width = ''; }));
  laid.heights.forEach(({ letters }, index) => {
    const beside = sheet.pages[index].columns.length > 1;
    const least = { ...LEAST_ON_PAPER, drawing: beside ? LEAST_ON_PAPER.drawingBeside : LEAST_ON_PAPER.drawing };
    for (const [kind, points] of Object.entries(letters)) {
      if (points < least[kind] - 0.05) wrong.push(`page ${index + 1}: letters of ${points.toFixed(1)} pt (${kind}), should be at least ${least[kind]} pt`);
    }
  });

  const bytes = await page.pdf({ preferCSSPageSize: true, tagged: true });
  await writeFile(file.replace(/html$/, 'pdf'), bytes);
  const sizes = await pageSizes(bytes);
  let ones = sizes;
  if (laid.heights.some((one, index) => !pages[index].one && one.mm > sheet.pages[index].room_mm)) {
    // Something runs on: what must stay on one sheet of paper each is printed by itself as well, so that it can be counted.
    if (sizes.length <= sheet.pages.length) wrong.push(`prints on ${sizes.length} sheets of paper though it runs on from ${sheet.pages.length}`);
    await hide(page, true);
    ones = await pageSizes(await page.pdf({ preferCSSPageSize: true }));
    await hide(page, false);
  } else if (sizes.length === sheet.pages.length) {
    ones = sizes.filter((size, index) => pages[index].one);
  }
  const should = sheet.pages.filter((one) => one.one).map((one) => paperSize(sheet.paper, one.on_its_side));
  if (should.length && ones.length !== should.length) {
    wrong.push(`what must stay on ${should.length} sheets of paper prints on ${ones.length}`);
  } else {
    should.forEach((size, index) => {
      if (!sameSize(size, ones[index])) wrong.push(`page ${index + 1} prints on ${sizeText(ones[index])}, should be ${sizeText(size)}`);
    });
  }
  const known = sheet.pages.map((one) => paperSize(sheet.paper, one.on_its_side));
  sizes.filter((size) => !known.some((one) => sameSize(one, size))).forEach((size) => wrong.push(`prints on a paper of ${sizeText(size)}`));
  await page.emulateMedia({ media: null });
  return { heights: laid.heights, papers: sizes.length, ones: should.length };
}

/** Hides or shows again what may run on. */
const hide = (page, hidden) => page.evaluate((hidden) => document.querySelectorAll('section.page.many').forEach((section) => { section.hidden = hidden; }), hidden);

async function onScreens(page, file, more, wrong) {
  for (const [width, height] of SCREENS) {
    await page.setViewportSize({ width, height });
    wrong.push(...await page.evaluate(measureOnScreen, LEAST));
    if (more.pictures) await page.screenshot({ path: file.replace(/html$/, `${width}.png`), fullPage: true });
  }
}

async function forAll(page, wrong) {
  await page.evaluate(axe);
  const found = await page.evaluate(async () => {
    const { violations } = await window.axe.run(document, { resultTypes: ['violations'] });
    return violations.map((one) => ({ id: one.id, help: one.help, at: one.nodes.slice(0, 3).map((node) => node.html.slice(0, 100)), count: one.nodes.length }));
  });
  for (const one of found) wrong.push(`axe ${one.id} (${one.help}), ${one.count} times, as ${one.at.join(' | ')}`);
}
