import { Explain } from '#app/parts/explain.tsx';
import { Lines } from '#app/parts/figure.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { show } from '#app/state/show.ts';
import { formatClockTime } from '#shared/units/time.ts';
import type { Postcure } from './postcure.ts';
import { flowsTo, type TapeBegins } from './tape-begins.ts';

const degrees = (kelvin: number) => show(kelvin, 'temperature', 0);
const step = (kelvin: number) => show(kelvin, 'temperatureDifference', 0);
const anHour = (kelvinPerSecond: number) => `${step(kelvinPerSecond * 3600)} an hour`;

/** What a free-standing tube bears while it is cured again. */
export function PostcureSection({ postcure }: { postcure: Postcure }) {
  const { softens, noHotter, tooHot, tooSteep } = postcure;
  return (
    <section>
      <h2>Postcure: no hotter than {degrees(noHotter)} now</h2>
      {tooHot !== undefined && (
        <Warning kind="amber" title={`${degrees(tooHot)} is more than ${step(10)} above its Tg`} announce>
          A tube that is soft sags and stays so. Turn the oven down, keep the tube supported straight, and
          wait until the part has followed.
        </Warning>
      )}
      {tooSteep !== undefined && (
        <Warning kind="amber" title={`Warmed ${anHour(tooSteep)} at the steepest`}>
          Its Tg rises only as fast as it cures: warm {step(10)} to {anHour(20 / 3600)}.
        </Warning>
      )}
      <Lines
        rows={[
          ['Softens at, by now (Tg)', `about ${degrees(softens)}`],
          ['Warm by', `${step(10)} to ${anHour(20 / 3600)}`],
          ['No hotter now, Tg and a little', degrees(noHotter)],
        ]}
      />
    </section>
  );
}

const percent = (share: number) => `${Math.floor(100 * share + 1e-9)} %`;

/** Whether the tape pulled while the resin could still flow. */
export function TapeWords({ tape, name }: { tape: TapeBegins; name: string }) {
  const { at, from, used, gelled, tooLate } = tape;
  const film = percent(used);
  if (!tooLate) {
    return (
      <p class="oven-seen">
        {at === undefined
          ? `Resin on the cloth${name}: ${film} of its working time is used. The tape pulls from ${degrees(from)} on.`
          : `The tape began to pull${name} at ${formatClockTime(at)}, with ${film} of the resin’s working time used.`}
      </p>
    );
  }
  const how = gelled ? 'gel was seen before' : `${film} of the resin’s working time is used`;
  return at === undefined ? (
    <Warning kind="amber" title={`The tape does not pull yet${name}, and ${how}`} announce>
      Tape presses only while resin flows. Warm to {degrees(from)} now, as fast as the schedule lets you.
    </Warning>
  ) : (
    <Warning kind="amber" title={`The tape pulled late${name}: ${how}`}>
      It began at {formatClockTime(at)}, when {degrees(from)} was read. The wall may be thicker and richer
      than planned: weigh and measure it, and put the next one in sooner.
    </Warning>
  );
}

export function ExplainTape({ tape, name }: { tape: TapeBegins; name: string }) {
  const { at, from, used, tape: kind } = tape;
  return (
    <Explain
      inList
      of={`Working time used${name}`}
      formula="u = time in cup / L + time on the cloth / (k L)"
      values={[
        ['Tape', kind],
        ['Pulls from', degrees(from)],
        ['Part was there', at === undefined ? 'not yet' : formatClockTime(at)],
        ['Working time used by then', percent(used)],
        ['Warned over', percent(flowsTo)],
      ]}
      source="common practice, no source: life in the cup, then longer in a thin film on the cloth"
      sure="By the shop’s clock, from the cup that is furthest. The oven’s heat is left out: it thins resin first and hardens it later. Gel at a tape edge is what tells."
    />
  );
}
