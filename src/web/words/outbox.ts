import { wordsIn } from './language.js';

const entries = (count: number) => (count === 1 ? '1 entry' : `${count} entries`);
const goes = (count: number) => (count === 1 ? 'goes' : 'go');

/** What is entered on the floor, on its way to the shop. */
export const OUTBOX_WORDS = wordsIn({
  en: {
    region: 'Line to the shop',
    online: 'On line',
    offline: 'No line',
    allSent: 'All that was entered here is with the shop.',
    onTheWay: (count: number) => `${entries(count)} on the way to the shop.`,
    keptHere: (count: number) =>
      count === 0
        ? 'Go on working: what you enter is kept on this screen and sent when the line is back.'
        : `${entries(count)} kept on this screen; ${count === 1 ? 'it goes' : 'they go'}, in order, when the line is back.`,
    refusedCount: (count: number) => `${entries(count)} refused. You decide.`,
    ofOthers: (count: number, names: string) =>
      `${entries(count)} of ${names} ${count === 1 ? 'waits' : 'wait'} here until they sign in.`,
    show: 'Show what waits',
    hide: 'Hide what waits',
    listTitle: 'What waits on this screen',
    states: {
      waiting: 'waits',
      held: 'can still be taken back',
      sending: 'on its way',
      refused: 'refused',
      stopped: 'waits behind a refused one',
      other: 'waits for its person',
      done: 'with the shop',
    },
    enteredAt: (time: string) => `entered ${time}`,
    refusedTitle: (label: string) => `Refused: ${label}`,
    behind: (count: number) =>
      `${entries(count)} about the same ${count === 1 ? 'waits' : 'wait'} behind it and ${goes(count)} on once this is settled.`,
    changedMeanwhile: (version: number) =>
      `Someone changed it meanwhile; it is at version ${version} now. Look at it, then say whether yours is to be done upon what stands now.`,
    sendAgain: 'Send again',
    sendUpon: 'Do it upon what stands now',
    mend: 'Mend it',
    takeBack: 'Take back',
    discard: 'Discard it',
    discardTitle: 'Discard this entry?',
    discardMore: (label: string) =>
      `“${label}” will not be sent, and is gone from this screen. The shop never had it.`,
    discardBehind: (count: number) =>
      `${entries(count)} about the same ${goes(count)} on without it: look whether they still hold.`,
    goneAlready: 'It is on its way to the shop already, and cannot be taken back here.',
    undo: (what: string) => `Undo: ${what}`,
    undoNothing: 'Nothing to undo',
    undone: {
      'not-sent': (what: string) => `Taken back: ${what}`,
      voided: (what: string) => `Taken back: ${what}. The shop keeps both, and counts it no more.`,
      'too-late': (what: string) => `${what} went to the shop meanwhile. Take it back in the list.`,
    },
    counts: 'Counted so far, the last first',
    showCounts: (count: number) => `Show what was counted so far (${count})`,
    enteredBy: (who: string, when: string) => `${who}, ${when}`,
    voids: (what: string) => `Taken back: ${what}`,
    slip: 'a slip of the hand',
    soundOn: 'Sound is on',
    soundOff: 'Sound is off',
  },
});
