import { SetsList } from '../features/set/sets-list.js';

/** The shop's stock sets. */
export const SetsPage = () => <SetsList />;
