import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as calc from '#calc';
import { mayBeNone } from './may-be-none.ts';
import { call, numberPaths, type Path, validInputs, withValue } from './valid-inputs.ts';

const names = Object.keys(validInputs);
const optional = new Set([
  'high',
  'filmLeft',
  'activationEnergy of cureTimeUsed',
  'activationEnergy of cureCounting',
  'activationEnergy of cureFinish',
  'activationEnergy of cureProgress',
  'wanted of cureFinish',
  'wanted of cureProgress',
  'own',
  'wall of mandrelTimeConstant',
  'heatTransfer',
  'arealWeight',
  'density',
  'at of startingShape',
  'chordError',
  'within',
  'xi2',
  'xi12',
  'crimpFactor of pliesAt',
  'deflectionLimit',
  'longerThan',
  'spliceOverlap',
  'tries',
  'coreFaceResin',
  'cureShrinkage',
  'clearance',
  'margin of limitBreaks',
  'reactionHeat of potLifeNow',
  'specificHeat of potLifeNow',
  'reactionHeat of heaviestCoolCup',
  'specificHeat of heaviestCoolCup',
]);
const anySign = new Set([
  'readings.0.time',
  'stations.0.at',
  'parts.0.position',
  'parts.1.position',
  'channels.0.0.time',
  'channels.1.0.time',
  'time of interpolateProfile',
  'margin of limitBreaks',
  'begin of cupTimes',
  'at of shapeAt',
  'x of placedOutline',
  'y of placedOutline',
  'from of sampleShape',
  'mandrel.stations.0.at',
  'outside.0.at',
]);
/** Shapes of anything, angles, places on a flat drawing, and what pushes a tube one way or the other. */
const ANY_SIGN =
  /^values\.\d|^shape\.stations\.(0\.at|\d\.value)$|\b(clock|angle|warpAngle|edgeOff|nu12|alpha[12])$|outline|bounds|\barc\.|loads\.\d\.(stations\.\d\.value|force|moment|torque)$|^(moment|shear|torque|axial|s[xy]+)$|^points\.\d\.(expected|measured)$/;

function takesAnySign(name: string, place: string): boolean {
  return anySign.has(place) || anySign.has(`${place} of ${name}`) || ANY_SIGN.test(place);
}

const fields = names.flatMap((name) =>
  numberPaths(validInputs[name as keyof typeof calc]).map((path) => ({
    name,
    path,
    place: path.join('.'),
    field: String(path.at(-1)),
  })),
);

function refusal(name: string, path: Path, value: unknown): Error {
  const input = withValue(validInputs[name as keyof typeof calc], path, value);
  try {
    call(name, input);
  } catch (error) {
    expect(error).toBeInstanceOf(RangeError);
    return error as RangeError;
  }
  throw new Error(`${name} took ${String(value)} for ${path.join('.')}`);
}

function everyNumber(result: unknown): number[] {
  if (typeof result === 'number') return [result];
  if (result instanceof Float64Array) return [...result];
  return typeof result === 'object' && result !== null ? Object.values(result).flatMap(everyNumber) : [];
}

describe('bad input', () => {
  it('is tried on every function there is', () => {
    expect([...names].sort()).toEqual([...Object.keys(calc)].sort());
    for (const name of names) expect(() => call(name, validInputs[name as keyof typeof calc])).not.toThrow();
  });

  it.each(fields)(
    '$name refuses $place when it is no finite number, and names it',
    ({ name, path, field }) => {
      const inert = field === 'equivalentWeight';
      const nothing: unknown[] =
        optional.has(field) || optional.has(`${field} of ${name}`) ? [] : [undefined];
      const values: unknown[] = [
        ...nothing,
        Number.NaN,
        Number.NEGATIVE_INFINITY,
        '5',
        '1,5',
        '',
        {},
        true,
        1e300,
      ];
      if (!inert) values.push(Number.POSITIVE_INFINITY, null);
      for (const value of values) expect(refusal(name, path, value).message).toContain(field);
    },
  );

  it.each(fields.filter(({ name, place }) => !takesAnySign(name, place)))(
    '$name refuses a negative $place',
    ({ name, path, field }) => {
      expect(refusal(name, path, -0.038).message).toContain(field);
    },
  );

  it('is not what 0 is in these fields, where none of it can be meant; in all others 0 is refused by name', () => {
    const taken = fields.filter(({ name, path, place }) => {
      if (/\d\.time$|outline/.test(place)) return false;
      try {
        call(name, withValue(validInputs[name as keyof typeof calc], path, 0));
        return true;
      } catch (error) {
        expect((error as Error).message).toContain(path.at(-1));
        return false;
      }
    });
    expect(taken.map(({ name, place }) => `${name} ${place}`)).toEqual(mayBeNone);
  });

  it('is told in a sentence that says what would be right', () => {
    const roll = { width: 0.5, startDiameter: -0.038, plyThickness: 0.0003 };
    expect(() => call('wrapsForWidth', roll)).toThrow('startDiameter must be greater than 0 m, got -0.038');
    expect(() => call('dewPoint', { temperature: 293.15, relativeHumidity: 50 })).toThrow(
      'relativeHumidity must be greater than 0 and at most 1, got 50',
    );
    expect(() => call('resinForCloth', { clothMass: 0.1 })).toThrow(
      'resinMassFraction must be at least 0 and less than 1, got nothing',
    );
    expect(() => call('resinForCloth', { clothMass: '12 apples', resinMassFraction: 0.5 })).toThrow(
      'clothMass must be at least 0 kg, got "12 apples"',
    );
    expect(() => call('wetResinFraction', { clothMass: 0.1, wetMass: 0.12, filmMass: 0.04 })).toThrow(
      'wetMass must be at least 0.14 kg, got 0.12',
    );
    expect(() =>
      call('peak', {
        readings: [
          { time: 60, temperature: 300 },
          { time: 0, temperature: 300 },
        ],
      }),
    ).toThrow('readings[1].time must be at least 60 s, got 0');
    expect(() => call('interpolateProfile', { start: 293, stages: [], time: '5' })).toThrow(
      'time must be a number of s, got "5"',
    );
    expect(() => call('resinForCloth', { clothMass: 1e300, resinMassFraction: 0.5 })).toThrow(
      'at most 1e+30 kg',
    );
  });

  it('is refused when the whole input or a whole list is missing', () => {
    expect(() => call('dewPoint', undefined)).toThrow(RangeError);
    expect(() => call('peak', {})).toThrow('readings must be a list of at least 1, got nothing');
    expect(() => call('peak', { readings: [] })).toThrow('readings must be a list of at least 1, got 0');
    expect(() => call('holdTime', { low: 300 })).toThrow('readings');
    expect(() => call('holdTime', { low: 300, readings: [null] })).toThrow('readings[0].time');
    expect(() => call('activationEnergy', [])).toThrow('points');
    expect(() => call('blendEquivalentWeight', [])).toThrow('parts');
    expect(() => call('blendEquivalentWeight', [null])).toThrow('parts[0].mass');
    expect(() => call('profilePoints', { start: 293 })).toThrow('stages');
    expect(() => call('profilePoints', { start: 293, stages: [null] })).toThrow('stages[0].kind');
    expect(() => call('cureTimeUsed', { readings: [] })).toThrow('curePoints');
  });

  it('takes rounding left over from a subtraction for 0, on either side of it', () => {
    const left = 0.1 + 0.2 - 0.3;
    for (const clothMass of [left, -left]) {
      expect(calc.resinForCloth({ clothMass, resinMassFraction: 0.5 })).toBe(0);
    }
    expect(() => calc.diameterFromCircumference({ circumference: left })).toThrow(RangeError);
  });
});

describe('no result', () => {
  it.each(names)('of %s is NaN or infinite, whatever numbers go in: a RangeError instead', (name) => {
    const valid = validInputs[name as keyof typeof calc];
    const paths = numberPaths(valid);
    const wild = fc.oneof(
      fc.double(),
      fc.double({ min: 0, max: 1 }),
      fc.double({ min: 1e-15, max: 1e30, noNaN: true }),
      fc.constantFrom(0, 1, -1, 5e-324, 1e-15, 1e15, 1e30, -1e30, 273.15, 300, 1e308, Number.MAX_VALUE),
    );
    const keep = fc.constant(undefined);
    fc.assert(
      fc.property(fc.tuple(...paths.map(() => fc.oneof(keep, wild))), (values) => {
        const input = paths.reduce<unknown>((made, path, index) => {
          const value = values[index];
          return value === undefined ? made : withValue(made, path, value);
        }, valid);
        try {
          expect(everyNumber(call(name, input)).filter((number) => !Number.isFinite(number))).toEqual([]);
        } catch (error) {
          expect(error).toBeInstanceOf(RangeError);
        }
      }),
      { numRuns: 500 },
    );
  });
});
