import { CalibrationRoom } from '../features/calibration/calibration-room.js';

/** What the shop's measured strings teach, and taking it in. */
export const CalibrationPage = () => <CalibrationRoom />;
