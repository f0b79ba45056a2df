import { describe, expect, it } from 'vitest';
import { moveTimes } from '#shared/record/move-times.ts';
import { starterRevisions } from '#shared/reference/starter-shelf.ts';
import { demoShop } from '../../demo/make-shop.ts';
import { anchor } from '../../demo/shop-time.ts';
import { begun, buildHeader, entryOf } from './arbitraries.ts';

describe('moving the times of the demo shop', () => {
  it('moves when it happened and when it was recorded, and nothing else but the zone', () => {
    const entry = entryOf({ kind: 'reading', channel: 'air', temperature: 330, happenedAt: begun });
    expect(moveTimes(entry, 5000, 60)).toEqual({
      ...entry,
      happenedAt: begun + 5000,
      recordedAt: entry.recordedAt + 5000,
      zone: 60,
    });
  });

  it('leaves a weight where it hung', () => {
    const hung = entryOf({ kind: 'proofLoad', at: 0.75, mass: 8, station: 0.75, deflection: 0.016 });
    expect(moveTimes(hung, 5000, 60)).toMatchObject({ at: 0.75, happenedAt: hung.happenedAt + 5000 });
  });

  it('leaves what it was given as it was', () => {
    const before = structuredClone(buildHeader);
    moveTimes(buildHeader, 5000, 60);
    expect(buildHeader).toEqual(before);
  });

  it('leaves the starter shelf as it is on every phone', () => {
    expect(starterRevisions().map((r) => moveTimes(r, 9e9, 0))).toEqual(starterRevisions());
  });

  it('gives the shop that would have been made for that moment, but for its ids', () => {
    const later = anchor + 12_345_678;
    const times = (list: object[]) =>
      JSON.stringify(list).match(
        /"(happenedAt|recordedAt|startedAt|startsAt|receivedAt|openedAt|expiresAt|at|from|until)":\d+/g,
      );
    const moved = demoShop(anchor).map((r) => moveTimes(r, later - anchor, -240));
    expect(times(moved)).toEqual(times(demoShop(later)));
  });
});
