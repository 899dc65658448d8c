/** What people of the shop are to the program. One person may have several roles. */
export const ROLES = ['owner', 'adviser', 'winder', 'coiler', 'packer'] as const;
export type Role = (typeof ROLES)[number];

/** What may be allowed. Each use case and each list asks for exactly one. */
export const PERMISSIONS = [
  'stock.read',
  'wire.receive',
  'wire.weigh',
  'stock.move',
  'stock.count',
  'recipe.read',
  'recipe.edit',
  'recipe.approve',
  'run.read',
  'run.work',
  'tally.enter',
  'lot.hold',
  'lot.release',
  'request.read',
  'request.resolve',
  'order.read',
  'order.edit',
  'plan.read',
  'plan.freeze',
  'pack.work',
  'pack.ship',
  'complaint.read',
  'complaint.register',
  'complaint.close',
  'dryroom.enter',
  'shop.read',
  'shop.edit',
  'people.manage',
  'account.own',
  'journal.read',
  'transfer.import',
  'transfer.export',
  'events.read',
] as const;
export type Permission = (typeof PERMISSIONS)[number];

const everyone: readonly Role[] = ROLES;
const owner: readonly Role[] = ['owner'];

/** Who may do what. The handbook shows this table; a test tries every cell of routes against roles. */
export const ALLOWED: Readonly<Record<Permission, readonly Role[]>> = {
  'stock.read': everyone,
  'wire.receive': ['owner', 'winder'],
  'wire.weigh': ['owner', 'winder'],
  'stock.move': ['owner', 'winder', 'coiler', 'packer'],
  'stock.count': ['owner', 'packer'],
  'recipe.read': ['owner', 'adviser', 'winder', 'coiler'],
  'recipe.edit': owner,
  'recipe.approve': owner,
  'run.read': ['owner', 'winder', 'coiler'],
  'run.work': ['owner', 'winder'],
  'tally.enter': ['owner', 'winder', 'coiler'],
  'lot.hold': ['owner', 'winder', 'coiler'],
  'lot.release': ['owner', 'coiler'],
  'request.read': ['owner', 'adviser'],
  'request.resolve': ['owner', 'adviser'],
  'order.read': ['owner', 'adviser', 'packer'],
  'order.edit': ['owner', 'adviser'],
  'plan.read': everyone,
  'plan.freeze': owner,
  'pack.work': ['owner', 'packer'],
  'pack.ship': ['owner', 'packer'],
  'complaint.read': ['owner', 'adviser'],
  'complaint.register': ['owner', 'adviser', 'packer'],
  'complaint.close': ['owner', 'adviser'],
  'dryroom.enter': everyone,
  'shop.read': everyone,
  'shop.edit': owner,
  'people.manage': owner,
  'account.own': everyone,
  'journal.read': owner,
  'transfer.import': owner,
  'transfer.export': ['owner', 'adviser'],
  'events.read': everyone,
};

/** Everything that these roles together may do. */
export const permissionsOf = (roles: readonly Role[]): ReadonlySet<Permission> =>
  new Set(PERMISSIONS.filter((permission) => ALLOWED[permission].some((role) => roles.includes(role))));

/** What a script's token may be given: all but the keeping of people and of one's own account, so that a token that leaks
 * can never make itself another key. */
export const TOKEN_SCOPES: readonly Permission[] = PERMISSIONS.filter(
  (permission) => permission !== 'people.manage' && permission !== 'account.own',
);
