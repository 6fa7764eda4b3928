// What stands around the app: that it starts, is kept on the device, opens with no signal, changes to a new version only
// when it is told to, and can be installed. `cargo xtask browser` builds two versions of it and starts this.

import assert from 'node:assert/strict';
import { mkdtemp, readFile, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { after, before, describe, test } from 'node:test';
import { launch } from './browser.mjs';
import { freePort, host, serve } from './hosts.mjs';
import { FOLDER as ICON_FOLDER, ICONS, draw } from './icons.mjs';

const PROGRAM = process.env.EVENSWATH_PROGRAM;
const FIRST = process.env.EVENSWATH_APP;
/** The same with `data-version="second"` on its root, and another style sheet. */
const SECOND = process.env.EVENSWATH_SECOND_APP;
/** The most that a first visit may weigh. Our own choice: some ten seconds of a poor signal, 1 Mbit/s. */
const MOST_BYTES = 1200000;
/** How long anything may take, in milliseconds; only what is broken takes as long. */
const LONGEST = 30000;
/** A phone. */
const PHONE = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true };

let browser;
let notebook;
before(async () => {
  browser = await launch();
  notebook = await mkdtemp(path.join(tmpdir(), 'evenswath-shell-'));
});
after(async () => {
  await browser?.close();
  await rm(notebook, { recursive: true, force: true });
});

/** A device of its own: pages with nothing kept yet, and what went wrong on them. */
async function device(options = {}) {
  const context = await browser.newContext({ ...PHONE, ...options });
  context.setDefaultTimeout(LONGEST);
  const wrong = [];
  const open = async (address) => {
    const page = await context.newPage();
    page.on('pageerror', (error) => wrong.push(`${error}`));
    page.on('console', (message) => { if (message.type() === 'error') wrong.push(message.text()); });
    await page.goto(address);
    return page;
  };
  return { context, open, wrong, close: () => context.close() };
}

/** The app shows something of its own where the page's first word stood. */
async function mounted(page) {
  await page.waitForFunction(() => document.querySelector('#yard')?.firstElementChild);
  assert.equal(await page.locator('#no-start').isVisible(), false);
}

async function kept(page) {
  await page.waitForSelector('html[data-kept="yes"]', { state: 'attached' });
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
}

const version = (page) => page.evaluate(() => document.documentElement.dataset.version ?? 'first');
const caches = (page) => page.evaluate(async () => (await self.caches.keys()).sort());
const updateReady = (page) => page.waitForSelector('html[data-update="ready"]', { state: 'attached' });
const useNow = async (page) => {
  await Promise.all([page.waitForEvent('load'), page.evaluate(() => { window.dispatchEvent(new CustomEvent('evenswath-update-now')); })]);
  await mounted(page);
};

describe('served by the command', () => {
  let port;
  let server;
  const start = async (folder) => { server = await serve(PROGRAM, folder, path.join(notebook, 'book'), port); };
  before(async () => { port = await freePort(); await start(FIRST); });
  after(() => server?.stop());

  test('starts, and says what it weighs', async () => {
    const phone = await device();
    const page = await phone.context.newPage();
    const wire = await page.context().newCDPSession(page);
    const files = new Map();
    await wire.send('Network.enable');
    wire.on('Network.responseReceived', ({ requestId, response }) => files.set(requestId, { name: new URL(response.url).pathname, bytes: 0 }));
    wire.on('Network.loadingFinished', ({ requestId, encodedDataLength }) => { const file = files.get(requestId); if (file) file.bytes = encodedDataLength; });
    await page.goto(server.address);
    await mounted(page);
    await page.waitForLoadState('networkidle');
    const all = [...files.values()];
    const pages = all.reduce((sum, file) => sum + file.bytes, 0);
    const wasm = all.find((file) => file.name.endsWith('.wasm'));
    const plain = (await readdir(FIRST)).filter((name) => !/\.(br|gz)$/.test(name));
    const module = plain.find((name) => name.endsWith('.wasm'));
    const sizes = [`first visit: ${pages} bytes over the wire, headers and all, in ${all.length} answers`,
      `of it WebAssembly: ${wasm.bytes} pressed, ${(await readFile(path.join(FIRST, module))).length} as it is`];
    console.log(sizes.join('\n'));
    // Each file once, and the type that the page is set in.
    assert.equal(new Set(all.map((file) => file.name)).size, all.length, all.map((file) => file.name).join(' '));
    assert.ok(await page.evaluate(async () => { await document.fonts.ready; return document.fonts.check('16px "Atkinson Hyperlegible"'); }));
    assert.ok(pages < MOST_BYTES, `${pages}`);
    assert.ok(wasm.bytes < 0.6 * (await readFile(path.join(FIRST, module))).length);
    await phone.close();
  });

  test('is on the device after the first visit, and opens with the server dead and no signal', async () => {
    const phone = await device();
    const page = await phone.open(server.address);
    await mounted(page);
    await kept(page);
    const files = (await readdir(FIRST)).filter((name) => !/\.(br|gz)$/.test(name) && name !== 'sw.js').length;
    assert.equal(await page.evaluate(async () => (await (await self.caches.open((await self.caches.keys())[0])).keys()).length), files);
    assert.equal(await page.evaluate(async () => (await fetch('./api/1/health')).status), 200);
    await server.stop();
    await phone.context.setOffline(true);
    const before = Date.now();
    await page.reload();
    await mounted(page);
    console.log(`opened with no signal in ${Date.now() - before} ms`);
    await page.goto(`${server.address}#/visit/7`);
    await page.reload();
    await mounted(page);
    assert.equal(new URL(page.url()).hash, '#/visit/7');
    await page.goto(`${server.address}visit/7?tip=4`);
    await mounted(page);
    assert.equal(page.url(), `${server.address}#/visit/7?tip=4`);
    // What a server would say is never made up.
    assert.equal(await page.evaluate(() => fetch('./api/1/health').then((answer) => answer.status, () => 'no answer')), 'no answer');
    const other = await phone.open(server.address);
    await mounted(other);
    assert.deepEqual(phone.wrong.filter((text) => !/ERR_INTERNET_DISCONNECTED/.test(text)), []);
    await phone.close();
    await start(FIRST);
  });

  test('an address within the app leads there on the first visit too', async () => {
    const phone = await device();
    const page = await phone.open(`${server.address}visit/7/tip/4`);
    await mounted(page);
    assert.equal(page.url(), `${server.address}#/visit/7/tip/4`);
    assert.deepEqual(phone.wrong, []);
    await phone.close();
  });

  test('a new version waits for a tap, and another window keeps the old one', async () => {
    const phone = await device();
    const page = await phone.open(server.address);
    await mounted(page);
    await kept(page);
    const other = await phone.open(server.address);
    await mounted(other);
    await server.stop();
    await start(SECOND);
    await page.reload();
    await mounted(page);
    await updateReady(page);
    assert.equal(await version(page), 'first');
    await page.reload();
    await mounted(page);
    await updateReady(page);
    assert.equal(await version(page), 'first', 'a reload is no tap');
    assert.equal((await caches(page)).length, 2);
    let reloads = 0;
    other.on('load', () => { reloads += 1; });
    await useNow(page);
    assert.equal(await version(page), 'second');
    // The other window has seen nothing of it but the word, and still finds its own files.
    await updateReady(other);
    assert.deepEqual([reloads, await version(other)], [0, 'first']);
    const style = await other.evaluate(() => document.querySelector('link[rel="stylesheet"]').href);
    assert.equal(await other.evaluate((address) => fetch(address).then((answer) => answer.status), style), 200);
    assert.equal((await caches(page)).length, 2);
    await useNow(other);
    assert.equal(await version(other), 'second');
    await other.close();
    // And back again, with one window: what is old goes.
    await server.stop();
    await start(FIRST);
    await page.reload();
    await updateReady(page);
    assert.equal(await version(page), 'second');
    await useNow(page);
    assert.equal(await version(page), 'first');
    assert.equal((await caches(page)).length, 1);
    assert.deepEqual(phone.wrong, []);
    await phone.close();
  });

  test('a new version is used by itself once no page is open', async () => {
    const phone = await device();
    const page = await phone.open(server.address);
    await kept(page);
    await server.stop();
    await start(SECOND);
    await page.reload();
    await updateReady(page);
    await page.close();
    await new Promise((resolve) => { setTimeout(resolve, 500); });
    const again = await phone.open(server.address);
    await mounted(again);
    assert.equal(await version(again), 'second');
    assert.equal((await caches(again)).length, 1);
    await phone.close();
    await server.stop();
    await start(FIRST);
  });

  test('nothing runs that is not its own file', async () => {
    const phone = await device();
    const page = await phone.open(server.address);
    await mounted(page);
    const ran = await page.evaluate(() => {
      const script = document.createElement('script');
      script.textContent = 'document.body.dataset.ran = "yes"';
      document.body.append(script);
      return document.body.dataset.ran ?? '';
    });
    assert.equal(ran, '');
    await phone.close();
  });

  test('can be installed', async () => {
    for (const [locale, language] of [['en-US', 'en'], ['es-MX', 'es']]) {
      const phone = await device({ locale });
      const page = await phone.open(server.address);
      await mounted(page);
      await kept(page);
      const devtools = await phone.context.newCDPSession(page);
      const { errors, data } = await devtools.send('Page.getAppManifest');
      assert.deepEqual(errors, []);
      const manifest = JSON.parse(data);
      assert.deepEqual([manifest.lang, manifest.name, manifest.short_name, manifest.display], [language, 'Evenswath', 'Evenswath', 'standalone']);
      // A window that keeps nothing, as this one, cannot install; that is the only thing in the way.
      const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors');
      assert.deepEqual(installabilityErrors.map((error) => error.errorId).filter((error) => error !== 'in-incognito'), []);
      for (const icon of manifest.icons.filter((one) => one.type === 'image/png')) {
        const found = await page.evaluate(async (source) => { const picture = await createImageBitmap(await (await fetch(source)).blob()); return `${picture.width}x${picture.height}`; }, icon.src);
        assert.equal(found, icon.sizes, icon.src);
      }
      assert.deepEqual(phone.wrong, []);
      await phone.close();
    }
  });
});

describe('served by a plain host', () => {
  test('runs and is kept under a path of its own, beside another', async () => {
    const county = await host(FIRST, '/county/spray/');
    const phone = await device();
    const page = await phone.open(county.address);
    await mounted(page);
    await kept(page);
    assert.equal(await page.evaluate(async () => (await navigator.serviceWorker.ready).scope), county.address);
    await page.evaluate(() => self.caches.open('evenswath /elsewhere/ 1'));
    const refused = await page.evaluate(async () => {
      const kinds = [];
      document.addEventListener('securitypolicyviolation', (event) => kinds.push(event.effectiveDirective));
      const script = document.createElement('script');
      script.textContent = 'document.body.dataset.ran = "yes"';
      document.body.append(script);
      await new Promise((resolve) => { setTimeout(resolve, 100); });
      return { kinds, ran: document.body.dataset.ran ?? '' };
    });
    assert.deepEqual(refused, { kinds: ['script-src-elem'], ran: '' });
    await county.stop();
    await phone.context.setOffline(true);
    await page.goto(`${county.address}visit/7`);
    await mounted(page);
    assert.equal(page.url(), `${county.address}#/visit/7`);
    assert.ok((await caches(page)).includes('evenswath /elsewhere/ 1'));
    await phone.close();
  });

  test('half a version, or a page of the network in its place, is not kept', async () => {
    const spoils = [
      (name, bytes) => (name.endsWith('.css') ? Buffer.concat([bytes, Buffer.from('/* */')]) : bytes),
      (name, bytes) => (name.endsWith('.png') ? Buffer.from('<p>Accept the terms to go on') : bytes),
    ];
    for (const spoil of spoils) {
      const county = await host(FIRST, '/', spoil);
      const phone = await device();
      const page = await phone.open(county.address);
      await mounted(page);
      // The worker gives up by itself: a moment later there is none.
      await page.waitForFunction(async () => !(await navigator.serviceWorker.getRegistration()));
      assert.deepEqual(await caches(page), []);
      await phone.close();
      await county.stop();
    }
  });

  test('says so where it cannot start', async () => {
    const spoils = [
      (name, bytes) => (name.endsWith('.wasm') ? bytes.subarray(0, 100) : bytes),
      // Words cut short are no words: half of the labels would show their keys.
      (name, bytes) => (name.startsWith('words-en') ? bytes.subarray(0, bytes.length / 2) : bytes),
      (name, bytes) => (name.startsWith('words-en') ? Buffer.from('<p>Accept the terms to go on') : bytes),
    ];
    for (const spoil of spoils) {
      const county = await host(FIRST, '/', spoil);
      const phone = await device();
      const page = await phone.open(county.address);
      await page.locator('#no-start').waitFor({ state: 'visible' });
      await phone.close();
      await county.stop();
    }
  });

  test('words that came broken once are asked for again', async () => {
    let asked = 0;
    const county = await host(FIRST, '/', (name, bytes) => {
      if (!name.startsWith('words-en')) return bytes;
      asked += 1;
      return asked === 1 ? bytes.subarray(0, 1000) : bytes;
    });
    const phone = await device();
    const page = await phone.open(county.address);
    await mounted(page);
    assert.equal(await page.getByRole('button', { name: 'Settings' }).count(), 1);
    await phone.close();
    await county.stop();
  });

  test('fetches the words of one language, and changes to the other with no signal', async () => {
    const asked = [];
    const county = await host(FIRST, '/', (name, bytes) => { asked.push(name); return bytes; });
    const phone = await device({ locale: 'es-MX', serviceWorkers: 'block' });
    const page = await phone.open(county.address);
    await mounted(page);
    assert.deepEqual(asked.filter((name) => name.startsWith('words')).map((name) => name.slice(0, 8)), ['words-es']);
    // Not kept here: with no signal the other language is not to be had, and the page says so and stays as it is.
    await county.stop();
    await page.getByRole('button', { name: 'English', exact: true }).click();
    await page.locator('.notice', { hasText: 'idioma' }).waitFor();
    assert.equal(await page.evaluate(() => document.documentElement.lang), 'es');
    await phone.close();

    const again = await host(FIRST, '/');
    const keeps = await device({ locale: 'es-MX' });
    const kept1 = await keeps.open(again.address);
    await mounted(kept1);
    await kept(kept1);
    await again.stop();
    await keeps.context.setOffline(true);
    await kept1.getByRole('button', { name: 'English', exact: true }).click();
    await kept1.waitForSelector('html[lang="en"]');
    await kept1.getByRole('button', { name: 'Settings' }).waitFor();
    await kept1.reload();
    await mounted(kept1);
    assert.equal(await kept1.evaluate(() => document.documentElement.lang), 'en');
    await keeps.close();
  });
});

test('the icons are those of the drawing', async () => {
  const page = await browser.newPage();
  for (const icon of ICONS) {
    const [there, drawn] = await Promise.all([readFile(path.join(ICON_FOLDER, icon.file)), draw(browser, icon)]);
    const apart = await page.evaluate(async (pictures) => {
      const [one, other] = await Promise.all(pictures.map(async (picture) => {
        const bitmap = await createImageBitmap(await (await fetch(`data:image/png;base64,${picture}`)).blob());
        const canvas = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d');
        canvas.drawImage(bitmap, 0, 0);
        return canvas.getImageData(0, 0, bitmap.width, bitmap.height);
      }));
      if (one.width !== other.width || one.height !== other.height) return 255;
      return one.data.reduce((sum, value, at) => sum + Math.abs(value - other.data[at]), 0) / one.data.length;
    }, [there, drawn].map((picture) => picture.toString('base64')));
    // Browsers smooth edges each in its own way; another drawing is tens apart.
    assert.ok(apart < 1, `${icon.file}: ${apart}; run icons.mjs again`);
  }
  await page.close();
});
