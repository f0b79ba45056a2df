import * as calc from '#calc';

const readings = [
  { time: 0, temperature: 293.15 },
  { time: 3600, temperature: 333.15 },
  { time: 7200, temperature: 333.15 },
];
const points = [
  { temperature: 298.15, time: 604800 },
  { temperature: 338.15, time: 14400 },
];
const densities = { fiberDensity: 1800, resinDensity: 1180 };
const poured = { resinPoured: 0.0782, hardenerPoured: 0.025, hardenerPerResin: 0.3 };
const stages = [
  { kind: 'ramp', to: 333.15, rate: 0.03 },
  { kind: 'hold', lasts: 14400 },
  { kind: 'cool', to: 303.15, rate: 0.02 },
];

const inShop = {
  potLife: { time: 1200, mass: 0.1, temperature: 298.15, ends: 'gel' },
  activationEnergy: 55000,
  reactionHeat: 400000,
  specificHeat: 2000,
  resinTemperature: 297.15,
  shopTemperature: 295.15,
};
const spans = [
  { from: 0, life: 2400 },
  { from: 600, life: 4800 },
];

const shape = {
  stations: [
    { at: 0, value: 3 },
    { at: 0.4, value: 5 },
    { at: 1, value: 2 },
  ],
  between: 'smooth',
};
const cylinder = {
  stations: [
    { at: 0, value: 0.038 },
    { at: 1, value: 0.038 },
  ],
  between: 'straight',
};
const piece = {
  kind: 'cloth',
  thickness: 0.0003,
  start: 0,
  clock: 1,
  angle: 0,
  overlap: 0.015,
  arealWeight: 0.193,
  density: 1800,
  wraps: shape,
};
const rollInput = {
  mandrel: cylinder,
  pieces: [piece, { ...piece, angle: 0.7, wraps: undefined, wall: { ...cylinder, between: 'step' } }],
  length: 1,
  step: 0.02,
};

const rolled = calc.rollPieces(rollInput as Parameters<typeof calc.rollPieces>[0]);
const outline = [
  { x: 0, y: 0 },
  { x: 3, y: 0.1 },
  { x: 2.9, y: 0.3 },
  { x: 0.1, y: 0.5 },
];

const lamina = { e1: 105e9, e2: 7.5e9, g12: 3e9, nu12: 0.3, angle: 0.5, thickness: 0.0003 };
const heated = { ...lamina, alpha1: 4e-7, alpha2: 4.5e-5 };
const fit = {
  mandrelExpansion: 23.6e-6,
  laminateHoopExpansion: 4.1e-6,
  setTemperature: 333.15,
  cureShrinkage: 3e-4,
};

const strength = { xt: 1.1e9, xc: 5e8, yt: 3e7, yc: 1.2e8, s: 5e7 };
const wallPly = { ...lamina, density: 1500, strength };
const wallInput = {
  innerDiameter: 0.038,
  plies: [
    wallPly,
    { ...wallPly, angle: -0.5, arc: { from: 1, to: 4 } },
    { carries: false, thickness: 0.001, density: 60 },
  ],
};
const section = calc.wallSection(wallInput as Parameters<typeof calc.wallSection>[0]);
const beam = {
  stations: [
    { at: 0, ei: 2000, gj: 800 },
    { at: 1.5, ei: 1500, gj: 700 },
    { at: 3, ei: 500, gj: 200 },
  ],
  supports: [
    { kind: 'clamp', at: 0.1 },
    { kind: 'rest', at: 1 },
    { kind: 'sleeve', from: 1.2, to: 1.4 },
  ],
  loads: [
    { kind: 'point', at: 2.5, force: 100 },
    { kind: 'moment', at: 2, moment: 10 },
    {
      kind: 'spread',
      stations: [
        { at: 0.5, value: 20 },
        { at: 2, value: 5 },
      ],
    },
    { kind: 'torque', at: 3, torque: 4 },
    {
      kind: 'spreadTorque',
      stations: [
        { at: 1, value: 2 },
        { at: 2, value: 1 },
      ],
    },
    { kind: 'axial', at: 3, force: -50 },
  ],
  loadFactor: 1.5,
};
const forces = { moment: 20, shear: 30, torque: 5, axial: -40 };
const design = calc.beamLine(beam as Parameters<typeof calc.beamLine>[0]);

/** A good input for every function, with every optional field given. `roll: 'rolled'` stands for a roll. */
export const validInputs: Record<keyof typeof calc, unknown> = {
  activationEnergy: points,
  adiabaticRise: { reactionHeat: 490000, specificHeat: 2000 },
  beamColumn: beam,
  beamLine: beam,
  blendEquivalentWeight: [
    { mass: 80, equivalentWeight: 189 },
    { mass: 10, equivalentWeight: 183 },
  ],
  bondPeak: {
    force: 5000,
    width: 0.12,
    length: 0.05,
    inner: { e: 50e9, thickness: 0.001 },
    outer: { e: 70e9, thickness: 0.002 },
    bondThickness: 0.0003,
    bondShearModulus: 1e9,
    shearStrength: 20e6,
  },
  brazierMoment: { radius: 0.02, axialStiffness: 1e6, hoopBending: 1 },
  centerOfGravity: {
    parts: [
      { mass: 0.31, position: -0.4 },
      { mass: 0.24, position: 1.9 },
    ],
  },
  clampCrush: { section, force: 200, width: 0.05 },
  compositeDensity: { fiberVolumeFraction: 0.35, ...densities },
  correctionForOvershoot: poured,
  cupTimes: { cups: [{ mass: 0.1 }, { mass: 0.12 }], workingRate: 0.0001, stir: 180, begin: 60 },
  cupsFor: {
    kept: 0.139,
    squeezeOutShare: 0.1,
    lossPerCup: 0.014,
    largestCup: 0.1,
    workingRate: 0.0001,
    usableLife: 900,
  },
  curedPlyThickness: { arealWeight: 0.193, fiberDensity: 1800, fiberVolumeFraction: 0.35 },
  cureCounting: { curePoints: points, activationEnergy: 55000 },
  cureFinish: {
    readings,
    curePoints: points,
    activationEnergy: 55000,
    wanted: 333.15,
    own: 353.15,
    before: { share: 0.9, hottest: 330 },
  },
  cureProgress: {
    readings,
    curePoints: points,
    activationEnergy: 55000,
    wanted: 333.15,
    own: 353.15,
    before: { share: 0.5, hottest: 330 },
  },
  cureTimeUsed: { readings, curePoints: points, activationEnergy: 55000 },
  demoldClearance: { diameter: 0.0381, temperature: 293.15, ...fit },
  developPiece: { roll: 'rolled', piece: 0, chordError: 0.001 },
  dewPoint: { temperature: 293.15, relativeHumidity: 0.5 },
  diameterFromCircumference: { circumference: 0.1275 },
  edgesStack: { roll: 'rolled', within: 0.02, longerThan: 0.2 },
  effectiveModulus: {
    points: [
      { expected: 0.2, measured: 0.21 },
      { expected: 0.45, measured: 0.48 },
    ],
    plannedModulus: 90e9,
  },
  envelope: { channels: [readings, readings.map((r) => ({ ...r, temperature: 320 }))], pick: 'coldest' },
  equivalentTime: { readings, referenceTemperature: 333.15, activationEnergy: 55000 },
  fiberDrift: { wraps: 4, halfAngle: 0.01 },
  fiberMassFraction: { fiberVolumeFraction: 0.35, ...densities },
  fiberVolumeFraction: { fiberMass: 0.1, resinMass: 0.12, ...densities },
  fiberVolumeFractionFromMass: { fiberMassFraction: 0.45, ...densities },
  fiberVolumeFromThickness: { plies: 4, arealWeight: 0.193, fiberDensity: 1800, wall: 0.00122 },
  filmDeadline: { inCup: 360, usableLife: 1800, filmFactor: 2 },
  firstPly: { section, ...forces },
  followingReadings: { readings, timeConstant: 300, start: 293.15 },
  glassTransitionReached: { hottest: 339.15, own: 363.15 },
  hardenerForResin: { resinPoured: 0.0782, hardenerPerResin: 0.3 },
  heatForTransition: { wanted: 333.15, own: 353.15 },
  digitHeight: { distance: 4 },
  readableFrom: { height: 0.02 },
  helixLength: { diameter: 0.04, length: 1.9, advance: 0.0127 },
  helixReach: { diameter: 0.04, tapeLength: 50, advance: 0.0127 },
  fitActivation: points,
  gelConversion: { amineFunctionality: 4 },
  heaviestCoolCup: { ...inShop, heaviest: 3 },
  holdTime: { readings, low: 320, high: 340 },
  hoopExpansion: { e1: 105e9, e2: 7.5e9, nu12: 0.3, alpha1: 4e-7, alpha2: 4.5e-5 },
  hoopPressure: { tensionPerWidth: 400, radius: 0.02, layers: 2 },
  interpolateProfile: { stages, start: 293.15, time: 600 },
  laminaFromFiber: {
    fiber: { e1: 230e9, e2: 15e9, g12: 15e9, nu12: 0.2 },
    resin: { e: 3e9, nu: 0.35 },
    fiberVolumeFraction: 0.45,
    xi2: 2,
    xi12: 1,
  },
  laminaStiffness: { e1: 105e9, e2: 7.5e9, g12: 3e9, nu12: 0.3 },
  laminateExpansion: [heated, { ...heated, angle: -0.5 }],
  laminateStiffness: [lamina, { ...lamina, angle: -0.5 }],
  looseTemperature: { ...fit, clearance: 1e-4 },
  limitBreaks: { readings, highest: 330, margin: 2 },
  mandrelTimeConstant: {
    diameter: 0.038,
    wall: 0.00165,
    density: 2700,
    specificHeat: 900,
    heatTransfer: 30,
  },
  lifeEnd: { spans },
  lifeUsed: { spans, until: 1800 },
  mirrorShape: { shape },
  massRatioFromVolumeRatio: { resinParts: 3, hardenerParts: 1, resinDensity: 1150, hardenerDensity: 970 },
  nestPieces: {
    pieces: [
      { id: 'skin', outline, count: 2, warpAngle: 0 },
      { id: 'bias', outline, count: 1, warpAngle: 0.7 },
    ],
    rollWidth: 1.27,
    gap: 0.01,
    selvage: 0.01,
    spliceOverlap: 0.02,
    tries: 4,
  },
  offsetsFromDatum: { outline, every: 0.5 },
  outlineArea: { outline },
  outlineBounds: { outline },
  peak: { readings },
  placedOutline: { outline, warpAngle: 0.7, x: 1, y: 0.1, flipped: true },
  pliesAround: { roll: 'rolled', at: 0.5 },
  pliesAt: {
    roll: 'rolled',
    at: 0.5,
    materials: [
      { ...wallPly, angle: undefined, thickness: undefined, crimpFactor: 0.9 },
      { carries: false, density: 60 },
    ],
  },
  plyDrops: { roll: 'rolled' },
  plyThicknessFromDiameter: { outsideDiameter: 0.0406, innerDiameter: 0.0381, wraps: 4 },
  plyReserve: { sx: 2e6, sy: -3e6, sxy: 4e6, angle: 1, strength },
  potLifeNow: { ...inShop, mass: 0.3 },
  potLifeUsed: { inCup: 360, onFilm: 1200, usableLife: 1800, filmFactor: 2 },
  profilePoints: { start: 293.15, stages },
  proofLoad: {
    stations: beam.stations,
    supports: [{ kind: 'clamp', at: 0.1 }],
    hangAt: 2.5,
    design,
    proofFactor: 1.2,
  },
  rampRates: { readings, window: 300 },
  ratioError: poured,
  rescaleLamina: {
    lamina: { e1: 140e9, e2: 9e9, g12: 3e9, nu12: 0.3 },
    resin: { e: 3e9, nu: 0.35 },
    statedFiberVolume: 0.6,
    fiberVolumeFraction: 0.4,
    thickness: 0.0002,
    strength,
    compressionKnockdown: 0.65,
  },
  resinForCloth: { clothMass: 0.1, resinMassFraction: 0.55 },
  resinForHardener: { hardenerPoured: 0.025, hardenerPerResin: 0.3 },
  resinMassFraction: { clothMass: 0.113, partMass: 0.2525, filmLeft: 0.002 },
  resinToMix: { kept: 0.139, squeezeOutShare: 0.1, cups: 3, lossPerCup: 0.014 },
  rollPieces: rollInput,
  sampleShape: { shape, from: 0, to: 1, step: 0.1 },
  scaleRatioError: { cup: 0.1, scaleStep: 0.001, hardenerPerResin: 0.3 },
  scaleShape: { shape, length: 3 },
  scheduleThatFits: { start: 293.15, stages, highest: 328.15, activationEnergy: 55000 },
  seamAngle: { roll: 'rolled', piece: 1 },
  seamCheck: { edgeOff: -0.004, wraps: 8, plyThickness: 0.0003, readingError: 0.002 },
  shapeAt: { shape, at: 0.5 },
  shareReachable: { hottest: 295.15, wanted: 333.15, own: 353.15 },
  smallestCupForScale: { scaleStep: 0.001, hardenerPerResin: 0.3, tolerance: 0.03 },
  splicePiece: { outline, warpAngle: 0.7, at: [0.2, 0.4], overlap: 0.02 },
  spread: { values: [0.012, 0.011, 0.06] },
  squeezeTest: { force: 10, deflection: 0.001, width: 0.02, radius: 0.02 },
  startingShape: { kind: 'sleeve', length: 3, thick: 5, thin: 3, at: 0.5 },
  stationValues: { startDiameter: 0.038, thickness: 0.0003, overlap: 0.015, plies: 4 },
  steepest: { readings },
  stoichiometricPhr: { amineHydrogenEquivalentWeight: 20.6, epoxideEquivalentWeight: 190 },
  tapeAdvance: { width: 0.0254, overlapFraction: 0.5 },
  tapeLayers: { overlapFraction: 0.5, passes: 2 },
  tapePull: {
    points: [
      { temperature: 338.15, force: 0 },
      { temperature: 373.15, force: 400 },
    ],
    temperature: 353.15,
  },
  timeAbove: { readings, limit: 320 },
  timeAtTemperature: { time: 1500, at: 298.15, temperature: 305.15, activationEnergy: 55000 },
  trueSizeTiles: {
    bounds: { minX: 0.1, minY: 0.1, maxX: 1, maxY: 0.4 },
    paper: 'a4',
    margin: 0.01,
    overlap: 0.01,
  },
  tubeChecks: {
    stations: [0, 1.5, 3].map((at) => ({ at, section })),
    supports: [{ kind: 'clamp', at: 0 }],
    cases: [{ loads: [{ kind: 'point', at: 3, force: 20 }], loadFactor: 1 }],
    safetyFactor: 1.5,
    freeLength: 3,
  },
  tubeMass: { roll: 'rolled', resinDensity: 1180, fiberVolumeFraction: 0.35, coreFaceResin: 0.2 },
  tubeSection: { innerDiameter: 0.038, wall: 0.00125 },
  voidFraction: { measuredDensity: 1380, fiberMassFraction: 0.45, ...densities },
  wallBuckling: { section, length: 3, ...forces },
  wallFromOutside: { outsideDiameter: 0.0406, innerDiameter: 0.0381 },
  wallSection: wallInput,
  wantedPlies: {
    stations: [0, 1.5, 3].map((at) => ({ at, innerDiameter: 0.038 })),
    always: [wallPly],
    ply: [wallPly],
    least: 2,
    most: 20,
    supports: [{ kind: 'clamp', at: 0 }],
    cases: [{ loads: [{ kind: 'point', at: 3, force: 20 }], loadFactor: 1 }],
    safetyFactor: 1.5,
    freeLength: 3,
    deflectionLimit: 0.2,
    dropLength: 0.1,
    onePeak: true,
  },
  windTape: {
    outside: [
      { at: 0, diameter: 0.04 },
      { at: 2, diameter: 0.02 },
    ],
    width: 0.0254,
    thickness: 0.00005,
    overlapFraction: 0.5,
    passes: 2,
  },
  wetResinFraction: { clothMass: 0.113, wetMass: 0.291, filmMass: 0.04 },
  widthForWraps: { wraps: 4, startDiameter: 0.038, plyThickness: 0.0003 },
  wovenPlies: {
    material: { ...wallPly, angle: undefined, thickness: undefined },
    crimpFactor: 0.9,
    angle: 0.3,
    thickness: 0.0003,
    arc: { from: 1, to: 4 },
  },
  wrapsForWidth: { width: 0.5, startDiameter: 0.038, plyThickness: 0.0003 },
};

/** Calls a function by name with an input that its types would refuse. */
export function call(name: string, input: unknown): unknown {
  const given = hasRoll(input) ? { ...input, roll: rolled } : input;
  return (calc as unknown as Record<string, (given: unknown) => unknown>)[name]?.(given);
}

function hasRoll(input: unknown): input is object {
  return typeof input === 'object' && input !== null && 'roll' in input && input.roll === 'rolled';
}

export type Path = readonly (string | number)[];

/** Where every number in an input is: ['readings', 2, 'time']. */
export function numberPaths(input: unknown, at: Path = []): Path[] {
  if (typeof input === 'number') return [at];
  if (typeof input !== 'object' || input === null) return [];
  // What another function gives is taken whole, not number by number.
  if (input === section || input === design) return [];
  return Object.entries(input).flatMap(([key, value]) =>
    numberPaths(value, [...at, Array.isArray(input) ? Number(key) : key]),
  );
}

/** The same input with another value at one place. */
export function withValue(input: unknown, path: Path, value: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  const inside = (input as Record<string | number, unknown>)[key];
  const changed = withValue(inside, rest, value);
  return Array.isArray(input)
    ? input.map((item, index) => (index === key ? changed : item))
    : { ...(input as object), [key]: changed };
}
