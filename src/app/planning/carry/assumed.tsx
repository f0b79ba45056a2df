import { BehindPress } from '#app/parts/explain.tsx';
import { Row, Rows } from '#app/parts/rows.tsx';
import { Caution } from '#app/parts/warning.tsx';
import { findDoc } from '#app/state/documents.ts';
import { assumedWords, knownWords, strengthPath } from './carry-words.ts';
import type { Tube } from './tube-of-plan.ts';
import '#app/parts/facts.css';

/** What the figures stand on, behind one press. */
export function Assumed({ tube }: { tube: Tube }) {
  return (
    <BehindPress asks="What was assumed?" title="What was assumed">
      <ul class="facts">
        {assumedWords(tube).map((says) => (
          <li key={says}>{says}</li>
        ))}
      </ul>
    </BehindPress>
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
