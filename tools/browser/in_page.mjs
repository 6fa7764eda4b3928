// What is measured inside the page. Each function is sent to the browser as text, so it stands by itself.

/**
 * Lays each page out at the width of its paper and measures it. `pages` gives of each the width in millimetres.
 * Returns what is wrong as sentences, and the heights of all blocks in millimetres.
 */
export function measureForPrint(pages) {
  const MM = 96 / 25.4;
  const wrong = [];
  const sections = [...document.querySelectorAll('section.page')];
  sections.forEach((section, index) => {
    section.style.width = `${pages[index].width_mm}mm`;
  });

  const short = (text) => {
    const one = text.replace(/\s+/g, ' ').trim();
    return one.length > 60 ? `${one.slice(0, 60)}…` : one;
  };
  const named = (element) => {
    const names = [];
    for (let at = element; at && at.tagName !== 'SECTION' && names.length < 4; at = at.parentElement) {
      const kind = at.getAttribute('class');
      names.unshift(at.tagName.toLowerCase() + (kind ? `.${kind.split(' ').join('.')}` : ''));
    }
    return names.join(' > ');
  };
  const say = (number, element, what) => wrong.push(`page ${number}, ${named(element)}: ${what}`);
  // Kept for those who hear the page; it is not drawn.
  const isHidden = (element) => element.closest('caption, .heard') !== null;

  const heights = sections.map((section, index) => {
    const number = index + 1;
    const page = section.getBoundingClientRect();
    const style = (element) => getComputedStyle(element);

    for (const element of section.querySelectorAll('*:not(svg *)')) {
      if (isHidden(element) || style(element).display === 'inline' || element.tagName === 'svg') continue;
      if (element.tagName === 'COL' || element.tagName === 'COLGROUP') continue;
      if (element.scrollWidth > element.clientWidth + 1) {
        say(number, element, `${element.scrollWidth} px wide in a box of ${element.clientWidth} px: "${short(element.textContent)}"`);
      }
    }

    for (const tag of section.querySelectorAll('.tag')) {
      if (tag.scrollHeight > tag.clientHeight + 1) {
        say(number, tag, `${tag.scrollHeight} px high in a box of ${tag.clientHeight} px: "${short(tag.textContent)}"`);
      }
    }

    // Every line of every text: inside its own box, inside the page, and not on top of another.
    const lines = [];
    const walker = document.createTreeWalker(section, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      if (!node.data.trim() || node.parentElement.closest('svg') || isHidden(node.parentElement)) continue;
      let box = node.parentElement;
      while (style(box).display === 'inline') box = box.parentElement;
      const outer = box.getBoundingClientRect();
      const range = document.createRange();
      range.selectNodeContents(node);
      // The part of a line where letters are; what is above and below may touch the next line's.
      const size = parseFloat(style(node.parentElement).fontSize);
      // Short words and numbers stay whole; what is longer or no word may be broken where nothing else helps.
      for (const { 0: word, index: from } of node.data.matchAll(/(?<!\S)[\p{L}\p{N}.,:;()%]{2,12}(?!\S)/gu)) {
        range.setStart(node, from);
        range.setEnd(node, from + word.length);
        const rows = new Set([...range.getClientRects()].filter((rect) => rect.width > 0.5).map((rect) => Math.round(rect.top)));
        if (rows.size > 1) say(number, box, `"${word}" is broken in "${short(node.data)}"`);
      }
      range.selectNodeContents(node);
      for (const rect of range.getClientRects()) {
        if (rect.width < 0.5) continue;
        const middle = (rect.top + rect.bottom) / 2;
        const line = { left: rect.left, right: rect.right, top: middle - size * 0.36, bottom: middle + size * 0.36, node };
        lines.push(line);
        const where = `"${short(node.data)}"`;
        if (line.left < outer.left - 1 || line.right > outer.right + 1) say(number, box, `letters run out of the box sideways: ${where}`);
        if (line.top < outer.top - 1 || line.bottom > outer.bottom + 1) say(number, box, `letters run out of the box up or down: ${where}`);
        if (line.left < page.left - 1 || line.right > page.right + 1 || line.bottom > page.bottom + 1) say(number, box, `letters run off the page: ${where}`);
      }
    }
    lines.sort((one, other) => one.top - other.top);
    lines.forEach((line, at) => {
      for (let next = at + 1; next < lines.length && lines[next].top < line.bottom - 1; next += 1) {
        const other = lines[next];
        if (other.left < line.right - 1 && line.left < other.right - 1) {
          say(number, line.node.parentElement, `"${short(line.node.data)}" lies under "${short(other.node.data)}"`);
        }
      }
    });

    // Letters on paper, in points; those of drawings grow and shrink with the drawing.
    const smallest = (elements, scale) => Math.min(Infinity, ...elements.map((element) => parseFloat(style(element).fontSize) * scale(element) * 0.75));
    const letters = {
      text: smallest(lines.map((line) => line.node.parentElement).filter((element) => !element.closest('.tag')), () => 1),
      tag: smallest(lines.map((line) => line.node.parentElement).filter((element) => element.closest('.tag')), () => 1),
      drawing: smallest([...section.querySelectorAll('svg text')], (text) => Math.hypot(text.getScreenCTM().a, text.getScreenCTM().b)),
    };

    // Letters in drawings: as much as is inked, inside the drawing, and not on top of one another.
    const pen = document.createElement('canvas').getContext('2d');
    for (const svg of section.querySelectorAll('svg')) {
      const outer = svg.getBoundingClientRect();
      const inked = [...svg.querySelectorAll('text')].filter((text) => text.textContent.trim()).map((text) => {
        const own = style(text);
        pen.font = `${own.fontWeight} ${own.fontSize} ${own.fontFamily}`;
        const ink = pen.measureText(text.textContent);
        const box = text.getBBox();
        const base = text.getStartPositionOfChar(0).y;
        const matrix = text.getScreenCTM();
        const corners = [[box.x, base - ink.actualBoundingBoxAscent], [box.x + box.width, base - ink.actualBoundingBoxAscent],
          [box.x, base + ink.actualBoundingBoxDescent], [box.x + box.width, base + ink.actualBoundingBoxDescent]]
          .map(([x, y]) => new DOMPoint(x, y).matrixTransform(matrix));
        const [xs, ys] = [corners.map((corner) => corner.x), corners.map((corner) => corner.y)];
        return { text, left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
      });
      inked.forEach((one, at) => {
        const words = `"${short(one.text.textContent)}"`;
        if (one.left < outer.left - 1 || one.right > outer.right + 1 || one.top < outer.top - 1 || one.bottom > outer.bottom + 1) {
          say(number, one.text, `letters run out of the drawing: ${words}`);
        }
        for (const other of inked.slice(at + 1)) {
          const apart = other.left > one.right - 1 || one.left > other.right - 1 || other.top > one.bottom - 1 || one.top > other.bottom - 1;
          if (!apart) say(number, one.text, `${words} lies on "${short(other.text.textContent)}" in the drawing`);
        }
      });
    }

    const columns = [...section.querySelectorAll('.column')].map((column) => {
      const blocks = [...column.children];
      return blocks.map((block, at) => {
        const top = block.getBoundingClientRect().top;
        const below = at + 1 < blocks.length
          ? blocks[at + 1].getBoundingClientRect().top
          : block.getBoundingClientRect().bottom + parseFloat(style(block).marginBottom);
        return { name: named(block), mm: (below - top) / MM };
      });
    });
    const foot = section.querySelector('.foot').getBoundingClientRect();
    const bottoms = [...section.querySelectorAll('.column > :last-child')].map((block) => block.getBoundingClientRect().bottom);
    const lowest = Math.max(page.top, ...bottoms);
    if (pages[index].one && lowest > foot.top + 1) {
      say(number, section.querySelector('.foot'), `the page's last block ends ${((lowest - foot.top) / MM).toFixed(1)} mm below the top of the foot`);
    }
    return { columns, letters, mm: (lowest - page.top) / MM };
  });
  return { wrong, heights };
}

/** Looks at the page as a screen shows it: nothing to scroll sideways, letters large enough. */
export function measureOnScreen(least) {
  const wrong = [];
  const root = document.scrollingElement;
  if (root.scrollWidth > window.innerWidth) {
    const widest = [...document.querySelectorAll('main *:not(svg *)')]
      .filter((element) => element.getBoundingClientRect().right > window.innerWidth + 1 && !element.closest('.drawing svg, caption'))
      .slice(0, 3)
      .map((element) => `${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''} "${element.textContent.trim().slice(0, 40)}"`);
    wrong.push(`the page is ${root.scrollWidth} px wide on a screen of ${window.innerWidth} px: ${widest.join('; ')}`);
  }
  const small = new Map();
  const walker = document.createTreeWalker(document.querySelector('main'), NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const element = node.parentElement;
    if (!node.data.trim() || element.closest('caption, title, desc, .heard')) continue;
    const drawing = element.closest('svg');
    const scale = drawing ? Math.hypot(element.getScreenCTM().a, element.getScreenCTM().b) : 1;
    const size = parseFloat(getComputedStyle(element).fontSize) * scale;
    if (size < (drawing ? least.drawing : least.text) - 0.05) {
      const kind = `${drawing ? 'a drawing' : element.tagName.toLowerCase()}, ${size.toFixed(1)} px`;
      if (!small.has(kind)) small.set(kind, node.data.trim().slice(0, 40));
    }
  }
  for (const [kind, text] of small) wrong.push(`letters too small at ${window.innerWidth} px wide: ${kind}: "${text}"`);
  return wrong;
}

/** The languages that the page and its columns are said to be in, and whether anything in it ran. */
export function whatItIs() {
  return {
    language: document.documentElement.lang,
    columns: [...document.querySelectorAll('section.page')].map((section) =>
      [...section.querySelectorAll('.column')].map((column) => column.closest('[lang]').lang)),
    title: document.title,
    ran: document.body.dataset.ran ?? '',
    fonts: [...document.fonts].filter((font) => font.status === 'error').map((font) => `${font.family} ${font.weight} ${font.status}`),
    live: [...document.querySelectorAll('script, img:not(.picture[src^="data:"]), iframe, object, embed, link, a, form, [onload], [onerror], [onclick]')].map((element) => element.outerHTML.slice(0, 80)),
  };
}
