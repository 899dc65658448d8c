export { DEMO_DATE } from '../../demo/index.js';
export { demoDay, demoFile, demoShop } from './demo.js';
export { loadShop, type ShopFault } from './load-shop.js';
export { packageRoot } from './package-root.js';
export { type OrdersFileFault, readOrdersFile } from './read-orders-file.js';
export { readTable, type Table, type TableFault } from './read-table.js';
