import type { ComponentType } from 'preact';
import { BenchScreen } from '#app/bench/bench-screen.tsx';
import type { Params } from '#app/router.ts';

export type ScreenType = ComponentType<{ params: Params }>;

interface Route {
  pattern: string;
  load: () => Promise<ScreenType>;
}

/** The first screen is in the first script; the others come from the cache a moment later, or when they are asked for. */
export const firstScreen: ScreenType = BenchScreen;

export const routes: readonly Route[] = [
  { pattern: '/build/:id', load: () => import('#app/build/route-screen.tsx').then((m) => m.RouteScreen) },
  {
    pattern: '/build/:id/:stage',
    load: () => import('#app/build/route-screen.tsx').then((m) => m.RouteScreen),
  },
  { pattern: '/clocks', load: () => import('#app/clocks/clocks-screen.tsx').then((m) => m.ClocksScreen) },
  { pattern: '/timer', load: () => import('#app/clocks/timer-screen.tsx').then((m) => m.TimerScreen) },
  { pattern: '/start', load: () => import('#app/start/start-screen.tsx').then((m) => m.StartScreen) },
  { pattern: '/start/:plan', load: () => import('#app/start/start-screen.tsx').then((m) => m.StartScreen) },
  { pattern: '/try', load: () => import('#app/try/try-screen.tsx').then((m) => m.TryScreen) },
  { pattern: '/plans', load: () => import('#app/plans/plans-screen.tsx').then((m) => m.PlansScreen) },
  {
    pattern: '/plan/new',
    load: () => import('#app/plans/plan-edit-screen.tsx').then((m) => m.PlanEditScreen),
  },
  { pattern: '/plan/:doc', load: () => import('#app/plans/plan-screen.tsx').then((m) => m.PlanScreen) },
  {
    pattern: '/plan/:doc/edit',
    load: () => import('#app/plans/plan-edit-screen.tsx').then((m) => m.PlanEditScreen),
  },
  {
    pattern: '/plan/:doc/along',
    load: () => import('#app/along/along-screen.tsx').then((m) => m.AlongScreen),
  },
  { pattern: '/plan/:doc/cure', load: () => import('#app/cure/cure-screen.tsx').then((m) => m.CureScreen) },
  {
    pattern: '/plan/:doc/template',
    load: () => import('#app/wall/template-screen.tsx').then((m) => m.TemplateScreen),
  },
  {
    pattern: '/plan/:doc/cutting',
    load: () => import('#app/cutting/cutting-screen.tsx').then((m) => m.CuttingScreen),
  },
  {
    pattern: '/edge/:id',
    load: () => import('#app/cutting/edge-screen.tsx').then((m) => m.EdgeScreen),
  },
  {
    pattern: '/edge/:id/:piece/:mark',
    load: () => import('#app/cutting/read-edge-screen.tsx').then((m) => m.ReadEdgeScreen),
  },
  {
    pattern: '/cut/:id',
    load: () => import('#app/cutting/cut-list-screen.tsx').then((m) => m.CutListScreen),
  },
  {
    pattern: '/cut/:id/weigh/:piece',
    load: () => import('#app/cutting/weigh-piece-screen.tsx').then((m) => m.WeighPieceScreen),
  },
  { pattern: '/plan/:doc/wall', load: () => import('#app/wall/wall-screen.tsx').then((m) => m.WallScreen) },
  {
    pattern: '/plan/:doc/wall/mandrel',
    load: () => import('#app/wall/mandrel-screen.tsx').then((m) => m.MandrelScreen),
  },
  {
    pattern: '/plan/:doc/wall/picture/:name',
    load: () => import('#app/wall/picture-screen.tsx').then((m) => m.PictureScreen),
  },
  {
    pattern: '/plan/:doc/wall/:piece',
    load: () => import('#app/wall/piece-screen.tsx').then((m) => m.PieceScreen),
  },
  {
    pattern: '/plan/:doc/loads',
    load: () => import('#app/loads/loads-screen.tsx').then((m) => m.LoadsScreen),
  },
  {
    pattern: '/plan/:doc/loads/asked',
    load: () => import('#app/loads/asked-screen.tsx').then((m) => m.AskedScreen),
  },
  {
    pattern: '/plan/:doc/loads/stiffness',
    load: () => import('#app/wanted/stiffness-screen.tsx').then((m) => m.StiffnessScreen),
  },
  {
    pattern: '/plan/:doc/loads/wanted',
    load: () => import('#app/wanted/wanted-screen.tsx').then((m) => m.WantedScreen),
  },
  {
    pattern: '/plan/:doc/loads/margins',
    load: () => import('#app/loads/margins-screen.tsx').then((m) => m.MarginsScreen),
  },
  {
    pattern: '/plan/:doc/loads/lines/:case',
    load: () => import('#app/loads/lines-screen.tsx').then((m) => m.LinesScreen),
  },
  {
    pattern: '/plan/:doc/loads/support/:support',
    load: () => import('#app/loads/support-screen.tsx').then((m) => m.SupportScreen),
  },
  {
    pattern: '/plan/:doc/loads/fitting/:fitting',
    load: () => import('#app/loads/fitting-screen.tsx').then((m) => m.FittingScreen),
  },
  {
    pattern: '/plan/:doc/loads/case/:case',
    load: () => import('#app/loads/case-screen.tsx').then((m) => m.CaseScreen),
  },
  {
    pattern: '/plan/:doc/loads/case/:case/:load',
    load: () => import('#app/loads/load-screen.tsx').then((m) => m.LoadScreen),
  },
  { pattern: '/plan/:doc/tape', load: () => import('#app/tape/tape-screen.tsx').then((m) => m.TapeScreen) },
  { pattern: '/tape/:id', load: () => import('#app/tape/tape-screen.tsx').then((m) => m.TapeScreen) },
  {
    pattern: '/demold/:id',
    load: () => import('#app/demold/demold-screen.tsx').then((m) => m.DemoldScreen),
  },
  { pattern: '/weigh/:id', load: () => import('#app/weigh/weigh-screen.tsx').then((m) => m.WeighScreen) },
  {
    pattern: '/weigh/:id/:what',
    load: () => import('#app/weigh/weigh-in-screen.tsx').then((m) => m.WeighInScreen),
  },
  {
    pattern: '/measure/:id',
    load: () => import('#app/measure/measure-screen.tsx').then((m) => m.MeasureScreen),
  },
  { pattern: '/proof/:id', load: () => import('#app/proof/proof-screen.tsx').then((m) => m.ProofScreen) },
  {
    pattern: '/proof/:id/squeeze',
    load: () => import('#app/proof/squeeze-screen.tsx').then((m) => m.SqueezeScreen),
  },
  { pattern: '/mix/:id', load: () => import('#app/mix/mix-screen.tsx').then((m) => m.MixScreen) },
  { pattern: '/mix/:id/:view', load: () => import('#app/mix/mix-screen.tsx').then((m) => m.MixScreen) },
  { pattern: '/record', load: () => import('#app/record/record-screen.tsx').then((m) => m.RecordScreen) },
  { pattern: '/record/ovens', load: () => import('#app/record/ovens-screen.tsx').then((m) => m.OvensScreen) },
  {
    pattern: '/record/build/:id',
    load: () => import('#app/record/build-record-screen.tsx').then((m) => m.BuildRecordScreen),
  },
  {
    pattern: '/record/build/:id/paper',
    load: () => import('#app/paper/paper-screen.tsx').then((m) => m.PaperScreen),
  },
  {
    pattern: '/record/oven/:id',
    load: () => import('#app/record/oven-record-screen.tsx').then((m) => m.OvenRecordScreen),
  },
  {
    pattern: '/record/fix/:subject/:root',
    load: () => import('#app/record/fix-screen.tsx').then((m) => m.FixScreen),
  },
  {
    pattern: '/compare',
    load: () => import('#app/compare/compare-screen.tsx').then((m) => m.CompareScreen),
  },
  {
    pattern: '/compare/choose',
    load: () => import('#app/compare/choose-screen.tsx').then((m) => m.ChooseScreen),
  },
  {
    pattern: '/compare/choose/:plan',
    load: () => import('#app/compare/choose-screen.tsx').then((m) => m.ChooseScreen),
  },
  { pattern: '/compare/two', load: () => import('#app/compare/two-screen.tsx').then((m) => m.TwoScreen) },
  {
    pattern: '/factors',
    load: () => import('#app/factors/factors-screen.tsx').then((m) => m.FactorsScreen),
  },
  {
    pattern: '/factors/:key',
    load: () => import('#app/factors/factor-screen.tsx').then((m) => m.FactorScreen),
  },
  { pattern: '/oven/new', load: () => import('#app/oven/oven-new-screen.tsx').then((m) => m.OvenNewScreen) },
  {
    pattern: '/oven/:id/reminders',
    load: () => import('#app/reminders/reminders-screen.tsx').then((m) => m.RemindersScreen),
  },
  { pattern: '/oven/:id', load: () => import('#app/oven/oven-screen.tsx').then((m) => m.OvenScreen) },
  {
    pattern: '/oven/:id/chart',
    load: () => import('#app/oven/chart-screen.tsx').then((m) => m.ChartScreen),
  },
  {
    pattern: '/oven/:id/logger',
    load: () => import('#app/logger/logger-screen.tsx').then((m) => m.LoggerScreen),
  },
  {
    pattern: '/oven/:id/logger/:root',
    load: () => import('#app/logger/logger-screen.tsx').then((m) => m.LoggerScreen),
  },
  { pattern: '/data', load: () => import('#app/data/data-screen.tsx').then((m) => m.DataScreen) },
  {
    pattern: '/data/restore',
    load: () => import('#app/data/restore-screen.tsx').then((m) => m.RestoreScreen),
  },
  { pattern: '/data/take', load: () => import('#app/hand/take-screen.tsx').then((m) => m.TakeScreen) },
  {
    pattern: '/hand/build/:id',
    load: () => import('#app/hand/give-screen.tsx').then((m) => m.GiveBuildScreen),
  },
  {
    pattern: '/hand/plan/:doc',
    load: () => import('#app/hand/give-screen.tsx').then((m) => m.GivePlanScreen),
  },
  { pattern: '/data/tables', load: () => import('#app/data/tables-screen.tsx').then((m) => m.TablesScreen) },
  { pattern: '/data/erase', load: () => import('#app/data/erase-screen.tsx').then((m) => m.EraseScreen) },
  { pattern: '/shelf', load: () => import('#app/shelf/shelf-screen.tsx').then((m) => m.ShelfScreen) },
  {
    pattern: '/shelf/checklist/new',
    load: () => import('#app/shelf/checklist-screen.tsx').then((m) => m.ChecklistScreen),
  },
  {
    pattern: '/shelf/checklist/:doc',
    load: () => import('#app/shelf/checklist-screen.tsx').then((m) => m.ChecklistScreen),
  },
  {
    pattern: '/shelf/checklist/:doc/:stage',
    load: () => import('#app/shelf/stage-screen.tsx').then((m) => m.StageScreen),
  },
  { pattern: '/ledger', load: () => import('#app/ledger/ledger-screen.tsx').then((m) => m.LedgerScreen) },
  {
    pattern: '/ledger/new',
    load: () => import('#app/ledger/structure-edit-screen.tsx').then((m) => m.StructureEditScreen),
  },
  {
    pattern: '/ledger/:doc',
    load: () => import('#app/ledger/structure-screen.tsx').then((m) => m.StructureScreen),
  },
  {
    pattern: '/ledger/:doc/edit',
    load: () => import('#app/ledger/structure-edit-screen.tsx').then((m) => m.StructureEditScreen),
  },
  {
    pattern: '/ledger/:doc/part/:part',
    load: () => import('#app/ledger/part-screen.tsx').then((m) => m.PartScreen),
  },
  {
    pattern: '/ledger/:doc/part/:part/edit',
    load: () => import('#app/ledger/part-edit-screen.tsx').then((m) => m.PartEditScreen),
  },
  { pattern: '/lots', load: () => import('#app/lots/lots-screen.tsx').then((m) => m.LotsScreen) },
  {
    pattern: '/lots/new/:of/:item',
    load: () => import('#app/lots/lot-edit-screen.tsx').then((m) => m.LotEditScreen),
  },
  {
    pattern: '/lots/build/:id',
    load: () => import('#app/lots/build-lots-screen.tsx').then((m) => m.BuildLotsScreen),
  },
  { pattern: '/lots/:doc', load: () => import('#app/lots/lot-screen.tsx').then((m) => m.LotScreen) },
  {
    pattern: '/lots/:doc/edit',
    load: () => import('#app/lots/lot-edit-screen.tsx').then((m) => m.LotEditScreen),
  },
  {
    pattern: '/lots/:doc/count',
    load: () => import('#app/lots/count-screen.tsx').then((m) => m.CountScreen),
  },
  { pattern: '/shelf/:type', load: () => import('#app/shelf/kind-screen.tsx').then((m) => m.KindScreen) },
  { pattern: '/shelf/:type/new', load: () => import('#app/shelf/item-screen.tsx').then((m) => m.ItemScreen) },
  {
    pattern: '/shelf/:type/:doc',
    load: () => import('#app/shelf/item-screen.tsx').then((m) => m.ItemScreen),
  },
  {
    pattern: '/shelf/cloth/:doc/strength',
    load: () => import('#app/shelf/strength-screen.tsx').then((m) => m.StrengthScreen),
  },
  { pattern: '/words/:term?', load: () => import('#app/words/words-screen.tsx').then((m) => m.WordsScreen) },
  {
    pattern: '/settings',
    load: () => import('#app/settings/settings-screen.tsx').then((m) => m.SettingsScreen),
  },
];
