import { useSignal } from '@preact/signals';
import { Secondary } from '#app/parts/action.tsx';
import { Row, Rows } from '#app/parts/rows.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import { Caution } from '#app/parts/warning.tsx';
import { findDoc } from '#app/state/documents.ts';
import { assumedWords, knownWords, strengthPath } from './carry-words.ts';
import type { Tube } from './tube-of-plan.ts';
import '#app/parts/explain.css';
import '#app/parts/facts.css';

/** What the figures stand on, behind one press. */
export function Assumed({ tube }: { tube: Tube }) {
  const open = useSignal(false);
  const close = () => {
    open.value = false;
  };
  return (
    <>
      <button
        type="button"
        class="explain-open"
        onClick={() => {
          open.value = true;
        }}
      >
        What was assumed?
      </button>
      {open.value && (
        <Sheet
          title="What was assumed"
          onClose={close}
          actions={<Secondary onPress={close}>Close</Secondary>}
        >
          <ul class="facts">
            {assumedWords(tube).map((says) => (
              <li key={says}>{says}</li>
            ))}
          </ul>
        </Sheet>
      )}
    </>
  );
}

/** The cloths of the wall, and whose figures they are reckoned with. */
export function ClothsInTube({ tube }: { tube: Tube }) {
  const ids = [...new Set(tube.cloths.map((c) => c.id))];
  return (
    <Rows label="Its cloths">
      {ids.map((id) => {
        const cloth = findDoc('cloth', id)?.body;
        return cloth && <Row key={id} to={strengthPath(id)} title={cloth.name} about={knownWords(cloth)} />;
      })}
    </Rows>
  );
}

export function PlanningCaution() {
  return (
    <Caution>
      Estimates for planning. Your own tube, tested, goes before them. What carries people needs tests, local
      rules and licensed review.
    </Caution>
  );
}
