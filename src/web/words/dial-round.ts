import { wordsIn } from './language.js';

/** Measuring what the numbers of a machine's dial give. */
export const DIAL_ROUND_WORDS = wordsIn({
  en: {
    what: 'what was measured of this dial',
    noMachine: 'a winding machine to measure',
    door: 'Measure its dial',
    doorPull: 'Measure its tension scale',
    titles: {
      traverse: (machine: string) => `Measure the dial of ${machine}`,
      pull: (machine: string) => `Measure the tension scale of ${machine}`,
    },
    otherDial: { traverse: 'The dial of its traverse', pull: 'Its tension scale' },
    back: 'Back to my machine',

    beginTitle: 'Begin a round',
    lead: {
      traverse:
        'Number by number: come up to it, read the rule, count the turns asked for, read again. Take the wire off and lock the guards as for any setting-up.',
      pull: 'Number by number: come up to it, hook the hanging scale into the wrap wire, pull until it runs, and read while it runs.',
    },
    from: 'Lowest number',
    to: 'Highest number',
    count: 'How many numbers',
    error: {
      traverse: 'One reading of the rule may be off by, mm',
      pull: 'One reading of the scale may be off by, N',
    },
    errorHint: {
      traverse: 'One standard deviation: about a third of the finest line, read with care',
      pull: 'One standard deviation: about a third of the finest line; lbf, kg and g can be written',
    },
    share: 'Traverse wanted to within, %',
    shareHint: 'One standard deviation of one reading; it decides how many turns are counted',
    begin: 'Begin',
    begun: (machine: string) => `Begin measuring a dial of ${machine}`,

    instruments: { traverse: 'Steel rule', pull: 'Hanging scale' },
    instrument: 'Read with',
    reading: (dial: string) => `Read at ${dial}`,
    left: (done: number, foreseen: number) => `${done} read, ${foreseen} foreseen.`,
    why: {
      first: '',
      again: 'Once more from the bottom: repeats tell how well it is read.',
      apart: 'Its readings do not agree: one more decides.',
      against: 'It goes against its neighbours: once more.',
      'unlike-before': 'It has moved otherwise than the others: once more.',
    },
    comeUp: (dial: string, below: string | undefined) =>
      below === undefined
        ? `Turn up to ${dial}.`
        : `Turn back to ${below} or to the stop, then come up to ${dial}.`,
    turn: (turns: number) => `Turn the spindle ${turns} times.`,
    startField: 'Where the guide stands',
    endField: 'Where the guide stands now',
    ruleHint: 'By the rule, in mm; then Enter',
    pullField: 'Pull on the scale',
    pullHint: 'In N; lbf, kg and g can be written; then Enter',
    turnsField: 'Turns counted',
    turnsWhy: ({
      turns,
      travel,
      share,
      isEnough,
    }: {
      readonly turns: number;
      readonly travel: string;
      readonly share: string;
      readonly isEnough: boolean;
    }) =>
      isEnough
        ? `${turns} turns, about ${travel}, read to ${share} %.`
        : `${turns} turns are all that the travel allows, about ${travel}: read to ${share} % only.`,
    enter: 'Enter',
    startAgain: 'Read the start again',
    entered: (dial: string) => `Reading at ${dial}`,

    done: 'Measured',
    doneMore: 'Every number is read, and no reading asks for another.',
    adopt: 'Set the machine by this table',
    adopted: 'The machine is set by the measured table from now on.',
    ownerAdopts: 'An owner looks at it and sets the machine by it.',
    drop: 'Give this round up',
    waitsForLine: 'Readings wait on this screen. It can be settled once the shop has them.',
    inForceSince: (who: string, when: string) =>
      `The table in force was measured and adopted by ${who}, ${when}.`,
    putBack: 'Put the table before it back',

    resultTitle: 'What the readings say',
    spread: (percent: string) =>
      `One reading of this dial is off by ${percent} % (one standard deviation), the setting of the hand included.`,
    moved: (percent: string, u: string) =>
      `It gives ${percent} % otherwise than the table in force says, on average (± ${u} %).`,
    notMoved: (percent: string, u: string) =>
      `No number has provably moved since the table in force (${percent} ± ${u} % on average).`,
    unsettled: (dials: string) => `Readings never came to agree at ${dials}.`,
    against: (dials: string) =>
      `Against the direction of the others by more than the readings may be off: ${dials}.`,
    merged: (count: number) =>
      count === 1
        ? 'One number could not be told from its neighbour and is left out of the table.'
        : `${count} numbers could not be told from their neighbours and are left out of the table.`,
    method:
      'Line: the nearest table that keeps one direction (isotonic least squares, Ayer et al. 1955). Dots: every reading; open ones are struck out or set aside. Broken line: the table in force.',
    pictureName: (readings: number, worst: string) =>
      `${readings} readings against the fitted table; those that count are off it by ${worst} % at most.`,
    axisDial: 'number →',
    axisOff: '↑ off the fit, %',
    columns: {
      dial: 'Number',
      value: { traverse: 'Mean, mm a turn', pull: 'Mean, N' },
      u: 'Known to, %',
      fitted: { traverse: 'Fitted, mm a turn', pull: 'Fitted, N' },
      off: 'Off the fit, %',
      moved: 'Moved since, %',
      read: 'Read',
      instrument: 'With',
      who: 'By',
      counts: 'Counts',
    },
    readings: { traverse: 'Every reading of turns and travel', pull: 'Every reading of the pull' },
    pullRead: (newtons: string) => `${newtons} N`,
    travelRead: (turns: number, start: string, end: string) => `${turns} turns, ${start} to ${end} mm`,
    whoWhen: (who: string, when: string) => `${who}, ${when}`,
    counts: 'counts',
    aside: 'set aside',
    struck: 'struck out',
    strike: 'Strike out',
    unstrike: 'Let it count',
    strikeIt: (dial: string) => `Strike out the reading at ${dial}`,
    unstrikeIt: (dial: string) => `Let it count: the reading at ${dial}`,
  },
});
