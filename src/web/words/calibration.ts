import type { CalibrationView } from '../../contract/index.js';
import { wordsIn } from './language.js';

type Unknown = CalibrationView['ofAll'][number]['name'];
type Family = CalibrationView['families'][number]['family'];

interface UnknownWords {
  readonly name: string;
  readonly what: string;
  readonly formula: string;
  readonly less: string;
  readonly 'as-believed': string;
  readonly more: string;
}

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;
const inStrings = (count: number): string => counted(count, 'string', 'strings');
const inRuns = (count: number): string => counted(count, 'run', 'runs');

/** The room in which the shop sees what its own strings teach. */
export const CALIBRATION_WORDS = wordsIn({
  en: {
    title: 'What our strings teach',
    lead: 'How wrap sits on core in this shop, from every string that was measured. Nothing here changes how strings are reckoned until someone takes it in.',
    what: 'what our strings teach',
    toRecipes: 'All recipes',
    nothingYet:
      'No string has been measured yet. Measure the first strings of a run: diameter at two rotations, and the weight of one.',
    fromRuns: (runs: string) => `from ${runs} runs`,
    ofAll: (some: number, all: number) => `${some} of ${all}`,
    knownWell: 'known well enough by the rule below',
    calledCalibrated: 'of those measured are called calibrated',
    byWeight: (share: string) => `by weight ${share}`,
    facts: {
      strings: 'Measured strings',
      families: 'Families',
      recipes: 'Recipes',
      string: 'String to string',
      run: 'Set-up to set-up',
    },
    how: {
      string: {
        what: 'Standard deviation of diameter from one string of a run to the next, the micrometer’s own part in it.',
        source:
          'From strings of the same run (analysis of variance; Searle, Casella and McCulloch 1992, ch. 3).',
      },
      run: {
        what: 'Standard deviation of diameter from one set-up by the sheet to another of the same recipe, machine and lots.',
        source:
          'From runs that repeat one another (analysis of variance; Searle, Casella and McCulloch 1992, ch. 3).',
      },
    },
    formerMachine: 'a machine that is gone',
    formerRecipe: 'a retired recipe',
    earlier: (name: string, version: string) => `${name}, version ${version}`,
    family: (core: Family['coreShape'], alloy: string, band: Family['wrapBand']) =>
      `${alloy} ${{ thin: 'to 0.20 mm', middle: 'to 0.35 mm', thick: 'above 0.35 mm' }[band]} on ${core === 'hex' ? 'hexagonal' : 'round'} core`,

    takeIn: {
      title: 'Take it in',
      lead: (now: string, then: string) =>
        then === '0'
          ? `The shop still reckons by what was believed before any string was measured. ${now} wound strings have been measured since.`
          : `The shop reckons by what ${then} measured wound strings taught. There are ${now} now.`,
      noneReady:
        'No recipe on trial meets the rule yet. What was learned of the families can be taken in all the same.',
      which: 'Recipes on trial that meet the rule, to be called calibrated',
      known: (strings: number, runs: number, within: string) =>
        `${inStrings(strings)} from ${inRuns(runs)}, diameter known to ± ${within}`,
      button: 'Take these in',
      count: (recipes: number) =>
        recipes === 0 ? 'No recipe is chosen.' : `${counted(recipes, 'recipe is', 'recipes are')} chosen.`,
      noSettings: 'The shop’s settings must be written down first: that is where it is kept.',
      means: (families: number) =>
        `From now on every string is reckoned by how wrap was found to sit in ${counted(families, 'family', 'families')} of strings. Set-up sheets, sets and predictions change by a little; what was promised or wound before stays as it is written.`,
      recipes: (count: number) => (count === 1 ? 'Called calibrated:' : `Called calibrated, ${count}:`),
      lasting:
        'It cannot be taken back by a touch. It can be taken in anew at any time, and former settings and recipes are kept as versions.',
      confirm: 'Take them in',
      stale:
        'Someone changed the settings or one of these recipes while you were looking. Nothing was written. What stands now has been fetched: look at it, and say so again.',
      lookAgain: 'Go by what stands now',
      done: (recipes: number) =>
        recipes === 0
          ? 'Taken in. Strings are reckoned by it from now on.'
          : `Taken in. ${counted(recipes, 'recipe is', 'recipes are')} called calibrated.`,
    },

    scatter: {
      title: 'Predicted and measured',
      by: 'By',
      quantities: { diameter: 'Diameter', weight: 'Weight' },
      none: 'No string of this family was measured so.',
      family: 'Family',
      allFamilies: 'All families',
      pictureName: (points: number, flagged: number) =>
        `${inStrings(points)}: across what was predicted, up how far off each came out. ${flagged} of them flagged.`,
      caption: (points: number, share: string, more: number) =>
        [
          `Each dot is a measured string; a diamond is one that lies far off. Nine ordinary strings of ten should lie in the grey band (by the spreads above), and ${share} of these ${points} do.`,
          more > 0
            ? `Uprights stand for ${more} older strings: their mean, and one standard deviation to either side.`
            : '',
          'Diameters are of first strings of a run, wound by the sheet; weights are beside the string’s own diameter.',
        ]
          .filter((line) => line !== '')
          .join(' '),
      axisAcross: {
        diameter: (unit: 'in' | 'mm') => `predicted diameter, ${unit === 'in' ? 'thou' : 'mm'} →`,
        weight: (_: 'in' | 'mm') => 'predicted unit weight, g/m →',
      },
      axisUp: {
        diameter: (unit: 'in' | 'mm') => `↑ measured less predicted, ${unit === 'in' ? 'thou' : 'µm'}`,
        weight: (_: 'in' | 'mm') => '↑ measured less predicted, %',
      },
      columns: {
        recipe: 'Recipe, to its run',
        machine: 'Machine',
        predicted: 'Predicted',
        measured: 'Measured',
        off: 'Off by',
        counts: 'Counts',
      },
      flagged: (share: string) => `◆ ${share}`,
    },

    unknowns: {
      massSeat: {
        name: 'Seat by weight (e m)',
        what: 'The circle that wrap follows round the core, over the core’s size: 1 on a round core.',
        formula: 'D = e m s + 2 k w',
        less: 'Wrap lies closer to the core than was believed',
        'as-believed': 'Wrap lies on the core as was believed',
        more: 'Wrap stands further off the core than was believed',
      },
      caliperSeat: {
        name: 'Seat by caliper (e d)',
        what: 'The same for the largest reading, over the corners of a hexagonal core.',
        formula: 'D = e d s + 2 k w',
        less: 'Corners stand out less than was believed',
        'as-believed': 'Corners stand out as was believed',
        more: 'Corners stand out more than was believed',
      },
      flattening: {
        name: 'Height of a turn (k)',
        what: 'How high a turn stands, over the diameter of its wire: 1 where it is not flattened at all.',
        formula: 'D = e m s + 2 k w',
        less: 'Turns are flatter than was believed',
        'as-believed': 'Turns are as flat as was believed',
        more: 'Turns are less flat than was believed',
      },
      extraGap: {
        name: 'Gap beyond the set one (g)',
        what: 'How much further apart turns lie than they were set; wrap of another density shows here too.',
        formula: 'p = p₀ (1 + gap) (1 + g)',
        less: 'Turns lie closer than they were set',
        'as-believed': 'Turns lie as they were set',
        more: 'Turns lie further apart than they were set',
      },
      axialShare: {
        name: 'Wrap’s share of stiffness',
        what: 'How much the wrap helps the core when the string is stretched.',
        formula: 'EA = E꜀ A꜀ + share · E𝗐 A𝗐',
        less: 'Wrap helps less than was believed',
        'as-believed': 'Wrap helps as was believed',
        more: 'Wrap helps more than was believed',
      },
      tensionEffect: {
        name: 'What wrap tension does to k',
        what: 'By how much k changes when wrap is wound e times as hard as the sheet has it.',
        formula: 'k = k₀ + t ln(F / F₀)',
        less: 'More tension flattens turns more',
        'as-believed': 'Tension does as was believed',
        more: 'More tension flattens turns less',
      },
    } satisfies Readonly<Record<Unknown, UnknownWords>> as Readonly<Record<Unknown, UnknownWords>>,

    families: {
      title: 'Families',
      lead: (strings: number, runs: number, within: string) =>
        `Strings of the same core shape, wrap alloy and band of wrap sit alike. A family is known well when it has ${inStrings(strings)} from ${inRuns(runs)} and the diameter of each of its measured recipes is known to ± ${within}. All intervals hold nine times in ten.`,
      columns: {
        family: 'Family',
        strings: 'Strings',
        runs: 'Runs',
        within: 'Diameter known to',
        state: 'Standing',
      },
      withinName: (family: string) => `the diameter of ${family}`,
      withinHow: {
        what: 'Half of the 90 % interval of mean diameter, of that measured recipe of the family which is known least.',
        formula: '± t √V',
        source: 'Posterior of the shop’s own strings (hierarchical regression; docs/model/calibration.md).',
      },
      calibrated: 'known well',
      predicted: 'still a prediction',
      learned: (family: string) => `What was learned of ${family}`,
      learnedColumns: { figure: 'Figure', before: 'Believed before', now: 'Known now', inWords: 'In words' },
      inputs: { before: 'believed before', strings: 'measured strings', runs: 'runs' },
      source:
        'The shop’s own strings, with what is common to all families (hierarchical regression, 90 % interval).',
      byMachine: (family: string) => `${family}, machine by machine`,
      machineColumns: { machine: 'Machine', strings: 'Strings' },
      nothingLearned: 'Strings have said next to nothing of it.',
      sentence: (how: string, times: string) => `${how}. Known ${times} times as closely as before.`,
    },

    recipes: {
      title: 'Recipes measured',
      rule: (strings: number, runs: number, within: string, tolerance: string) =>
        `A recipe may be called calibrated when it has ${inStrings(strings)} from ${inRuns(runs)} at least, its diameter is known to ± ${within} (a third of a tolerance of ± ${tolerance}), and its own strings agree with its family. A rule of this house, no standard.`,
      columns: {
        recipe: 'Recipe',
        state: 'State',
        strings: 'Strings',
        runs: 'Runs',
        diameter: 'Diameter',
        within: 'Known to',
        rule: 'By the rule',
      },
      meets: '● meets it',
      tooFew: '○ too few strings or runs',
      tooWide: (more: number) => `◐ not narrow enough: ${more} more would halve it`,
      disagrees: '▲ its strings do not agree with its family',
    },

    odd: {
      title: 'What stands out',
      lead: 'Nothing is dropped: what lies far off counts for less. Each is worth a look: a micrometer misread, a wire mixed up, a setting written down wrong.',
      noLots: 'No lot of wire seems to be of another size than is stated of it.',
      noStrings: 'No string and no run lies far off.',
      strings: 'Strings and runs that lie far off',
      lot: (lot: string, far: string, isThick: boolean) =>
        `${lot} seems too ${isThick ? 'thick' : 'thin'}, by ${far} times the doubt of its stated size:`,
      spool: (name: string) => `spool ${name}`,
      columns: {
        run: 'Run',
        recipe: 'Recipe',
        machine: 'Machine',
        how: 'How it lies off',
        far: 'In standard deviations',
        counts: 'Counts',
      },
      tellings: {
        'mean-diameter': 'diameter',
        'largest-diameter': 'largest diameter',
        corners: 'largest less mean diameter',
        'weight-beside-mean': 'weight beside its diameter',
        'weight-beside-largest': 'weight beside its largest diameter',
        weight: 'weight',
        'axial-stiffness': 'stiffness',
      } as Readonly<Record<string, string>>,
      how: (
        what: string,
        size: string,
        { isMore, strings }: { readonly isMore: boolean; readonly strings: number },
      ) =>
        `${strings === 1 ? 'One string' : inStrings(strings)}: ${what} ${size} ${isMore ? 'more' : 'less'} than its like.`,
      farthest: (shown: number, all: string) => `The ${shown} farthest of ${all}.`,
    },

    next: {
      title: 'What to measure next',
      lead: 'One more string, its diameter taken at two rotations and then weighed: by how much it narrows the intervals of all recipes together. Known beforehand, since it does not depend on what will be read.',
      none: 'The shop has no wound recipe.',
      columns: {
        recipe: 'A string of',
        gain: 'Narrows by',
        diameter: 'Diameter, mean of all recipes',
        weight: 'Unit weight, mean of all recipes',
      },
      gainName: (recipe: string) => `what a string of ${recipe} would teach`,
      how: {
        what: 'Mean shrinkage of the 90 % intervals of diameter and unit weight, over all wound recipes.',
        formula: 'V′ = V − c² / (h + V₁)',
        source: 'Bayesian design for prediction (Chaloner and Verdinelli 1995, criterion ψ A).',
      },
      fromTo: (from: string, to: string) => `${from} → ${to}`,
    },
  },
});
