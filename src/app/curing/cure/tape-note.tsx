import { useSignal } from '@preact/signals';
import { Secondary } from '#app/parts/action.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import { show } from '#app/state/show.ts';
import type { CureSchedule } from '#shared/record/cure-schedule.ts';
import type { Tape } from '#shared/record/tape.ts';
import { celsius } from '#shared/reference/quantities.ts';
import { tapeSays } from './tape-words.ts';

/** A smooth tube comes out of a cure between these (common practice, no source). */
const smoothFrom = celsius(66);
const smoothTo = celsius(77);

/** What the tape will do in this cure, and what a hotter one would change. */
export function TapeNote({ schedule, tape }: { schedule: CureSchedule; tape: Tape }) {
  const open = useSignal(false);
  const close = () => {
    open.value = false;
  };
  return (
    <>
      <p>{tapeSays(schedule, tape)}</p>
      <Secondary
        onPress={() => {
          open.value = true;
        }}
      >
        What does hotter do?
      </Secondary>
      {open.value && (
        <Sheet
          title="Tape, cured hotter"
          onClose={close}
          actions={<Secondary onPress={close}>Close</Secondary>}
        >
          <p>
            It pulls harder, and earlier. More resin is squeezed out, the edges of the tape leave ridges, and
            the tube comes out rougher.
          </p>
          <p>
            Cured at {show(smoothFrom, 'temperature', 0)} to {show(smoothTo, 'temperature', 0)} a tube is
            smoother and keeps more resin, and it softens at a lower temperature.
          </p>
          <p>
            It only squeezes while resin flows: into the oven before gel, and past{' '}
            {show(tape.shrinksFrom, 'temperature', 0)} while the resin is liquid.
          </p>
          <p class="explain-source">From: common practice, no source</p>
        </Sheet>
      )}
    </>
  );
}
