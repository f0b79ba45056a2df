import { Secondary } from '#app/parts/action.tsx';
import { Lines } from '#app/parts/figure.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { findDoc, saveDoc } from '#app/state/documents.ts';
import { show } from '#app/state/show.ts';
import { type ClothCheck, mostOff } from './cut-list.ts';

/** Closer than this the shelf says the same already. */
const same = 0.005;

function Off({ check: { group, arealWeight, off } }: { check: ClothCheck }) {
  const found = findDoc('cloth', group.doc);
  const weighed = show(arealWeight, 'arealWeight');
  const onShelf = found && Math.abs(found.body.arealWeight / arealWeight - 1) < same;
  const take = () => found && saveDoc('cloth', { ...found.body, arealWeight }, { doc: found.doc });
  return (
    <>
      <Warning
        kind="amber"
        title={`${show(Math.abs(off), 'fraction', 0)} ${off > 0 ? 'heavier' : 'lighter'} than ${show(group.cloth.arealWeight, 'arealWeight')}`}
      >
        {group.cloth.name} weighs {weighed}. Is the scale zeroed, the masking off, and is it the cloth of the
        plan?
        {off > 0 ? ' Then its plies come out thicker.' : ' Then its plies come out thinner.'}
      </Warning>
      {onShelf ? (
        <p class="quiet">The shelf has {weighed} for it now. This tube keeps what it was started with.</p>
      ) : (
        found && <Secondary onPress={take}>Put {weighed} on the shelf</Secondary>
      )}
    </>
  );
}

/** Weighed against what the area says, cloth by cloth. */
export function ClothChecks({ checks }: { checks: readonly ClothCheck[] }) {
  if (checks.length === 0) return null;
  return (
    <div class="cloth-checks">
      <Lines
        head={['', 'weighed', 'by area']}
        rows={checks.map(({ group, mass, area }) => [
          group.cloth.name,
          show(mass, 'mass'),
          show(area * group.cloth.arealWeight, 'mass'),
        ])}
      />
      {checks
        .filter(({ off }) => Math.abs(off) > mostOff)
        .map((check) => (
          <Off key={check.group.doc} check={check} />
        ))}
    </div>
  );
}
