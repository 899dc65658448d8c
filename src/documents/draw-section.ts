import { formatTrimmed } from '../core/units/index.js';
import { type CrossSection, crossSection, type SectionSource } from './cross-section.js';
import { INK, pointsFromMetres, RULE, TYPE } from './look.js';
import { type Frame, lineHeight, type Pen } from './pen.js';

/** The string cut across, and beside it cut along, both to the same scale, which stands under them. */
export function drawSection(pen: Pen, source: SectionSource, frame: Frame): void {
  const section = crossSection(source);
  const height = frame.height - lineHeight(TYPE.small);
  const scale = scaleThatFits(section.outsideM, Math.min(height, frame.width * ACROSS_SHARE));
  const points = (lengthM: number): number => pointsFromMetres(lengthM) * scale;
  const middle = frame.y + height / 2;
  const radius = points(section.outsideM) / 2;
  pen.tag(
    'Figure',
    () => pen.shape((doc) => drawAcross(doc, section, { x: frame.x + radius, y: middle }, points)),
    altText(section),
  );
  const along = { ...frame, x: frame.x + 2 * radius + GAP_BETWEEN, y: middle };
  const room = { ...along, width: frame.x + frame.width - along.x };
  pen.ornament(() => pen.shape((doc) => drawAlong(doc, section, room, points)));
  const under = { x: frame.x, y: frame.y + height + 2, width: frame.width };
  pen.tag('P', () => pen.line(`Cut across and along, drawn ${scale} : 1`, under, TYPE.small));
}

type Points = (lengthM: number) => number;
type Centre = { readonly x: number; readonly y: number };

/** Each layer is a disc under the one inside it; the core lies on top. */
function drawAcross(doc: PDFKit.PDFDocument, section: CrossSection, centre: Centre, points: Points): void {
  [...section.layers].reverse().forEach(({ outsideM }, index) => {
    doc.circle(centre.x, centre.y, points(outsideM) / 2);
    doc.lineWidth(RULE.line).fillAndStroke(index % 2 === 0 ? INK.tint : WHITE, INK.text);
  });
  if (section.core.shape === 'round') {
    doc.circle(centre.x, centre.y, points(section.core.diameterM) / 2);
    doc.lineWidth(RULE.line).fillAndStroke(coreInk(section), INK.text);
    return;
  }
  const corners = section.core.corners.map(([x, y]): [number, number] => [
    centre.x + points(x),
    centre.y + points(y),
  ]);
  doc.polygon(...corners).fill(CORE);
}

/** The core as a bar with the turns above and, half a pitch on, below. */
function drawAlong(
  doc: PDFKit.PDFDocument,
  section: CrossSection,
  room: { x: number; y: number; width: number },
  points: Points,
): void {
  const clipHeight = 2 * points(section.outsideM);
  doc.rect(room.x, room.y - clipHeight / 2, room.width, clipHeight).clip();
  const coreHeight = points(coreHeightM(section));
  doc.rect(room.x, room.y - coreHeight / 2, room.width, coreHeight);
  doc.lineWidth(RULE.line).fillAndStroke(coreInk(section), INK.text);
  section.layers.forEach((layer, index) => {
    const pitch = points(layer.pitchM);
    const ink = (section.layers.length - index) % 2 === 1 ? INK.tint : WHITE;
    for (let turn = 0; turn * pitch < room.width + pitch; turn++) {
      for (const side of [-1, 1]) {
        const x = room.x + (turn + (side === 1 ? 0.5 : 0)) * pitch;
        doc.ellipse(
          x,
          room.y + side * points(layer.centreM),
          points(layer.widthM) / 2,
          points(layer.heightM) / 2,
        );
        doc.lineWidth(RULE.line).fillAndStroke(ink, INK.text);
      }
    }
  });
}

/** A plain string is drawn large: solid black would cost ink and show nothing more. */
const coreInk = ({ layers }: CrossSection): string => (layers.length === 0 ? INK.tint : CORE);

const coreHeightM = ({ core, layers }: CrossSection): number =>
  core.shape === 'round' ? core.diameterM : 2 * (layers[0] ? layers[0].centreM - layers[0].heightM / 2 : 0);

/** The largest round scale at which the string still fits. */
function scaleThatFits(outsideM: number, room: number): number {
  const fitting = SCALES.filter((scale) => pointsFromMetres(outsideM) * scale <= room);
  return fitting.at(-1) ?? SCALES[0]!;
}

function altText(section: CrossSection): string {
  const core = section.core.shape === 'hex' ? 'hexagonal core' : 'round core';
  const diameter = `${formatTrimmed(section.outsideM * 1000, 3)} mm over all`;
  if (section.layers.length === 0) return `Section of a plain string, ${diameter}`;
  const layers = section.layers.length === 1 ? 'one layer' : `${section.layers.length} layers`;
  return `Section to scale: ${core} in ${layers} of wrap, ${diameter}`;
}

const SCALES = [5, 10, 15, 20, 25, 30, 40, 50, 60, 80, 100];
const ACROSS_SHARE = 0.5;
const GAP_BETWEEN = 8;
const WHITE = '#ffffff';
const CORE = '#3a3a3a';
