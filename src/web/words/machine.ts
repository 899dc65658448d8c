import { wordsIn } from './language.js';

/** What is wrong with a string that is thrown away, as the shop says it. What is chosen is kept with the string, in these words. */
export const SCRAP_WORDS = wordsIn({
  en: {
    wound: ['gap in the wrap', 'turns ride up', 'end slipped', 'rough wrap', 'kinked core', 'diameter off'],
    plain: ['end slipped', 'kinked', 'rust spot', 'diameter off'],
    dialling: 'dialling in',
  },
});

/** The winder's room. */
export const MACHINE_WORDS = wordsIn({
  en: {
    title: 'My machine',
    what: { shop: 'the shop', machines: 'the machines', runs: 'the runs of this machine' },
    whichMachine: 'Which machine is this?',
    whichMachineMore: 'This screen remembers it.',
    otherMachine: 'Another machine',
    runsNow: (string: string) => `runs: ${string}`,
    stoodStill: (string: string) => `stands still: ${string}`,
    nextUp: (string: string) => `next: ${string}`,
    thenUp: (gauges: readonly string[], more: number) =>
      `then ${gauges.join(', ')}${more > 0 ? ` and ${more} more` : ''}`,
    nothingUp: 'nothing planned',
    positions: (count: number) => (count === 2 ? 'two strings at once' : 'one string at a time'),
    noMachines: 'The shop has no machine yet. Whoever keeps the shop enters it under Shop.',
    enterMachine: 'Enter a machine',
    underWay: 'On the machine',
    next: 'Next',
    after: 'After that',
    nothingPlanned:
      'Nothing is planned for this machine. Whoever settles the day’s plan gives it its runs, and they appear here by themselves.',
    moreRuns: (count: number) => `Show ${count} more`,
    wanted: (count: string) => `${count} good strings wanted`,
    due: (date: string) => `due ${date}`,
    open: 'Open',
    states: {
      planned: 'Planned',
      running: 'Running',
      paused: 'Paused',
      closed: 'Closed',
      abandoned: 'Given up',
    } as Readonly<Record<string, string>>,
    onTheWay: 'not yet with the shop',
    backToRuns: 'All runs of this machine',
    recipe: (name: string) => `recipe ${name}`,
    otherRecipe: (was: number, now: number) =>
      `The recipe is at version ${now} now; this run was set up by version ${was}. The sheet is that of version ${now}.`,
    steps: {
      sheet: 'Set-up sheet',
      spools: 'Spools',
      ends: 'Ends',
      strings: 'First strings',
      count: 'Count',
      close: 'Close',
    },
    stepsOf: 'Steps of the run',
    pause: 'Pause',
    resume: 'Go on',
    paused: (run: string) => `Paused ${run}`,
    resumed: (run: string) => `Going on with ${run}`,
    noSheet: 'There is no set-up sheet: the recipe of this run is not among those in use.',
    cannotWind: 'This machine cannot make the string as its recipe stands. It:',
    toSpools: 'On to the spools',
    goodOf: (good: string, wanted: string) => `${good} of ${wanted} good`,
    runOver: 'This run is over.',
    lotIs: (good: string, scrap: string) =>
      `${good} good, ${scrap} scrap. The strings wait to be coiled and looked at.`,
    nextRun: (string: string) => `Next run: ${string}`,
  },
});

/** Cautions where a hand is about to act. */
export const CAUTION_WORDS = wordsIn({
  en: {
    first: (machine: string) =>
      `Your first run at ${machine}: read these, then say so once. The shop writes down that you did. Where local rules or your training say more, they go first.`,
    again: (machine: string) =>
      `It is long since you were at ${machine}, or the words have changed: read these, then say so.`,
    more: 'This kind of run brings cautions that you have not read at this machine: those marked as new.',
    read: 'I have read them',
    entered: (machine: string) => `Cautions read at ${machine}`,
    known: 'you have read them at this machine',
    show: 'Show the cautions in full',
    hide: 'Close the cautions',
  },
});

/** Spools on and off. */
export const SPOOL_WORDS = wordsIn({
  en: {
    mountTitle: 'Put the wire on',
    scan: 'Scan the spool',
    scanHint: 'Scan its label, or type its name or lot and press Enter. Or touch it below.',
    needs: 'Wire that this run takes',
    core: 'core',
    wrap: 'wrap',
    plain: 'wire',
    missing: 'still missing',
    on: 'on the machine',
    weighed: (weight: string, when: string) => `${weight} with its wire, weighed ${when}`,
    takeOff: 'Take off again',
    choose: (wire: string) => `Spools of ${wire} on the shelf`,
    none: (wire: string) => `No spool of ${wire} is on the shelf.`,
    handsCaution: 'Spindle at rest and locked out while you thread wire. Hold both ends: wire springs.',
    start: 'Start the run',
    startUnread: 'Read the cautions above first, and say so.',
    startLacks: (wires: string) => `Still missing: ${wires}.`,
    started: (run: string) => `Started ${run}`,
    wrongWire: 'Wrong wire',
    wrongWireMore: (spool: string, wire: string, wanted: string) =>
      `“${spool}” is ${wire}. This run takes ${wanted}. Leave it off the machine.`,
    unknown: 'Not a spool of the shop',
    unknownMore: (text: string) =>
      `Nothing of the shop is called “${text}”. Look at the label and scan again.`,
    several: 'Several spools',
    severalMore: (lot: string) =>
      `Lot ${lot} is on several spools. Scan the name, or touch the one that you hold.`,
    notUsable: 'Not to be used',
    unusable: {
      quarantined: (spool: string) => `“${spool}” is in quarantine. Leave it off the machine.`,
      empty: (spool: string) => `“${spool}” is written off as empty. Weigh it in again if it is not.`,
      elsewhere: (spool: string) => `“${spool}” is on another machine by the books.`,
      already: (spool: string) => `“${spool}” is on this run already.`,
    },
    accepted: 'Right wire',
    acceptedMore: (spool: string, wire: string) => `“${spool}”, ${wire}.`,
    changeTitle: 'Change a spool',
    changeLead: 'First the full spool, then the weight of the one that comes off.',
    onNow: 'On the machine now',
    newSpool: (name: string) => `New: ${name}`,
    comesOff: (name: string) => `Comes off: ${name}`,
    whichOff: 'Which one comes off?',
    oldWeight: 'Weight of the spool that comes off, with what is left on it',
    weightHint: (last: string) => `kg or g. At its last weighing: ${last}.`,
    change: 'Change it',
    changed: (from: string, to: string) => `Spool ${from} off, ${to} on`,
    never: 'Start over',
  },
});

/** What a machine is really set to for a run. */
export const SETTINGS_WORDS = wordsIn({
  en: {
    title: 'What it is set to',
    lead: 'Written down once the strings are good, it tells later runs where to begin. What is left empty is not said.',
    written: 'Written down. What is changed here is written anew.',
    core: 'Core tension, N',
    tension: (layer: number | undefined) =>
      layer === undefined ? 'Wrap tension, N' : `Tension of layer ${layer}, N`,
    number: (layer: number | undefined) =>
      layer === undefined
        ? 'Wrap tension, number on the scale'
        : `Tension of layer ${layer}, number on the scale`,
    rpm: (layer: number | undefined) =>
      layer === undefined ? 'Spindle, turns a minute' : `Spindle for layer ${layer}, turns a minute`,
    write: 'Write it down',
    entered: 'What the machine is set to',
  },
});

/** Trial strings and their measurements. */
export const STRINGS_WORDS = wordsIn({
  en: {
    title: 'First strings',
    lead: (strings: number, places: number, turns: number) =>
      `Wind ${strings} strings and measure each at ${places} places, ${turns} turns of the string at each, before the rest is made.`,
    newString: 'New trial string',
    newStringAt: (position: number) => `New trial string, position ${position}`,
    entered: (number: number) => `Trial string ${number}`,
    stringIs: (number: number) => `String ${number}`,
    stringAt: (number: number, position: number) => `String ${number}, position ${position}`,
    none: 'No trial string yet. Wind one, then press the button and measure it.',
    measuring: (string: string) => `Measuring ${string}`,
    now: (place: string, turn: number) => `${place} from the end, string turned to ${turn}°`,
    nowShort: (place: string, turn: number) => `${place}, ${turn}°`,
    placeOn: (mm: string, inches: string | undefined) =>
      inches === undefined ? `${mm} mm` : `${mm} mm (${inches} in)`,
    nowWeight: 'Weight of the whole string',
    field: 'Reading',
    fieldHint: (unit: string, expected: string) =>
      `In ${unit}, digits and Enter. The sheet expects about ${expected}.`,
    weightHint: (expected: string) => `In g, digits and Enter; Enter alone leaves it out. About ${expected}.`,
    left: (done: number, all: number) => `${done} of ${all} readings`,
    again: 'Measure again',
    enteredReading: (what: string, value: string) => `${what}: ${value}`,
    micrometer: 'Micrometer',
    micrometerName: 'Which micrometer',
    micrometerNameHint: 'As it is marked. This screen remembers it.',
    firstName: 'micrometer',
    scaleName: 'scale',
    unitOf: 'The micrometer shows',
    units: { in: 'inches', mm: 'millimetres' },
    unreadable: (text: string) => `“${text}” is not a number. Nothing was written.`,
    notLike: 'Look again',
    asked: (typed: string, expected: string) =>
      `“${typed}” was typed; that is far from the ${expected} that the sheet expects. Which is it?`,
    take: (value: string) => `It is ${value}`,
    measureAnew: 'Measure again',
    byUnit: {
      in: (n: string) => `${n} in`,
      thou: (n: string) => `${n} thou`,
      mm: (n: string) => `${n} mm`,
      g: (n: string) => `${n} g`,
      kg: (n: string) => `${n} kg`,
    },
    mean: 'Mean',
    meanOf: (string: string) => `Mean of ${string}`,
    meanWhat: 'Mean over the places of this string, each the mean of its turns.',
    meanSource: (count: number, expected: string) =>
      `Your own readings (n = ${count}). Expected by the set-up sheet: ${expected}.`,
    inBand: 'in the band',
    above: 'too thick',
    below: 'too thin',
    notYet: 'not measured',
    judge: (string: string) => `Judge ${string}`,
    good: 'Good',
    scrap: 'Scrap',
    verdicts: { open: 'not judged', good: 'good', scrap: 'scrap' },
    showEntered: (string: string) => `Show what was entered of ${string}`,
    enteredOf: (string: string) => `Entered of ${string}, the last first`,
    judged: (string: string, verdict: string) => `${string}: ${verdict}`,
    readingsOf: 'Readings of the first strings',
    place: 'From the end',
    weight: 'Weight',
    verdict: 'Verdict',
    string: 'String',
    goOn: 'On to counting',
    runningTitle: 'Measure a string of the run',
    runningLead: 'A check between: one place in the middle, both turns.',
    measureRunning: 'Measure one now',
    measureRunningOf: 'string of the run',
    lastChecks: (count: number) => `${count} readings between so far.`,
  },
});

/** The count of good strings and scrap. */
export const COUNT_WORDS = wordsIn({
  en: {
    title: 'Count',
    box: 'Number and Enter, or a spool',
    boxHint: 'Type the number that stands on a button and Enter. A spool’s label takes you to its change.',
    good: 'Good',
    goodTwo: 'Two good',
    scrapTitle: 'Scrap, by reason',
    other: 'Another reason',
    otherField: 'What is wrong with it',
    enterScrap: 'Count it as scrap',
    goodLabel: (count: number, run: string) =>
      `${count === 1 ? 'Good string' : `${count} good strings`}, ${run}`,
    scrapLabel: (reason: string, run: string) => `Scrap: ${reason}, ${run}`,
    goodSoFar: 'Good so far',
    scrapSoFar: 'Scrap so far',
    left: 'Still to make',
    enough: 'Enough are made.',
    toClose: 'On to closing the run',
    explainGood: 'Counted good strings, and trial strings that were judged good.',
    explainScrap: 'Counted scrap, and trial strings that were judged scrap.',
    explainLeft: 'Good strings wanted, less those made.',
    explainLeftFormula: 'wanted − good',
    tallied: 'counted',
    trials: 'trial strings',
    source: 'This run’s own count, entries still on this screen included.',
    wanted: 'wanted',
    noSuchNumber: (text: string) => `“${text}” is neither a number on a button nor a spool on the shelf.`,
  },
});

/** The end of a run. */
export const CLOSE_WORDS = wordsIn({
  en: {
    title: 'Close the run',
    lead: 'Look over the counts, weigh what you can, say where the strings lie.',
    good: 'Good strings',
    goodHint: (counted: string) => `Counted: ${counted}.`,
    scrap: (reason: string) => `Scrap: ${reason}`,
    noScrap: 'No scrap was counted.',
    bin: 'Bin',
    binHint: 'Where the strings are laid.',
    scanBin: 'Scan the bin',
    scanBinHint: 'Or type its name and press Enter.',
    chooseBin: 'Choose a bin',
    binsOfKind: 'Bins of this string',
    binsFree: 'Bins for any string',
    binWrong: (bin: string) => `“${bin}” is for other strings. Take one of the list.`,
    binUnknown: (text: string) => `No bin is called “${text}”.`,
    spools: 'Spools, weighed with their wire',
    spoolsHint:
      'In kg, or with g behind it. Of a spool that is not weighed the use is computed from the recipe.',
    lastWeighed: (last: string) => `At its last weighing: ${last}`,
    neverWeighed: 'Never weighed',
    lotName: (run: string) => (run.includes('run') ? run.replace('run', 'lot') : `${run}, lot`),
    close: 'Close the run',
    needsBin: 'Say in which bin the strings lie.',
    closed: (run: string) => `Closed ${run}`,
    handsCaution: 'Spindle at rest before you take spools off. Wire springs when it is cut.',
    giveUp: 'Give the run up',
    giveUpTitle: 'Give this run up?',
    giveUpMore: 'Its strings so far are not taken in as a lot, and the run cannot be taken up again.',
    giveUpWhy: 'Why',
    gaveUp: (run: string) => `Gave up ${run}`,
  },
});
