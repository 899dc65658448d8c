import { useCallback, useState } from 'react';

const KEPT_AS = 'tautwork.machine';

/** The machine that this screen stands by, by the id of its record; remembered on this device. */
export function useMyMachine(): {
  readonly machineId: string | undefined;
  readonly choose: (machineId: string | undefined) => void;
} {
  const [machineId, setMachineId] = useState(() => localStorage.getItem(KEPT_AS) ?? undefined);
  const choose = useCallback((chosen: string | undefined) => {
    if (chosen === undefined) localStorage.removeItem(KEPT_AS);
    else localStorage.setItem(KEPT_AS, chosen);
    setMachineId(chosen);
  }, []);
  return { machineId, choose };
}

/** A word that this screen remembers: which micrometer lies here, and what it shows. */
export function useRemembered(name: string, first: string): readonly [string, (word: string) => void] {
  const key = `tautwork.${name}`;
  const [word, setWord] = useState(() => localStorage.getItem(key) ?? first);
  const remember = useCallback(
    (chosen: string) => {
      localStorage.setItem(key, chosen);
      setWord(chosen);
    },
    [key],
  );
  return [word, remember];
}
