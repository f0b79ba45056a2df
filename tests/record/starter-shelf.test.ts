import { describe, expect, it } from 'vitest';
import { type Checklist, stageNames, stepRoles } from '#shared/record/checklist.ts';
import { cureSchedule } from '#shared/record/cure-schedule.ts';
import { readRecord } from '#shared/record/read.ts';
import { heads } from '#shared/record/revision.ts';
import { starterChecklists } from '#shared/reference/starter-checklists.ts';
import { starterSchedules } from '#shared/reference/starter-schedules.ts';
import { starterRevisions, starterShelf } from '#shared/reference/starter-shelf.ts';

const checklists: [string, Checklist][] = Object.entries(starterChecklists);
const optional = ['postcure', 'bondPrep'];

describe('the starter shelf', () => {
  it('passes the gate', () => {
    for (const one of starterRevisions()) expect(readRecord(one)).toEqual({ ok: true, value: one });
  });

  it('marks everything as typical and says what to check', () => {
    for (const { body } of starterShelf()) {
      expect(body).toMatchObject({ typical: true });
      expect('note' in body && body.note?.length).toBeGreaterThan(20);
    }
  });

  it('has an id of its own for everything, the same on every phone', () => {
    const docs = starterShelf().map((s) => s.doc);
    expect(new Set(docs).size).toBe(docs.length);
    expect(docs.every((d) => d.startsWith('starter-'))).toBe(true);
    expect(starterRevisions()).toEqual(starterRevisions());
  });

  it('of two phones merges into one revision a document', () => {
    const merged = heads([...starterRevisions(), ...starterRevisions()]);
    expect(merged.length).toBe(starterShelf().length);
  });

  it('shows each way that a data sheet may state a ratio', () => {
    const ways = starterShelf().flatMap((s) => (s.type === 'resin' ? [s.body.ratio.by] : []));
    expect(ways.sort()).toEqual(['equivalents', 'volume', 'weight']);
  });
});

describe.each(checklists)('%s', (_, checklist) => {
  const steps = checklist.stages.flatMap((s) => s.steps);

  it('goes through every stage once, in working order', () => {
    const names = checklist.stages.map((s) => s.stage);
    const wanted = stageNames.filter((n) => names.includes(n) || !optional.includes(n));
    expect(names).toEqual(wanted);
  });

  it('has a step of its own under every id', () => {
    expect(new Set(steps.map((s) => s.id)).size).toBe(steps.length);
  });

  it("says each step in a line that is read at arm's length", () => {
    for (const { text } of steps) expect(text.length, text).toBeLessThanOrEqual(45);
  });

  it('asks for everything that the bench has a screen for', () => {
    const roles = new Set(steps.flatMap((s) => (s.role ? [s.role] : [])));
    const hasSleeve = steps.some((s) => s.id === 'sleeve-weighed');
    const wanted = stepRoles.filter((r) => hasSleeve || !r.startsWith('weighFilm'));
    expect([...roles].sort()).toEqual([...wanted].sort());
  });

  it('guards by order: release, dry run and turning before mixing, films counted before tape', () => {
    const place = (find: (s: (typeof steps)[number]) => boolean) => steps.findIndex(find);
    const mixing = place((s) => s.role === 'mix');
    const release = checklist.stages.find((s) => s.stage === 'release')?.steps.at(-1)?.id;
    const lastRelease = place((s) => s.id === release);
    expect(lastRelease).toBeGreaterThan(0);
    for (const before of [
      lastRelease,
      place((s) => s.role === 'dryRun'),
      place((s) => s.role === 'rotation'),
    ]) {
      expect(before).toBeLessThan(mixing);
    }
    expect(place((s) => s.role === 'filmsOut')).toBeLessThan(place((s) => s.id === 'tape-started'));
  });

  it('warns where it bites', () => {
    const hints = steps
      .map((s) => s.hint ?? '')
      .join(' ')
      .toLowerCase();
    for (const word of ['eyes', 'skin', 'carbon dust', 'solvent', 'heats itself', 'lets go']) {
      expect(hints).toContain(word);
    }
  });
});

describe('the starter schedules', () => {
  it('are all readable, hold somewhere and count the hold in a band', () => {
    for (const { name, schedule } of Object.values(starterSchedules)) {
      expect(cureSchedule.safeParse(schedule).success, name).toBe(true);
      expect(
        schedule.stages.some((s) => s.kind === 'hold'),
        name,
      ).toBe(true);
      expect(schedule.holdLow, name).toBeLessThan(360);
    }
  });
});
