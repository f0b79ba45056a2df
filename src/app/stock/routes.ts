import type { Route } from '#app/shell/route.ts';

export const routes: readonly Route[] = [
  { pattern: '/shelf', load: () => import('./shelf/shelf-screen.tsx').then((m) => m.ShelfScreen) },
  {
    pattern: '/shelf/checklist/new',
    load: () => import('./shelf/checklist-screen.tsx').then((m) => m.ChecklistScreen),
  },
  {
    pattern: '/shelf/checklist/:doc',
    load: () => import('./shelf/checklist-screen.tsx').then((m) => m.ChecklistScreen),
  },
  {
    pattern: '/shelf/checklist/:doc/:stage',
    load: () => import('./shelf/stage-screen.tsx').then((m) => m.StageScreen),
  },
  { pattern: '/lots', load: () => import('./lots/lots-screen.tsx').then((m) => m.LotsScreen) },
  {
    pattern: '/lots/new/:of/:item',
    load: () => import('./lots/lot-edit-screen.tsx').then((m) => m.LotEditScreen),
  },
  {
    pattern: '/lots/build/:id',
    load: () => import('./lots/build-lots-screen.tsx').then((m) => m.BuildLotsScreen),
  },
  { pattern: '/lots/:doc', load: () => import('./lots/lot-screen.tsx').then((m) => m.LotScreen) },
  {
    pattern: '/lots/:doc/edit',
    load: () => import('./lots/lot-edit-screen.tsx').then((m) => m.LotEditScreen),
  },
  { pattern: '/lots/:doc/count', load: () => import('./lots/count-screen.tsx').then((m) => m.CountScreen) },
  { pattern: '/shelf/:type', load: () => import('./shelf/kind-screen.tsx').then((m) => m.KindScreen) },
  { pattern: '/shelf/:type/new', load: () => import('./shelf/item-screen.tsx').then((m) => m.ItemScreen) },
  { pattern: '/shelf/:type/:doc', load: () => import('./shelf/item-screen.tsx').then((m) => m.ItemScreen) },
  {
    pattern: '/shelf/cloth/:doc/strength',
    load: () => import('./shelf/strength-screen.tsx').then((m) => m.StrengthScreen),
  },
];
