import * as z from 'zod/mini';
import { id, name, positive, text } from './common.ts';
import type { Known } from './known.ts';

/** The ordered stages of a build. Mix to cure may repeat. */
export const stageNames = [
  'mandrelPrep',
  'release',
  'cut',
  'setUp',
  'mix',
  'wetOut',
  'wrap',
  'shrinkTape',
  'cure',
  'demold',
  'weigh',
  'trim',
  'measure',
  'postcure',
  'bondPrep',
] as const;
export type StageName = (typeof stageNames)[number];
export const repeating: readonly StageName[] = ['mix', 'wetOut', 'wrap', 'shrinkTape', 'cure'];

/**
 * What a step asks for besides a tick; the bench opens the right screen.
 * `rotation` and `dryRun` mark the steps that guards look for.
 */
export const stepRoles = [
  'surroundings',
  'dryRun',
  'rotation',
  'mix',
  'filmsIn',
  'weighCloth',
  'weighFilmIn',
  'weighFilmOut',
  'weighWet',
  'filmsOut',
  'oven',
  'rotationOff',
  'weighCured',
  'measure',
  'samples',
  'judge',
] as const;
export type StepRole = (typeof stepRoles)[number];

export const step = z.lazy(() =>
  z.looseObject({
    id,
    text: z.string().check(z.minLength(1), z.maxLength(300)),
    /** Said small, under the step, while it is the one to do. */
    hint: z.optional(text),
    role: z.optional(z.enum(stepRoles)),
    /** Ticking it starts a clock of this length, s */
    waits: z.optional(positive),
  }),
);
export type Step = Known<z.infer<typeof step>>;

export const checklistStage = z.lazy(() =>
  z.looseObject({ stage: z.enum(stageNames), steps: z.array(step) }),
);
export type ChecklistStage = Known<z.infer<typeof checklistStage>>;

export const checklistBody = z.lazy(() =>
  z.looseObject({
    name,
    stages: z.array(checklistStage),
    typical: z.optional(z.boolean()),
    note: z.optional(text),
  }),
);
export type Checklist = Known<z.infer<typeof checklistBody>>;
