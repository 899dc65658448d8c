export type {
  Construction,
  CoreWire,
  PlainConstruction,
  SeatModel,
  WoundConstruction,
  WrapLayer,
} from './construction.js';
