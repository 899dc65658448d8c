import { useCallback, useMemo, useSyncExternalStore } from 'react';

/** Short sounds for hands that are not looking at the screen. What they say is always on the screen too. */
export interface Sound {
  readonly accepted: () => void;
  readonly refused: () => void;
  readonly isOn: boolean;
  readonly turn: (on: boolean) => void;
}

const KEPT_AS = 'tautwork.sound';
const hearers = new Set<() => void>();

export function useSound(): Sound {
  const isOn = useSyncExternalStore(onTurned, () => localStorage.getItem(KEPT_AS) !== 'off');
  const turn = useCallback((on: boolean) => {
    localStorage.setItem(KEPT_AS, on ? 'on' : 'off');
    for (const hear of hearers) hear();
  }, []);
  return useMemo(
    () => ({
      isOn,
      turn,
      accepted: () => isOn && play(ACCEPTED),
      refused: () => isOn && play(REFUSED),
    }),
    [isOn, turn],
  );
}

function onTurned(hear: () => void): () => void {
  hearers.add(hear);
  return () => hearers.delete(hear);
}

interface Note {
  readonly hz: number;
  readonly fromS: number;
  readonly lastsS: number;
}

/** A fifth upward, and a low tone twice: told apart by ears that hear high tones badly, and over a machine. */
const ACCEPTED: readonly Note[] = [
  { hz: 660, fromS: 0, lastsS: 0.07 },
  { hz: 990, fromS: 0.08, lastsS: 0.1 },
];
const REFUSED: readonly Note[] = [
  { hz: 180, fromS: 0, lastsS: 0.22 },
  { hz: 180, fromS: 0.3, lastsS: 0.32 },
];

const LOUDNESS = 0.25;

function play(notes: readonly Note[]): void {
  // Before the first touch the browser makes no sound, and complains.
  if (!('AudioContext' in window) || !navigator.userActivation?.hasBeenActive) return;
  const audio = new AudioContext();
  const begin = audio.currentTime;
  for (const { hz, fromS, lastsS } of notes) {
    const tone = audio.createOscillator();
    const loudness = audio.createGain();
    tone.type = 'triangle';
    tone.frequency.value = hz;
    // Fades at both ends: a tone that is cut off clicks.
    loudness.gain.setValueAtTime(0, begin + fromS);
    loudness.gain.linearRampToValueAtTime(LOUDNESS, begin + fromS + 0.01);
    loudness.gain.linearRampToValueAtTime(0, begin + fromS + lastsS);
    tone.connect(loudness).connect(audio.destination);
    tone.start(begin + fromS);
    tone.stop(begin + fromS + lastsS);
  }
  const last = notes.at(-1);
  setTimeout(() => void audio.close(), ((last?.fromS ?? 0) + (last?.lastsS ?? 0) + 0.1) * 1000);
}
