// A phone in the yard, worked as a hand works it: what is tapped is counted.

import { wordsOf } from './words.mjs';

/** How long anything may take, in milliseconds; only what is broken takes as long. */
const LONGEST = 10000;
/** A phone as large as most, and the smallest that is held to. */
export const PHONE = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true };
export const SMALL = { viewport: { width: 320, height: 568 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true };
export const DESK = { viewport: { width: 1280, height: 900 } };

/** Clocks that a test can set: `jump` puts the wall clock on, as sleep does, `behind` sets it back. */
const CLOCKS = () => {
  const real = Date.now.bind(Date);
  globalThis.wallJump = 0;
  Date.now = () => real() + globalThis.wallJump;
};

/** A device of its own, with nothing kept yet. */
export async function device(browser, options = PHONE, before = undefined) {
  const context = await browser.newContext(options);
  context.setDefaultTimeout(LONGEST);
  await context.addInitScript(CLOCKS);
  if (before) await context.addInitScript(before);
  const wrong = [];
  const open = async (address, language = 'en') => {
    const page = await context.newPage();
    page.on('pageerror', (error) => wrong.push(`${error}`));
    page.on('console', (message) => { if (message.type() === 'error') wrong.push(message.text()); });
    await page.goto(address);
    return hand(page, await wordsOf(language), language);
  };
  return { context, open, wrong, close: () => context.close() };
}

/** A hand on a page. */
export async function hand(page, word, language) {
  await page.waitForSelector('#yard main');
  const self = {
    page,
    word,
    language,
    taps: 0,
    async tap(target) {
      self.taps += 1;
      await target.click();
    },
    button: (key) => page.getByRole('button', { name: word(key), exact: true }),
    async press(key) { await self.tap(self.button(key).first()); },
    /** A step of the sheet is unfolded. */
    async unfold(step) {
      const head = page.locator(`#step-${step}`);
      if (await head.getAttribute('aria-expanded') !== 'true') await self.tap(head);
      await page.waitForSelector(`#step-${step}[aria-expanded="true"]`);
    },
    /** Letters into a field, meant. Typing counts as one tap to get there. */
    async say(field, text) {
      const entry = page.locator(`[id="entry-${field}"]`);
      self.taps += 1;
      await entry.fill(text);
      await entry.blur();
    },
    /** One of a field's buttons, by its label. */
    async choose(field, label) {
      const box = page.locator('.field', { has: page.locator(`[id="label-${field}"]`) });
      await self.tap(box.getByRole('button', { name: label, exact: true }));
    },
    /** A reading by the pad: 14.5 is 1, 4 and a half. */
    async reading(text) {
      const [whole, part] = text.split('.');
      const pad = page.locator('.pad');
      for (const digit of whole) await self.tap(pad.getByRole('button', { name: digit, exact: true }));
      const quarter = { 25: '+¼', 5: '+½', 75: '+¾' }[part];
      if (quarter) await self.tap(pad.getByRole('button', { name: quarter, exact: true }));
    },
    /** The cup is right. */
    async next() { await self.tap(page.locator('.ways button.strong')); },
    async cups(readings) {
      for (const reading of readings) {
        await self.reading(reading);
        await self.next();
      }
    },
    /** What the page says it puts out, as a number. */
    async answer() { return (await page.locator('main section[aria-live]').first().innerText()).replace(/\s+/g, ' '); },
  };
  return self;
}

/** A new sprayer: its tips, and how cups are read. */
export async function sprayer(hand, { kind = 'boom', sections = '4, 4, 4', plan = ['yard-minutes_60', 'yard-people_2'] } = {}) {
  const { word } = hand;
  for (const key of plan) await hand.press(key);
  await hand.press('yard-new_sprayer');
  await hand.unfold('machine');
  await hand.say('visit.sprayer', 'Blue mounted boom');
  await hand.choose('sprayer.kind', word(`choice-sprayer_kind-${kind}`));
  if (kind === 'boom') {
    await hand.say('sprayer.sections', sections);
    await hand.say('sprayer.spacing', '20');
  } else if (kind === 'boomless') {
    await hand.say('sprayer.tips', '3');
    await hand.say('sprayer.effective_swath', '30');
  }
  await hand.say('sprayer.tank', '200');
}

/** A drive of 204 ft in 28 s, typed. */
export async function drive(hand, course = '204', seconds = '28') {
  await hand.unfold('drive');
  await hand.say('drive.course', course);
  const entry = hand.page.locator('#typed-run');
  hand.taps += 1;
  await entry.fill(seconds);
  await hand.press('yard-add_run');
}

/** To the cups: marks of half an ounce, 28 seconds. */
export async function toTheCups(hand, seconds = '28') {
  await hand.unfold('catch');
  await hand.choose('catch.cup_marks', '1/2 fl oz').catch(() => hand.say('catch.cup_marks', '1/2 fl oz'));
  await hand.say('catch.time', seconds);
  await hand.press('yard-catch_cups');
  await hand.page.waitForSelector('main.at-cup');
}
