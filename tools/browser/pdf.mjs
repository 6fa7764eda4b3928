// What a printed page came out as.

import { PDFDocument } from 'pdf-lib';

/** Width and height of the papers in points, as they lie upright. ANSI/ASME Y14.1 size A; ISO 216. */
const PAPERS = { letter: [612, 792], A4: [595.28, 841.89] };
/** How far a side may be off, in points: browsers round a page to whole pixels of 0.75 pt. */
const NEAR = 1;

/** The size that a page should have. */
export function paperSize(paper, onItsSide) {
  const [short, long] = PAPERS[paper];
  return onItsSide ? [long, short] : [short, long];
}

/** The sizes of a PDF's pages, in points. */
export async function pageSizes(bytes) {
  const document = await PDFDocument.load(bytes, { updateMetadata: false });
  return document.getPages().map((page) => [page.getWidth(), page.getHeight()]);
}

export const sameSize = (one, other) => one.every((side, index) => Math.abs(side - other[index]) <= NEAR);

export const sizeText = ([width, height]) => `${width.toFixed(0)} × ${height.toFixed(0)} pt`;
