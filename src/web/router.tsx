import { createRootRoute, createRoute, createRouter, lazyRouteComponent } from '@tanstack/react-router';
import { Frame } from './parts/frame.js';
import { Lost } from './parts/lost.js';

const root = createRootRoute({ component: Frame, notFoundComponent: () => <Lost /> });

/** Each room is loaded when its door is opened. */
const rooms = [
  createRoute({
    getParentRoute: () => root,
    path: '/',
    component: lazyRouteComponent(() => import('./pages/day-page.js'), 'DayPage'),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/runs/$lotId',
    component: lazyRouteComponent(() => import('./pages/run-page.js'), 'RunPage'),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/sets',
    component: lazyRouteComponent(() => import('./pages/sets-page.js'), 'SetsPage'),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/sets/$id',
    component: lazyRouteComponent(() => import('./pages/set-page.js'), 'SetPage'),
  }),
  createRoute({
    getParentRoute: () => root,
    path: '/request',
    component: lazyRouteComponent(() => import('./pages/request-page.js'), 'RequestPage'),
  }),
] as const;

export const router = createRouter({
  routeTree: root.addChildren([...rooms]),
  defaultPreload: 'intent',
});

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
}
