import { buildName } from '#app/laying-up/clocks/clock-list.ts';
import { LinkButton, Secondary } from '#app/parts/action.tsx';
import type { OvenState } from '#shared/record/oven-state.ts';
import { formatClockTime } from '#shared/units/time.ts';
import { type DoneLine, type Inside, toFeel } from './done-three.ts';
import { gelledAt, gelSeen } from './oven-acts.ts';
import { litOf } from './oven-series.ts';

interface GelProps {
  load: OvenState;
  inside: readonly Inside[];
  /** The hold is over: resin that has not gelled by then does so nowhere. */
  held: boolean;
}

/** Turning may stop when resin no longer runs. */
export function GelRows({ load, inside, held }: GelProps) {
  const open = load.offAt === undefined && !held;
  return inside.map(({ state, round }) => {
    const at = gelledAt(state, Math.min(litOf(load), state.header.startedAt));
    const name = inside.length > 1 ? ` on ${buildName(state)}` : '';
    if (at !== undefined) {
      return (
        <p key={state.header.id} class="oven-seen">
          ✓ Gel seen{name} {formatClockTime(at)}: turning may stop
        </p>
      );
    }
    if (!open) return null;
    return (
      <div key={state.header.id} class="oven-gel">
        <Secondary onPress={() => gelSeen(state, round)}>Gel seen{name}: turning may stop</Secondary>
      </div>
    );
  });
}

interface DoneProps {
  lines: readonly DoneLine[];
  inside: readonly Inside[];
}

/** Done needs three. What is missing is said; nothing is blocked. */
export function DoneThree({ lines, inside }: DoneProps) {
  const missing = lines.filter((l) => !l.met).length;
  // Where a sample waits to be felt comes first.
  const next = [...inside].sort((a, b) => Number(toFeel(b)) - Number(toFeel(a)));
  return (
    <section>
      <h2>{missing === 0 ? 'Done: all three are met' : `Done needs three, ${missing} still missing`}</h2>
      <ul class="oven-rows">
        {lines.map((l) => (
          <li key={l.what} class="done-line">
            <svg width="28" height="28" viewBox="0 0 34 34" role="img" aria-label={l.met ? 'met' : 'missing'}>
              <rect class={l.met ? 'done-box done-met' : 'done-box'} x="1.5" y="1.5" width="31" height="31" />
              {l.met && <path class="check-mark" d="M9 17.5 15 23.5 26 11" />}
            </svg>
            <span>
              {l.what}: <strong>{l.says}</strong>
            </span>
          </li>
        ))}
      </ul>
      <div class="oven-links">
        {next.map(({ state }) => (
          <LinkButton key={state.header.id} to={`/build/${state.header.id}`}>
            To {buildName(state)}
          </LinkButton>
        ))}
      </div>
    </section>
  );
}
