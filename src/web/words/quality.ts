import type { Grouping, Measure } from '../../core/quality/index.js';
import { wordsIn } from './language.js';

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;
const inRuns = (count: number): string => counted(count, 'run', 'runs');

interface Range {
  readonly from: string;
  readonly to: string;
}

/** The room in which the shop sees how its strings come out, and why. */
export const QUALITY_WORDS = wordsIn({
  en: {
    title: 'Quality',
    lead: 'What the shop’s own measurements say: first what has changed and why, then every figure it rests on, down to one string and its spools.',
    what: 'the quality of the shop',
    nothing: 'No run of this period fits. Widen the period, or show everything.',

    findings: {
      title: 'What the numbers say now',
      none: (from: string) =>
        `Since ${from} no machine drifts, no instrument reads otherwise than it did, and no lot of wire stands out, as far as the numbers can tell.`,
      look: (name: string) => `Look at ${name}`,
      machine: (name: string, isThicker: boolean, since: string) =>
        `${name}: its first strings grow ${isThicker ? 'thicker' : 'thinner'} since ${since}.`,
      machineBy: ({ rate, from, to, soFar, runs }: Range & { rate: string; soFar: string; runs: number }) =>
        `By ${rate} every hundred days (${from} to ${to}, nine times in ten), ${soFar} so far. ${inRuns(runs)}, each by its first string, wound as the sheet says before anybody turned anything; what instruments read wrong is taken out.`,
      machineToDo: (verdict: 'drifts' | 'replace', days: number | undefined) =>
        verdict === 'replace'
          ? `${days === undefined || days === 0 ? 'The tolerance is used up' : `At that rate the tolerance is used up in ${counted(days, 'day', 'days')}`}. Look at its gears or its drive; measure the dial table anew when they are changed.`
          : 'There is time to plan for it. Look at its gears or its drive at the next stop.',
      lotAlong: (lot: string) => `${lot}: strings of it vary more along their length.`,
      lotAlongBy: ({ value, from, to, runs, lots }: Range & { value: string; runs: number; lots: number }) =>
        `${value} times as much (${from} to ${to}) as strings of the same recipes by other wire. ${inRuns(runs)}; the clearest of ${counted(lots, 'lot', 'lots')} looked at.`,
      lotWeight: (lot: string, isHeavier: boolean) =>
        `${lot}: strings of it weigh ${isHeavier ? 'more' : 'less'} than their recipes say.`,
      lotWeightBy: ({
        value,
        from,
        to,
        runs,
        lots,
        isHeavier,
      }: Range & { value: string; runs: number; lots: number; isHeavier: boolean }) =>
        `${value} ${isHeavier ? 'more' : 'less'} (${from} to ${to}) than strings of all other wire. ${inRuns(runs)}; the clearest of ${counted(lots, 'lot', 'lots')} looked at.`,
      lotToDo:
        'Measure the wire itself at ten places. If it is uneven or off its certificate, hold its spools and write to the maker.',
      toSpools: 'Its wire and spools',
      instrument: (name: string, isLarger: boolean, since: string) =>
        `${name} reads ${isLarger ? 'larger' : 'smaller'} than the others since ${since}.`,
      instrumentBy: ({
        by,
        from,
        to,
        runsBefore,
        runsSince,
      }: Range & { by: string; runsBefore: number; runsSince: number }) =>
        `By ${by} (${from} to ${to}), in runs that were measured with another as well: ${runsBefore} before, ${runsSince} since. Machine, recipe and wire are the same for all strings of a run.`,
      instrumentToDo:
        'Check it on a gauge pin or block before it measures again; clean its faces. Strings that were adjusted by it are off by as much the other way.',
      method: (from: string, until: string) =>
        `From ${from} to ${until}, the whole shop. Causes only: machines, instruments, wire. Each is told only where chance would say as much less than once in a hundred times, all that were looked at taken together.`,
    },

    filter: {
      title: 'Which runs',
      machine: 'Machine',
      recipe: 'Recipe',
      lot: 'Wire lot',
      instrument: 'Measured with',
      all: { machine: 'All machines', recipe: 'All recipes', lot: 'All wire', instrument: 'All instruments' },
      from: 'From',
      until: 'Until',
      mine: 'Only what I wound',
      everything: 'Show everything',
    },

    facts: {
      runs: 'Runs',
      readings: (count: string) => `${count} measurements`,
      firstPass: 'Right the first time',
      firstPassOf: (right: string, wound: string, range: string) => `${right} of ${wound} strings; ${range}`,
      noneClosed: 'no run was closed yet',
      capability: 'Keeps within tolerance',
      atLeast: (value: string) => `Ppk ${value} or better`,
      capabilityOf: (value: string, tolerance: string, runs: string) =>
        `best guess ${value}, of ± ${tolerance}, ${runs} runs`,
      tooFew: 'fewer than ten measured runs',
      off: 'Running strings off by',
      spread: (sigma: string) => `standard deviation ${sigma}`,
      notKnown: 'not known',
      how: {
        firstPass: {
          what: 'Strings that came through winding and coiling without being thrown away, over all that were wound, in runs that were closed.',
          source: 'Counts of the floor; exact 95 % interval (Clopper and Pearson 1934).',
        },
        capability: {
          what: 'Distance from the mean to the nearer limit over three standard deviations. 1.33 is commonly asked for; below 1 the process does not fit the tolerance.',
          formula: 'Ppk = min(U − m, m − L) / 3 s',
          source: 'All strings but the first of each run; 95 % bound (Bissell 1990), by the number of runs.',
        },
      },
    },

    series: {
      titles: {
        first: 'First strings, off by',
        running: 'Running strings, off by',
        along: 'Spread along the string',
        weight: 'Weight, off by',
      } satisfies Readonly<Record<Measure, string>> as Readonly<Record<Measure, string>>,
      axisUp: {
        first: (unit: string) => `↑ first string less what was wanted, ${unit}`,
        running: (unit: string) => `↑ running strings less what was wanted, ${unit}`,
        along: (unit: string) => `↑ standard deviation along the string, ${unit}`,
        weight: (unit: string) => `↑ weight less what was wanted, ${unit}`,
      } satisfies Readonly<Record<Measure, (unit: string) => string>> as Readonly<
        Record<Measure, (unit: string) => string>
      >,
      measure: 'What is shown of each run',
      none: 'Nothing of this was measured in these runs.',
      pictureName: (points: number, signals: number) =>
        `${counted(points, 'point', 'points')} in the order of time, ${signals} of them more than chance explains.`,
      point: (date: string, value: string) => `${date}, ${value}`,
      finder: (point: string) => `Open a run of the chart. Arrow keys walk it; now at ${point}`,
      caption: (points: number, areRows: boolean, signals: number, hasTolerance: boolean) =>
        `${counted(points, 'point', 'points')}, ${areRows ? 'several runs in a row each' : 'one a run'}: point at one to open it. Broken lines are three sigma of chance (moving range); a diamond lies outside, or ends nine in a row on one side: ${signals}.${hasTolerance ? ' Long dashes are the tolerance.' : ''}`,
      change: (date: string, before: string, after: string) =>
        `The upright line: the level changed about ${date}, from ${before} to ${after} in the middle (Pettitt 1979).`,
      noChange: 'No lasting change of level is proven.',
      columns: {
        begun: 'Begun, to the run',
        value: 'Figure',
        strings: 'Strings',
        runs: 'Runs',
        signal: 'Chance',
      },
      signal: '◆ not by chance',
    },

    run: {
      what: 'the run',
      title: (name: string) => `Run ${name}`,
      made: (recipe: string, machine: string, at: string, good: number, scrap: number) =>
        `${recipe} on ${machine}, begun ${at}: ${good} good, ${scrap} thrown away.`,
      open: (name: string) => `Open ${name} with its chart and journal`,
      spools: 'Spools that went into it',
      spool: (name: string) => `Spool ${name}`,
      ofLot: (wire: string, lot: string) => `(${wire}, ${lot})`,
      notMeasured: 'No string of it was measured.',
      strings: (name: string) => `Measured strings of ${name}`,
      running: 'running string',
      trial: (number: number) => `trial string ${number}`,
      columns: {
        string: 'String',
        position: 'Position',
        at: 'Measured',
        instrument: 'With',
        off: 'Off by',
        along: 'Spread along it',
        weight: 'Weight off by',
        verdict: 'Called',
      },
      verdicts: { open: 'not judged', good: 'good', scrap: 'scrap' },
    },

    groups: {
      title: 'Compared',
      compareBy: 'Compare by',
      by: {
        machine: 'Machine',
        recipe: 'Recipe',
        lot: 'Wire lot',
        instrument: 'Instrument',
      } satisfies Readonly<Record<Grouping, string>> as Readonly<Record<Grouping, string>>,
      columns: {
        runs: 'Runs',
        mean: 'Mean',
        spread: 'Between runs',
        against: 'Against all others',
        verdict: 'Verdict',
      },
      against: (difference: string, from: string, to: string) => `${difference} (${from} to ${to})`,
      differs: '▲ differs',
      alike: '● no difference shown',
      tooFew: '○ too few',
      method: (groups: number) =>
        `Each against all others (Welch’s t), made good for ${counted(groups, 'comparison', 'comparisons')} at once (Holm): all taken together, one in twenty by chance. That it differs does not say why: a machine may have had the worse wire. The causes stand at the top of the room.`,
    },

    scrap: {
      title: 'Why strings are thrown away',
      none: 'Nothing was thrown away in these runs.',
      untold: 'in setting up, or no reason told',
      columns: {
        reason: 'Reason',
        winder: 'At the machine',
        coiler: 'In coiling',
        together: 'Together',
        cumulative: 'So far, of all',
      },
    },

    hands: {
      title: 'And the hands?',
      unknown:
        'What people do cannot be told from what their machines do here: no machine was worked enough by two of them.',
      none: (winders: number) =>
        `Once machine, recipe, instrument and wire are taken out, nothing is left between the ${winders} winders that chance would not make.`,
      some: (winders: number, share: string) =>
        `Once machine, recipe, instrument and wire are taken out, ${share} of what is left of the scatter lies between the ${winders} winders. Ask what they do differently before anything else: one of them may have found the better way.`,
      method:
        'Running strings; analysis of variance of what is left. The shop keeps no list of people by their figures: each winder can see their own runs.',
    },
  },
});
