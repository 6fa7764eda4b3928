// Every sheet of the sample visits, measured in a real browser. `cargo xtask browser` makes the pages and starts this.

import assert from 'node:assert/strict';
import { readFile, readdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { after, before, describe, test } from 'node:test';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { launch } from './browser.mjs';
import { measure } from './measure.mjs';
import { Heights } from './heights.mjs';

const FOLDER = process.env.EVENSWATH_SHEETS ?? fileURLToPath(new URL('../../target/sheets', import.meta.url));
/** How many pages are measured at a time. */
const AT_ONCE = 3;
/** Whether every sheet is measured; otherwise, for time, of most visits one a paper and the most demanding. */
const EVERY_SHEET = Boolean(process.env.EVENSWATH_EVERY_SHEET);
/** Visits of which all are measured at any time: the least and the most that a sheet may have to hold. */
const EVERY_WAY = ['empty', 'long-name', 'three-bodies', 'twenty-tips'];
/** Of the others: Spanish, which is longer, on the shorter paper; both side by side on the narrower one; English. */
const DEMANDING = /-(es|both-a4|en-a4)$/;

const visits = (await readdir(FOLDER, { withFileTypes: true })).filter((entry) => entry.isDirectory()).map((entry) => entry.name).sort();
const heights = new Heights();
let browser;
/** Pages that are the same, as the card before the day, are measured once. */
const done = new Map();

before(async () => { browser = await launch(); });
after(async () => {
  await browser?.close();
  await writeFile(path.join(FOLDER, 'heights.tsv'), heights.table());
  console.log(heights.summary());
});

test('there are sample visits', () => assert.ok(visits.length >= 10, `${visits.length} in ${FOLDER}`));

describe('sheets', { concurrency: AT_ONCE }, () => {
  for (const visit of visits) test(visit, () => measureVisit(visit));
});

test('nothing that gets into a sheet runs or fetches', async () => {
  // Held against the page's own policy, as if a name had slipped through as markup.
  const page = await browser.newPage();
  const refusedByPolicy = [];
  const wentOut = [];
  page.on('requestfailed', (request) => (request.failure()?.errorText === 'csp' ? refusedByPolicy : wentOut).push(request.url()));
  page.on('response', (response) => wentOut.push(response.url()));
  await page.goto(pathToFileURL(path.join(FOLDER, 'markup', 'visit-en.html')).href);
  const refused = await page.evaluate(async () => {
    const kinds = [];
    document.addEventListener('securitypolicyviolation', (event) => kinds.push(event.effectiveDirective));
    const script = document.createElement('script');
    script.textContent = 'document.body.dataset.ran = "yes"';
    const picture = new Image();
    picture.src = 'https://example.invalid/picture.png';
    const frame = document.createElement('iframe');
    frame.src = 'https://example.invalid/';
    const button = document.createElement('button');
    button.setAttribute('onclick', 'document.body.dataset.ran = "yes"');
    document.body.append(script, picture, frame, button);
    button.click();
    await new Promise((resolve) => { setTimeout(resolve, 200); });
    return { kinds, ran: document.body.dataset.ran ?? '' };
  });
  await page.close();
  assert.equal(refused.ran, '');
  for (const kind of ['script-src-elem', 'script-src-attr', 'img-src', 'frame-src']) assert.ok(refused.kinds.includes(kind), `${kind} is not refused: ${refused.kinds}`);
  assert.deepEqual(wentOut.filter((url) => url.includes('example.invalid')), []);
  assert.deepEqual(refusedByPolicy, ['https://example.invalid/picture.png']);
});

async function measureVisit(visit) {
  const folder = path.join(FOLDER, visit);
  const sheets = JSON.parse(await readFile(path.join(folder, 'sheets.json'), 'utf8'));
  const page = await browser.newPage();
  const wrong = [];
  const everyWay = EVERY_SHEET || EVERY_WAY.includes(visit);
  for (const sheet of sheets.filter((one) => everyWay || DEMANDING.test(one.name))) {
    const html = await readFile(path.join(folder, `${sheet.name}.html`), 'utf8');
    if (done.has(html)) continue;
    done.set(html, visit);
    // A screen knows no paper, and for those who hear it a sheet is built alike in all languages.
    const screens = sheet.paper === 'letter';
    const heard = everyWay ? /-(en|both)$/.test(sheet.name) : sheet.name === 'visit-es';
    const found = await measure(page, folder, sheet, { screens, heard, pictures: screens && visit === 'willow-bend' });
    wrong.push(...found.wrong.map((one) => `${visit}/${sheet.name}: ${one}`));
    heights.add(`${visit}/${sheet.name}`, sheet, found);
  }
  await page.close();
  assert.equal(wrong.length, 0, `${wrong.length} to mend\n${wrong.join('\n')}`);
}
