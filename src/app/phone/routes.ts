import type { Route } from '#app/shell/route.ts';

export const routes: readonly Route[] = [
  { pattern: '/data', load: () => import('./data/data-screen.tsx').then((m) => m.DataScreen) },
  { pattern: '/data/restore', load: () => import('./data/restore-screen.tsx').then((m) => m.RestoreScreen) },
  { pattern: '/data/take', load: () => import('./hand/take-screen.tsx').then((m) => m.TakeScreen) },
  { pattern: '/hand/build/:id', load: () => import('./hand/give-screen.tsx').then((m) => m.GiveBuildScreen) },
  { pattern: '/hand/plan/:doc', load: () => import('./hand/give-screen.tsx').then((m) => m.GivePlanScreen) },
  { pattern: '/data/tables', load: () => import('./data/tables-screen.tsx').then((m) => m.TablesScreen) },
  { pattern: '/data/erase', load: () => import('./data/erase-screen.tsx').then((m) => m.EraseScreen) },
  { pattern: '/words/:term?', load: () => import('./words/words-screen.tsx').then((m) => m.WordsScreen) },
  {
    pattern: '/settings',
    load: () => import('./settings/settings-screen.tsx').then((m) => m.SettingsScreen),
  },
];
