import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isKnown } from '#shared/record/entry.ts';
import { readRecord } from '#shared/record/read.ts';
import { starterRevisions } from '#shared/reference/starter-shelf.ts';
import { buildHeader, entries, entryOf, ovenLoadHeader } from './arbitraries.ts';

const pour = entryOf({ kind: 'pour', cup: 'c', part: 'resin', mass: 0.1, typed: '100 g' });
const why = (raw: unknown) => {
  const gated = readRecord(raw);
  return gated.ok ? 'let through' : gated.why;
};

describe('the gate', () => {
  it('lets every entry through as it is', () => {
    fc.assert(
      fc.property(entries(), (all) => {
        for (const e of all) expect(readRecord(e)).toEqual({ ok: true, value: e });
      }),
    );
  });

  it('lets headers and revisions through as they are', () => {
    for (const record of [buildHeader, ovenLoadHeader, ...starterRevisions()]) {
      expect(readRecord(record)).toEqual({ ok: true, value: record });
    }
  });

  it('keeps fields that it does not know, deep inside too', () => {
    const entry = { ...pour, stirredFor: 150 };
    expect(readRecord(entry)).toEqual({ ok: true, value: entry });
    const header = { ...buildHeader, resin: { ...buildHeader.resin, shelfLife: 1 }, humor: { dry: true } };
    expect(readRecord(header)).toEqual({ ok: true, value: header });
  });

  it('keeps kinds and document types that it does not know', () => {
    const entry = { ...pour, kind: 'humSaid', lot: '7' };
    expect(readRecord(entry)).toEqual({ ok: true, value: entry });
    const jig = { ...starterRevisions()[0], type: 'jig', body: { wood: true } };
    expect(readRecord(jig)).toEqual({ ok: true, value: jig });
  });

  it('keeps an entry of a newer version as one it does not understand', () => {
    const newer = { ...pour, v: 2, mass: { wet: 0.1 } };
    const gated = readRecord(newer);
    expect(gated).toEqual({ ok: true, value: newer });
    expect(gated.ok && gated.value.record === 'entry' && isKnown(gated.value)).toBe(false);
    expect(isKnown(pour)).toBe(true);
  });

  it('sets aside a header of a newer version, since a build cannot be half understood', () => {
    expect(why({ ...buildHeader, v: 2 })).toContain('newer version');
    expect(why({ ...ovenLoadHeader, v: 2 })).toContain('newer version');
  });
});

describe('a damaged record', () => {
  it.each([
    ['mass', { ...pour, mass: -0.1 }],
    ['mass', { ...pour, mass: 0 }],
    ['mass', { ...pour, mass: '0.1' }],
    ['mass', { ...pour, mass: null }],
    ['mass', { ...pour, mass: Number.NaN }],
    ['mass', { ...pour, mass: Number.POSITIVE_INFINITY }],
    ['part', { ...pour, part: 'both' }],
    ['cup', { ...pour, cup: '' }],
    ['id', { ...pour, id: undefined }],
    ['id', { ...pour, id: 'x'.repeat(81) }],
    ['happenedAt', { ...pour, happenedAt: -1 }],
    ['recordedAt', { ...pour, recordedAt: '2026-05-16' }],
    ['zone', { ...pour, zone: 9000 }],
    ['corrects', { ...pour, corrects: 7 }],
    ['corrects', entryOf({ kind: 'retracted', corrects: '' })],
    ['temperature', entryOf({ kind: 'reading', channel: 'air', temperature: -4 })],
    ['round', entryOf({ kind: 'tick', step: 'cut-cut', round: 0 })],
    ['clothMass', { ...buildHeader, clothMass: 0 }],
    ['resin.ratio.phr', { ...buildHeader, resin: { ...buildHeader.resin, ratio: { by: 'weight', phr: 0 } } }],
    ['route.0.stage', { ...buildHeader, route: [{ stage: 'lunch', steps: [] }] }],
    ['channels', { ...ovenLoadHeader, channels: 'air' }],
    ['schedule.holdLow', { ...ovenLoadHeader, schedule: { ...ovenLoadHeader.schedule, holdLow: 0 } }],
    ['body.name', { ...starterRevisions()[0], body: { ...starterRevisions()[0]?.body, name: '' } }],
    ['parents', { ...starterRevisions()[0], parents: undefined }],
  ])('is refused and %s is named', (field, raw) => {
    expect(why(raw)).toMatch(new RegExp(`^${field.replaceAll('.', '\\.')}: `));
  });

  it('of a later kind is refused too when its stamps are damaged', () => {
    expect(why({ ...pour, kind: 'humSaid', happenedAt: 'noon' })).toMatch(/^happenedAt: /);
  });

  it.each([
    ['nothing', null],
    ['no value', undefined],
    ['a text', 'pour'],
    ['a number', 7],
    ['a list', [pour]],
    ['an empty object', {}],
    ['a record without a version', { record: 'entry' }],
  ])('that is %s is refused, and handed back as it came', (_, raw) => {
    const gated = readRecord(raw);
    expect(gated.ok).toBe(false);
    expect(!gated.ok && gated.raw).toBe(raw);
  });

  it('of another program is named as none of ours', () => {
    expect(why({ record: 'invoice', v: 1 })).toContain("'invoice' is not a record of this app");
  });

  it('never makes the gate throw, whatever it is', () => {
    fc.assert(
      fc.property(
        fc.anything(),
        fc.constantFrom('entry', 'build', 'ovenLoad', 'revision'),
        (junk, record) => {
          expect(() => readRecord(junk)).not.toThrow();
          expect(readRecord({ record, v: 1, kind: 'pour', type: 'cloth', body: junk, cup: junk }).ok).toBe(
            false,
          );
        },
      ),
    );
  });
});
