/** Who works in the invented shop. Names put together so that they are nobody's. */
export const DEMO_PEOPLE = {
  owner: { name: 'Osra Tarnweld', roles: ['owner'] },
  adviser: { name: 'Pellim Marchmere', roles: ['adviser'] },
  servoWinder: { name: 'Rusko Kettlewade', roles: ['winder'] },
  twinWinder: { name: 'Imbra Sedgeholt', roles: ['winder'] },
  gearWinder: { name: 'Tavik Lorrimead', roles: ['winder'] },
  coiler: { name: 'Nessel Quillmarsh', roles: ['coiler'] },
  secondCoiler: { name: 'Haro Brackenweir', roles: ['coiler'] },
  packer: { name: 'Wimme Dunnockstead', roles: ['packer'] },
} as const;

export type DemoPerson = keyof typeof DEMO_PEOPLE;

/** Who stands at which machine. */
export const WINDER_AT: Readonly<Record<string, DemoPerson>> = {
  wren: 'servoWinder',
  'twin-finch': 'twinWinder',
  'old-heron': 'gearWinder',
  'two-herons': 'gearWinder',
  bench: 'servoWinder',
};

/**
 * With these anybody signs in as an invented person, once `tautwork demo` let them: for trying each role, and for
 * nothing else. They stand here for all to read, so no shop with anything of its own in it may ever take them.
 */
export const DEMO_PASSWORD = 'tarnfield to try out';
export const DEMO_PIN = '4861';
