// How well the crate `report` reckons heights before anything is drawn, against what the browser makes of them.

export class Heights {
  constructor() {
    this.pages = [];
    this.blocks = [];
  }

  /** Keeps what was reckoned of a sheet and what the browser measured. */
  add(name, sheet, found) {
    sheet.pages.forEach((page, index) => {
      const columns = found.heights[index].columns;
      const real = Math.max(...columns.map((blocks) => blocks.reduce((sum, block) => sum + block.mm, 0)));
      this.pages.push({ name: `${name}, page ${index + 1}`, one: page.one, scale: page.scale, room: page.room_mm, reckoned: page.reckoned_mm, real, letters: found.heights[index].letters });
      page.columns.forEach((column, at) => column.blocks.forEach((reckoned, place) => {
        const block = columns[at][place];
        if (block) this.blocks.push({ name: block.name.replace(/^.* > /, ''), on: `${name}, page ${index + 1}`, reckoned, real: block.mm });
      }));
    });
  }

  /** One line for each page. */
  table() {
    const lines = this.pages.map((page) => [page.name, page.one ? 'one' : 'many', page.scale, page.room.toFixed(1), page.reckoned.toFixed(1), page.real.toFixed(1), (page.real / page.reckoned).toFixed(3), ...Object.values(page.letters).map((points) => (Number.isFinite(points) ? points.toFixed(1) : ''))].join('\t'));
    return `${['page', 'run', 'scale', 'room mm', 'reckoned mm', 'real mm', 'real/reckoned', 'least letters pt', 'on tags pt', 'in drawings pt'].join('\t')}\n${lines.join('\n')}\n`;
  }

  /** The ratio of real to reckoned heights: of pages that must stay on one sheet of paper, and of each kind of block. */
  summary() {
    const ones = this.pages.filter((page) => page.one);
    if (!ones.length) return 'no heights measured';
    const out = ['heights, real to reckoned', `  ${range(ones)}  pages that stay on one sheet of paper`];
    const fullest = [...ones].sort((one, other) => other.real / other.room - one.real / one.room).slice(0, 3);
    for (const kind of ['text', 'tag', 'drawing']) {
      const least = this.pages.reduce((one, other) => (other.letters[kind] < one.letters[kind] ? other : one));
      out.push(`  letters of ${least.letters[kind].toFixed(1)} pt are the least, ${kind}: ${least.name}`);
    }
    for (const page of fullest) out.push(`  ${(100 * page.real / page.room).toFixed(1)} % full: ${page.name}`);
    const kinds = new Map();
    for (const block of this.blocks) kinds.set(block.name, [...(kinds.get(block.name) ?? []), block]);
    for (const [name, blocks] of [...kinds].sort()) {
      const worst = blocks.reduce((one, other) => (off(other) > off(one) ? other : one));
      out.push(`  ${range(blocks)}  ${name}; most off ${(worst.real - worst.reckoned).toFixed(1)} mm on ${worst.on}`);
    }
    return out.join('\n');
  }
}

const off = (block) => Math.abs(block.real - block.reckoned);

function range(all) {
  const ratios = all.map((one) => one.real / one.reckoned).sort((one, other) => one - other);
  const middle = ratios[Math.floor(ratios.length / 2)] ?? NaN;
  return `${ratios[0]?.toFixed(2)} to ${ratios.at(-1)?.toFixed(2)}, middle ${middle.toFixed(2)}, of ${all.length}`;
}
