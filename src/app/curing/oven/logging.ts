import { type Signal, useSignal } from '@preact/signals';
import { show } from '#app/state/show.ts';
import { recordUndoable } from '#app/state/undo.ts';
import type { OvenState } from '#shared/record/oven-state.ts';
import { type Figure, judgeTime } from './reading-check.ts';

/** What was logged last from here, to say so. */
export interface Logged {
  si: number;
  at: number;
}

export interface Logging {
  channel: Signal<string>;
  /** When it was read, ms; undefined is now. */
  at: Signal<number | undefined>;
  /** A reading that waits for a word about its time. */
  asks: Signal<{ reading: Figure; at: number; why: 'toCome' | 'earlier' } | undefined>;
  logged: Signal<Logged | undefined>;
  /** The last reading of the channel, ms */
  last: number | undefined;
  /** True once it is on disk; false while it asks, or when the write failed. */
  log: (reading: Figure, sure?: boolean) => Promise<boolean>;
}

/** The channel read last; else the first tube, else the air. */
export function usualChannel({ header, readings }: OvenState): string {
  const newest = readings.reduce<{ id: string; at: number } | undefined>((most, { channel, at }) => {
    const last = at.at(-1)?.at ?? 0;
    return last > (most?.at ?? 0) ? { id: channel.id, at: last } : most;
  }, undefined);
  const first = header.channels.find((c) => c.sees === 'part') ?? header.channels[0];
  return newest?.id ?? first?.id ?? '';
}

export function useLogging(load: OvenState, channel?: string): Logging {
  const chosen = useSignal(channel ?? usualChannel(load));
  const at = useSignal<number | undefined>(undefined);
  const asks = useSignal<Logging['asks']['value']>(undefined);
  const logged = useSignal<Logged | undefined>(undefined);
  const last = load.readings.find((r) => r.channel.id === chosen.value)?.at.at(-1)?.at;
  const log = async (reading: Figure, sure = false): Promise<boolean> => {
    const now = Date.now();
    const when = at.value ?? now;
    const why = judgeTime(when, { now, last });
    if (why === 'toCome' || (why === 'earlier' && !sure)) {
      asks.value = { reading, at: when, why };
      return false;
    }
    asks.value = undefined;
    const written = await recordUndoable(
      {
        kind: 'reading',
        subject: load.header.id,
        channel: chosen.value,
        temperature: reading.si,
        typed: reading.typed,
        happenedAt: when,
      },
      { said: `Logged ${show(reading.si, 'temperature')}` },
    );
    if (written) {
      logged.value = { si: reading.si, at: when };
      at.value = undefined;
    }
    return written;
  };
  return { channel: chosen, at, asks, logged, last, log };
}
