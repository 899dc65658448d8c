import type { Source } from './source.js';

/** Pages that figures of materials were read on. */
export const SOURCES_OF_MATERIALS = {
  'astm-b103': {
    by: 'ASTM International',
    title: 'B103/B103M, Phosphor bronze plate, sheet, strip and rolled bar: alloy C51000',
    read: "a mill's data sheet of the alloy made to this standard, on the web",
    shelf: 'figures of materials',
  },
  'astm-b36': {
    by: 'ASTM International',
    title: 'B36/B36M, Brass plate, sheet, strip and rolled bar: alloy C24000',
    read: "a mill's data sheet of the alloy made to this standard, on the web",
    shelf: 'figures of materials',
  },
  'c26000-wire-sheet': {
    by: 'a wire mill',
    title: 'Data sheet of 70/30 brass wire, UNS C26000',
    read: 'the sheet, on the web',
    shelf: 'figures of materials',
  },
  'en-10088-1': {
    by: 'CEN',
    title: 'EN 10088-1, Stainless steels: list, with reference data of physical properties',
    read: "a tube merchant's reproduction of the table, on the web",
    shelf: 'figures of materials',
  },
  'stainless-304-wire-sheet': {
    by: 'a wire mill',
    title: 'Data sheet of stainless wire, grade 304 (UNS S30400)',
    read: 'the sheet, on the web',
    note: 'Its expansion of 18.2e-6 per K is an outlier and was not used.',
    shelf: 'figures of materials',
  },
  'stainless-430-sheet': {
    by: 'two steel merchants',
    title: 'Data sheets of stainless steel, grade 430 (UNS S43000): strength, and composition',
    read: 'the sheets, on the web',
    shelf: 'figures of materials',
  },
  'spring-material-tables': {
    by: 'makers of spring wire',
    title: 'Tables of round-wire spring materials: moduli and strength',
    read: 'two tables, on the web',
    note: 'Music wire 30 Mpsi; stainless 302/304 28 Mpsi and 125 to 325 ksi by size; alloy 400 26 Mpsi.',
    shelf: 'figures of materials',
  },
  'music-wire-notes': {
    by: 'a merchant of spring wire',
    title: 'Notes on music wire: density, elastic limit of 65 to 75 % of tensile strength, wrap test',
    read: 'the page, on the web',
    shelf: 'figures of materials',
  },
  'materials-database': {
    by: 'an online database of materials',
    title: 'Pages on A228 steel, C52100 and C61000',
    read: 'the pages, on the web',
    note: 'Its densities of brasses and bronzes disagree with mill data by 2 to 4 % and were not used, but for that of C52100, which agrees with the one recalled.',
    shelf: 'figures of materials',
  },
  'alloy-400-sheets': {
    by: 'a wire merchant and makers of spring wire',
    title: 'Data sheets of nickel-copper alloy 400 (UNS N04400)',
    read: 'the sheets, on the web',
    shelf: 'figures of materials',
  },
  'nickel-200-sheet': {
    by: 'a producer of nickel alloys',
    title: 'Data sheet of commercially pure nickel, UNS N02200 and N02201',
    read: 'opening and table of thermal expansion, on the web',
    shelf: 'figures of materials',
  },
  'nickel-iron-48-sheet': {
    by: 'a spring maker',
    title: 'Data sheet of nickel-iron with 48 % nickel',
    read: 'the sheet, on the web',
    shelf: 'figures of materials',
  },
  'low-carbon-wire-sheet': {
    by: 'a wire merchant',
    title: 'Data sheet of low-carbon steel wire, SAE 1008 and 1018, bright annealed and hard drawn',
    read: 'the sheet, on the web',
    shelf: 'figures of materials',
  },
  'solid-properties-notes': {
    by: 'a free course for engineers',
    title: 'Tables of the properties of solids',
    read: 'the tables, on the web',
    shelf: 'figures of materials',
  },
  'ashby-polyamides': {
    by: 'M. F. Ashby',
    title: 'Materials and the environment: profile of polyamides',
    read: 'the profile, on the web',
    shelf: 'figures of materials',
  },
  'polyamide-sheet': {
    by: 'a producer of plastics',
    title: 'Technical sheet of polyamide 6 and 66: modulus dry and moist, expansion',
    read: 'the sheet, on the web',
    shelf: 'figures of materials',
  },
  'rezic-2009': {
    by: 'I. Rezić, L. Ćurković and M. Ujević',
    year: 2009,
    title: 'Release of metals from guitar strings in artificial sweat, Corrosion Science 51, 1985-1989',
    read: 'abstract (its subject is described here; the title is not quoted)',
    note: 'Tin-plated hexagonal steel core, nickel-plated round steel wrap; release of nickel was measured.',
    shelf: 'figures of materials',
  },
} as const satisfies Readonly<Record<string, Source>>;
