import { type RefObject, useEffect, useRef } from 'react';

/** Puts the focus where the hand types next, once, when it appears: an instrument types without being asked to. */
export function useFocusOnce<Element extends HTMLElement>(): RefObject<Element | null> {
  const place = useRef<Element>(null);
  useEffect(() => place.current?.focus(), []);
  return place;
}
