/** A standard's table of tensile strength against diameter. */
export type StrengthTableId =
  | 'astm-a228'
  | 'en-10270-1-dh'
  | 'en-10270-1-sh'
  | 'en-10270-1-sm'
  | 'jis-g-3522-a'
  | 'jis-g-3522-b';
