import type { Source } from './source.js';

/** Standards and tables of wire: strength, tolerance, temper, gauge. */
export const SOURCES_OF_WIRE = {
  'astm-a228': {
    by: 'ASTM International',
    title: 'A228/A228M, Standard specification for steel wire, music spring quality',
    read: "a wire merchant's reproduction of the tables of chemistry, strength and tolerance, read on the web; the standard's own front matter",
    note: 'Only one full copy of the strength table was found. It prints 255 ksi as the maximum at 0.036 in, below its own minimum of 321; 355 is inferred from the neighbours (358 and 352) and from the ratio of maximum to minimum in the other rows.',
    shelf: 'wire standards',
  },
  'a228-range-quotes': {
    by: 'makers of springs',
    title: 'Minimum tensile strength of music wire to A228, quoted as 230 to 399 ksi',
    read: 'three independent pages of spring data, on the web',
    note: 'Used as a check of the rows at 0.250 in and 0.008 in only.',
    shelf: 'wire standards',
  },
  'torsion-design-table': {
    by: 'the manual of an engineering drawing program',
    year: 2024,
    title: 'Allowable limit of torsion stress of music wire',
    read: 'the table, on the web',
    note: 'Divided by 0.45 (design stress as a share of minimum tensile strength) it checks the A228 rows.',
    shelf: 'wire standards',
  },
  'budynas-nisbett': {
    by: 'R. G. Budynas and J. K. Nisbett',
    title:
      "Shigley's mechanical engineering design, table 10-4: constants of minimum tensile strength of spring wire",
    read: 'solutions to chapter 10 that quote the constants',
    shelf: 'wire standards',
  },
  'en-10270-1': {
    by: 'CEN',
    title: 'EN 10270-1, Steel wire for mechanical springs: patented cold drawn unalloyed spring steel wire',
    read: 'reproductions of rows by a wire merchant (grades SH and DH) and a spring maker (grade SM, density and moduli), on the web',
    note: 'Only some rows of grades SH and DH were seen. The maximum of SM at 1.0 mm looks rounded.',
    shelf: 'wire standards',
  },
  'en-10270-1-formula': {
    by: 'CEN',
    title: 'EN 10270-1: minimum strength against diameter as a logarithmic law',
    read: 'coefficients recalled; they reproduce the printed rows within -14 to +5 MPa',
    shelf: 'wire standards',
  },
  'jis-g-3522': {
    by: 'Japanese Industrial Standards Committee',
    year: 2014,
    title: 'JIS G 3522, Piano wires',
    read: 'reproductions of the rows of grades A and B, of the tolerances and of the rule for sizes between rows, on three web pages',
    note: 'One page prints 2500 MPa as the minimum of grade B at 0.50 mm, the other 2550; the constant width of the band makes 2550 the likely one.',
    shelf: 'wire standards',
  },
  'astm-b159': {
    by: 'ASTM International',
    title: 'B159/B159M, Standard specification for phosphor bronze wire',
    read: "a wire merchant's reproduction of the table of tempers, on the web; the standard's own front matter",
    shelf: 'wire standards',
  },
  'astm-b160': {
    by: 'ASTM International',
    title: 'B160, Standard specification for nickel rod and bar',
    read: "a bolt maker's reproduction of the table of mechanical properties, on the web",
    note: 'Rod and bar, not wire: a floor for annealed nickel.',
    shelf: 'wire standards',
  },
  'astm-a213': {
    by: 'ASTM International',
    title: 'A213/A213M, Seamless alloy-steel tubes: minimum strength of annealed grade 304',
    read: "a tube merchant's page that quotes it, on the web",
    note: 'Tube, not wire: a floor for annealed stainless wrap.',
    shelf: 'wire standards',
  },
  'astm-b258': {
    by: 'ASTM International',
    title: 'B258, Nominal diameters of AWG sizes of solid round wires used as electrical conductors',
    read: 'the law of the series, quoted on two web pages',
    shelf: 'wire standards',
  },
  'astm-b3': {
    by: 'ASTM International',
    year: 1995,
    title: 'B3, Standard specification for soft or annealed copper wire, table 1',
    read: 'the table, on the web',
    note: 'Rounds to 0.0001 in first and converts after, so that AWG 28 reads 0.320 mm there and 0.321 mm by formula.',
    shelf: 'wire standards',
  },
  'astm-b250': {
    by: 'ASTM International',
    year: 2019,
    title: 'B250/B250M, General requirements for wrought copper alloy wire',
    read: 'scope and rounding clause, on the web; the table of tolerances was not seen',
    shelf: 'wire standards',
  },
  'sinha-levinson-1992': {
    by: 'Sinha and Levinson',
    year: 1992,
    title: 'Yield and stress relaxation of A228 wire, Journal of Testing and Evaluation 20(2)',
    read: 'abstract (its subject is described here; the title is not quoted)',
    note: '0.56 mm wire, 0.2 % offset yield 1689 MPa.',
    shelf: 'wire standards',
  },
} as const satisfies Readonly<Record<string, Source>>;
