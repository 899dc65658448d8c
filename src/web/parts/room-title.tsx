import { useDocumentTitle } from '@mantine/hooks';
import { type ReactNode, useEffect, useRef } from 'react';

/** The title of a room. It takes the focus when one comes from another room, so that a reader hears where one is. */
export function RoomTitle({ title, children }: { readonly title: string; readonly children?: ReactNode }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useDocumentTitle(`${title} · Tautwork`);
  useEffect(() => {
    const comesFromADoor = document.activeElement !== null && document.activeElement !== document.body;
    if (comesFromADoor) heading.current?.focus({ preventScroll: true });
  }, []);
  return (
    <h1 ref={heading} tabIndex={-1}>
      {title}
      {children}
    </h1>
  );
}
