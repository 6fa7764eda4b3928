// Starts the app, keeps it on the device, and hands over to a new version when somebody says so.
//
// What the app hears of it (`src/shell.rs`), as events on the window and, for whoever was not listening yet, on the root:
//   evenswath-kept, data-kept="yes" or "no"   whether the app is on this device and opens with no signal
//   evenswath-update, data-update="ready"     a new version is on this device, and waits
//   evenswath-copy, data-copy="none", "asks" or "kept"   the file of a second copy, where this browser can write to one
//   evenswath-copy-written                    the second copy was written
//   evenswath-offer, window.evenswathOffer    the browser offers to install the app
//   window.evenswath                          the language the page begins in, its words, and `file(name)` for FILES below
// What it says:
//   evenswath-copy-choose                     a file for a second copy is to be chosen, or leave to be given again
//   evenswath-copy-write, with the text       what is to stand in it
//   evenswath-update-now                      use the new version: the page is loaded again

import start from './app.js';

/** An hour between two looks for a new version, in milliseconds. Our own choice: a page may stay open for days. */
const BETWEEN_LOOKS = 3600000;
/** The folder that the app stands in, wherever that is. */
const TOP = new URL('./', import.meta.url);
const root = document.documentElement;
/** Files that the app asks for while it runs, each with its check sum: the words of each language, and the type of sheets. */
const FILES = {
  en: ['./words-en.txt', '@SUM words-en.txt@'],
  es: ['./words-es.txt', '@SUM words-es.txt@'],
  regular: ['./AtkinsonHyperlegible-Regular.woff2', '@SUM AtkinsonHyperlegible-Regular.woff2@'],
  bold: ['./AtkinsonHyperlegible-Bold.woff2', '@SUM AtkinsonHyperlegible-Bold.woff2@'],
};

function tell(what, value) {
  root.dataset[what] = value;
  window.dispatchEvent(new CustomEvent(`evenswath-${what}`));
}

/** One of FILES, whole, or an error: what came broken or from elsewhere is asked for once more, past what the browser kept. */
async function file(name) {
  const [path, integrity] = FILES[name];
  const ask = async (cache) => (await fetch(new URL(path, TOP), { cache, integrity, credentials: 'same-origin' })).arrayBuffer();
  return ask('default').catch(() => ask('reload'));
}

const words = async (language) => new TextDecoder().decode(await file(language));

/** As somebody chose it; else that of the browser. */
function language() {
  let chosen;
  try {
    [chosen] = (localStorage.getItem('evenswath-reader') ?? '').split(' ');
  } catch {
    // A browser that keeps nothing remembers no choice.
  }
  if (chosen === 'en' || chosen === 'es') return chosen;
  return (navigator.language ?? '').toLowerCase().startsWith('es') ? 'es' : 'en';
}

/** A phone set to Spanish installs the app with its description in Spanish. */
function chooseManifest() {
  if (!(navigator.language ?? '').toLowerCase().startsWith('es')) return;
  document.querySelector('link[rel="manifest"]').href = new URL('./manifest.es.webmanifest', TOP).href;
}

async function keep() {
  const container = navigator.serviceWorker;
  // None over plain HTTP, and in some private windows.
  if (!container) return tell('kept', 'no');
  let controlled = Boolean(container.controller);
  let asked = false;
  let registration;
  container.addEventListener('controllerchange', () => {
    if (asked) window.location.reload();
    // Another window changed to the new version. This one stays as it is until it is told to.
    else if (controlled) tell('update', 'ready');
    controlled = true;
  });
  window.addEventListener('evenswath-update-now', () => {
    asked = true;
    if (registration?.waiting) registration.waiting.postMessage('use-now');
    else window.location.reload();
  });
  registration = await container.register(new URL('./sw.js', TOP), { scope: TOP.pathname, updateViaCache: 'none' });
  // A browser that was told to keep nothing answers with nothing.
  if (!registration) return tell('kept', 'no');
  const look = (worker) => worker?.addEventListener('statechange', () => {
    if (worker.state === 'installed' && registration.active) tell('update', 'ready');
  });
  if (registration.waiting && registration.active) tell('update', 'ready');
  look(registration.installing);
  registration.addEventListener('updatefound', () => look(registration.installing));
  container.ready.then(() => tell('kept', 'yes'));
  lookNowAndThen(registration);
}

/** A page that comes back to the front after a while looks whether there is something newer. */
function lookNowAndThen(registration) {
  let last = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || Date.now() - last < BETWEEN_LOOKS) return;
    last = Date.now();
    // With no signal there is nothing to find.
    registration.update().catch(() => {});
  });
}

/** The file that somebody chose for a second copy; a database of its own remembers it. */
let copyFile;

async function remembered(work) {
  const opening = indexedDB.open('evenswath-second-copy', 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore('files');
  const answer = (request) => new Promise((done, failed) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error);
  });
  const database = await answer(opening);
  try {
    return await answer(work(database.transaction('files', 'readwrite').objectStore('files')));
  } finally {
    database.close();
  }
}

const WRITING = { mode: 'readwrite' };

async function findCopyFile() {
  if (!window.showSaveFilePicker) return;
  copyFile = await remembered((files) => files.get('copy'));
  if (!copyFile) tell('copy', 'none');
  else tell('copy', await copyFile.queryPermission(WRITING) === 'granted' ? 'kept' : 'asks');
}

async function chooseCopyFile() {
  const again = copyFile && await copyFile.requestPermission(WRITING) === 'granted';
  if (!again) {
    copyFile = await window.showSaveFilePicker({ suggestedName: 'evenswath-notebook.jsonl' });
    await remembered((files) => files.put(copyFile, 'copy'));
  }
  tell('copy', 'kept');
}

let toWrite;
let writes = false;
/** Writes what was said last; the file is the old one or the new one, never half of either. */
async function writeCopy(text) {
  toWrite = text;
  if (writes || !copyFile) return;
  writes = true;
  try {
    while (toWrite !== undefined) {
      const now = toWrite;
      toWrite = undefined;
      const file = await copyFile.createWritable();
      await file.write(now);
      await file.close();
      window.dispatchEvent(new CustomEvent('evenswath-copy-written'));
    }
  } catch (error) {
    console.warn(error);
    tell('copy', 'asks');
  } finally {
    writes = false;
  }
}

// Who thinks better of it chooses nothing.
window.addEventListener('evenswath-copy-choose', () => { chooseCopyFile().catch(() => {}); });
window.addEventListener('evenswath-copy-write', (event) => { writeCopy(event.detail); });
findCopyFile().catch(() => {});

// It is shown where it is asked for, on the screen about keeping, and not over somebody's work.
window.addEventListener('beforeinstallprompt', (event) => {
  event.preventDefault();
  window.evenswathOffer = event;
  window.dispatchEvent(new CustomEvent('evenswath-offer'));
});

chooseManifest();
try {
  // Both come at once; the app begins when it has its words.
  const module = fetch(new URL('./app.wasm', TOP), { credentials: 'same-origin' });
  const first = language();
  window.evenswath = { language: first, words: await words(first), file };
  await start({ module_or_path: module });
} catch (error) {
  document.getElementById('no-start').hidden = false;
  console.error(error);
}
// Also where the app did not start: a newer version may.
keep().catch((error) => {
  tell('kept', 'no');
  console.warn(error);
});
