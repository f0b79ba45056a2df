import { useEffect } from 'preact/hooks';
import { cupToMix } from '#app/laying-up/bench/bench-now.ts';
import { mixAddress } from '#app/laying-up/build/cups-left.ts';
import { buildName } from '#app/laying-up/clocks/clock-list.ts';
import { Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { goInstead } from '#app/router.ts';
import { openBuilds, openOvenLoads } from '#app/state/journals.ts';
import { shop } from '#app/state/shop.ts';

/** In the demo shop: what can a newcomer do in the first minutes, each in a few taps? */
export function TryScreen() {
  const inDemo = shop.value.phase === 'open' && shop.value.demo;
  useEffect(() => {
    if (!inDemo) goInstead('/');
  }, [inDemo]);
  if (!inDemo) return null;
  const wet = openBuilds.value.find((b) => cupToMix(b) !== undefined);
  const dry = openBuilds.value.find((b) => b.cups.length === 0 && !b.weights.has('cutCloth'));
  const oven = openOvenLoads.value.find((o) => o.litAt !== undefined && o.offAt === undefined);
  return (
    <Screen title="New here? Try this" back={{ to: '/', label: 'Bench' }}>
      <Rows label="New here? Try this">
        {dry && (
          <Row
            to={`/weigh/${dry.header.id}/cutCloth`}
            title={`Weigh the cloth of ${buildName(dry)}`}
            about="All resin is counted from it"
          />
        )}
        {wet && (
          <Row
            to={mixAddress(wet)}
            title={`Mix the next cup of ${buildName(wet)}`}
            about="Where to stop, gram by gram, and its clock"
          />
        )}
        {oven && (
          <Row
            to={`/oven/${oven.header.id}`}
            title="Log a temperature"
            about="Two taps; what it means follows"
          />
        )}
        <Row to="/record" title="See how weighed tubes came out" about="Resin to fabric, beside the plan" />
        <Row to="/plan/new" title="Write a plan of your own" about="It stays in the demo" />
      </Rows>
    </Screen>
  );
}
