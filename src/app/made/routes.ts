import type { Route } from '#app/shell/route.ts';

export const routes: readonly Route[] = [
  { pattern: '/record', load: () => import('./record/record-screen.tsx').then((m) => m.RecordScreen) },
  { pattern: '/record/ovens', load: () => import('./record/ovens-screen.tsx').then((m) => m.OvensScreen) },
  {
    pattern: '/record/build/:id',
    load: () => import('./record/build-record-screen.tsx').then((m) => m.BuildRecordScreen),
  },
  {
    pattern: '/record/build/:id/paper',
    load: () => import('./paper/paper-screen.tsx').then((m) => m.PaperScreen),
  },
  {
    pattern: '/record/oven/:id',
    load: () => import('./record/oven-record-screen.tsx').then((m) => m.OvenRecordScreen),
  },
  {
    pattern: '/record/fix/:subject/:root',
    load: () => import('./record/fix-screen.tsx').then((m) => m.FixScreen),
  },
  { pattern: '/compare', load: () => import('./compare/compare-screen.tsx').then((m) => m.CompareScreen) },
  {
    pattern: '/compare/choose',
    load: () => import('./compare/choose-screen.tsx').then((m) => m.ChooseScreen),
  },
  {
    pattern: '/compare/choose/:plan',
    load: () => import('./compare/choose-screen.tsx').then((m) => m.ChooseScreen),
  },
  { pattern: '/compare/two', load: () => import('./compare/two-screen.tsx').then((m) => m.TwoScreen) },
  { pattern: '/factors', load: () => import('./factors/factors-screen.tsx').then((m) => m.FactorsScreen) },
  { pattern: '/factors/:key', load: () => import('./factors/factor-screen.tsx').then((m) => m.FactorScreen) },
];
