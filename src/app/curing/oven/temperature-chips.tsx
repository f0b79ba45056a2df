import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { Action } from '#app/parts/action.tsx';
import { now } from '#app/state/now.ts';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { formatClockTime } from '#shared/units/time.ts';
import { AskTimeSheet } from './ask-time-sheet.tsx';
import { ChipsChoices } from './chips-choices.tsx';
import { type Chip, chipsAround, expectedReading } from './expected.ts';
import { type Logging, useLogging } from './logging.ts';
import { OtherSheet } from './other-sheet.tsx';
import { TimeSheet } from './time-sheet.tsx';
import './temperature-chips.css';

interface Props {
  load: OvenState;
  /** The channel to begin with; else the one read last. */
  channel?: string;
}

/** For so long chips stay as they were drawn, ms */
const settleFor = 60_000;

interface Held {
  about: string;
  facts: number;
  /** ms */
  since: number;
  chips: Chip[];
  /** K */
  expected: number;
}

const isOutside = (chips: readonly Chip[], expected: number) =>
  expected < (chips[0]?.si ?? 0) || expected > (chips.at(-1)?.si ?? 0);

/**
 * The chips around what is expected. They move on only when something was logged, or when what is expected has left
 * them, and never while one is chosen: none slips away under a thumb.
 */
function useChips(load: OvenState, channel: string, isChosen: boolean): Held {
  const system = settings.value.units;
  const held = useRef<Held>(undefined);
  const was = held.current;
  const about = `${channel} ${system}`;
  const facts = load.facts.length;
  const isNew = was?.about !== about || (was.facts !== facts && !isChosen);
  if (was && !isNew && (isChosen || now.value - was.since < settleFor)) return was;
  const expected = expectedReading(load, channel, Date.now());
  if (was && !isNew && !isOutside(was.chips, expected)) return was;
  const drawn = { about, facts, since: now.value, expected, chips: chipsAround(expected, system) };
  held.current = drawn;
  return drawn;
}

/** Says what was logged, where the next press was made. */
function waiting({ logged, channel }: Logging, load: OvenState): string {
  if (logged.value) {
    return `Logged ${show(logged.value.si, 'temperature')} at ${formatClockTime(logged.value.at)}`;
  }
  const name = load.header.channels.find((c) => c.id === channel.value)?.name ?? 'it';
  return `What does ${name} read?`;
}

/** A temperature in two taps: the chip, and the main action. Any other figure by our keypad. */
export function TemperatureChips({ load, channel: first }: Props) {
  const logging = useLogging(load, first);
  const chosen = useSignal<Chip | undefined>(undefined);
  const isTyping = useSignal(false);
  const isTiming = useSignal(false);
  const { chips, expected } = useChips(load, logging.channel.value, chosen.value !== undefined);
  // A chip of the other unit or the other sensor is not there any more, and must not be logged.
  const picked = chips.find((c) => c === chosen.value);
  const pick = (chip: Chip) => {
    chosen.value = chip;
    logging.logged.value = undefined;
  };
  const log = async () => {
    if (picked && (await logging.log(picked))) chosen.value = undefined;
  };
  const askTime = () => {
    isTiming.value = true;
  };
  return (
    <>
      <ChipsChoices load={load} logging={logging} onTime={askTime} />
      <div class="chips-row chips-degrees" role="group" aria-label="What it reads">
        {chips.map((chip) => (
          <button
            key={chip.figure}
            type="button"
            aria-label={chip.text}
            aria-pressed={chip === picked}
            onClick={() => pick(chip)}
          >
            {chip.figure}
          </button>
        ))}
        <button
          type="button"
          class="chips-other"
          onClick={() => {
            isTyping.value = true;
          }}
        >
          Other
        </button>
      </div>
      <Action onPress={log} not={picked ? undefined : waiting(logging, load)}>
        Log {picked?.text}
      </Action>
      <p class="visually-hidden" role="status">
        {logging.logged.value && waiting(logging, load)}
      </p>
      {isTyping.value && (
        <OtherSheet
          load={load}
          logging={logging}
          expected={expected}
          onClose={() => {
            isTyping.value = false;
          }}
        />
      )}
      {logging.asks.value && (
        <AskTimeSheet
          logging={logging}
          onTime={askTime}
          onLogged={() => {
            chosen.value = undefined;
            isTyping.value = false;
          }}
        />
      )}
      {isTiming.value && (
        <TimeSheet
          logging={logging}
          onClose={() => {
            isTiming.value = false;
          }}
        />
      )}
    </>
  );
}
