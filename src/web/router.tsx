import { createRootRoute, createRoute, createRouter, lazyRouteComponent } from '@tanstack/react-router';
import { AccountRoom } from './frame/account-room.js';
import { FirstSignInRoom } from './frame/first-sign-in-room.js';
import { Frame } from './frame/frame.js';
import { FirstRoom, room } from './frame/room.js';
import { Broken } from './parts/broken.js';
import { Lost } from './parts/lost.js';

const root = createRootRoute({ component: Frame, notFoundComponent: () => <Lost /> });

const TodayRoom = lazyRouteComponent(() => import('./pages/today-page.js'), 'TodayPage');
const PlanRoom = lazyRouteComponent(() => import('./pages/plan-page.js'), 'PlanPage');

/** What may stand after the `?` of an address: these names, as text. Anything else is dropped. */
const texts =
  <Name extends string>(...names: readonly Name[]) =>
  (search: Record<string, unknown>): { [Each in Name]?: string } =>
    Object.fromEntries(
      names.flatMap((name) => (typeof search[name] === 'string' ? [[name, search[name]]] : [])),
    ) as { [Each in Name]?: string };

/** Each room is loaded when its door is opened, and opened to those who may go in. */
const rooms = [
  createRoute({ getParentRoute: () => root, path: '/', component: () => <FirstRoom desk={TodayRoom} /> }),
  createRoute({ getParentRoute: () => root, path: '/first-sign-in', component: FirstSignInRoom }),
  createRoute({ getParentRoute: () => root, path: '/account', component: AccountRoom }),
  createRoute({
    getParentRoute: () => root,
    path: '/requests',
    validateSearch: texts('state'),
    component: room(
      'request.read',
      lazyRouteComponent(() => import('./pages/requests-page.js'), 'RequestsPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/requests/$id',
    validateSearch: texts('view'),
    component: room(
      'request.read',
      lazyRouteComponent(() => import('./pages/request-page.js'), 'RequestPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/sets',
    component: room(
      'shop.read',
      lazyRouteComponent(() => import('./pages/sets-page.js'), 'SetsPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/sets/$id',
    validateSearch: texts('with', 'view'),
    component: room(
      'shop.read',
      lazyRouteComponent(() => import('./pages/set-page.js'), 'SetPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/recipes',
    validateSearch: texts('gauge', 'material', 'state'),
    component: room(
      'recipe.read',
      lazyRouteComponent(() => import('./pages/recipes-page.js'), 'RecipesPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/recipes/$id',
    component: room(
      'recipe.read',
      lazyRouteComponent(() => import('./pages/recipe-page.js'), 'RecipePage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/calibration',
    component: room(
      'recipe.read',
      lazyRouteComponent(() => import('./pages/calibration-page.js'), 'CalibrationPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/orders',
    validateSearch: texts('state'),
    component: room(
      'order.read',
      lazyRouteComponent(() => import('./pages/orders-page.js'), 'OrdersPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/orders/import',
    component: room(
      'order.edit',
      lazyRouteComponent(() => import('./pages/import-orders-page.js'), 'ImportOrdersPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/orders/$id',
    component: room(
      'order.read',
      lazyRouteComponent(() => import('./pages/order-page.js'), 'OrderPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/plan',
    validateSearch: texts('date'),
    component: room('plan.read', PlanRoom),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/plan/$lotId',
    validateSearch: texts('date'),
    component: room(
      'plan.read',
      lazyRouteComponent(() => import('./pages/planned-lot-page.js'), 'PlannedLotPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/runs/$id',
    component: room(
      'run.read',
      lazyRouteComponent(() => import('./pages/run-page.js'), 'RunPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/strings',
    validateSearch: texts('lot', 'bin'),
    component: room(
      'stock.read',
      lazyRouteComponent(() => import('./pages/strings-page.js'), 'StringsPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/wire',
    validateSearch: texts('wire', 'spool'),
    component: room(
      'stock.read',
      lazyRouteComponent(() => import('./pages/wire-page.js'), 'WirePage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/quality',
    validateSearch: texts(
      'from',
      'until',
      'machine',
      'recipe',
      'lot',
      'instrument',
      'measure',
      'by',
      'mine',
      'run',
    ),
    component: room(
      'run.read',
      lazyRouteComponent(() => import('./pages/quality-page.js'), 'QualityPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/shop',
    component: room(
      'shop.edit',
      lazyRouteComponent(() => import('./pages/shop-page.js'), 'ShopPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/shop/$part',
    component: room(
      'shop.edit',
      lazyRouteComponent(() => import('./pages/shop-page.js'), 'ShopPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/machine',
    validateSearch: texts('run'),
    component: room(
      'run.work',
      lazyRouteComponent(() => import('./pages/machine-page.js'), 'MachinePage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/machine/dial',
    validateSearch: texts('machine', 'what'),
    component: room(
      'run.work',
      lazyRouteComponent(() => import('./pages/dial-page.js'), 'DialPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/practice',
    validateSearch: texts('machine', 'seed'),
    component: room(
      'run.work',
      lazyRouteComponent(() => import('./pages/practice-page.js'), 'PracticePage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/coiling',
    validateSearch: texts('lot'),
    component: room(
      'tally.enter',
      lazyRouteComponent(() => import('./pages/coiling-page.js'), 'CoilingPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/packing',
    validateSearch: texts('pack'),
    component: room(
      'pack.work',
      lazyRouteComponent(() => import('./pages/packing-page.js'), 'PackingPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/dry-room',
    validateSearch: texts('room'),
    component: room(
      'dryroom.enter',
      lazyRouteComponent(() => import('./pages/dry-room-page.js'), 'DryRoomPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/complaints',
    validateSearch: texts('state', 'fault', 'text', 'days'),
    component: room(
      'complaint.read',
      lazyRouteComponent(() => import('./pages/complaints-page.js'), 'ComplaintsPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/complaints/$id',
    component: room(
      'complaint.read',
      lazyRouteComponent(() => import('./pages/complaint-page.js'), 'ComplaintPage'),
    ),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/dry-room/import',
    component: room(
      'dryroom.enter',
      lazyRouteComponent(() => import('./pages/import-log-page.js'), 'ImportLogPage'),
    ),
  }),
] as const;

/** Every part in every state, for those who build rooms. The shop's own build has no such room. */
const forBuilders =
  import.meta.env.DEV || import.meta.env.MODE === 'look'
    ? ([
        createRoute({
          getParentRoute: () => root,
          path: '/look',
          validateSearch: texts('state'),
          component: lazyRouteComponent(() => import('./pages/look-page.js'), 'LookPage'),
        }),
      ] as const)
    : ([] as const);

export const router = createRouter({
  routeTree: root.addChildren([...rooms, ...forBuilders]),
  defaultPreload: 'intent',
  defaultErrorComponent: Broken,
});

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
}
