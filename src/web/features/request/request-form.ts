import type { Column } from '../../../core/orders/index.js';

/** How the answer is aimed. */
export type Aim = 'feel' | 'even' | 'graded' | 'free';

/** What a person has typed, picked and slid: texts as typed, shares in per cent. */
export interface RequestForm {
  readonly quantity: string;
  readonly instrument: string;
  readonly scale: string;
  readonly tuning: string;
  readonly material: string;
  readonly end: string;
  readonly likes: string;
  readonly likesMaterial: string;
  readonly likesTuning: string;
  readonly likesScale: string;
  readonly aim: Aim;
  /** Pulls that are given with an aim other than a feel, each with its unit. */
  readonly pulls: string;
  readonly gradePercent: number;
  readonly bassPercent: number;
  readonly treblePercent: number;
  readonly bendPercent: number;
  readonly third: 'either' | 'plain' | 'wound';
  readonly more: string;
}

/** Before anything is known of a letter. */
export const BLANK_FORM: RequestForm = {
  quantity: '1',
  instrument: '',
  scale: '',
  tuning: '',
  material: 'nickel-plated steel',
  end: 'ball',
  likes: '',
  likesMaterial: '',
  likesTuning: '',
  likesScale: '',
  aim: 'feel',
  pulls: '',
  gradePercent: 3,
  bassPercent: 0,
  treblePercent: 0,
  bendPercent: 0,
  third: 'either',
  more: '',
};

/** The form as the cells of one line of an orders file: what is read from there is read from here, alike. */
export const cellsOf = (form: RequestForm): Readonly<Partial<Record<Column, string>>> => ({
  quantity: form.quantity,
  instrument: form.instrument,
  scale: form.scale,
  tuning: form.tuning,
  material: form.material,
  end: form.end,
  likes: form.likes,
  likesMaterial: form.likesMaterial,
  likesTuning: form.likesTuning,
  likesScale: form.likesScale,
  wishes: wishesInWords(form),
});

/** The wishes as the phrases that an orders file would hold. */
export function wishesInWords(form: RequestForm): string {
  return [
    aimInWords(form),
    heavier('bass', form.bassPercent),
    heavier('treble', form.treblePercent),
    form.bendPercent > 0 ? `bend ${form.bendPercent} %` : '',
    form.third === 'either' ? '' : `${form.third} third`,
    form.more.trim(),
  ]
    .filter((phrase) => phrase !== '')
    .join('; ');
}

function aimInWords({ aim, gradePercent, pulls: typed }: RequestForm): string {
  const pulls = typed.trim();
  switch (aim) {
    case 'feel':
      return 'feel';
    case 'even':
      return pulls === '' ? 'even' : `even ${pulls}`;
    case 'graded':
      return pulls === '' ? `graded ${gradePercent} %` : `graded ${gradePercent} % from ${pulls}`;
    case 'free':
      return `pulls ${pulls}`;
  }
}

const heavier = (side: 'bass' | 'treble', percent: number): string =>
  percent === 0 ? '' : `${percent > 0 ? 'heavier' : 'lighter'} ${side} ${Math.abs(percent)} %`;
