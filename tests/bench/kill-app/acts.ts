import { takePicture } from '#app/laying-up/build/picture.ts';
import { mergeIn } from '#app/phone/data/restoring.ts';
import { saveDoc } from '#app/state/documents.ts';
import { journals } from '#app/state/journals.ts';
import { record, retract } from '#app/state/record.ts';
import { theStore } from '#app/state/shop.ts';
import { recordUndoable } from '#app/state/undo.ts';
import type { EntryDraft } from '#shared/record/entry.ts';
import { loggerFileType } from '#shared/record/logger-file.ts';
import { starterCloths } from '#shared/reference/starter-cloths.ts';
import { checkBackup } from '#storage/backup-check.ts';
import { photoHash } from '#storage/photo-hash.ts';
import { backupOf } from '../../browser/support/backup.ts';
import { buildHeader, ovenLoadHeader } from '../../record/arbitraries.ts';

const any = <T>(list: readonly T[]): T => list[Math.floor(Math.random() * list.length)] as T;
const between = (low: number, high: number) => low + Math.random() * (high - low);
const onBench = (kind: 'build' | 'ovenLoad') =>
  [...journals.value.values()].filter((j) => j.header?.record === kind).map((j) => j.subject);
const build = () => any(onBench('build'));
const oven = () => any(onBench('ovenLoad'));

/** A tube and an oven load, each with its header and first entries in one transaction. */
export async function begin(): Promise<void> {
  const { newId, device } = theStore();
  const [tube, load] = [newId(), newId()];
  const now = { startedAt: Date.now(), device };
  const headers = [
    { ...buildHeader, ...now, id: tube },
    { ...ovenLoadHeader, ...now, id: load },
  ];
  const joined: EntryDraft = { kind: 'joinedOvenLoad', subject: tube, build: tube, ovenLoad: load, round: 1 };
  await record([joined, { kind: 'ovenStage', subject: load, stage: 'lit' }], { headers });
}

async function tick(): Promise<void> {
  const step = any(buildHeader.route.flatMap((stage) => stage.steps));
  await recordUndoable({ kind: 'tick', subject: build(), step: step.id, round: 1 }, { said: step.text });
}

/** Steps passed over, made up in one press: all of them, or none. */
async function ticks(): Promise<void> {
  const subject = build();
  const { steps } = any(buildHeader.route);
  await record(steps.map((step): EntryDraft => ({ kind: 'tick', subject, step: step.id, round: 1 })));
}

async function cup(): Promise<void> {
  const subject = build();
  const { newId } = theStore();
  const id = newId();
  await record({
    kind: 'cupStarted',
    subject,
    cup: id,
    number: 1,
    of: 1,
    round: 1,
    resin: 0.1,
    hardener: 0.03,
    holds: 0.2,
  });
  await record({ kind: 'pour', subject, cup: id, part: 'resin', mass: 0.1, typed: '100.0 g' });
  await record([
    {
      kind: 'clockStarted',
      subject,
      clock: newId(),
      purpose: 'potLife',
      label: 'Cup 1',
      lasts: 1800,
      warns: 300,
      cup: id,
    },
    { kind: 'pour', subject, cup: id, part: 'hardener', mass: 0.03, typed: '130.0 g' },
  ]);
  await record({ kind: 'cupEmpty', subject, cup: id });
}

async function reading(): Promise<void> {
  await record({ kind: 'reading', subject: oven(), channel: 'air', temperature: between(290, 350) });
}

async function weight(): Promise<void> {
  await recordUndoable(
    { kind: 'weight', subject: build(), what: 'cured', mass: between(0.1, 0.6) },
    { said: 'Weighed' },
  );
}

async function takenBack(): Promise<void> {
  const { subject, entries } = journals.value.get(build()) ?? { subject: '', entries: [] };
  const first = entries.filter((e) => e.corrects === undefined && e.kind === 'tick');
  if (first.length > 0) await retract(subject, any(first).id);
}

async function cloth(): Promise<void> {
  const body = starterCloths['starter-cloth-carbon-plain-193'];
  const doc = await saveDoc('cloth', { ...body, name: `Offcut ${Math.round(between(1, 9999))}` });
  if (doc) await saveDoc('cloth', { ...body, name: 'Offcut, weighed' }, { doc });
}

/** Noise, so that it does not shrink, drawn and scaled down as a photo from a camera is. */
async function photo(): Promise<void> {
  const canvas = new OffscreenCanvas(320, 240);
  const context = canvas.getContext('2d');
  if (!context) throw new Error('no canvas');
  const noise = context.createImageData(320, 240);
  for (let at = 0; at < noise.data.length; at += 65_536) {
    crypto.getRandomValues(noise.data.subarray(at, at + 65_536));
  }
  context.putImageData(noise, 0, 0);
  const taken = await takePicture(await canvas.convertToBlob(), Date.now());
  if (!taken) throw new Error('no picture');
  await record({ kind: 'photo', subject: build(), hash: taken.record.hash }, { photos: [taken] });
}

async function loggerFile(): Promise<void> {
  const rows = Array.from({ length: 4000 }, (_, i) => `${i * 30};${between(20, 70).toFixed(2)}`);
  const blob = new Blob([`Time (s);Air\n${rows.join('\n')}\n`], { type: loggerFileType });
  const hash = await photoHash(await blob.arrayBuffer());
  const now = Date.now();
  const bytes = {
    record: 'photo' as const,
    v: 1,
    hash,
    type: loggerFileType,
    bytes: blob.size,
    addedAt: now,
  };
  await record(
    {
      kind: 'loggerFile',
      subject: oven(),
      hash,
      name: 'oven.csv',
      bytes: blob.size,
      dialect: {
        encoding: 'utf-8',
        delimiter: ';',
        decimal: '.',
        heads: ['Time (s)', 'Air'],
        firstRow: 1,
        time: { columns: [0], form: 'number', unit: 's' },
      },
      columns: [{ column: 1, channel: 'air', unit: 'C' }],
      startsAt: now,
      shift: 0,
      clockZone: 0,
      repairs: { shifts: [], cuts: [], lowest: 213.15, highest: 973.15, repeats: 'first' },
      series: [{ channel: 'air', readings: rows.length, highest: 343.15 }],
      from: now,
      until: now + 120_000_000,
    },
    { photos: [{ record: bytes, blob }] },
  );
}

/** A backup of another phone, now and then longer than what a restore writes at once. */
async function restore(): Promise<void> {
  const { newId } = theStore();
  const tube = newId();
  const length = Math.random() < 0.2 ? 6000 : 150;
  const entries = Array.from({ length }, (_, i) => ({
    record: 'entry' as const,
    v: 1,
    id: newId(),
    subject: tube,
    happenedAt: Date.now() - i,
    recordedAt: Date.now(),
    zone: 0,
    device: 'another-phone',
    kind: 'note',
    text: `line ${i}`,
  }));
  const header = { ...buildHeader, id: tube };
  const checked = await checkBackup(new Blob([backupOf([header, ...entries], Date.now())]));
  if (!checked.ok) throw new Error(checked.detail);
  await mergeIn('other.txt', checked);
}

/** A touch on a line of the route, and then the screen's own word for it. */
async function pressed(): Promise<void> {
  location.hash = `#/build/${build()}`;
  const boxes = () => [...document.querySelectorAll<HTMLElement>('[role=checkbox][aria-checked=false]')];
  for (let left = 25; left > 0 && boxes().length === 0; left--)
    await new Promise((ready) => setTimeout(ready, 20));
  any(boxes())?.click();
}

const often = [tick, tick, reading, reading, pressed, weight, cup, ticks, takenBack, cloth];
const seldom = [photo, loggerFile, restore, begin];

/** One thing a builder does, whichever. */
export const something = () => any(Math.random() < 0.75 ? often : seldom)();
