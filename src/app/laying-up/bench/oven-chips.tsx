import { signal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect } from 'preact/hooks';
import type { OvenState } from '#shared/record/oven-state.ts';

type Chips = ComponentType<{ load: OvenState }>;

const loaded = signal<{ Chips: Chips } | undefined>(undefined);

/** A temperature in two taps from the bench; fetched only while an oven is lit, so that the first opening stays light. */
export function OvenChips({ load }: { load: OvenState }) {
  useEffect(() => {
    import('#app/curing/oven/temperature-chips.tsx').then(
      ({ TemperatureChips }) => {
        loaded.value ??= { Chips: TemperatureChips };
      },
      // No network, and not cached yet: the row of the oven load leads to its screen, which says so.
      () => {},
    );
  }, []);
  const Chips = loaded.value?.Chips;
  return Chips ? <Chips key={load.header.id} load={load} /> : null;
}
