import { stringKeyInWords } from '../contract/index.js';
import type { ClockTime, Day, DayRun, MachineDay } from '../core/day/index.js';
import { formatClock, formatFraction } from '../core/units/index.js';
import { GAP, INK, mm, PAGE, RULE, TYPE } from './look.js';
import type { Pages } from './page.js';
import { lineHeight } from './pen.js';

/**
 * The day as one lane for each machine against the clock: setting up is hatched, running is a framed bar, a run
 * that ends late has a heavy frame and says so.
 */
export function drawLanes(pages: Pages, day: Day): void {
  const { pen } = pages;
  const runs = day.plan.runs.filter((run) => run.setUpFrom.date <= day.date && day.date <= run.to.date);
  if (runs.length === 0) {
    pages.paragraph('No machine runs on this day.');
    return;
  }
  const clock = clockOf(runs, day);
  pages.makeRoom(AXIS_HEIGHT + LANE_HEIGHT);
  drawAxis(pages, clock);
  for (const machine of day.plan.machines) {
    if (pages.makeRoom(LANE_HEIGHT)) drawAxis(pages, clock);
    drawName(pages, machine);
    for (const run of runs) {
      if (run.machineId === machine.machineId) drawRun(pages, run, clock);
    }
    pages.y += LANE_HEIGHT;
    pen.ornament(() =>
      pen.rule(pages.here(), { x: pages.left + pages.width, y: pages.y }, RULE.hair, INK.rule),
    );
  }
  pages.y += GAP.small;
  pages.paragraph('Hatched: setting up. Framed: running. Heavy frame: ends late.', TYPE.small);
}

/** The hours that the axis spans, and where on the page a time of this day stands. */
interface Clock {
  readonly fromMinute: number;
  readonly toMinute: number;
  readonly xOf: (time: ClockTime) => number;
}

function clockOf(runs: readonly DayRun[], { date }: Day): Clock {
  const minutes = runs.flatMap((run) => [run.setUpFrom, run.to].filter((time) => time.date === date));
  const from = minutes.length === 0 ? 0 : Math.min(...minutes.map(({ minute }) => minute));
  const goesOn = runs.some((run) => run.to.date > date);
  const last = Math.max(from + 60, ...minutes.map(({ minute }) => minute));
  const fromMinute = Math.floor(from / 60) * 60;
  const toMinute = Math.min(1440, Math.ceil(last / 60) * 60 + (goesOn ? 60 : 0));
  const xOf = (time: ClockTime): number => {
    const minute = time.date < date ? fromMinute : time.date > date ? toMinute : time.minute;
    return LANES.x + ((minute - fromMinute) / (toMinute - fromMinute)) * LANES.width;
  };
  return { fromMinute, toMinute, xOf };
}

function drawAxis(pages: Pages, clock: Clock): void {
  const { pen } = pages;
  const { x, width } = LANES;
  const hours = (clock.toMinute - clock.fromMinute) / 60;
  pen.ornament(() => {
    for (let hour = 0; hour <= hours; hour++) {
      const at = x + (hour / hours) * width;
      const label = { x: at - 20, y: pages.y, width: 40 };
      if (hours <= 14 || hour % 2 === 0) {
        pen.line(formatClock(clock.fromMinute + hour * 60), label, TYPE.small, 'centre');
      }
      pen.rule(
        { x: at, y: pages.y + AXIS_HEIGHT - 3 },
        { x: at, y: pages.y + AXIS_HEIGHT },
        RULE.hair,
        INK.text,
      );
    }
    const y = pages.y + AXIS_HEIGHT;
    pen.rule({ x, y }, { x: x + width, y }, RULE.line, INK.text);
  });
  pages.y += AXIS_HEIGHT;
}

function drawName(pages: Pages, machine: MachineDay): void {
  const { pen } = pages;
  const at = { ...pages.here(), y: pages.y + GAP.small, width: NAME_WIDTH - GAP.part };
  const busy = `${machine.stringsToday} strings, busy ${formatFraction(machine.busyShareToday)}`;
  pen.tag('P', () => {
    const height = pen.lines(machine.name, at, TYPE.smallStrong, { mostLines: 2 });
    pen.line(busy, { ...at, y: at.y + height }, TYPE.small);
  });
}

function drawRun(pages: Pages, run: DayRun, clock: Clock): void {
  const { pen } = pages;
  const y = pages.y + BAR_INSET;
  const height = LANE_HEIGHT - 2 * BAR_INSET;
  const setUpAt = clock.xOf(run.setUpFrom);
  const runAt = clock.xOf(run.runFrom);
  const end = clock.xOf(run.to);
  pen.ornament(() => {
    hatch(pages, { x: setUpAt, y, width: runAt - setUpAt, height });
    pen.fill({ x: runAt, y, width: end - runAt, height }, INK.tint);
    const weight = run.lateMinutes > 0 ? LATE_FRAME : RULE.line;
    pen.box({ x: setUpAt, y, width: end - setUpAt, height }, weight, INK.text);
  });
  const words = [
    run.lotId,
    stringKeyInWords(run.stringKey).short,
    run.lateMinutes > 0 ? `${run.quantity}, late` : String(run.quantity),
  ];
  labelRun(pages, words, { x: runAt + 2, y: y + 1.5, width: end - runAt - 3 });
}

/** Words that do not fit whole are left out: the table of runs has them all. */
function labelRun(pages: Pages, words: readonly string[], at: { x: number; y: number; width: number }): void {
  const { pen } = pages;
  const rows = words.map((text, row) => ({ text, row, style: row === 0 ? TYPE.smallStrong : TYPE.small }));
  const fitting = rows.filter(({ text, style }) => pen.widthOf(text, style) <= at.width);
  if (!fitting.some(({ row }) => row === 0)) return;
  pen.tag('P', () => {
    for (const { text, row, style } of fitting) {
      pen.line(text, { ...at, y: at.y + row * lineHeight(TYPE.small) }, style);
    }
  });
}

/** Slanting lines: told from a tint by any printer. */
function hatch(pages: Pages, area: { x: number; y: number; width: number; height: number }): void {
  if (area.width <= 0) return;
  pages.pen.shape((doc) => {
    doc.rect(area.x, area.y, area.width, area.height).clip();
    for (let x = area.x - area.height; x < area.x + area.width; x += HATCH) {
      doc.moveTo(x, area.y + area.height).lineTo(x + area.height, area.y);
    }
    doc.lineWidth(RULE.hair).strokeColor(INK.text).stroke();
  });
}

const NAME_WIDTH = mm(36);
const LANES = { x: PAGE.left + NAME_WIDTH, width: PAGE.right - PAGE.left - NAME_WIDTH };
const AXIS_HEIGHT = 16;
const LANE_HEIGHT = mm(14);
const BAR_INSET = mm(1.5);
const HATCH = 3.5;
const LATE_FRAME = 2.4;
