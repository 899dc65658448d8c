export { type AccessWayParts, accessWay } from './access/access-way.js';
export { AUTHORITY_ADDRESS } from './access/authority-route.js';
export { qrInBlocks, qrPicture } from './access/certificate/address-code.js';
export {
  type KeptCertificate,
  keptCertificate,
  makeCertificate,
  renewCertificate,
  takeCertificate,
} from './access/certificate/keep-certificate.js';
export { isDueForRenewal } from './access/certificate/look-at-certificate.js';
export { type ServerOptions, serverOptions, type WantedPlace } from './access/server-options.js';
export { exampleOf } from './api/example.js';
export type { Asker, WayIn } from './asker.js';
export { createServer, type ServerParts } from './create-server.js';
export { type OpenServer, openServer } from './open-server.js';
export { serveDemo } from './serve-demo.js';
export { type OpenShop, type ShopToServe, serveShop } from './serve-shop.js';
export { statusOf } from './statuses.js';
