import type { ComponentType } from 'preact';
import { BenchScreen } from '#app/laying-up/bench/bench-screen.tsx';
import type { Params } from '#app/router.ts';

export type ScreenType = ComponentType<{ params: Params }>;

interface Route {
  pattern: string;
  load: () => Promise<ScreenType>;
}

/** The first screen is in the first script; the others come from the cache a moment later, or when they are asked for. */
export const firstScreen: ScreenType = BenchScreen;

export const routes: readonly Route[] = [
  {
    pattern: '/build/:id',
    load: () => import('#app/laying-up/build/route-screen.tsx').then((m) => m.RouteScreen),
  },
  {
    pattern: '/build/:id/:stage',
    load: () => import('#app/laying-up/build/route-screen.tsx').then((m) => m.RouteScreen),
  },
  {
    pattern: '/clocks',
    load: () => import('#app/laying-up/clocks/clocks-screen.tsx').then((m) => m.ClocksScreen),
  },
  {
    pattern: '/timer',
    load: () => import('#app/laying-up/clocks/timer-screen.tsx').then((m) => m.TimerScreen),
  },
  {
    pattern: '/start',
    load: () => import('#app/laying-up/start/start-screen.tsx').then((m) => m.StartScreen),
  },
  {
    pattern: '/start/:plan',
    load: () => import('#app/laying-up/start/start-screen.tsx').then((m) => m.StartScreen),
  },
  { pattern: '/try', load: () => import('#app/laying-up/try/try-screen.tsx').then((m) => m.TryScreen) },
  {
    pattern: '/plans',
    load: () => import('#app/planning/plans/plans-screen.tsx').then((m) => m.PlansScreen),
  },
  {
    pattern: '/plan/new',
    load: () => import('#app/planning/plans/plan-edit-screen.tsx').then((m) => m.PlanEditScreen),
  },
  {
    pattern: '/plan/:doc',
    load: () => import('#app/planning/plans/plan-screen.tsx').then((m) => m.PlanScreen),
  },
  {
    pattern: '/plan/:doc/edit',
    load: () => import('#app/planning/plans/plan-edit-screen.tsx').then((m) => m.PlanEditScreen),
  },
  {
    pattern: '/plan/:doc/along',
    load: () => import('#app/planning/along/along-screen.tsx').then((m) => m.AlongScreen),
  },
  {
    pattern: '/plan/:doc/cure',
    load: () => import('#app/curing/cure/cure-screen.tsx').then((m) => m.CureScreen),
  },
  {
    pattern: '/plan/:doc/template',
    load: () => import('#app/planning/wall/template-screen.tsx').then((m) => m.TemplateScreen),
  },
  {
    pattern: '/plan/:doc/cutting',
    load: () => import('#app/planning/cutting/cutting-screen.tsx').then((m) => m.CuttingScreen),
  },
  {
    pattern: '/edge/:id',
    load: () => import('#app/planning/cutting/edge-screen.tsx').then((m) => m.EdgeScreen),
  },
  {
    pattern: '/edge/:id/:piece/:mark',
    load: () => import('#app/planning/cutting/read-edge-screen.tsx').then((m) => m.ReadEdgeScreen),
  },
  {
    pattern: '/cut/:id',
    load: () => import('#app/planning/cutting/cut-list-screen.tsx').then((m) => m.CutListScreen),
  },
  {
    pattern: '/cut/:id/weigh/:piece',
    load: () => import('#app/planning/cutting/weigh-piece-screen.tsx').then((m) => m.WeighPieceScreen),
  },
  {
    pattern: '/plan/:doc/wall',
    load: () => import('#app/planning/wall/wall-screen.tsx').then((m) => m.WallScreen),
  },
  {
    pattern: '/plan/:doc/wall/mandrel',
    load: () => import('#app/planning/wall/mandrel-screen.tsx').then((m) => m.MandrelScreen),
  },
  {
    pattern: '/plan/:doc/wall/picture/:name',
    load: () => import('#app/planning/wall/picture-screen.tsx').then((m) => m.PictureScreen),
  },
  {
    pattern: '/plan/:doc/wall/:piece',
    load: () => import('#app/planning/wall/piece-screen.tsx').then((m) => m.PieceScreen),
  },
  {
    pattern: '/plan/:doc/loads',
    load: () => import('#app/planning/loads/loads-screen.tsx').then((m) => m.LoadsScreen),
  },
  {
    pattern: '/plan/:doc/loads/asked',
    load: () => import('#app/planning/loads/asked-screen.tsx').then((m) => m.AskedScreen),
  },
  {
    pattern: '/plan/:doc/loads/stiffness',
    load: () => import('#app/planning/wanted/stiffness-screen.tsx').then((m) => m.StiffnessScreen),
  },
  {
    pattern: '/plan/:doc/loads/wanted',
    load: () => import('#app/planning/wanted/wanted-screen.tsx').then((m) => m.WantedScreen),
  },
  {
    pattern: '/plan/:doc/loads/margins',
    load: () => import('#app/planning/loads/margins-screen.tsx').then((m) => m.MarginsScreen),
  },
  {
    pattern: '/plan/:doc/loads/lines/:case',
    load: () => import('#app/planning/loads/lines-screen.tsx').then((m) => m.LinesScreen),
  },
  {
    pattern: '/plan/:doc/loads/support/:support',
    load: () => import('#app/planning/loads/support-screen.tsx').then((m) => m.SupportScreen),
  },
  {
    pattern: '/plan/:doc/loads/fitting/:fitting',
    load: () => import('#app/planning/loads/fitting-screen.tsx').then((m) => m.FittingScreen),
  },
  {
    pattern: '/plan/:doc/loads/case/:case',
    load: () => import('#app/planning/loads/case-screen.tsx').then((m) => m.CaseScreen),
  },
  {
    pattern: '/plan/:doc/loads/case/:case/:load',
    load: () => import('#app/planning/loads/load-screen.tsx').then((m) => m.LoadScreen),
  },
  {
    pattern: '/plan/:doc/tape',
    load: () => import('#app/laying-up/tape/tape-screen.tsx').then((m) => m.TapeScreen),
  },
  {
    pattern: '/tape/:id',
    load: () => import('#app/laying-up/tape/tape-screen.tsx').then((m) => m.TapeScreen),
  },
  {
    pattern: '/demold/:id',
    load: () => import('#app/laying-up/demold/demold-screen.tsx').then((m) => m.DemoldScreen),
  },
  {
    pattern: '/weigh/:id',
    load: () => import('#app/laying-up/weigh/weigh-screen.tsx').then((m) => m.WeighScreen),
  },
  {
    pattern: '/weigh/:id/:what',
    load: () => import('#app/laying-up/weigh/weigh-in-screen.tsx').then((m) => m.WeighInScreen),
  },
  {
    pattern: '/measure/:id',
    load: () => import('#app/laying-up/measure/measure-screen.tsx').then((m) => m.MeasureScreen),
  },
  {
    pattern: '/proof/:id',
    load: () => import('#app/laying-up/proof/proof-screen.tsx').then((m) => m.ProofScreen),
  },
  {
    pattern: '/proof/:id/squeeze',
    load: () => import('#app/laying-up/proof/squeeze-screen.tsx').then((m) => m.SqueezeScreen),
  },
  { pattern: '/mix/:id', load: () => import('#app/laying-up/mix/mix-screen.tsx').then((m) => m.MixScreen) },
  {
    pattern: '/mix/:id/:view',
    load: () => import('#app/laying-up/mix/mix-screen.tsx').then((m) => m.MixScreen),
  },
  {
    pattern: '/record',
    load: () => import('#app/made/record/record-screen.tsx').then((m) => m.RecordScreen),
  },
  {
    pattern: '/record/ovens',
    load: () => import('#app/made/record/ovens-screen.tsx').then((m) => m.OvensScreen),
  },
  {
    pattern: '/record/build/:id',
    load: () => import('#app/made/record/build-record-screen.tsx').then((m) => m.BuildRecordScreen),
  },
  {
    pattern: '/record/build/:id/paper',
    load: () => import('#app/made/paper/paper-screen.tsx').then((m) => m.PaperScreen),
  },
  {
    pattern: '/record/oven/:id',
    load: () => import('#app/made/record/oven-record-screen.tsx').then((m) => m.OvenRecordScreen),
  },
  {
    pattern: '/record/fix/:subject/:root',
    load: () => import('#app/made/record/fix-screen.tsx').then((m) => m.FixScreen),
  },
  {
    pattern: '/compare',
    load: () => import('#app/made/compare/compare-screen.tsx').then((m) => m.CompareScreen),
  },
  {
    pattern: '/compare/choose',
    load: () => import('#app/made/compare/choose-screen.tsx').then((m) => m.ChooseScreen),
  },
  {
    pattern: '/compare/choose/:plan',
    load: () => import('#app/made/compare/choose-screen.tsx').then((m) => m.ChooseScreen),
  },
  {
    pattern: '/compare/two',
    load: () => import('#app/made/compare/two-screen.tsx').then((m) => m.TwoScreen),
  },
  {
    pattern: '/factors',
    load: () => import('#app/made/factors/factors-screen.tsx').then((m) => m.FactorsScreen),
  },
  {
    pattern: '/factors/:key',
    load: () => import('#app/made/factors/factor-screen.tsx').then((m) => m.FactorScreen),
  },
  {
    pattern: '/oven/new',
    load: () => import('#app/curing/oven/oven-new-screen.tsx').then((m) => m.OvenNewScreen),
  },
  {
    pattern: '/oven/:id/reminders',
    load: () => import('#app/curing/reminders/reminders-screen.tsx').then((m) => m.RemindersScreen),
  },
  { pattern: '/oven/:id', load: () => import('#app/curing/oven/oven-screen.tsx').then((m) => m.OvenScreen) },
  {
    pattern: '/oven/:id/chart',
    load: () => import('#app/curing/oven/chart-screen.tsx').then((m) => m.ChartScreen),
  },
  {
    pattern: '/oven/:id/logger',
    load: () => import('#app/curing/logger/logger-screen.tsx').then((m) => m.LoggerScreen),
  },
  {
    pattern: '/oven/:id/logger/:root',
    load: () => import('#app/curing/logger/logger-screen.tsx').then((m) => m.LoggerScreen),
  },
  { pattern: '/data', load: () => import('#app/phone/data/data-screen.tsx').then((m) => m.DataScreen) },
  {
    pattern: '/data/restore',
    load: () => import('#app/phone/data/restore-screen.tsx').then((m) => m.RestoreScreen),
  },
  { pattern: '/data/take', load: () => import('#app/phone/hand/take-screen.tsx').then((m) => m.TakeScreen) },
  {
    pattern: '/hand/build/:id',
    load: () => import('#app/phone/hand/give-screen.tsx').then((m) => m.GiveBuildScreen),
  },
  {
    pattern: '/hand/plan/:doc',
    load: () => import('#app/phone/hand/give-screen.tsx').then((m) => m.GivePlanScreen),
  },
  {
    pattern: '/data/tables',
    load: () => import('#app/phone/data/tables-screen.tsx').then((m) => m.TablesScreen),
  },
  {
    pattern: '/data/erase',
    load: () => import('#app/phone/data/erase-screen.tsx').then((m) => m.EraseScreen),
  },
  { pattern: '/shelf', load: () => import('#app/stock/shelf/shelf-screen.tsx').then((m) => m.ShelfScreen) },
  {
    pattern: '/shelf/checklist/new',
    load: () => import('#app/stock/shelf/checklist-screen.tsx').then((m) => m.ChecklistScreen),
  },
  {
    pattern: '/shelf/checklist/:doc',
    load: () => import('#app/stock/shelf/checklist-screen.tsx').then((m) => m.ChecklistScreen),
  },
  {
    pattern: '/shelf/checklist/:doc/:stage',
    load: () => import('#app/stock/shelf/stage-screen.tsx').then((m) => m.StageScreen),
  },
  {
    pattern: '/ledger',
    load: () => import('#app/planning/ledger/ledger-screen.tsx').then((m) => m.LedgerScreen),
  },
  {
    pattern: '/ledger/new',
    load: () => import('#app/planning/ledger/structure-edit-screen.tsx').then((m) => m.StructureEditScreen),
  },
  {
    pattern: '/ledger/:doc',
    load: () => import('#app/planning/ledger/structure-screen.tsx').then((m) => m.StructureScreen),
  },
  {
    pattern: '/ledger/:doc/edit',
    load: () => import('#app/planning/ledger/structure-edit-screen.tsx').then((m) => m.StructureEditScreen),
  },
  {
    pattern: '/ledger/:doc/part/:part',
    load: () => import('#app/planning/ledger/part-screen.tsx').then((m) => m.PartScreen),
  },
  {
    pattern: '/ledger/:doc/part/:part/edit',
    load: () => import('#app/planning/ledger/part-edit-screen.tsx').then((m) => m.PartEditScreen),
  },
  { pattern: '/lots', load: () => import('#app/stock/lots/lots-screen.tsx').then((m) => m.LotsScreen) },
  {
    pattern: '/lots/new/:of/:item',
    load: () => import('#app/stock/lots/lot-edit-screen.tsx').then((m) => m.LotEditScreen),
  },
  {
    pattern: '/lots/build/:id',
    load: () => import('#app/stock/lots/build-lots-screen.tsx').then((m) => m.BuildLotsScreen),
  },
  { pattern: '/lots/:doc', load: () => import('#app/stock/lots/lot-screen.tsx').then((m) => m.LotScreen) },
  {
    pattern: '/lots/:doc/edit',
    load: () => import('#app/stock/lots/lot-edit-screen.tsx').then((m) => m.LotEditScreen),
  },
  {
    pattern: '/lots/:doc/count',
    load: () => import('#app/stock/lots/count-screen.tsx').then((m) => m.CountScreen),
  },
  {
    pattern: '/shelf/:type',
    load: () => import('#app/stock/shelf/kind-screen.tsx').then((m) => m.KindScreen),
  },
  {
    pattern: '/shelf/:type/new',
    load: () => import('#app/stock/shelf/item-screen.tsx').then((m) => m.ItemScreen),
  },
  {
    pattern: '/shelf/:type/:doc',
    load: () => import('#app/stock/shelf/item-screen.tsx').then((m) => m.ItemScreen),
  },
  {
    pattern: '/shelf/cloth/:doc/strength',
    load: () => import('#app/stock/shelf/strength-screen.tsx').then((m) => m.StrengthScreen),
  },
  {
    pattern: '/words/:term?',
    load: () => import('#app/phone/words/words-screen.tsx').then((m) => m.WordsScreen),
  },
  {
    pattern: '/settings',
    load: () => import('#app/phone/settings/settings-screen.tsx').then((m) => m.SettingsScreen),
  },
];
