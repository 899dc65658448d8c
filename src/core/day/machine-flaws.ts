import { isDialTableUsable, isPullTableUsable, type Machine } from '../winding/index.js';
import type { Shop } from './shop.js';
import type { MachineLimits, ShopFlaw } from './shop-flaw.js';

const MINUTES_A_DAY = 24 * 60;

/** Machines whose own figures contradict themselves or the shop's day. */
export const machineFlaws = ({
  machines,
  rules,
}: Pick<Shop, 'machines'> & {
  readonly rules: Pick<Shop['rules'], 'dayStartsAtMinute'>;
}): readonly ShopFlaw[] =>
  machines.flatMap((machine): readonly ShopFlaw[] => {
    const machineId = machine.id;
    const endsAtMinute = rules.dayStartsAtMinute + machine.minutesPerDay;
    return [
      ...limitsOf(machine)
        .filter(([, { least, most }]) => least > most)
        .map(([limits]): ShopFlaw => ({ kind: 'limits-crossed', machineId, limits })),
      ...(machine.kind === 'winder' && machine.drive === 'gear' && !isDialTableUsable(machine)
        ? [{ kind: 'dial-table-unusable' as const, machineId }]
        : []),
      ...(machine.kind === 'winder' && machine.pullTable && !isPullTableUsable(machine.pullTable)
        ? [{ kind: 'pull-table-unusable' as const, machineId }]
        : []),
      ...(machine.kind === 'winder' && machine.dampersAtM?.some((atM) => atM >= machine.freeSpanM)
        ? [{ kind: 'damper-outside-span' as const, machineId }]
        : []),
      ...(machine.kind === 'winder' && machine.knob && machine.knob.least >= machine.knob.most
        ? [{ kind: 'limits-crossed' as const, machineId, limits: 'knob' as const }]
        : []),
      ...(endsAtMinute > MINUTES_A_DAY
        ? [{ kind: 'day-past-midnight' as const, machineId, endsAtMinute }]
        : []),
    ];
  });

type Limits = readonly [MachineLimits, { readonly least: number; readonly most: number }];

function limitsOf(machine: Machine): readonly Limits[] {
  if (machine.kind === 'bench') return [['gaugesThou', machine.gaugesThou]];
  return [
    ['gaugesThou', machine.gaugesThou],
    ['spindleRpm', machine.spindleRpm],
    ['coreSizeM', machine.coreSizeM],
    ['wrapDiameterM', machine.wrapDiameterM],
    ...(machine.drive === 'servo' ? [['pitchM', machine.pitchM] as const] : []),
  ];
}
