// A browser with a profile on the disk, which tests may kill and start again, and a server for the page of `crates/store-page`.

import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import http from 'node:http';
import os from 'node:os';
import path from 'node:path';
import { chromium } from 'playwright-core';

/** How long the browser may take to start, in milliseconds. */
const START = 30_000;

const PAGE = `<!doctype html><meta charset="utf-8"><title>store</title><script type="module">
import init, * as store from './store_page.js';
await init({ module_or_path: './store_page_bg.wasm' });
window.store = store;
</script>`;

/** Serves the page and the two files it loads, to any name that ends in .localhost. */
export async function serve(folder) {
  const files = new Map([['/', ['text/html', PAGE]]]);
  for (const [name, type] of [['store_page.js', 'text/javascript'], ['store_page_bg.wasm', 'application/wasm']]) {
    files.set(`/${name}`, [type, await readFile(path.join(folder, name))]);
  }
  const server = http.createServer((request, response) => {
    const found = files.get(new URL(request.url, 'http://localhost').pathname);
    // A page in a frame without an origin of its own, on which nothing may be kept, loads the script from elsewhere.
    response.writeHead(found ? 200 : 404, { 'content-type': found?.[0] ?? 'text/plain', 'access-control-allow-origin': '*' });
    response.end(found?.[1]);
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address();
  return {
    /** Of each name a site of its own, with a notebook of its own. */
    site: (name) => `http://${name}.localhost:${port}/`,
    close: () => server.close(),
  };
}

/** A browser of which everything that is kept outlives it. */
export class Browser {
  static async start() {
    const browser = new Browser();
    browser.profile = await mkdtemp(path.join(os.tmpdir(), 'evenswath-store-'));
    await browser.again();
    return browser;
  }

  /** Starts it, on the profile that is there. */
  async again() {
    const executable = process.env.EVENSWATH_CHROMIUM;
    if (!executable) throw new Error('EVENSWATH_CHROMIUM names no browser; `cargo xtask browser` finds one');
    // The sandbox cannot be had as root, as in containers; nothing but our own page is opened.
    const root = typeof process.getuid === 'function' && process.getuid() === 0;
    const flags = ['--headless=new', '--disable-gpu', '--no-first-run', '--remote-debugging-port=0', `--user-data-dir=${this.profile}`];
    this.process = spawn(executable, [...flags, ...(root ? ['--no-sandbox'] : []), 'about:blank'], { stdio: ['ignore', 'ignore', 'pipe'] });
    this.connection = await chromium.connectOverCDP(await this.address());
    this.context = this.connection.contexts()[0];
  }

  /** Where it listens, as it says itself. */
  address() {
    return new Promise((resolve, reject) => {
      let said = '';
      const late = setTimeout(() => reject(new Error(`the browser did not start:\n${said}`)), START);
      this.process.stderr.on('data', (text) => {
        said += text;
        const found = /DevTools listening on (\S+)/.exec(said);
        if (!found) return;
        clearTimeout(late);
        resolve(found[1]);
      });
      this.process.once('exit', () => reject(new Error(`the browser ended:\n${said}`)));
    });
  }

  /** A window on a site, with the store loaded. */
  async window(url) {
    const page = await this.context.newPage();
    await page.goto(url);
    await page.waitForFunction(() => window.store, null, { timeout: 10_000 });
    return page;
  }

  /** Ends it at once, whatever it is doing. */
  async kill() {
    const ended = once(this.process, 'exit');
    this.process.kill('SIGKILL');
    await ended;
  }

  async close() {
    await this.kill();
    // Its helpers may still be writing to the profile for a moment.
    await rm(this.profile, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 });
  }
}

/** Opens the notebook in a window as a device, for later calls. */
export const open = (page, device = 70) => page.evaluate(async (name) => { window.kept = await window.store.Kept.open(name); }, device);

/** Calls the open notebook and gives what it gives, or the text of its error. */
export const call = (page, name, ...given) => page.evaluate(async ([method, args]) => {
  try {
    return { done: await window.kept[method](...args) };
  } catch (error) {
    return { error: String(error) };
  }
}, [name, given]);

/** As `call`, where no error is expected. */
export async function done(page, name, ...given) {
  const { done: answer, error } = await call(page, name, ...given);
  if (error !== undefined) throw new Error(error);
  return answer;
}

/** The lines of the open notebook. */
export async function lines(page) {
  const text = await done(page, 'lines');
  return text ? text.split('\n').map((line) => JSON.parse(line)) : [];
}

/** The number that a test gave a line as its name. `conformance::draft` adds a thousand to it. */
export const nameOf = (line) => Number.parseInt(line.id.replaceAll('-', ''), 16) - 1000;
