import { fail, type Result, succeed } from '../../../core/foundation/index.js';
import { newtonsFromKilogramsForce, newtonsFromPoundsForce } from '../../../core/units/index.js';
import {
  type EndCheck,
  type EndedPiece,
  type PullOutcome,
  possibleReading,
  type Seat,
} from '../../../core/winding/index.js';
import { type AmountRule, readAmount } from '../../parts/read-amount.js';

/** What is asked of an end, one after the other. */
export const STEPS = ['length', 'twists', 'tail', 'seat', 'pull', 'came'] as const;
export type EndStep = (typeof STEPS)[number];

export const SEATS: readonly Seat[] = ['straight', 'crooked', 'loose'];
export const OUTCOMES: readonly PullOutcome[] = ['held', 'at-twist', 'in-length', 'slipped'];

export type PullUnit = 'N' | 'lbf' | 'kgf';
const NEWTONS: Readonly<Record<PullUnit, number>> = {
  N: 1,
  lbf: newtonsFromPoundsForce(1),
  kgf: newtonsFromKilogramsForce(1),
};
const MILLIMETRES = { mm: 0.001, cm: 0.01, m: 1, in: 0.0254 };

/** An end while its findings are being typed. */
export interface EndDraft {
  readonly step: EndStep;
  readonly found: Omit<EndCheck, 'pull'>;
  readonly forceN?: number;
}

export const NEW_DRAFT: EndDraft = { step: 'length', found: {} };

/** Why an answer was not taken. Limits in the unit of a number without one. */
export type DraftFault =
  | { readonly code: 'unreadable' }
  | { readonly code: 'range'; readonly least: number; readonly most: number };

/** The next step, or what was found once all was asked; nothing at all where all was left out. */
export type Answered =
  | { readonly kind: 'next'; readonly draft: EndDraft }
  | { readonly kind: 'done'; readonly check: EndCheck | undefined };

interface Asked {
  readonly piece: EndedPiece;
  readonly pullUnit: PullUnit;
}

/** What a number without a unit may be, and how it is read. */
export function ruleOf(step: 'length' | 'twists' | 'tail' | 'pull', { piece, pullUnit }: Asked): AmountRule {
  const limits = possibleReading(step, piece);
  if (step === 'twists') return { units: { '': 1 }, bare: '', ...limits };
  return step === 'pull'
    ? { units: { ...NEWTONS, lb: NEWTONS.lbf, kg: NEWTONS.kgf }, bare: pullUnit, ...limits }
    : { units: MILLIMETRES, bare: 'mm', ...limits };
}

/** An answer as it was typed: a number, the number of a button, or nothing to leave it out. */
export function answered(draft: EndDraft, typed: string, asked: Asked): Result<Answered, DraftFault> {
  const text = typed.trim();
  const { step } = draft;
  if (step === 'seat' || step === 'came') {
    if (text === '') return step === 'seat' ? succeed(skipped(draft)) : fail({ code: 'unreadable' });
    const choices: readonly string[] = step === 'seat' ? SEATS : OUTCOMES;
    const choice = /^\d$/.test(text) ? choices[Number(text) - 1] : undefined;
    return choice === undefined ? fail({ code: 'unreadable' }) : succeed(chosen(draft, choice));
  }
  if (text === '') return succeed(skipped(draft));
  const read = readAmount(text, ruleOf(step, asked));
  if (!read.ok) {
    const { fault } = read;
    return fail(fault.code === 'range' ? fault : { code: 'unreadable' });
  }
  return succeed(taken(draft, read.value));
}

/** A choice, by touch or by its number. */
export function chosen(draft: EndDraft, choice: string): Answered {
  const { found, forceN } = draft;
  if (draft.step === 'seat') return after({ ...draft, found: { ...found, seat: choice as Seat } });
  const pull = forceN === undefined ? {} : { pull: { forceN, came: choice as PullOutcome } };
  return { kind: 'done', check: { ...found, ...pull } };
}

/** What was not looked at stays missing. */
export const skipped = (draft: EndDraft): Answered => after(draft);

function taken(draft: EndDraft, value: number): Answered {
  const { found, step } = draft;
  if (step === 'pull') return { kind: 'next', draft: { ...draft, forceN: value, step: 'came' } };
  const field = ({ length: 'lengthM', twists: 'twists', tail: 'tailM' } as const)[
    step as 'length' | 'twists' | 'tail'
  ];
  return after({ ...draft, found: { ...found, [field]: value } });
}

/** Without a pull nothing is asked of how it came out. */
function after(draft: EndDraft): Answered {
  const next = STEPS[STEPS.indexOf(draft.step) + 1];
  if (next !== undefined && next !== 'came') return { kind: 'next', draft: { ...draft, step: next } };
  const { found } = draft;
  return { kind: 'done', check: Object.keys(found).length === 0 ? undefined : found };
}

/** A draft as it was kept on this screen; a new one where it cannot be read. */
export function draftFrom(kept: string): EndDraft {
  try {
    const draft = JSON.parse(kept) as Partial<EndDraft>;
    return draft.step !== undefined && STEPS.includes(draft.step) && typeof draft.found === 'object'
      ? (draft as EndDraft)
      : NEW_DRAFT;
  } catch {
    return NEW_DRAFT;
  }
}
