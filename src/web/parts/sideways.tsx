import { useElementSize, useMergedRef } from '@mantine/hooks';
import { type ReactNode, useLayoutEffect, useRef, useState } from 'react';
import styles from './sideways.module.css';

/** Room for what may be wider than the page. Only then does it become a stop of the Tab key, to be moved by arrows. */
export function Sideways({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  const place = useRef<HTMLDivElement>(null);
  const { ref: measured, width } = useElementSize<HTMLDivElement>();
  const ref = useMergedRef(place, measured);
  const [moves, setMoves] = useState(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is inside and how wide the place is decide
  useLayoutEffect(() => {
    const element = place.current;
    if (element) setMoves(element.scrollWidth > element.clientWidth);
  }, [width, children]);
  // A group, no landmark: what it holds stands in a section of the same name as a rule.
  const stop = moves ? { 'aria-label': label, role: 'group', tabIndex: 0 } : {};
  return (
    <div ref={ref} className={styles.sideways} {...stop}>
      {children}
    </div>
  );
}
