/** What an invented player writes, and what the adviser reads out of it, in the words of an orders file. */
export interface RequestLetter {
  readonly player: string;
  readonly letter: string;
  readonly quantity: string;
  readonly wanted: Readonly<Record<string, string>>;
}

const PLATED = 'nickel-plated steel';
const SIX = 'Meadow six, 10';

/** Letters of nobody. They come round in this order through the year. */
export const REQUEST_LETTERS: readonly RequestLetter[] = [
  {
    player: 'Ilovo Marrowholt',
    letter:
      'My guitar lives in open D now and the tens feel like rubber bands. Can it feel as it did in standard?',
    quantity: '2',
    wanted: { instrument: 'electric 25.5', tuning: 'open D', likes: SIX, material: PLATED },
  },
  {
    player: 'Fensel Quarrelbeck',
    letter:
      'I bought a baritone, 27 inches, and want it in open B. It should feel like the tens on my other guitar.',
    quantity: '1',
    wanted: { instrument: 'baritone 27', tuning: 'open B baritone', likes: SIX, material: PLATED },
  },
  {
    player: 'Gwidra Coppercroft',
    letter: 'D A D G A D all week long, a little more under the thumb please. The rest may stay as it is.',
    quantity: '3',
    wanted: {
      instrument: 'electric 25.5',
      tuning: 'D A D G A D',
      likes: SIX,
      material: PLATED,
      wishes: 'heavier bass 5 %',
    },
  },
  {
    player: 'Cormin Winnowstead',
    letter:
      'Half a step down, short scale, and I would like to hear what pure nickel does. Same feel as now.',
    quantity: '1',
    wanted: { instrument: 'electric 24.75', tuning: 'half step down', likes: SIX, material: 'pure nickel' },
  },
  {
    player: 'Halris Fallowmere',
    letter: 'Slide on an acoustic in open G, bronze. The twelves that you make are right in standard tuning.',
    quantity: '2',
    wanted: {
      instrument: 'acoustic 25.4',
      tuning: 'open G',
      likes: 'Hazel bronze, 12',
      material: 'phosphor bronze',
    },
  },
  {
    player: 'Emisel Thistleley',
    letter: 'A seven-string with slanted frets, 25.5 to 27. I know your tens for seven and like them.',
    quantity: '1',
    wanted: {
      scale: '25.5-27 in',
      tuning: 'standard seven',
      likes: 'Slate seven, 10',
      material: PLATED,
    },
  },
  {
    player: 'Amanek Underbeck',
    letter: 'Please give all eight strings the same pull, about what a wound fourth has. 26 to 28 inches.',
    quantity: '1',
    wanted: {
      scale: '26-28 in',
      tuning: 'standard eight',
      likes: 'Slate eight, 10',
      material: PLATED,
      wishes: 'even 72 N',
    },
  },
  {
    player: 'Jorvo Barleymere',
    letter: 'Lowest note C, and I hit hard. The elevens are fine as long as I stay in standard.',
    quantity: '2',
    wanted: {
      instrument: 'electric 25.5',
      tuning: 'C G C F A D',
      likes: 'Meadow six, 11',
      material: PLATED,
    },
  },
  {
    player: 'Brila Thistleholt',
    letter: 'Drop D on my acoustic, brass bronze. My first string could be a little easier on the fingers.',
    quantity: '1',
    wanted: {
      instrument: 'acoustic 25.4',
      tuning: 'drop D',
      likes: 'Hazel bronze, 12',
      material: '80/20 bronze',
      wishes: 'lighter treble 5 %',
    },
  },
];
