export type { Pitch } from './pitch.js';
