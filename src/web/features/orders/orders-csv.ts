/** A table as comma separated values (RFC 4180). What a spreadsheet would take for a formula is made harmless. */
export const csvOf = (rows: readonly (readonly (string | number)[])[]): string =>
  rows.map((row) => row.map(cellOf).join(',')).join('\r\n');

function cellOf(value: string | number): string {
  if (typeof value === 'number') return String(value);
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
