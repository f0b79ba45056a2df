import type { Route } from '#app/shell/route.ts';

export const routes: readonly Route[] = [
  { pattern: '/build/:id', load: () => import('./build/route-screen.tsx').then((m) => m.RouteScreen) },
  { pattern: '/build/:id/:stage', load: () => import('./build/route-screen.tsx').then((m) => m.RouteScreen) },
  { pattern: '/clocks', load: () => import('./clocks/clocks-screen.tsx').then((m) => m.ClocksScreen) },
  { pattern: '/timer', load: () => import('./clocks/timer-screen.tsx').then((m) => m.TimerScreen) },
  { pattern: '/start', load: () => import('./start/start-screen.tsx').then((m) => m.StartScreen) },
  { pattern: '/start/:plan', load: () => import('./start/start-screen.tsx').then((m) => m.StartScreen) },
  { pattern: '/try', load: () => import('./try/try-screen.tsx').then((m) => m.TryScreen) },
  { pattern: '/plan/:doc/tape', load: () => import('./tape/tape-screen.tsx').then((m) => m.TapeScreen) },
  { pattern: '/tape/:id', load: () => import('./tape/tape-screen.tsx').then((m) => m.TapeScreen) },
  { pattern: '/demold/:id', load: () => import('./demold/demold-screen.tsx').then((m) => m.DemoldScreen) },
  { pattern: '/weigh/:id', load: () => import('./weigh/weigh-screen.tsx').then((m) => m.WeighScreen) },
  {
    pattern: '/weigh/:id/:what',
    load: () => import('./weigh/weigh-in-screen.tsx').then((m) => m.WeighInScreen),
  },
  {
    pattern: '/measure/:id',
    load: () => import('./measure/measure-screen.tsx').then((m) => m.MeasureScreen),
  },
  { pattern: '/proof/:id', load: () => import('./proof/proof-screen.tsx').then((m) => m.ProofScreen) },
  {
    pattern: '/proof/:id/squeeze',
    load: () => import('./proof/squeeze-screen.tsx').then((m) => m.SqueezeScreen),
  },
  { pattern: '/mix/:id', load: () => import('./mix/mix-screen.tsx').then((m) => m.MixScreen) },
  { pattern: '/mix/:id/:view', load: () => import('./mix/mix-screen.tsx').then((m) => m.MixScreen) },
];
