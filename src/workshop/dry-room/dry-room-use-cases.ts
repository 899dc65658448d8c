import type { AnyUseCase } from '../use-case.js';
import { importDryRoom } from './import-dry-room.js';
import { reportDryRoom } from './report-dry-room.js';

export const DRY_ROOM_USE_CASES: readonly AnyUseCase[] = [reportDryRoom, importDryRoom];
