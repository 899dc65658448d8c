import { type DragEvent, type MouseEvent, type PointerEvent, useRef } from 'react';
import { type Carry, placeBefore, standsAt } from './carry.js';
import { LANE } from './lane-measures.js';
import { type Lane, middlesOf } from './lanes-of.js';
import type { Carried, Hand } from './use-hand.js';

interface HandPointer {
  readonly lanes: readonly Lane[];
  readonly hand: Hand | undefined;
  readonly onPutDown: (carried: Carried) => void;
  readonly drawnWidth: number;
  readonly nameWidth: number;
  readonly perMinute: number;
}

interface Grip {
  readonly lotId: string;
  readonly x: number;
  readonly y: number;
  readonly isDragging: boolean;
}

/** So far a pressed pointer may tremble before it drags. */
const TREMOR_PX = 6;

/** A pressed pointer that moves drags a run; let go, the run is put down where it is. A mere click opens its sheet as ever. */
export function useHandPointer(parts: HandPointer) {
  const { hand, onPutDown } = parts;
  const grip = useRef<Grip>(undefined);
  const justDragged = useRef(false);
  return {
    onPointerDown: (event: PointerEvent<SVGSVGElement>) => {
      justDragged.current = false;
      const bar = (event.target as Element).closest('[data-movable]');
      const lotId = bar?.getAttribute('data-lot') ?? undefined;
      if (hand && lotId !== undefined && event.button === 0)
        grip.current = { lotId, x: event.clientX, y: event.clientY, isDragging: false };
    },
    onPointerMove: (event: PointerEvent<SVGSVGElement>) => {
      const held = grip.current;
      if (!hand || !held) return;
      if (!held.isDragging) {
        if (Math.hypot(event.clientX - held.x, event.clientY - held.y) < TREMOR_PX) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        grip.current = { ...held, isDragging: true };
      }
      const carry = carryAt(event, held.lotId, parts);
      if (carry) hand.hold(carry);
    },
    onPointerUp: (event: PointerEvent<SVGSVGElement>) => {
      const held = grip.current;
      grip.current = undefined;
      if (!hand || !held?.isDragging) return;
      justDragged.current = true;
      const carry = carryAt(event, held.lotId, parts);
      const carried = carry && hand.at(carry);
      if (carried) onPutDown(carried);
      else hand.leave();
    },
    onPointerCancel: () => {
      if (grip.current?.isDragging) hand?.leave();
      grip.current = undefined;
    },
    onClickCapture: (event: MouseEvent) => {
      if (!justDragged.current) return;
      justDragged.current = false;
      event.preventDefault();
      event.stopPropagation();
    },
    // The browser's own dragging of links would take the pointer away.
    onDragStart: (event: DragEvent) => event.preventDefault(),
  };
}

/** Where a lot would be put down at the pointer's place; undefined for one that cannot be moved. */
function carryAt(
  event: PointerEvent<SVGSVGElement>,
  lotId: string,
  { lanes, hand, drawnWidth, nameWidth, perMinute }: HandPointer,
): Carry | undefined {
  const order = hand?.arranger.orderNow ?? [];
  if (!standsAt(order, lotId)) return undefined;
  const box = event.currentTarget.getBoundingClientRect();
  const scale = drawnWidth / box.width;
  const minute = ((event.clientX - box.left) * scale - nameWidth) / perMinute;
  const row = Math.floor(((event.clientY - box.top) * scale - LANE.axisHeight) / LANE.height);
  const lane = lanes[Math.min(Math.max(row, 0), lanes.length - 1)];
  const target = order.find(({ machineId }) => machineId === lane?.machine.machineId);
  if (!target) return undefined;
  const { machineId, lotIds } = target;
  return { lotId, machineId, place: placeBefore(lotIds, lotId, minute, middlesOf(lanes)) };
}
