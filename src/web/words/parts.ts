import type { AmountFault } from '../parts/read-amount.js';
import { wordsIn } from './language.js';

/** What the parts say that stand in every room. */
export const PARTS_WORDS = wordsIn({
  en: {
    takeBack: 'Take back',
    takeBackOf: (what: string) => `Take back: ${what}`,
    tookBack: (what: string) => `Taken back: ${what}`,
    olderEntries: 'Show older ones',
    closeEntries: 'Close the list',
    askAgain: 'Ask again',
    close: 'Close',
    keepAsIs: 'Leave it as it is',
    undo: 'Undo',
    couldNotFetch: (what: string) => `Could not fetch ${what}`,
    fetching: (what: string) => `Fetching ${what} …`,
    notSettledTitle: 'The shop is not settled yet',
    notSettled:
      'What would stand here is worked out from the shop’s rules and rates: lengths, working days, money. Nobody has entered them yet.',
    toRules: 'Enter rules and rates',
    notSettledYours: 'Whoever keeps the shop enters them under Shop; then this room fills by itself.',
    noNetwork: 'The server does not answer. What is shown may be old.',
    notForYou: 'Not among your rooms',
    notForYouMore: (permission: string) =>
      `This room needs the permission “${permission}”, which none of your roles has. Whoever keeps the people of the shop can change that.`,
    refused: 'Refused',
    howKnown: (name: string) => `How ${name} is known`,
    theirVersion: 'As it stands now',
    yourVersion: 'As you would have it',
    changedMeanwhile: 'Someone changed it meanwhile. Nothing of yours was written.',
    writeYours: 'Write mine over it',
    takeCurrent: 'Take what stands now',
    field: 'Field',
    differs: '▲ differs',
    whetherDiffers: 'Whether it differs',
    amountFault: (fault: AmountFault, unit: string) => {
      if (fault.code === 'unreadable') return 'Not a number. Figures with a point or a comma, such as 4.25.';
      if (fault.code === 'unit') return `“${fault.unit}” is no unit for this.`;
      if (fault.code === 'whole') return 'A whole number.';
      return `From ${fault.least} to ${fault.most}${unit === '' ? '' : ` ${unit}`}.`;
    },
    byScript: 'a script',
    byConsole: 'the console',
    bySomebody: 'somebody',
    more: 'Show more',
    rows: (shown: number, all: string) => `${shown} of ${all}`,
    nothingFound: 'Nothing found',
    nothingHere: 'Nothing here',
    nothingAtAddress: 'There is nothing at this address.',
    backToDay: 'Back to the day',
    brokenTitle: 'This room cannot be shown',
    broken:
      'Something inside Tautwork went wrong here. Nothing of yours was written by it, and the other rooms work.',
    brokenAgain: 'Try once more',
    brokenWhat: (message: string) => `For whoever mends it: ${message}`,
    seenAs: (title: string) => `${title}: seen as`,
    cutAlong: (section: string) => `Cut along the string. ${section}`,
    picture: 'Picture',
    table: 'Table',
  },
});
