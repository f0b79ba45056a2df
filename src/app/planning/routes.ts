import type { Route } from '#app/shell/route.ts';

export const routes: readonly Route[] = [
  { pattern: '/plans', load: () => import('./plans/plans-screen.tsx').then((m) => m.PlansScreen) },
  { pattern: '/plan/new', load: () => import('./plans/plan-edit-screen.tsx').then((m) => m.PlanEditScreen) },
  { pattern: '/plan/:doc', load: () => import('./plans/plan-screen.tsx').then((m) => m.PlanScreen) },
  {
    pattern: '/plan/:doc/edit',
    load: () => import('./plans/plan-edit-screen.tsx').then((m) => m.PlanEditScreen),
  },
  { pattern: '/plan/:doc/along', load: () => import('./along/along-screen.tsx').then((m) => m.AlongScreen) },
  {
    pattern: '/plan/:doc/template',
    load: () => import('./wall/template-screen.tsx').then((m) => m.TemplateScreen),
  },
  {
    pattern: '/plan/:doc/cutting',
    load: () => import('./cutting/cutting-screen.tsx').then((m) => m.CuttingScreen),
  },
  { pattern: '/edge/:id', load: () => import('./cutting/edge-screen.tsx').then((m) => m.EdgeScreen) },
  {
    pattern: '/edge/:id/:piece/:mark',
    load: () => import('./cutting/read-edge-screen.tsx').then((m) => m.ReadEdgeScreen),
  },
  { pattern: '/cut/:id', load: () => import('./cutting/cut-list-screen.tsx').then((m) => m.CutListScreen) },
  {
    pattern: '/cut/:id/weigh/:piece',
    load: () => import('./cutting/weigh-piece-screen.tsx').then((m) => m.WeighPieceScreen),
  },
  { pattern: '/plan/:doc/wall', load: () => import('./wall/wall-screen.tsx').then((m) => m.WallScreen) },
  {
    pattern: '/plan/:doc/wall/mandrel',
    load: () => import('./wall/mandrel-screen.tsx').then((m) => m.MandrelScreen),
  },
  {
    pattern: '/plan/:doc/wall/picture/:name',
    load: () => import('./wall/picture-screen.tsx').then((m) => m.PictureScreen),
  },
  {
    pattern: '/plan/:doc/wall/:piece',
    load: () => import('./wall/piece-screen.tsx').then((m) => m.PieceScreen),
  },
  { pattern: '/plan/:doc/loads', load: () => import('./loads/loads-screen.tsx').then((m) => m.LoadsScreen) },
  {
    pattern: '/plan/:doc/loads/asked',
    load: () => import('./loads/asked-screen.tsx').then((m) => m.AskedScreen),
  },
  {
    pattern: '/plan/:doc/loads/stiffness',
    load: () => import('./wanted/stiffness-screen.tsx').then((m) => m.StiffnessScreen),
  },
  {
    pattern: '/plan/:doc/loads/wanted',
    load: () => import('./wanted/wanted-screen.tsx').then((m) => m.WantedScreen),
  },
  {
    pattern: '/plan/:doc/loads/margins',
    load: () => import('./loads/margins-screen.tsx').then((m) => m.MarginsScreen),
  },
  {
    pattern: '/plan/:doc/loads/lines/:case',
    load: () => import('./loads/lines-screen.tsx').then((m) => m.LinesScreen),
  },
  {
    pattern: '/plan/:doc/loads/support/:support',
    load: () => import('./loads/support-screen.tsx').then((m) => m.SupportScreen),
  },
  {
    pattern: '/plan/:doc/loads/fitting/:fitting',
    load: () => import('./loads/fitting-screen.tsx').then((m) => m.FittingScreen),
  },
  {
    pattern: '/plan/:doc/loads/case/:case',
    load: () => import('./loads/case-screen.tsx').then((m) => m.CaseScreen),
  },
  {
    pattern: '/plan/:doc/loads/case/:case/:load',
    load: () => import('./loads/load-screen.tsx').then((m) => m.LoadScreen),
  },
  { pattern: '/ledger', load: () => import('./ledger/ledger-screen.tsx').then((m) => m.LedgerScreen) },
  {
    pattern: '/ledger/new',
    load: () => import('./ledger/structure-edit-screen.tsx').then((m) => m.StructureEditScreen),
  },
  {
    pattern: '/ledger/:doc',
    load: () => import('./ledger/structure-screen.tsx').then((m) => m.StructureScreen),
  },
  {
    pattern: '/ledger/:doc/edit',
    load: () => import('./ledger/structure-edit-screen.tsx').then((m) => m.StructureEditScreen),
  },
  {
    pattern: '/ledger/:doc/part/:part',
    load: () => import('./ledger/part-screen.tsx').then((m) => m.PartScreen),
  },
  {
    pattern: '/ledger/:doc/part/:part/edit',
    load: () => import('./ledger/part-edit-screen.tsx').then((m) => m.PartEditScreen),
  },
];
