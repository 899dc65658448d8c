/**
 * The number after one, as people count orders: the last digits of it one higher, as many of them. Empty where there are none.
 * @example nextNumber('P-0999') // 'P-1000'
 */
export function nextNumber(number: string): string {
  const match = /^(.*?)(\d+)(\D*)$/.exec(number);
  if (!match) return '';
  const [, before = '', digits = '', after = ''] = match;
  return `${before}${String(BigInt(digits) + 1n).padStart(digits.length, '0')}${after}`;
}
