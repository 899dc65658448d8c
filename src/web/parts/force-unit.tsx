import { createContext, type ReactNode, use, useMemo, useState } from 'react';
import { type ForceUnit, formatForce } from '../../core/units/index.js';

interface ForceUnitChoice {
  readonly unit: ForceUnit;
  readonly choose: (unit: ForceUnit) => void;
}

const ForceUnitContext = createContext<ForceUnitChoice>({ unit: 'N', choose: () => {} });

export const FORCE_UNITS: readonly ForceUnit[] = ['N', 'lbf', 'kgf'];

const KEPT_AS = 'tautwork.force-unit';

/** The unit that pulls are shown in, remembered in this browser. */
export function ForceUnitProvider({ children }: { readonly children: ReactNode }) {
  const [unit, setUnit] = useState(keptUnit);
  const choice = useMemo(
    () => ({
      unit,
      choose: (wanted: ForceUnit) => {
        localStorage.setItem(KEPT_AS, wanted);
        setUnit(wanted);
      },
    }),
    [unit],
  );
  return <ForceUnitContext value={choice}>{children}</ForceUnitContext>;
}

export const useForceUnit = (): ForceUnitChoice => use(ForceUnitContext);

/** Words of a force in the unit chosen. */
export function useForceWords(): (forceN: number) => string {
  const { unit } = useForceUnit();
  return (forceN) => formatForce(forceN, unit);
}

const keptUnit = (): ForceUnit => FORCE_UNITS.find((unit) => unit === localStorage.getItem(KEPT_AS)) ?? 'N';
