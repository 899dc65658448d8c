import type { MachineLimits, ShopFlaw, WirePart } from '../../core/day/index.js';
import { countInWords } from './lists.js';
import { durationInWords } from './times.js';

/** What is wrong with a shop, as part of a list: `recipe A names the wire "B", which is not there`. */
export function shopFlawInWords(flaw: ShopFlaw): string {
  switch (flaw.kind) {
    case 'names-nothing':
      return `${flaw.where} names the ${flaw.what} "${flaw.name}", which is not there`;
    case 'named-twice':
      return `the ${flaw.what} "${flaw.name}" is there twice`;
    case 'wraps-miscounted':
      return `recipe ${flaw.recipeId} names ${countInWords(flaw.wires, 'wrap wire')} for ${countInWords(flaw.layers, 'layer')}`;
    case 'wire-differs':
      return `recipe ${flaw.recipeId} names the wire "${flaw.wireId}", ${PARTS[flaw.part]}`;
    case 'limits-crossed':
      return `machine ${flaw.machineId} has a least ${LIMITS[flaw.limits]} above its most`;
    case 'dial-table-unusable':
      return `the dial table of machine ${flaw.machineId} cannot be used: it needs two rows or more, dial ascending, traverse all rising or all falling`;
    case 'pull-table-unusable':
      return `the table of the tension scale of machine ${flaw.machineId} cannot be used: it needs two rows or more, numbers ascending, pulls all rising or all falling`;
    case 'damper-outside-span':
      return `a damper of machine ${flaw.machineId} stands beyond its free span`;
    case 'day-past-midnight':
      return `the day of machine ${flaw.machineId} ends ${durationInWords(flaw.endsAtMinute - 24 * 60)} after midnight: it must end before`;
  }
}

const PARTS: Readonly<Record<WirePart, string>> = {
  use: 'which is for another use (core or wrap)',
  shape: 'which has another shape than its string is made of',
  size: 'which has another size than its string is made of',
  alloy: 'which is of another alloy than its string is made of',
};

const LIMITS: Readonly<Record<MachineLimits, string>> = {
  gaugesThou: 'gauge',
  spindleRpm: 'spindle speed',
  coreSizeM: 'core size',
  wrapDiameterM: 'wrap size',
  pitchM: 'wrap pitch',
  knob: 'setting of the knob',
};
