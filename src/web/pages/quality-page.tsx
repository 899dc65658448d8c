import { QualityRoom } from '../features/quality/quality-room.js';

/** How the shop's strings come out, and why. */
export const QualityPage = () => <QualityRoom />;
