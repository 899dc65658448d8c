import { type RefObject, useEffect, useRef } from 'react';

/**
 * Keeps the keyboard on a run that changes lanes: its element is made anew there, and the focus would fall to the page.
 * Holds until the focus is somewhere else.
 */
export function useKeptFocus(place: RefObject<HTMLElement | null>, elementId: string | undefined): void {
  const last = useRef<string>(undefined);
  useEffect(() => {
    if (elementId !== undefined && place.current?.contains(document.activeElement)) last.current = elementId;
    if (last.current === undefined) return;
    if (document.activeElement === document.body) document.getElementById(last.current)?.focus();
    else if (!place.current?.contains(document.activeElement)) last.current = undefined;
  });
}
