import { gaveWayWords } from '#app/laying-up/proof/words.ts';
import { weighingOf } from '#app/laying-up/weigh/weights.ts';
import { ratingNames, ratingWords } from '#app/made/results/rating-words.ts';
import { offWords } from '#app/planning/cutting/edge-words.ts';
import { wallOfBuild } from '#app/planning/cutting/plan-of-build.ts';
import { show } from '#app/state/show.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { type AnyEntry, type Entry, isKnown } from '#shared/record/entry.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { formatDuration } from '#shared/units/time.ts';

export const guardWords = {
  dryRun: 'dry run',
  release: 'release',
  rotation: 'rotation',
  films: 'counting the films',
} as const;

export const reasonWords = {
  doneNotTicked: 'it was done, only not ticked',
  notNeeded: 'not needed on this tube',
  anotherWay: 'done another way',
  goingOn: 'going on without it',
} as const;

export const outcomeWords = {
  gelled: 'gelled',
  notYet: 'not yet',
  tacky: 'tacky',
  dry: 'dry',
  soft: 'soft',
  hard: 'hard',
  good: 'good',
  rework: 'to be reworked',
  scrap: 'scrap',
} as const;

const lotNames = { cloth: 'cloth', resin: 'resin', hardener: 'hardener', tape: 'tape' } as const;

const ovenWords = { lit: 'Oven lit', off: 'Oven off', out: 'Out of the oven' } as const;

export type Subject = BuildState | OvenState;

const isBuild = (s: Subject): s is BuildState => s.header.record === 'build';

function pieceName(subject: Subject, piece: string | undefined): string | undefined {
  if (!isBuild(subject)) return undefined;
  return wallOfBuild(subject.header)?.pieces.find((p) => p.id === piece)?.name;
}

function stepText(subject: Subject, step: string): string {
  if (!isBuild(subject)) return 'Step';
  const found = subject.stages.flatMap((s) => s.steps).find((s) => s.step.id === step);
  if (found) return found.step.text;
  const piece = pieceName(subject, step);
  return piece ? `Cut: ${piece}` : 'A step that is not on the checklist';
}

function cupName(subject: Subject, cup: string | undefined): string {
  const found = isBuild(subject) ? subject.cups.find((c) => c.cup === cup) : undefined;
  if (!found) return 'Cup';
  return `Cup ${found.number}${found.round > 1 ? `, round ${found.round}` : ''}`;
}

function channelName(subject: Subject, channel: string): string {
  if (isBuild(subject)) return 'Sensor';
  return (
    subject.readings.find((r) => r.channel.id === channel)?.channel.name ?? 'A sensor that is not listed'
  );
}

function surroundingsText(e: Extract<Entry, { kind: 'surroundings' }>): string {
  const parts = [
    e.air !== undefined && `air ${show(e.air, 'temperature')}`,
    e.resin !== undefined && `resin ${show(e.resin, 'temperature')}`,
    e.mandrel !== undefined && `mandrel ${show(e.mandrel, 'temperature')}`,
    e.humidity !== undefined && `humidity ${show(e.humidity, 'humidity', 0)}`,
  ];
  return parts.filter(Boolean).join(', ');
}

const checkWords = { gel: 'Gel check', tack: 'Tack check', hardness: 'Sample' } as const;

export interface Described {
  what: string;
  value?: string;
}

function describeKnown(subject: Subject, e: Entry): Described {
  switch (e.kind) {
    case 'tick':
      return { what: stepText(subject, e.step), ...(e.timeNotSeen && { value: 'time not seen' }) };
    case 'override':
      return { what: `Went on without ${guardWords[e.guard]}`, value: reasonWords[e.reason] };
    case 'surroundings':
      return { what: 'Surroundings', value: surroundingsText(e) };
    case 'cupStarted':
      return { what: `${cupName(subject, e.cup)} started`, value: show(e.resin + e.hardener, 'mass') };
    case 'pour':
      return {
        what: `${cupName(subject, e.cup)}: ${e.part}`,
        value: `${show(e.mass, 'mass')}${e.asItIs ? `, ${e.asItIs}` : ''}`,
      };
    case 'cupEmpty':
      return { what: `${cupName(subject, e.cup)} empty` };
    case 'cupDiscarded':
      return { what: `${cupName(subject, e.cup)} thrown out` };
    case 'clockStarted':
      return {
        what: e.purpose === 'potLife' ? `${cupName(subject, e.cup)}: hardener in` : `Clock: ${e.label}`,
        value: e.purpose === 'potLife' ? `${formatDuration(e.lasts)} to use it` : formatDuration(e.lasts),
      };
    case 'clockAnswered':
      return { what: 'Clock answered' };
    case 'filmCount':
      return { what: `Films ${e.direction}`, value: String(e.count) };
    case 'reading':
      return { what: channelName(subject, e.channel), value: show(e.temperature, 'temperature') };
    case 'loggerFile': {
      const readings = e.series.reduce((sum, s) => sum + s.readings, 0);
      return { what: `Logger’s file ${e.name}`, value: `${readings.toLocaleString('en-US')} readings` };
    }
    case 'ovenStage':
      return { what: ovenWords[e.stage] };
    case 'roundStarted':
      return { what: `Round ${e.round}: mix to cure again` };
    case 'check':
      return {
        what: e.cup ? `${cupName(subject, e.cup)}: ${checkWords[e.what].toLowerCase()}` : checkWords[e.what],
        value: outcomeWords[e.outcome],
      };
    case 'weight':
      return {
        what: pieceName(subject, e.piece) ?? weighingOf(e.what)?.title ?? 'Weight',
        value: show(e.mass, 'mass'),
      };
    case 'measurement':
      return {
        what: `${e.what === 'circumference' ? 'Around' : e.what === 'length' ? 'Length' : 'Across'} at ${show(e.station, 'length', 0)}`,
        value: show(e.value, 'diameter'),
      };
    case 'proofLoad':
      return {
        what: `${show(e.mass, 'hungMass')} hung at ${show(e.at, 'length', 0)}: down at ${show(e.station, 'length', 0)}`,
        value: `${show(e.deflection, 'dial')}${e.set === undefined ? '' : `, stayed ${show(e.set, 'dial')}`}`,
      };
    case 'squeezeTest':
      return {
        what: `Squeezed with ${show(e.force, 'force')} over ${show(e.length, 'length')} at ${show(e.station, 'length', 0)}: narrower by`,
        value: show(e.narrower, 'dial'),
      };
    case 'gaveWay':
      return {
        what: `${gaveWayWords[e.how]} under ${show(e.mass, 'hungMass')} hung at ${show(e.at, 'length', 0)}`,
        ...(e.place !== undefined && { value: `at ${show(e.place, 'length', 0)}` }),
      };
    case 'edgeMark':
      return {
        what: `${pieceName(subject, e.piece) ?? 'Outer edge'} against its mark at ${show(e.station, 'length', 0)}`,
        value: offWords(e.off),
      };
    case 'disposition':
      return { what: e.text ? `Judged: ${e.text}` : 'Judged', value: outcomeWords[e.outcome] };
    case 'rating':
      return { what: ratingNames[e.what], value: ratingWords[e.what][e.value] ?? String(e.value) };
    case 'lotDrawn':
      return {
        what: `From ${e.label}${e.besides && e.amount !== undefined ? `, only ${show(e.amount, e.of === 'cloth' ? 'area' : 'reelLength', 2)}` : ''}`,
        value: lotNames[e.of],
      };
    case 'note':
      return { what: e.text };
    case 'photo':
      return { what: e.caption ?? 'Photo' };
    case 'joinedOvenLoad':
      return { what: 'Into the oven' };
    case 'closed':
      return { what: 'Done' };
    case 'reopened':
      return { what: 'Opened again' };
    case 'retracted':
      return { what: 'Struck out' };
  }
}

/** An entry in a builder's words, for the time line and wherever it is corrected. */
export function sayEntry(subject: Subject, entry: AnyEntry): Described {
  return isKnown(entry)
    ? describeKnown(subject, entry)
    : { what: 'From a newer version of the app', value: entry.kind };
}
