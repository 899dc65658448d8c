import type { LinkProps } from '@tanstack/react-router';
import type { RecordKind } from '../../contract/index.js';

/** Where a record is shown. */
export function placeOf({ kind, id }: { readonly kind: RecordKind; readonly id: string }): LinkProps {
  switch (kind) {
    case 'order':
      return { to: '/orders/$id', params: { id } };
    case 'request':
      return { to: '/requests/$id', params: { id } };
    case 'set':
      return { to: '/sets/$id', params: { id } };
    case 'recipe':
      return { to: '/recipes/$id', params: { id } };
    case 'run':
      return { to: '/runs/$id', params: { id } };
    case 'string-lot':
    case 'bin':
      return { to: '/strings', search: { [kind === 'bin' ? 'bin' : 'lot']: id } };
    case 'spool':
    case 'wire':
      return { to: '/wire', search: { [kind]: id } };
    case 'pack':
      return { to: '/packing', search: { pack: id } };
    case 'complaint':
      return { to: '/complaints/$id', params: { id } };
    case 'machine':
      return { to: '/shop/$part', params: { part: 'machines' } };
    default:
      return { to: '/' };
  }
}
