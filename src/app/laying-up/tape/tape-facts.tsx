import { Facts } from '#app/parts/facts.tsx';
import { show } from '#app/state/show.ts';
import { celsius } from '#shared/reference/quantities.ts';

/** A cure between these leaves a smoother tube under the tape (common practice, no source), K */
const smooth = { from: celsius(65.6), to: celsius(73.9) };

/** What every winder knows, once. */
export function TapeFacts() {
  return (
    <Facts
      title="At the bench"
      source="Common practice, no source. The tape’s data sheet and your own tubes go before it."
    >
      <li>
        Wound in the same rotation as the cloth was rolled, or it unrolls the cloth. The second pass travels
        back and still turns the same way.
      </li>
      <li>Coated side down. All of it on before the first cup gels: it squeezes only while resin flows.</li>
      <li>Below its window it holds with winding tension only.</li>
      <li>
        Hotter, it pulls harder and earlier: more resin out, ridges under its edges, a rougher tube. A cure of{' '}
        {show(smooth.from, 'temperature', 0)} to {show(smooth.to, 'temperature', 0)} comes out smoother.
      </li>
    </Facts>
  );
}
