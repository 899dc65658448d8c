import { wordsIn } from './language.js';

/** What a winder is asked and offered while the machine is dialled in; what to do is said by the contract's own words. */
export const DIAL_IN_WORDS = wordsIn({
  en: {
    title: 'What to do',
    position: (position: number) => `What to do at position ${position}`,
    newString: 'New trial string',
    newStringAt: (position: number) => `New trial string, position ${position}`,
    measureIt: 'Measure this string.',
    measureItMore: 'Its readings decide what comes next.',
    sameString: 'once more',
    otherwise: 'Set otherwise',
    otherwiseAt: (position: number) => `Set otherwise, position ${position}`,
    setting: (unit: string) => (unit === '' ? 'What it stands at now' : `What it stands at now, ${unit}`),
    settingAt: (unit: string, position: number) =>
      `What it stands at now at position ${position}${unit === '' ? '' : `, ${unit}`}`,
    settingHint: (least: string, most: string) =>
      `From ${least} to ${most}. It goes with the next string, and the advice learns from it.`,
    asAdvised: 'As advised after all',
    stands: (setting: string) => `It stands at ${setting}.`,
    turns: 'How do its turns lie?',
    seen: { even: 'Even', gaps: 'Gaps', overlaps: 'Overlaps' },
    traverse: 'Traverse',
    dialIs: (dial: string) => `On the dial: ${dial}.`,
    letRun: 'Let it run',
    starting:
      'The machine’s record does not say how its knob behaves: the first steps start from a rough guess.',
    noPast: 'Past runs could not be fetched: the advice leans on these strings alone.',
    setAt: (setting: string, unit: string) => `set to ${setting} ${unit}`.trim(),
    byHand: (setting: string) => `${setting}, own`,
  },
});

/** The room where new winders dial in machines that are only reckoned. */
export const PRACTICE_WORDS = wordsIn({
  en: {
    door: 'Practise dialling in',
    title: 'Practise dialling in',
    lead: 'A simulated machine behaves as a real one does: strings differ, the knob is not exact, the micrometer errs. Nothing here is written into the books of the shop.',
    which: 'Which machine?',
    kinds: {
      'new-servo': ['New servo machine', 'one string, fine steps'],
      'servo-two-positions': ['Servo machine, two at once', 'each position for itself'],
      'old-gearbox': ['Old gearbox', 'lost motion, coarser steps'],
      'worn-gearbox': ['Worn gearbox', 'more lost motion than it should have, and it drifts'],
      'coarse-dial': ['Coarse dial', 'a step moves the string by a good bit'],
      'gearbox-two-positions': ['Gearbox, two at once', 'lost motion at each position'],
      'wrong-response': ['Unknown response', 'it may follow more or less than expected'],
      'strings-astray': ['Strings astray', 'now and then one is wild, or misread'],
      'restless-wire': ['Restless wire', 'now and then all jumps'],
    },
    back: 'Back to my machine',
    other: 'Another machine',
    again: 'Another run on this machine',
    aim: (wanted: string, within: string) => `Wanted: a mean diameter of ${wanted}, within ${within}.`,
    showAdvice: 'Show the advice',
    measured: 'Strings so far',
    none: 'No string yet. Set the machine and wind one.',
    string: 'String',
    position: 'Position',
    setTo: 'Set to',
    places: 'At three places',
    mean: 'Off by',
    off: (size: string, isThick: boolean) => `${size} too ${isThick ? 'thick' : 'thin'}`,
    measureAgain: 'Measure it again',
    undo: 'Undo the last string',
    end: 'How it went',
    strings: (own: number, advised: number) =>
      `You wound ${own === 1 ? 'one string' : `${own} strings`}. By the advice it would have been ${advised === 1 ? 'one' : advised}.`,
    advisedStops: (own: number) =>
      `You wound ${own === 1 ? 'one string' : `${own} strings`}. By the advice the machine would have been stopped.`,
    good: (share: string, position: number | undefined) =>
      position === undefined
        ? `Of the run ${share} would be good.`
        : `Of the run at position ${position} ${share} would be good.`,
    needsAll: 'A string of every position first.',
  },
});
