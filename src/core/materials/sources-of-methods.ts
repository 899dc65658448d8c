import type { Source } from './source.js';

/** How numbers are worked with, wound, planned, written down and kept safe; and what has no source. */
export const SOURCES_OF_METHODS = {
  'jcgm-100': {
    by: 'JCGM',
    year: 2008,
    title:
      'JCGM 100, Evaluation of measurement data: guide to the expression of uncertainty in measurement (GUM)',
    read: 'known by its content: rectangular distributions (4.3.7), law of propagation (5.1)',
    shelf: 'numbers and uncertainty',
  },
  'brent-1973': {
    by: 'R. P. Brent',
    year: 1973,
    title: 'Algorithms for minimization without derivatives, chapter 4',
    read: 'known by its content',
    shelf: 'numbers and uncertainty',
  },
  'fritsch-carlson-1980': {
    by: 'F. N. Fritsch and R. E. Carlson',
    year: 1980,
    title: 'Monotone piecewise cubic interpolation, SIAM Journal on Numerical Analysis 17, 238-246',
    read: 'known by its content',
    shelf: 'numbers and uncertainty',
  },
  'fritsch-butland-1984': {
    by: 'F. N. Fritsch and J. Butland',
    year: 1984,
    title:
      'A method for constructing local monotone piecewise cubic interpolants, SIAM Journal on Scientific and Statistical Computing 5, 300-304',
    read: 'known by its content',
    shelf: 'numbers and uncertainty',
  },
  'golub-1965': {
    by: 'G. H. Golub',
    year: 1965,
    title: 'Numerical methods for solving linear least squares problems, Numerische Mathematik 7, 206-216',
    read: 'known by its content',
    shelf: 'numbers and uncertainty',
  },
  'neumaier-1974': {
    by: 'A. Neumaier',
    year: 1974,
    title: 'Rundungsfehleranalyse einiger Verfahren zur Summation endlicher Summen, ZAMM 54, 39-51',
    read: 'known by its content',
    shelf: 'numbers and uncertainty',
  },
  'nocedal-wright-2006': {
    by: 'J. Nocedal and S. J. Wright',
    year: 2006,
    title: 'Numerical optimization, second edition: the Gauss-Newton method',
    read: 'known by its content',
    shelf: 'numbers and uncertainty',
  },
  'bellman-1957': {
    by: 'R. Bellman',
    year: 1957,
    title: 'Dynamic programming',
    read: 'known by its content',
    shelf: 'numbers and uncertainty',
  },
  'abramowitz-stegun-1964': {
    by: 'M. Abramowitz and I. A. Stegun, editors',
    year: 1964,
    title: 'Handbook of mathematical functions',
    read: 'known by its content',
    shelf: 'numbers and uncertainty',
  },
  mulberry32: {
    by: 'T. Ettinger',
    title: 'Mulberry32, a generator of pseudo-random numbers in the public domain',
    read: 'known by its content',
    shelf: 'numbers and uncertainty',
  },
  'morse-1948': {
    by: 'P. M. Morse',
    year: 1948,
    title: 'Vibration and sound, chapter III: the string of uneven density',
    read: 'named from memory',
    shelf: 'winding',
  },
  'pruefer-1926': {
    by: 'H. Prüfer',
    year: 1926,
    title:
      'Neue Herleitung der Sturm-Liouvilleschen Reihenentwicklung stetiger Funktionen, Mathematische Annalen 95, 499-518',
    read: 'named from memory',
    shelf: 'winding',
  },
  'round-core-note-2000': {
    by: 'a craftsman',
    year: 2000,
    title: 'Note on flattening a round core under the end of the wrap before winding',
    read: 'the note, in a public digest on mechanical music',
    shelf: 'winding',
  },
  'us-5892166': {
    by: 'United States Patent Office',
    title:
      'US 5,892,166: transition lengths of triangular or square section under the end turns of a wound string (lapsed)',
    read: 'the patent, on the web',
    shelf: 'winding',
  },
  'lee-bhaskaran-pinedo-1997': {
    by: 'Y. H. Lee, K. Bhaskaran and M. Pinedo',
    year: 1997,
    title:
      'A heuristic to minimize the total weighted tardiness with sequence-dependent setups, IIE Transactions 29, 45-52',
    read: 'the dispatching index recalled; the paper was not opened',
    shelf: 'planning',
  },
  'dice-1945': {
    by: 'L. R. Dice',
    year: 1945,
    title: 'Measures of the amount of ecologic association between species, Ecology 26, 297-302',
    read: 'known by its content',
    shelf: 'orders and documents',
  },
  'iso-8601': {
    by: 'ISO',
    title: 'ISO 8601, Date and time: representations for information interchange',
    read: 'known by its content',
    shelf: 'orders and documents',
  },
  'iso-4217': {
    by: 'ISO',
    title: 'ISO 4217, Codes for the representation of currencies',
    read: 'known by its content',
    shelf: 'orders and documents',
  },
  'iso-18004': {
    by: 'ISO and IEC',
    title: 'ISO/IEC 18004, QR code bar code symbology specification',
    read: 'known by its content',
    shelf: 'orders and documents',
  },
  'iso-15417': {
    by: 'ISO and IEC',
    title: 'ISO/IEC 15417, Code 128 bar code symbology specification',
    read: 'known by its content',
    shelf: 'orders and documents',
  },
  'iso-32000': {
    by: 'ISO',
    title: 'ISO 32000, Document management: portable document format (PDF)',
    read: 'known by its content',
    shelf: 'orders and documents',
  },
  'rfc-9457': {
    by: 'M. Nottingham, E. Wilde and S. Dalal, IETF',
    year: 2023,
    title: 'RFC 9457, Problem details for HTTP APIs',
    read: 'known by its content',
    shelf: 'orders and documents',
  },
  '29-cfr-1910-1000': {
    by: 'OSHA',
    title: '29 CFR 1910.1000, table Z-1: limits for air contaminants',
    read: 'limits of nickel and zinc oxide on pages that quote them; those of copper, tin, silver and iron oxide recalled',
    shelf: 'safety',
  },
  'reach-entry-27': {
    by: 'European Union',
    title: 'Regulation (EC) 1907/2006 (REACH), annex XVII, entry 27: nickel',
    read: 'wording of 2009, on the web',
    shelf: 'safety',
  },
  'en-1811': {
    by: 'CEN',
    year: 2015,
    title: 'EN 1811:2011+A1:2015, Reference test method for release of nickel',
    read: 'by name, in a bulletin of a test house',
    shelf: 'safety',
  },
  recalled: {
    by: 'no source',
    title: 'Recalled without a page to confirm it',
    read: 'nothing',
    note: 'Such figures are listed at the end of the page of sources; a workshop should put its own in their place.',
    shelf: 'no source',
  },
} as const satisfies Readonly<Record<string, Source>>;
