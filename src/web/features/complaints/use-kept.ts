import { useSessionStorage } from '@mantine/hooks';

/** Text that is being typed, kept in this tab until it is sent or thrown away: whoever looks elsewhere finds it again. */
export function useKept<Draft>(name: string, blank: Draft) {
  const [draft, setDraft, forget] = useSessionStorage<Draft>({
    key: `tautwork.draft.${name}`,
    defaultValue: blank,
    getInitialValueInEffect: false,
  });
  return { draft, setDraft, forget };
}
