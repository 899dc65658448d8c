import { ImportLog } from '../features/dry-room/import-log.js';

export const ImportLogPage = () => <ImportLog />;
