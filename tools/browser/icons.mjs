// The app's icons as pictures, drawn by the browser out of the one drawing in `crates/web/page/icons/icon.svg`.
//
//     EVENSWATH_CHROMIUM=/usr/bin/chromium node icons.mjs
//
// writes them beside it. `shell.test.mjs` draws them again and compares.

import { readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { launch } from './browser.mjs';

export const FOLDER = fileURLToPath(new URL('../../crates/web/page/icons/', import.meta.url));

/**
 * File, side in pixels, how large the drawing is in its frame, and whether the paper has round corners.
 * A system cuts a `maskable` icon to a shape of its own; only a circle of four fifths of its width is sure to be seen (W3C
 * Web Application Manifest, icon masks). The touch icon is cut at its corners alone.
 */
export const ICONS = [
  { file: 'icon-192.png', side: 192, drawing: 1, corners: 'round' },
  { file: 'icon-512.png', side: 512, drawing: 1, corners: 'round' },
  { file: 'icon-maskable-512.png', side: 512, drawing: 0.72, corners: 'square' },
  { file: 'icon-touch-180.png', side: 180, drawing: 0.9, corners: 'square' },
];

/** The picture of one icon, as PNG. */
export async function draw(browser, icon) {
  const svg = framed(await readFile(path.join(FOLDER, 'icon.svg'), 'utf8'), icon);
  const page = await browser.newPage({ viewport: { width: icon.side, height: icon.side } });
  await page.setContent(`<!doctype html><style>html, body { margin: 0; background: none } svg { display: block; width: ${icon.side}px; height: ${icon.side}px }</style>${svg}`);
  const picture = await page.screenshot({ omitBackground: true });
  await page.close();
  return picture;
}

function framed(svg, icon) {
  const middle = (256 * (1 - icon.drawing)).toFixed(2);
  const sized = svg.replace('<g id="drawing"', `<g transform="translate(${middle} ${middle}) scale(${icon.drawing})" id="drawing"`);
  return icon.corners === 'round' ? sized : sized.replace(' rx="96" fill="#fbf8f1"', ' fill="#fbf8f1"');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const browser = await launch();
  for (const icon of ICONS) await writeFile(path.join(FOLDER, icon.file), await draw(browser, icon));
  await browser.close();
}
