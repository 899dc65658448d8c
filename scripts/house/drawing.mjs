// @ts-check
/** @typedef {{ name: string, holds: string, isRoom: boolean }} Box */

const STEP_X = 32;
const STEP_Y = 34;
const BOX = { width: 96, height: 24 };
const MARGIN = 24;
const WORDS_WIDTH = 330;
const FOOT = 70;

/** The staircase drawing: boxes in the order of the ladder step down to the right. From each box a line runs left, and
 * where it meets the line below another box a dot says that the first imports the second. No line need ever cross
 * a box, however many imports there are, and an import against the order would stand out above the stairs.
 * @param {readonly Box[]} boxes in order
 * @param {ReadonlyMap<string, ReadonlySet<string>>} imports
 * @returns {string} an SVG document */
export function staircase(boxes, imports) {
  const width = MARGIN * 2 + (boxes.length - 1) * STEP_X + BOX.width + WORDS_WIDTH;
  const height = MARGIN * 2 + boxes.length * STEP_Y + FOOT;
  const placeOf = new Map(boxes.map((box, place) => [box.name, place]));
  const edges = boxes.flatMap((box, from) =>
    [...(imports.get(box.name) ?? [])]
      .map((name) => placeOf.get(name))
      .filter((to) => to !== undefined)
      .sort((a, b) => a - b)
      .map((to) => ({ from, to })),
  );
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="title desc">`,
    '<title id="title">The rooms of Tautwork and what each imports</title>',
    `<desc id="desc">${described(boxes, imports)}</desc>`,
    STYLE,
    `<rect class="paper" width="${width}" height="${height}"/>`,
    ...columns(boxes, edges),
    ...rows(boxes, edges),
    ...edges.map(({ from, to }) => dot(boxes, from, to)),
    ...boxes.map(box),
    ...legend(height),
    '</svg>',
    '',
  ].join('\n');
}

/** Light and dark by the reader's own setting; the paper is painted so that the ink shows on any page. */
const STYLE = `<style>
  .paper { fill: #fbfaf6 } text { font: 13px system-ui, sans-serif; fill: #23211c } .quiet { fill: #5f5a4e; font-size: 12px }
  .line { stroke: #a39c8b; fill: none } .head, .dot { fill: #8a3b12 }
  .room { fill: #f3e6d8; stroke: #8a3b12 } .layer { fill: #ece9df; stroke: #5f5a4e }
  @media (prefers-color-scheme: dark) {
    .paper { fill: #1d1c1a } text { fill: #ece8de } .quiet { fill: #b3ac9c }
    .line { stroke: #6d675b } .head, .dot { fill: #f0a878 }
    .room { fill: #3a2a20; stroke: #f0a878 } .layer { fill: #2b2a27; stroke: #a39c8b }
  }
</style>`;

const left = (/** @type {number} */ place) => MARGIN + place * STEP_X;
const top = (/** @type {number} */ place) => MARGIN + place * STEP_Y;
const columnX = (/** @type {number} */ place) => left(place) + STEP_X / 2;
const rowY = (/** @type {number} */ place) => top(place) + BOX.height / 2;

/** @typedef {{ from: number, to: number }} Edge */

/** @param {readonly Box[]} boxes @param {readonly Edge[]} edges */
function columns(boxes, edges) {
  return boxes.flatMap((_box, place) => {
    const importers = edges.filter((edge) => edge.to === place).map((edge) => edge.from);
    if (importers.length === 0) return [];
    const x = columnX(place);
    const foot = top(place) + BOX.height;
    return [
      `<path class="line" d="M${x} ${foot + 6}V${rowY(Math.max(...importers))}"/>`,
      `<path class="head" d="M${x} ${foot}l4 8h-8z"/>`,
    ];
  });
}

/** @param {readonly Box[]} boxes @param {readonly Edge[]} edges */
function rows(boxes, edges) {
  return boxes.flatMap((_box, place) => {
    const imported = edges.filter((edge) => edge.from === place).map((edge) => edge.to);
    if (imported.length === 0) return [];
    return [`<path class="line" d="M${left(place)} ${rowY(place)}H${columnX(Math.min(...imported))}"/>`];
  });
}

/** @param {readonly Box[]} boxes @param {number} from @param {number} to */
function dot(boxes, from, to) {
  const words = `${boxes[from]?.name} imports ${boxes[to]?.name}`;
  return `<circle class="dot" cx="${columnX(to)}" cy="${rowY(from)}" r="4"><title>${words}</title></circle>`;
}

/** @param {Box} box @param {number} place */
function box({ name, holds, isRoom }, place) {
  const x = left(place);
  const y = top(place);
  return [
    `<rect class="${isRoom ? 'room' : 'layer'}" x="${x}" y="${y}" width="${BOX.width}" height="${BOX.height}" rx="4"/>`,
    `<text x="${x + BOX.width / 2}" y="${y + 16.5}" text-anchor="middle">${escaped(name)}</text>`,
    `<text class="quiet" x="${x + BOX.width + 10}" y="${y + 16.5}">${escaped(holds)}</text>`,
  ].join('\n');
}

/** @param {number} height */
function legend(height) {
  const y = height - MARGIN - 28;
  return [
    `<circle class="dot" cx="${MARGIN + 6}" cy="${y - 4}" r="4"/>`,
    `<text class="quiet" x="${MARGIN + 18}" y="${y}">A dot: the box at the right end of its line imports the box at the top of its line. Lines that cross without a dot do not meet.</text>`,
    `<rect class="room" x="${MARGIN}" y="${y + 11}" width="12" height="12" rx="2"/>`,
    `<text class="quiet" x="${MARGIN + 18}" y="${y + 22}">a room of the pure core</text>`,
    `<rect class="layer" x="${MARGIN + 170}" y="${y + 11}" width="12" height="12" rx="2"/>`,
    `<text class="quiet" x="${MARGIN + 188}" y="${y + 22}">a layer around it</text>`,
  ];
}

/** @param {readonly Box[]} boxes @param {ReadonlyMap<string, ReadonlySet<string>>} imports */
function described(boxes, imports) {
  return boxes
    .map(({ name }) => {
      const names = boxes.map((other) => other.name).filter((other) => imports.get(name)?.has(other));
      return `${name} imports ${names.join(', ') || 'nothing'}.`;
    })
    .join(' ');
}

const escaped = (/** @type {string} */ text) =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
