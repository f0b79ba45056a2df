import type { Margins } from '#app/curing/oven/oven-limits.ts';
import { QuantityField } from '#app/parts/field.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { ScheduleLine } from '#app/planning/plans/schedule-line.tsx';
import type { OvenLimit } from '#shared/record/oven-load.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import type { Tape } from '#shared/record/tape.ts';
import { type CureDraft, scheduleOf } from './cure-draft.ts';
import { takeStages } from './cure-edits.ts';
import { BrokenTitles, LimitWarnings } from './limit-warnings.tsx';
import { rampCautions } from './ramp-cautions.ts';
import { StageList } from './stage-list.tsx';
import { firstAsked } from './stage-question.ts';
import { TapeNote } from './tape-note.tsx';
import './cure.css';

interface Props {
  draft: CureDraft;
  limits: readonly OvenLimit[];
  margins?: Margins;
  resins: readonly ResinSystem[];
  tape: Tape | undefined;
}

/** A cure in as many stages as it takes, drawn against its limits while it is written. */
export function ScheduleEditor({ draft, limits, margins = {}, resins, tape }: Props) {
  const schedule = scheduleOf(draft);
  const [resin] = resins;
  const asked = firstAsked(draft, resin) !== undefined;
  const open = draft.stages.value.findIndex((s) => s.key === draft.chosen.value);
  return (
    <>
      {open < 0 && schedule && <ScheduleLine schedule={schedule} limits={limits} />}
      {schedule && !asked && (
        <LimitWarnings
          schedule={schedule}
          limits={limits}
          margins={margins}
          resins={resins}
          onTake={(fits) => takeStages(draft, fits)}
        />
      )}
      <StageList draft={draft} schedule={schedule} resin={resin}>
        {schedule && <ScheduleLine schedule={schedule} limits={limits} stage={open} />}
        {schedule && !asked && <BrokenTitles schedule={schedule} limits={limits} margins={margins} />}
      </StageList>
      {schedule &&
        !asked &&
        rampCautions(schedule, resin).map((c) => (
          <Warning key={c.title} kind="amber" title={c.title}>
            {c.says}
          </Warning>
        ))}
      {schedule && !asked && tape && <TapeNote schedule={schedule} tape={tape} />}
      <details class="more">
        <summary>Where it begins, how often to read it</summary>
        <QuantityField label="The oven begins at" input={draft.start} />
        <div class="field-pair">
          <QuantityField label="Read it, ramping" input={draft.readRamping} hint="usual 10 to 15 min" />
          <QuantityField label="Read it, holding" input={draft.readHolding} hint="usual 30 min" />
        </div>
      </details>
    </>
  );
}
