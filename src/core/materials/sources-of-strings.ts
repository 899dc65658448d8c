import type { Source } from './source.js';

/** Papers on strings, and the standards of pitch and units. */
export const SOURCES_OF_STRINGS = {
  'beausoleil-2024': {
    by: 'R. G. Beausoleil',
    year: 2024,
    title:
      'Classical guitar intonation and compensation: the well-tempered guitar, J. Acoust. Soc. Am. 156(1), 683',
    read: 'in full, with the tables of four measured string sets',
    shelf: 'physics of strings',
  },
  'woodhouse-2004': {
    by: 'J. Woodhouse',
    year: 2004,
    title:
      'Plucked guitar transients: comparison of measurements and synthesis, Acta Acustica 90, 945: table I and equation 8',
    read: 'values as quoted in three public codes and a report',
    shelf: 'physics of strings',
  },
  'grimes-2014': {
    by: 'D. R. Grimes',
    year: 2014,
    title:
      'String theory: the physics of string-bending and other electric guitar techniques, PLoS ONE 9(7), e102088',
    read: 'equation 6 and measured moduli as quoted in a public code',
    note: 'Plain guitar steel measured at 177.6 to 188.4 GPa, below the handbook value.',
    shelf: 'physics of strings',
  },
  'kemp-2017': {
    by: 'J. A. Kemp',
    year: 2017,
    title:
      'The physics of unwound and wound strings on the electric guitar applied to the pitch intervals produced by tremolo/vibrato arm systems, PLoS ONE 12(9), e0184803',
    read: 'captions only',
    shelf: 'physics of strings',
  },
  'kemp-2020': {
    by: 'J. A. Kemp',
    year: 2020,
    title:
      'On inharmonicity in bass guitar strings with application to tapered and lumped constructions, SN Applied Sciences 2',
    read: 'abstract',
    shelf: 'physics of strings',
  },
  'fletcher-1964': {
    by: 'H. Fletcher',
    year: 1964,
    title: 'Normal vibration frequencies of a stiff piano string, J. Acoust. Soc. Am. 36, 203',
    read: 'the law of partials as quoted in several public codes',
    shelf: 'physics of strings',
  },
  'young-1952': {
    by: 'R. W. Young',
    year: 1952,
    title: 'Inharmonicity of plain wire piano strings, J. Acoust. Soc. Am. 24, 267',
    read: 'constant of the law in cgs units recalled; recomputed within 0.6 %',
    shelf: 'physics of strings',
  },
  'feynman-1961': {
    by: 'R. P. Feynman',
    year: 1961,
    title: 'Letter on the tuning of a piano, printed in Physics Today 62(12), 46 (2009)',
    read: 'the formula in a garbled copy; its factor confirmed by derivation',
    shelf: 'physics of strings',
  },
  'openstax-university-physics': {
    by: 'OpenStax',
    title: 'University Physics, volume 1: waves on a string, stress and strain',
    read: 'the worked examples (modules m58370, m58378, m58342)',
    shelf: 'physics of strings',
  },
  'zollner-physics-guitar': {
    by: 'M. Zollner',
    title: 'Physics of the electric guitar, section 1.2',
    read: 'opening of the section, on the web',
    shelf: 'physics of strings',
  },
  'bilbao-torin-2015': {
    by: 'S. Bilbao and A. Torin',
    year: 2015,
    title:
      'Numerical modeling and sound synthesis for articulated string/fretboard interactions, J. Audio Eng. Soc. 63(5), 336',
    read: 'model strings and fret positions in the documentation of the guitar code that goes with it',
    note: 'That the model strings stand in the usual tuning is inferred from their frequencies.',
    shelf: 'physics of strings',
  },
  'jarvelainen-karjalainen-2006': {
    by: 'H. Järveläinen and M. Karjalainen',
    year: 2006,
    title: 'Perceptibility of inharmonicity in the acoustic guitar, Acta Acustica united with Acustica 92',
    read: 'inharmonicity of three strings as quoted in a public code; title recalled',
    shelf: 'physics of strings',
  },
  'pate-2014': {
    by: 'A. Paté, J.-L. Le Carrou and B. Fabre',
    year: 2014,
    title: 'Predicting the decay time of solid body electric guitar tones, J. Acoust. Soc. Am. 135, 3045',
    read: 'loss model as told in a report',
    shelf: 'physics of strings',
  },
  'houtsma-1982': {
    by: 'A. J. M. Houtsma',
    year: 1982,
    title: 'Inharmonicity of wound guitar strings, J. Guitar Acoustics 6, 60-64; J. Acoust. Soc. Am. 71, S9',
    read: 'abstract',
    shelf: 'physics of strings',
  },
  'maron-strings': {
    by: 'J. Maron',
    title: 'Tables of string pitch, tension and breaking frequency',
    read: 'the tables, on the web',
    shelf: 'physics of strings',
  },
  'jourdain-2021': {
    by: 'Jourdain',
    year: 2021,
    title: 'Text on strings and their breaking pitch: stress share six and three semitones below it',
    read: 'the text',
    shelf: 'physics of strings',
  },
  'string-formula-page': {
    by: 'a society of guitarists',
    title: 'Formulas of strings, among them the sideways force at the middle',
    read: 'the page, on the web',
    shelf: 'physics of strings',
  },
  'bass-string-rule-2006': {
    by: 'a maker of piano bass strings',
    year: 2006,
    title: 'Rule for the pull of a copper-wound string, told on a mailing list of piano technicians',
    read: 'the message, on the web',
    shelf: 'physics of strings',
  },
  cauchy: {
    by: 'A.-L. Cauchy',
    year: 1832,
    title: 'The perimeter of a convex figure is pi times its mean width over all directions',
    read: 'a theorem; year recalled',
    shelf: 'physics of strings',
  },
  pappus: {
    by: 'Pappus of Alexandria',
    title:
      'The volume swept by a section along a curve square to it is the area times the path of its centroid',
    read: 'a theorem',
    shelf: 'physics of strings',
  },
  'iso-16': {
    by: 'ISO',
    year: 1975,
    title: 'ISO 16, Acoustics: standard tuning frequency (standard musical pitch)',
    read: 'known by its content: A4 is 440 Hz',
    shelf: 'pitch and units',
  },
  'iso-1': {
    by: 'ISO',
    title: 'ISO 1, Geometrical product specifications: standard reference temperature',
    read: 'known by its content: 20 degrees Celsius',
    shelf: 'pitch and units',
  },
  'nist-sp-811': {
    by: 'A. Thompson and B. N. Taylor, NIST',
    year: 2008,
    title: 'SP 811, Guide for the use of the International System of Units, appendix B: conversion factors',
    read: 'known by its content: 1 in is 25.4 mm, 1 lbf is 4.4482216152605 N, 1 kgf is 9.80665 N, all exact',
    shelf: 'pitch and units',
  },
} as const satisfies Readonly<Record<string, Source>>;
