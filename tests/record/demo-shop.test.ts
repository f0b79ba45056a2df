import { readFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import { derive } from '#app/curing/logger/derive.ts';
import { openKnown } from '#app/curing/logger/open-file.ts';
import { readColumns } from '#app/curing/logger/read-columns.ts';
import { laidAt } from '#app/made/results/laid-at.ts';
import { drawsOf } from '#app/state/draws.ts';
import {
  cureTimeUsed,
  fiberVolumeFraction,
  fiberVolumeFromThickness,
  ratioError,
  wallFromOutside,
  wetResinFraction,
} from '#calc';
import { type BuildState, foldBuild } from '#shared/record/build-state.ts';
import { readClock } from '#shared/record/clock-state.ts';
import type { AnyEntry } from '#shared/record/entry.ts';
import { foldOvenLoad } from '#shared/record/oven-state.ts';
import { readRecord, type StoredRecord } from '#shared/record/read.ts';
import { heads } from '#shared/record/revision.ts';
import { checkBackup } from '#storage/backup-check.ts';
import { fromBase64 } from '#storage/base64.ts';
import { demoBackup } from '../../demo/backup-text.ts';
import { loggerBytes } from '../../demo/logged.ts';
import { demoShop } from '../../demo/make-shop.ts';
import { hardenerPerResin } from '../../demo/materials.ts';
import { anchor } from '../../demo/shop-time.ts';

const shop = demoShop(anchor);
const of = <R extends StoredRecord['record']>(record: R) =>
  shop.filter((r): r is Extract<StoredRecord, { record: R }> => r.record === record);
const entriesOf = (subject: string) => of('entry').filter((e) => e.subject === subject);
const builds = of('build').map((header) => foldBuild(header, entriesOf(header.id)));
const ovens = of('ovenLoad').map((header) => foldOvenLoad(header, entriesOf(header.id)));
const titled = ({ header }: BuildState) => `${header.name} no. ${header.number}`;
const build = (title: string) => {
  const found = builds.find((b) => titled(b) === title);
  if (!found) throw new Error(`no ${title}`);
  return found;
};
const mass = (b: BuildState, what: Parameters<BuildState['weights']['get']>[0]) =>
  b.weights.get(what)?.entry.mass ?? 0;
const densities = ({ header }: BuildState) => ({
  fiberDensity: header.cloth.fiberDensity,
  resinDensity: header.resin.curedDensity,
});

function byWeight(b: BuildState): number {
  const film = mass(b, 'filmIn') - mass(b, 'filmOut');
  const resinMass = mass(b, 'cured') - film - b.header.clothMass;
  return fiberVolumeFraction({ fiberMass: b.header.clothMass, resinMass, ...densities(b) });
}

const closed = builds.filter((b) => b.closedAt !== undefined);

describe('the demo shop', () => {
  it('is the committed file, made again', async () => {
    const committed = await readFile(new URL('../../demo/shop.txt', import.meta.url), 'utf8');
    expect(demoBackup() === committed, 'run: npm run demo:shop').toBe(true);
  });

  it('is a whole backup that its own check lets in, and says which moment it stands at', async () => {
    const checked = await checkBackup(new Blob([demoBackup()]));
    expect(checked).toMatchObject({ ok: true, at: anchor, counts: { headers: 14, setAside: 0 } });
    expect(JSON.parse(demoBackup().split('\n')[0] ?? '')).toMatchObject({ madeAt: anchor });
  });

  it('passes the gate record by record', () => {
    for (const record of shop) expect(readRecord(record)).toEqual({ ok: true, value: record });
  });

  it('has an id of its own for every record', () => {
    expect(new Set(shop.map((r) => r.id)).size).toBe(shop.length);
  });

  it('moves as a whole: made for another moment, everything stands as long ago as before', () => {
    const later = demoShop(anchor + 7_000_000);
    const ago = (list: StoredRecord[], now: number) =>
      list.flatMap((r) => (r.record === 'entry' ? [now - (r as AnyEntry).happenedAt] : []));
    expect(ago(later, anchor + 7_000_000)).toEqual(ago(shop, anchor));
  });

  it('holds nothing that has not happened yet, and nothing recorded before it happened', () => {
    for (const e of of('entry')) {
      expect(e.recordedAt).toBeLessThanOrEqual(anchor);
      expect(e.happenedAt).toBeLessThanOrEqual(e.recordedAt);
    }
  });

  it('has one head of every document, and plans whose parts are all on its shelf', () => {
    const found = heads(of('revision'));
    expect(new Set(found.map((r) => r.doc)).size).toBe(found.length);
    const docs = new Set(found.map((r) => r.doc));
    for (const { plan } of of('build')) {
      if (plan?.type !== 'plan') throw new Error('a build without its plan');
      const { cloth, resin, release = '', tape = '', mandrel = '', checklist } = plan.body;
      for (const doc of [plan.doc, cloth, resin, release, tape, mandrel, checklist])
        expect(docs).toContain(doc);
    }
  });

  it('shows the four spars in the states that a bench shows', () => {
    expect(builds.map((b) => [titled(b), b.disposition?.entry.outcome ?? b.next?.step.id])).toEqual([
      ['Boom no. 1', 'good'],
      ['Sprit no. 1', 'good'],
      ['Lower mast no. 1', 'good'],
      ['Upper mast no. 1', 'good'],
      ['Sprit no. 2', 'good'],
      ['Upper mast no. 2', 'cure-held'],
      ['Sprit no. 3', 'cure-held'],
      ['Lower mast no. 2', 'cut-weighed'],
      ['Boom no. 2', 'mix-cups'],
    ]);
    expect(closed.length).toBe(5);
  });
});

describe('what the demo shop weighed', () => {
  it.each([
    ['Boom no. 1', 0.32, 0.5],
    ['Sprit no. 1', 0.2, 0.319],
    ['Lower mast no. 1', 0.32, 0.5],
    ['Upper mast no. 1', 0.32, 0.5],
    ['Sprit no. 2', 0.32, 0.5],
  ])('%s has a fiber volume between %d and %d', (title, low, high) => {
    expect(byWeight(build(title))).toBeGreaterThan(low);
    expect(byWeight(build(title))).toBeLessThan(high);
  });

  it('tells the same story by thickness, within a tenth', () => {
    for (const b of closed) {
      const round = b.measurements.filter((m) => m.entry.what !== 'length');
      expect(round.length).toBe(4);
      for (const { entry } of round) {
        const outsideDiameter = entry.what === 'circumference' ? entry.value / Math.PI : entry.value;
        const laid = laidAt(b.header, entry.station);
        if (!laid) throw new Error(`${titled(b)} has no mandrel`);
        const wall = wallFromOutside({ outsideDiameter, innerDiameter: laid.inner });
        const apart = fiberVolumeFromThickness({ ...laid, wall }) / byWeight(b) - 1;
        expect(Math.abs(apart)).toBeLessThan(0.1);
      }
    }
  });

  it('is never more than was mixed, and the wet cloth held more resin than the tube kept', () => {
    for (const b of closed) {
      const mixed = b.cups.reduce((sum, c) => sum + c.resin + c.hardener, 0);
      const kept = mass(b, 'cured') - b.header.clothMass;
      expect(kept).toBeLessThan(mixed);
      const wet = wetResinFraction({
        clothMass: b.header.clothMass,
        wetMass: mass(b, 'wetCloth'),
        filmMass: mass(b, 'wetFilms'),
      });
      expect(wet).toBeGreaterThan(1 - b.header.clothMass / (mass(b, 'cured') - 0.004));
    }
  });

  it('has every cup within what it may hold, and in its tolerance but the one recorded as it is', () => {
    for (const b of builds) {
      const ratio = hardenerPerResin(b.header.resin);
      for (const cup of b.cups) {
        const error = ratioError({
          resinPoured: cup.resin,
          hardenerPoured: cup.hardener,
          hardenerPerResin: ratio,
        });
        expect(cup.resin + cup.hardener).toBeLessThanOrEqual(cup.holds);
        expect(Math.abs(error) <= b.header.resin.tolerance || cup.asItIs !== undefined, titled(b)).toBe(true);
      }
    }
    expect(builds.flatMap((b) => b.cups).filter((c) => c.asItIs === 'lean').length).toBe(1);
    expect(builds.flatMap((b) => b.cups).filter((c) => c.pours.length === 3).length).toBe(1);
  });
});

describe('what the demo shop has on its rolls', () => {
  it('weighs three tubes of one roll whose area is known, each within a hundredth of what it was told', () => {
    const weights = builds.flatMap((b) => {
      const { clothArea } = b.header;
      const rolls = drawsOf(b).filter((d) => d.of === 'cloth');
      const ofOne = rolls.length === 1 && rolls[0]?.lot === 'demo-lot-plain-2';
      return ofOne && clothArea !== undefined ? [mass(b, 'cutCloth') / clothArea] : [];
    });
    expect(weights.length).toBe(3);
    for (const w of weights) expect(w / 0.1958).toBeCloseTo(1, 1.7);
  });

  it('has a roll that one tube took to its end, with the rest of its cloth from the next roll', () => {
    const cloth = builds.flatMap((b) => drawsOf(b).filter((d) => d.of === 'cloth'));
    const taken = (lot: string) => cloth.filter((d) => d.lot === lot).reduce((sum, d) => sum + d.amount, 0);
    expect(drawsOf(build('Boom no. 2')).map((d) => d.lot)).toEqual(
      expect.arrayContaining(['demo-lot-plain-2', 'demo-lot-plain-3']),
    );
    expect(taken('demo-lot-plain-2')).toBeGreaterThan(2.9);
    expect(taken('demo-lot-plain-2')).toBeLessThanOrEqual(3);
  });
});

describe('what went wrong in the demo shop', () => {
  it('is a weight with one zero too many, corrected, and its earlier wording kept', () => {
    const cured = build('Lower mast no. 1').weights.get('cured');
    const [slip] = cured?.earlier ?? [];
    expect(slip && 'mass' in slip && slip.mass).toBeCloseTo(10 * (cured?.entry.mass ?? 0), 9);
  });

  it('is film left in the tube that the oven ran away with', () => {
    const tube = build('Lower mast no. 1');
    expect(mass(tube, 'filmIn') - mass(tube, 'filmOut')).toBeCloseTo(0.0041, 9);
    const load = ovens.find((o) => o.builds.some((b) => b.build === tube.header.id));
    const limit = load?.header.limits.find((l) => l.sees === 'part')?.highest ?? 0;
    const part = load?.readings.find((r) => r.channel.sees === 'part')?.at ?? [];
    expect(Math.max(...part.map((r) => r.temperature))).toBeGreaterThan(limit + 10);
    expect(tube.header.release?.highestTemperature).toBe(limit);
  });

  it('is one retracted entry, two overrides with a reason, and ticks whose time nobody saw', () => {
    const facts = builds.flatMap((b) => b.facts);
    expect(facts.filter((f) => f.retracted).length).toBe(1);
    expect(builds.flatMap((b) => b.overrides.map((o) => o.entry.reason)).sort()).toEqual([
      'anotherWay',
      'doneNotTicked',
    ]);
    const late = build('Upper mast no. 1').stages.flatMap((s) =>
      s.steps.filter((one) => one.done?.timeNotSeen),
    );
    expect(late.map((s) => s.step.id)).toEqual(['setup-turning', 'wrap-edge', 'wrap-rolled', 'wrap-lands']);
  });
});

describe('the demo shop right now', () => {
  it('has a cup whose hardener went in 9 minutes ago and that is not empty', () => {
    const [cup, ...more] = build('Boom no. 2').cups;
    expect(more).toEqual([]);
    expect(cup?.hardenerAt).toBe(anchor - 9 * 60_000);
    expect(cup?.emptyAt).toBeUndefined();
    const [clock] = build('Boom no. 2').clocks.filter((c) => c.purpose === 'potLife');
    expect(clock && readClock(clock, anchor).phase).toBe('running');
  });

  it('has one oven load lit, two tubes in it, holding for 1 h 50', () => {
    const going = ovens.filter((o) => o.offAt === undefined);
    expect(going.length).toBe(1);
    expect(going[0]?.builds.length).toBe(2);
    const hold = going[0]?.clocks[0];
    expect(hold && readClock(hold, anchor)).toMatchObject({ phase: 'running', left: 70 * 60 });
    for (const { at } of going[0]?.readings ?? []) {
      expect(at.at(-1)?.temperature).toBeCloseTo(339.15, -0.5);
      expect(anchor - (at.at(-1)?.at ?? 0)).toBeLessThan(15 * 60_000);
    }
  });

  it('has nothing wet on the tube that is being cut', () => {
    expect(build('Lower mast no. 2').cups).toEqual([]);
  });

  it('has a timer running on the bench, and no clock over', () => {
    const clocks = [...builds, ...ovens].flatMap((s) => s.clocks);
    expect(entriesOf('bench').map((e) => e.kind)).toEqual(['clockStarted']);
    expect(clocks.filter((c) => readClock(c, anchor).phase === 'over')).toEqual([]);
  });
});

describe('the oven loads of the demo shop', () => {
  it('were read at least every 16 minutes while they were on', () => {
    for (const o of ovens) {
      for (const { at } of o.readings) {
        expect(at.length).toBeGreaterThan(10);
        for (const [i, r] of at.entries()) {
          expect(r.at - (at[i - 1]?.at ?? o.litAt ?? 0)).toBeLessThanOrEqual(16 * 60_000);
        }
      }
    }
  });

  it('has a logger’s file, whose bytes the backup carries and which reads again as it was taken in', () => {
    const files = ovens.flatMap((o) => o.loggerFiles.map(({ entry }) => ({ entry, out: o.outAt })));
    expect(files.length).toBe(1);
    const [{ entry, out } = { entry: undefined }] = files;
    if (!entry) throw new Error('no file');
    const bytes = fromBase64(loggerBytes.data);
    expect(bytes?.length).toBe(entry.bytes);
    expect(loggerBytes.hash).toBe(entry.hash);
    const { dialect, columns, startsAt, clockZone: zone } = entry;
    const table = openKnown(bytes ?? new Uint8Array(), dialect);
    const raw = readColumns(table, dialect, columns, { zone, startsAt: startsAt ?? 0, shift: 0 });
    const derived = derive(raw, entry.repairs);
    expect(derived.map((d) => d.at.length)).toEqual(entry.series.map((s) => s.readings));
    expect(derived.map((d) => d.at[0])).toEqual([entry.from, entry.from]);
    expect(derived.map((d) => d.at.at(-1))).toEqual([entry.until, entry.until]);
    // It sees the peak between two looks at the meter.
    const [air, part] = entry.series.map((s) => s.highest ?? 0);
    expect(part).toBeGreaterThan(368);
    expect(air).toBeGreaterThan(part ?? 0);
    expect(entry.until).toBeLessThan(out ?? 0);
  });

  it('gave every closed build the cure its resin asks for', () => {
    for (const b of closed) {
      const load = ovens.find((o) => o.builds.some((one) => one.build === b.header.id));
      const part = load?.readings.find((r) => r.channel.build === b.header.id)?.at ?? [];
      const readings = part.map((r) => ({
        time: (r.at - b.header.startedAt) / 1000,
        temperature: r.temperature,
      }));
      expect(cureTimeUsed({ readings, curePoints: b.header.resin.curePoints }), titled(b)).toBeGreaterThan(1);
    }
  });
});
