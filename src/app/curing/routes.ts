import type { Route } from '#app/shell/route.ts';

export const routes: readonly Route[] = [
  { pattern: '/plan/:doc/cure', load: () => import('./cure/cure-screen.tsx').then((m) => m.CureScreen) },
  { pattern: '/oven/new', load: () => import('./oven/oven-new-screen.tsx').then((m) => m.OvenNewScreen) },
  {
    pattern: '/oven/:id/reminders',
    load: () => import('./reminders/reminders-screen.tsx').then((m) => m.RemindersScreen),
  },
  { pattern: '/oven/:id', load: () => import('./oven/oven-screen.tsx').then((m) => m.OvenScreen) },
  { pattern: '/oven/:id/chart', load: () => import('./oven/chart-screen.tsx').then((m) => m.ChartScreen) },
  {
    pattern: '/oven/:id/logger',
    load: () => import('./logger/logger-screen.tsx').then((m) => m.LoggerScreen),
  },
  {
    pattern: '/oven/:id/logger/:root',
    load: () => import('./logger/logger-screen.tsx').then((m) => m.LoggerScreen),
  },
];
