import type { BuildHeader } from '#shared/record/build.ts';
import type { ClockPurpose, LifeBasis, RatingOf } from '#shared/record/entry.ts';
import type { Plan } from '#shared/record/plan.ts';
import { drawing } from './draw.ts';
import type { Ids } from './journal.ts';
import { Journal } from './journal.ts';
import type { Materials } from './materials.ts';
import type { OvenLoad } from './oven-load.ts';
import { minute } from './shop-time.ts';
import type { Rolls } from './stock.ts';

/** How one cup went. */
export interface CupStory {
  /** kg wanted in it; the plan's share when not given */
  mass?: number;
  /** Hardener poured over or under what the resin asked for, kg */
  hardenerOff?: number;
  /** Put right with more resin afterwards. */
  putRight?: boolean;
}

/** One build as it went: when, and what was out of the ordinary. */
export interface BuildStory extends Rolls {
  number: number;
  seed: number;
  prepAt: number;
  setUpAt?: number;
  /** When the first cup's hardener went in. */
  hardenerAt?: number;
  /** Before the build it went through: filled in once its oven load is known. */
  oven?: OvenLoad;
  demoldAt?: number;
  /** The first step not done. */
  stopAt?: string;
  /** The last cup is still in use. */
  cupInUse?: boolean;
  cups?: readonly CupStory[];
  /** C; humidity in percent */
  surroundings?: { air: number; resin: number; mandrel: number; humidity: number };
  squeezedOut: number;
  lossPerCup?: number;
  /** kg of the sleeve that would not come out */
  filmLeft?: number;
  /** One zero too many when the tube was weighed, put right a little later. */
  curedMistyped?: boolean;
  /** What stayed in the cups and went on gloves and films was put on the scale. */
  weighsLoss?: boolean;
  /** Surface, off the mandrel, dry spots, straightness: 0 worst, 3 best. */
  rated?: Readonly<Record<RatingOf, number>>;
  /** Hung with a weight when it was done: stiffness over what its plan foretold. */
  stiffAs?: number;
  judged?: { outcome: 'good' | 'rework' | 'scrap'; text?: string };
  /** Steps that were done and only ticked with a later one: that step's id, and theirs. */
  tickedLate?: { with: string; steps: readonly string[] };
  /** Said or done right before a step is ticked. */
  before?: Readonly<Record<string, (bench: Bench) => void>>;
}

/** What the builder read of the shop, °C and % of humidity; on an ordinary day where the story says nothing. */
export function shopOf({ surroundings }: BuildStory): NonNullable<BuildStory['surroundings']> {
  return surroundings ?? { air: 22, resin: 22, mandrel: 21, humidity: 48 };
}

/** The builder at work on one tube: where the clock stands, and what the cups held. */
export class Bench {
  readonly journal: Journal;
  readonly draw: (from: number, to: number) => number;
  readonly cups: string[] = [];
  /** kg poured in all */
  mixed = 0;
  now: number;

  constructor(
    readonly story: BuildStory,
    readonly plan: Plan,
    readonly materials: Materials,
    readonly header: BuildHeader,
    readonly ids: Ids,
  ) {
    this.journal = new Journal(header.id, ids);
    this.draw = drawing(story.seed);
    this.now = story.prepAt;
  }

  /** A while goes by, give or take a fifth. */
  pass(minutes: number): void {
    this.now += Math.round(minutes * this.draw(0.8, 1.2) * 60) * 1000;
  }

  jump(to: number | undefined): void {
    if (to === undefined) throw new Error(`${this.header.name}: a time is missing after ${this.now}`);
    if (to < this.now) throw new Error(`${this.header.name}: ${(this.now - to) / minute} minutes too late`);
    this.now = to;
  }

  say(draft: Parameters<Journal['write']>[1]): string {
    return this.journal.write(this.now, draft);
  }

  note(text: string): void {
    this.say({ kind: 'note', text });
  }

  startClock(
    purpose: ClockPurpose,
    label: string,
    lasts: number,
    warns: number,
    of: { cup?: string; step?: string; round?: number; basis?: LifeBasis },
  ): string {
    const clock = this.ids.at(this.now);
    this.say({ kind: 'clockStarted', clock, purpose, label, lasts, warns, ...of });
    return clock;
  }

  /** kg that reached the cloth */
  applied(): number {
    return this.mixed - this.cups.length * (this.story.lossPerCup ?? this.plan.goal.lossPerCup);
  }

  /** kg that stayed in the wall */
  kept(): number {
    return this.applied() * (1 - this.story.squeezedOut);
  }
}
