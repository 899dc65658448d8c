export { createServer, type ServerParts } from './create-server.js';
export { startServer } from './main.js';
export { type OpenServer, openServer } from './open-server.js';
