/** A number with its unit as they stood in a text, before anybody decides what they mean. */
export interface QuantityText {
  /** With its sign; fractions added. */
  readonly value: number;
  /** Figures before the point as written: '', '0', '010', '25'. */
  readonly whole: string;
  /** Figures after the point or comma as written; undefined where there was neither. */
  readonly decimals: string | undefined;
  /** Key of a unit where it is one we know, what was written where not; '' where there was none. */
  readonly unit: string;
  /** The unit as written. */
  readonly unitText: string;
}

/** Longer texts than any honest quantity are not looked into. */
const LONGEST_TEXT = 60;

const VULGAR_FRACTIONS: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

const UNIT_NAMES: Readonly<Record<string, readonly string[]>> = {
  in: ['in', 'in.', 'inch', 'inches', '"', '″', '”', '“', "''", '′′', '’’'],
  mm: ['mm', 'mm.', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
  cm: ['cm', 'cm.', 'centimetre', 'centimetres', 'centimeter', 'centimeters'],
  m: ['m', 'metre', 'metres', 'meter', 'meters'],
  µm: ['µm', 'μm', 'um', 'micron', 'microns', 'micrometre', 'micrometres', 'micrometer', 'micrometers'],
  thou: ['thou', 'thous', 'mil', 'mils'],
  N: ['n', 'newton', 'newtons'],
  lbf: ['lbf', 'lb', 'lbs', 'lb.', 'lbs.', 'pound', 'pounds', 'pounds-force'],
  kgf: ['kgf', 'kg', 'kp', 'kilogram', 'kilograms', 'kilograms-force'],
};

const UNIT_OF_NAME: ReadonlyMap<string, string> = new Map(
  Object.entries(UNIT_NAMES).flatMap(([unit, names]) => names.map((name) => [name, unit] as const)),
);

// sign, then "25.5" | ".010" | "25", then " 1/2" | "-1/2", then the unit: anything that does not begin with a
// figure or a sign. Scientific notation falls through: the "e3" of "1e3" holds a figure, and no unit does.
const FORM =
  /^(?<sign>-?) ?(?<whole>\d*)(?:[.,](?<decimals>\d+))?(?:(?:(?<=\d) |(?<=\d)-)(?<over>\d{1,3})\/(?<under>\d{1,3}))? ?(?<unit>[^\d\s.,/+-][^\d]*)?$/;

/**
 * Takes a text apart into number and unit: `.010"`, `0,254 mm`, `13½`, `25 1/2 in`, `16 lb`. The decimal sign is
 * a point or a comma; there is no sign for thousands. Undefined where the text is no such thing; scientific
 * notation is none.
 */
export function readQuantity(text: string): QuantityText | undefined {
  if (text.length > LONGEST_TEXT) return undefined;
  const parts = FORM.exec(plainCharacters(text))?.groups;
  if (!parts) return undefined;
  const { sign, whole = '', decimals, over, under, unit = '' } = parts;
  if (whole === '' && decimals === undefined) return undefined;
  // "25.5 1/2" says two things at once.
  if (over !== undefined && decimals !== undefined) return undefined;
  const fraction = over === undefined ? 0 : Number(over) / Number(under);
  if (!(fraction < 1)) return undefined;
  const size = Number(`${whole || '0'}.${decimals ?? '0'}`) + fraction;
  const unitText = unit.trim();
  const name = unitText.toLowerCase();
  const value = sign === '-' ? -size : size;
  return { value, whole, decimals, unit: UNIT_OF_NAME.get(name) ?? name, unitText };
}

/** One kind of space, of minus and of fraction, so that the form above need know no other. */
const plainCharacters = (text: string): string =>
  text
    .replace(/[¼½¾⅛⅜⅝⅞]/g, (fraction) => ` ${VULGAR_FRACTIONS[fraction]}`)
    .replaceAll('⁄', '/')
    .replaceAll('\u2212', '-')
    .replace(/\s+/g, ' ')
    .trim();
