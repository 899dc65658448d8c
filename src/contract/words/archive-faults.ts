import type { FaultWords } from './order-faults.js';

/** What can be wrong with an archive, or with the shop that it is to fill. */
export type ArchiveFault =
  | { readonly code: 'archive.unreadable'; readonly because: string }
  | { readonly code: 'archive.other-form'; readonly form: string }
  | { readonly code: 'archive.newer'; readonly version: number; readonly known: number }
  | { readonly code: 'archive.cut-short'; readonly rows: number }
  | { readonly code: 'archive.damaged'; readonly rows: number; readonly expected: number }
  | { readonly code: 'archive.table-unknown'; readonly table: string }
  | { readonly code: 'archive.shop-not-empty'; readonly table: string };

/** What can be wrong with a backup, or with the place it is to go to. */
export type RestoreFault =
  | ArchiveFault
  | { readonly code: 'restore.no-backup'; readonly path: string }
  | { readonly code: 'restore.would-overwrite'; readonly path: string }
  | { readonly code: 'restore.damaged'; readonly details: readonly string[] };

/** Says what is wrong with an archive or a backup and what to do. */
export function archiveFaultWords(fault: RestoreFault): FaultWords {
  switch (fault.code) {
    case 'archive.unreadable':
      return {
        what: `The archive cannot be read (${fault.because}).`,
        mend: 'Take another copy of it; nothing was changed.',
      };
    case 'archive.other-form':
      return {
        what: 'The file is no archive of a shop.',
        mend: 'Give a file that `tautwork export` or `tautwork backup` wrote.',
      };
    case 'archive.newer':
      return {
        what: `The archive has form ${fault.version}, and this program knows forms up to ${fault.known}.`,
        mend: 'Update Tautwork first; nothing was changed.',
      };
    case 'archive.cut-short':
      return {
        what: `The archive ends after ${fault.rows} rows, before its end.`,
        mend: 'Take another copy of it; nothing was changed.',
      };
    case 'archive.damaged':
      return {
        what: `The archive is damaged: ${fault.rows} rows of ${fault.expected}, or letters in them, do not match its seal.`,
        mend: 'Take another copy of it; nothing was changed.',
      };
    case 'archive.table-unknown':
      return {
        what: `The archive holds a table "${fault.table}" that this program does not know.`,
        mend: 'Update Tautwork first; nothing was changed.',
      };
    case 'archive.shop-not-empty':
      return {
        what: `The shop is not empty: ${fault.table} holds rows.`,
        mend: 'Import into a place where no shop is yet, then use that.',
      };
    case 'restore.no-backup':
      return { what: 'There is no such file.', mend: 'Check the name of the backup.' };
    case 'restore.would-overwrite':
      return {
        what: `A shop stands at ${fault.path} already.`,
        mend: 'Name another place, or add --overwrite: what stands there is then kept beside it.',
      };
    case 'restore.damaged':
      return {
        what: `The backup is damaged: ${fault.details.slice(0, 3).join('; ')}.`,
        mend: 'Use an older one; nothing was changed.',
      };
  }
}
