import type { Permission } from '../../contract/index.js';
import type { FRAME_WORDS } from '../words/frame.js';

/** A door of the house: where it leads, and what one must be allowed to go in. */
export interface Door {
  readonly to:
    | '/'
    | '/requests'
    | '/sets'
    | '/recipes'
    | '/orders'
    | '/complaints'
    | '/plan'
    | '/strings'
    | '/wire'
    | '/quality'
    | '/shop'
    | '/machine'
    | '/coiling'
    | '/packing'
    | '/dry-room';
  readonly words: keyof (typeof FRAME_WORDS)['en']['doors'];
  readonly permission: Permission;
}

/** The desk, in the order of the job: what is asked for, what is made of it, what it takes. */
export const DESK: readonly Door[] = [
  { to: '/', words: 'today', permission: 'shop.read' },
  { to: '/requests', words: 'requests', permission: 'request.read' },
  { to: '/sets', words: 'sets', permission: 'shop.read' },
  { to: '/recipes', words: 'recipes', permission: 'recipe.read' },
  { to: '/orders', words: 'orders', permission: 'order.read' },
  { to: '/complaints', words: 'complaints', permission: 'complaint.read' },
  { to: '/plan', words: 'plan', permission: 'plan.read' },
  { to: '/strings', words: 'strings', permission: 'stock.read' },
  { to: '/wire', words: 'wire', permission: 'stock.read' },
  { to: '/quality', words: 'quality', permission: 'run.read' },
  { to: '/shop', words: 'shop', permission: 'shop.edit' },
];

/** The floor, in the order in which a string goes through it. */
export const FLOOR: readonly Door[] = [
  { to: '/machine', words: 'machine', permission: 'run.work' },
  { to: '/coiling', words: 'coiling', permission: 'tally.enter' },
  { to: '/packing', words: 'packing', permission: 'pack.work' },
  { to: '/dry-room', words: 'dryRoom', permission: 'dryroom.enter' },
];

export const isFloor = (path: string): boolean =>
  FLOOR.some(({ to }) => path === to || path.startsWith(`${to}/`));
