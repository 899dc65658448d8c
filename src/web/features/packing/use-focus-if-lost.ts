import { type RefObject, useEffect, useRef } from 'react';

/** For the heading of what comes in place of what had the focus: whoever goes by keys goes on from there, not from the top. */
export function useFocusIfLost(): RefObject<HTMLHeadingElement | null> {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    const focused = document.activeElement;
    if (focused === null || focused === document.body) heading.current?.focus({ preventScroll: true });
  }, []);
  return heading;
}
