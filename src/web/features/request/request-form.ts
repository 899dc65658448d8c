import type { Column } from '../../../core/orders/index.js';

/** How the answer is aimed. */
export type Aim = 'feel' | 'even' | 'graded';

/** What a person has typed, picked and slid: texts as typed, shares as whole per cent. */
export interface RequestForm {
  readonly instrument: string;
  readonly scale: string;
  readonly tuning: string;
  readonly material: string;
  readonly end: string;
  readonly likes: string;
  readonly likesTuning: string;
  readonly likesScale: string;
  readonly aim: Aim;
  readonly gradePercent: number;
  readonly bassPercent: number;
  readonly treblePercent: number;
  readonly bendPercent: number;
  readonly third: 'either' | 'plain' | 'wound';
  readonly more: string;
}

export const FIRST_FORM: RequestForm = {
  instrument: 'electric 25.5',
  scale: '',
  tuning: 'D A D F# A D',
  material: 'nickel-plated steel',
  end: 'ball',
  likes: 'Meadow six, 10',
  likesTuning: '',
  likesScale: '',
  aim: 'feel',
  gradePercent: 3,
  bassPercent: 0,
  treblePercent: 0,
  bendPercent: 0,
  third: 'either',
  more: '',
};

/** The form as the cells of one line of an orders file: what is read from there is read from here, alike. */
export const cellsOf = (form: RequestForm): Readonly<Partial<Record<Column, string>>> => ({
  instrument: form.instrument,
  scale: form.scale,
  tuning: form.tuning,
  material: form.material,
  end: form.end,
  likes: form.likes,
  likesTuning: form.likesTuning,
  likesScale: form.likesScale,
  wishes: wishesInWords(form),
});

/** The wishes as the phrases that an orders file would hold. */
export function wishesInWords(form: RequestForm): string {
  return [
    form.aim === 'graded' ? `graded ${form.gradePercent} %` : form.aim,
    heavier('bass', form.bassPercent),
    heavier('treble', form.treblePercent),
    form.bendPercent > 0 ? `bend ${form.bendPercent} %` : '',
    form.third === 'either' ? '' : `${form.third} third`,
    form.more.trim(),
  ]
    .filter((phrase) => phrase !== '')
    .join('; ');
}

const heavier = (side: 'bass' | 'treble', percent: number): string =>
  percent === 0 ? '' : `${percent > 0 ? 'heavier' : 'lighter'} ${side} ${Math.abs(percent)} %`;
