import { describe, expect, it } from 'vitest';
import { ALLOWED, PERMISSIONS, permissionsOf, ROLES, TOKEN_SCOPES } from '../../src/contract/index.js';
import { houseFile } from './the-house.js';

const { text } = houseFile('docs/handbook/people.md');
const cellsOf = (line: string) =>
  line
    .split('|')
    .slice(1, -1)
    .map((cell) => cell.trim().replaceAll('`', ''));

describe('the permission table of the handbook', () => {
  const lines = text.split('\n');
  const heading = lines.findIndex((line) => line.startsWith('| permission |'));
  const table = lines.slice(heading + 2, lines.indexOf('', heading)).map(cellsOf);

  it('has a column for each role and a row for each permission, in order', () => {
    expect(cellsOf(lines[heading]!)).toEqual(['permission', ...ROLES]);
    expect(table.map(([permission]) => permission)).toEqual([...PERMISSIONS]);
  });

  it.each(PERMISSIONS)('says of %s to whom it is allowed', (permission) => {
    const [, ...cells] = table.find(([name]) => name === permission)!;
    expect(cells, 'Mend its row in docs/handbook/people.md').toEqual(
      ROLES.map((role) => (ALLOWED[permission].includes(role) ? 'yes' : '')),
    );
  });
});

describe('the permissions', () => {
  it('are all the owner may', () => {
    expect(permissionsOf(['owner'])).toEqual(new Set(PERMISSIONS));
  });

  it('of several roles are those of each together, and of none are none', () => {
    const both = new Set([...permissionsOf(['winder']), ...permissionsOf(['packer'])]);
    expect(permissionsOf(['winder', 'packer'])).toEqual(both);
    expect(permissionsOf([])).toEqual(new Set());
  });

  it('of a token are all but those that make keys', () => {
    const missing = PERMISSIONS.filter((permission) => !TOKEN_SCOPES.includes(permission));
    expect(missing).toEqual(['people.manage', 'account.own']);
  });
});
