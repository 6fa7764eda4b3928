// The browser that measures: one that is on this machine already, never one fetched for the purpose.

import { chromium } from 'playwright-core';

/** Starts the browser that EVENSWATH_CHROMIUM names; `cargo xtask browser` looks for one and names it. */
export async function launch() {
  const executablePath = process.env.EVENSWATH_CHROMIUM;
  if (!executablePath) throw new Error('EVENSWATH_CHROMIUM names no browser; `cargo xtask browser` finds one');
  // The sandbox cannot be had as root, as in containers; nothing but our own pages is opened.
  const root = typeof process.getuid === 'function' && process.getuid() === 0;
  // Letters keep the widths that the font gives them, as they do on paper.
  const args = ['--disable-gpu', '--font-render-hinting=none', ...(root ? ['--no-sandbox'] : [])];
  return chromium.launch({ executablePath, args });
}
