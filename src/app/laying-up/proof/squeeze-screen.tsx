import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { Absent } from '#app/parts/absent.tsx';
import type { Params } from '#app/router.ts';
import { useBuild } from '#app/state/use-journal.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { type PlannedOfBuild, plannedOfBuild } from './planned-of-build.ts';
import { SqueezeFigure } from './squeeze-figure.tsx';
import { SqueezeSetup } from './squeeze-setup.tsx';
import { type Squeezing, thinEnd } from './squeezing.ts';

function Squeeze({ state, planned }: { state: BuildState; planned: PlannedOfBuild }) {
  const squeezing = useSignal<Squeezing>(
    useMemo(() => ({ station: thinEnd(planned, state.header.tubeLength), length: 0.02 }), []),
  );
  const typing = useSignal(false);
  const props = { state, planned, squeezing };
  return typing.value ? (
    <SqueezeFigure {...props} onBack={() => (typing.value = false)} />
  ) : (
    <SqueezeSetup {...props} onReady={() => (typing.value = true)} />
  );
}

/** How much does the thin end give between two flats? */
export function SqueezeScreen({ params }: { params: Params }) {
  const state = useBuild(params.id);
  const header = typeof state === 'object' ? state.header : undefined;
  const planned = useMemo(() => header && plannedOfBuild(header), [header]);
  if (state === undefined) return null;
  return state === 'absent' || !planned ? (
    <Absent what="tube" />
  ) : (
    <Squeeze state={state} planned={planned} />
  );
}
