import { type AsyncRouteComponent, Navigate } from '@tanstack/react-router';
import type { ComponentType } from 'react';
import type { Permission } from '../../contract/index.js';
import { isOfTheDesk, useMay, useMe } from '../api/session.js';
import { RoomTitle } from '../parts/room-title.js';
import { useWords } from '../words/language.js';
import { PARTS_WORDS } from '../words/parts.js';
import { FLOOR } from './doors.js';

/** A room for those who may go in; others are told what it takes. */
export function room(
  permission: Permission,
  Inside: AsyncRouteComponent<object>,
): AsyncRouteComponent<object> {
  function Room() {
    const may = useMay();
    return may(permission) ? <Inside /> : <NotForYou permission={permission} />;
  }
  return Object.assign(Room, Inside.preload ? { preload: Inside.preload } : {});
}

function NotForYou({ permission }: { readonly permission: Permission }) {
  const words = useWords(PARTS_WORDS);
  return (
    <>
      <RoomTitle title={words.notForYou} />
      <p>{words.notForYouMore(permission)}</p>
    </>
  );
}

/** People of the floor come in by the floor: the first of their rooms there. */
export function FirstRoom({ desk: Desk }: { readonly desk: ComponentType }) {
  const me = useMe();
  const may = useMay();
  const floor = FLOOR.find(({ permission }) => may(permission));
  if (isOfTheDesk(me) || !floor) return <Desk />;
  return <Navigate to={floor.to} replace />;
}
