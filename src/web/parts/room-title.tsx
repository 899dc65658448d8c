import { useDocumentTitle } from '@mantine/hooks';
import { createContext, type RefObject, use, useEffect, useRef } from 'react';

/** Whether a room was shown before in this visit. */
export const EnteredContext = createContext<RefObject<boolean>>({ current: false });

/** The title of a room. It takes the focus when one comes from another room, so that a reader hears where one is. */
export function RoomTitle({ title }: { readonly title: string }) {
  const heading = useRef<HTMLHeadingElement>(null);
  const entered = use(EnteredContext);
  useDocumentTitle(`${title} · Tautwork`);
  useEffect(() => {
    if (entered.current) heading.current?.focus({ preventScroll: true });
    entered.current = true;
  }, [entered]);
  return (
    <h1 ref={heading} tabIndex={-1}>
      {title}
    </h1>
  );
}
