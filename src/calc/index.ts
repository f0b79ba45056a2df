export { adiabaticRise } from './adiabatic-rise.ts';
export { activationEnergy, type TimePoint, timeAtTemperature } from './arrhenius.ts';
export { centerOfGravity, type PlacedMass } from './center-of-gravity.ts';
export { gelConversion } from './cup/reaction.ts';
export { type CupTime, cupTimes } from './cup-times.ts';
export { cupsFor, resinToMix } from './cups.ts';
export { type CureCounting, cureCounting } from './cure-counting.ts';
export { type CureHistory, type CureProgress, cureFinish, cureProgress } from './cure-progress.ts';
export { cureTimeUsed } from './cure-time.ts';
export { demoldClearance, hoopExpansion, looseTemperature } from './demold.ts';
export { compositeDensity, voidFraction } from './density.ts';
export { dewPoint } from './dew-point.ts';
export { envelope } from './envelope.ts';
export { equivalentTime } from './equivalent-time.ts';
export { peak, steepest } from './extremes.ts';
export { fitActivation } from './fit-activation.ts';
export { fiberMassFraction, fiberVolumeFraction, fiberVolumeFractionFromMass } from './fractions.ts';
export { glassTransitionReached, heatForTransition, shareReachable } from './glass-transition.ts';
export { holdTime, timeAbove } from './hold-time.ts';
export { type Lamina, laminaStiffness, type ReducedStiffness } from './lamina.ts';
export { laminateStiffness, type Matrix3, type Ply } from './laminate.ts';
export { type HeatedPly, laminateExpansion } from './laminate-expansion.ts';
export { digitHeight, readableFrom } from './legible.ts';
export { type LifeSpan, lifeEnd, lifeUsed } from './life-spans.ts';
export { type LimitBreak, limitBreaks } from './limit-breaks.ts';
export { beamColumn, type PressedBeam } from './load/beam-column.ts';
export { beamLine } from './load/beam-line.ts';
export { type Adherend, type BondPeak, bondPeak } from './load/bond.ts';
export { brazierMoment } from './load/brazier.ts';
export { type ClampCrush, clampCrush } from './load/clamp-crush.ts';
export { type FirstPlace, type FirstPly, firstPly } from './load/first-ply.ts';
export { laminaFromFiber, type Resin } from './load/halpin-tsai.ts';
export { type PieceMaterial, pliesAt } from './load/plies-at.ts';
export { type PlyMode, type PlyStress, plyReserve } from './load/ply-reserve.ts';
export { type ProofLoad, proofLoad } from './load/proof-load.ts';
export { effectiveModulus, squeezeTest } from './load/proof-result.ts';
export { type RescaledLamina, rescaleLamina } from './load/rescale.ts';
export {
  type CheckedCase,
  type CheckName,
  type LoadCase,
  type Margin,
  type StationMargins,
  type TubeChecks,
  type TubeToCheck,
  tubeChecks,
} from './load/tube-checks.ts';
export type {
  Arc,
  Assumed,
  Beam,
  BeamLoad,
  BeamSolution,
  BeamStation,
  LoadMaterial,
  LoadStation,
  PlyStrength,
  Reaction,
  StationForces,
  Support,
  TubePly,
  WallLaminate,
  WallSection,
} from './load/types.ts';
export { type WallBuckling, wallBuckling } from './load/wall-buckling.ts';
export { wallSection } from './load/wall-section.ts';
export { wantedPlies } from './load/wanted-plies.ts';
export type { Ruling, WantedInput, WantedPlies } from './load/wanted-types.ts';
export { wovenPlies } from './load/woven.ts';
export { followingReadings, mandrelTimeConstant } from './mandrel-heat.ts';
export { curedPlyThickness, fiberVolumeFromThickness } from './ply-thickness.ts';
export { filmDeadline, potLifeUsed } from './pot-life.ts';
export {
  type CupHeat,
  heaviestCoolCup,
  type LifePoint,
  potLifeNow,
  type ResinInShop,
} from './pot-life-now.ts';
export { correctionForOvershoot, hardenerForResin, ratioError, resinForHardener } from './pour.ts';
export { interpolateProfile, type ProfileStage, profilePoints } from './profile.ts';
export { rampRates } from './ramp-rates.ts';
export type { Reading } from './readings.ts';
export { resinForCloth, resinMassFraction, wetResinFraction } from './resin.ts';
export { type Spread, spread } from './robust.ts';
export { widthForWraps, wrapsForWidth } from './roll.ts';
export { scaleRatioError, smallestCupForScale } from './scale.ts';
export { scheduleThatFits } from './schedule-that-fits.ts';
export {
  type BlendPart,
  blendEquivalentWeight,
  massRatioFromVolumeRatio,
  stoichiometricPhr,
} from './stoichiometry.ts';
export { helixLength, helixReach, hoopPressure, tapeAdvance, tapeLayers } from './tape.ts';
export { type PullPoint, tapePull } from './tape-pull.ts';
export { tubeSection } from './tube-section.ts';
export { developPiece } from './wall/develop-piece.ts';
export { edgesStack } from './wall/edges-stack.ts';
export { fiberDrift } from './wall/fiber-drift.ts';
export { nestPieces } from './wall/nest-pieces.ts';
export { offsetsFromDatum, outlineArea, outlineBounds } from './wall/outline.ts';
export { pliesAround, seamAngle } from './wall/plies-around.ts';
export { plyDrops } from './wall/ply-drops.ts';
export { rollPieces } from './wall/roll-pieces.ts';
export { plyThicknessFromDiameter, seamCheck } from './wall/seam-check.ts';
export { mirrorShape, sampleShape, scaleShape, shapeAt } from './wall/shape.ts';
export { placedOutline, splicePiece } from './wall/splice.ts';
export { type StartingKind, startingShape } from './wall/starting-shape.ts';
export { stationValues } from './wall/station-values.ts';
export { trueSizeTiles } from './wall/true-size-tiles.ts';
export { tubeMass } from './wall/tube-mass.ts';
export type {
  AroundSeam,
  AroundStep,
  EdgeName,
  EdgePair,
  FlatBounds,
  FlatPiece,
  MandrelShape,
  Nest,
  NestPiece,
  Offset,
  PieceBase,
  PieceKind,
  PieceMass,
  PieceSpec,
  Placement,
  PlyDrop,
  Point,
  Roll,
  RolledPiece,
  Shape,
  Station,
  Tile,
  Tiling,
  TubeMass,
  Unplaced,
} from './wall/types.ts';
export { diameterFromCircumference, wallFromOutside } from './wall.ts';
export { type OutsideAt, windTape } from './wind-tape.ts';
