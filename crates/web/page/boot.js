// Starts the app, keeps it on the device, and hands over to a new version when somebody says so.
//
// What the app hears of it (`src/shell.rs`), as events on the window and, for whoever was not listening yet, on the root:
//   evenswath-kept, data-kept="yes" or "no"   whether the app is on this device and opens with no signal
//   evenswath-update, data-update="ready"     a new version is on this device, and waits
//   evenswath-offer, window.evenswathOffer    the browser offers to install the app
// What it says:
//   evenswath-update-now                      use the new version: the page is loaded again

import start from './app.js';

/** An hour between two looks for a new version, in milliseconds. Our own choice: a page may stay open for days. */
const BETWEEN_LOOKS = 3600000;
/** The folder that the app stands in, wherever that is. */
const TOP = new URL('./', import.meta.url);
const root = document.documentElement;

function tell(what, value) {
  root.dataset[what] = value;
  window.dispatchEvent(new CustomEvent(`evenswath-${what}`));
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

// It is shown where it is asked for, on the screen about keeping, and not over somebody's work.
window.addEventListener('beforeinstallprompt', (event) => {
  event.preventDefault();
  window.evenswathOffer = event;
  window.dispatchEvent(new CustomEvent('evenswath-offer'));
});

chooseManifest();
try {
  await start({ module_or_path: new URL('./app.wasm', TOP) });
} catch (error) {
  document.getElementById('no-start').hidden = false;
  console.error(error);
}
// Also where the app did not start: a newer version may.
keep().catch((error) => {
  tell('kept', 'no');
  console.warn(error);
});
