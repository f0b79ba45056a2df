import { signal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import type { Made } from '#app/made/learned/made-facts.ts';
import { Beside, LinkButton, Secondary } from '#app/parts/action.tsx';
import { Choice, SelectField } from '#app/parts/field.tsx';
import { Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { useAllSummaries } from '#app/state/all-summaries.ts';
import { chosen, chosenOf, loadChosen } from './chosen.ts';
import { type NumberFact, numberFacts } from './facts.ts';
import { placesOf, Scatter } from './scatter.tsx';
import { Shape, shapesFor } from './shapes.tsx';
import { type Kind, kinds } from './tellings.ts';
import './compare.css';

/** They outlive the screen: a builder comes back from a build's record to the same picture. */
const across = signal('totalLoss');
const up = signal('resinShare');
const by = signal<Kind>('release');
const picked = signal<string | undefined>(undefined);

const byOptions = (['release', 'tape'] as const).map((value) => ({ value, label: kinds[value].label }));

/** Only what two of them at least have. */
function known(made: readonly Made[]): NumberFact[] {
  return numberFacts.filter((f) => made.filter((m) => f.value(m) !== undefined).length > 1);
}

function Legend({ made }: { made: readonly Made[] }) {
  const shapes = shapesFor(made, by.value);
  return (
    <ul class="scatter-legend">
      {[...shapes].map(([name, shape]) => (
        <li key={name}>
          <svg width="20" height="20" viewBox="-10 -10 20 20" aria-hidden="true">
            <Shape shape={shape} />
          </svg>
          {name}
        </li>
      ))}
    </ul>
  );
}

function Picked({ made, x, y }: { made: readonly Made[]; x: NumberFact; y: NumberFact }) {
  const drawn = placesOf(made, x, y).map((p) => p.made);
  const at = drawn.findIndex((m) => m.build.subject === picked.value);
  const one = drawn[at];
  const step = (by: number) => {
    picked.value = drawn.at((at + by + drawn.length) % drawn.length)?.build.subject;
  };
  return (
    <>
      <div role="status">
        {one ? (
          <Rows label="The point tapped">
            <Row
              to={`/record/build/${one.build.subject}`}
              title={one.title}
              about={`${x.label} ${x.says(one)} · ${y.label} ${y.says(one)}`}
            />
          </Rows>
        ) : (
          <p class="quiet">Tap a point for its build.</p>
        )}
      </div>
      <Beside>
        <Secondary onPress={() => step(at < 0 ? 0 : -1)}>Point before</Secondary>
        <Secondary onPress={() => step(1)}>Next point</Secondary>
      </Beside>
    </>
  );
}

function Picture({ made }: { made: readonly Made[] }) {
  const facts = known(made);
  const [first, second] = facts;
  const x = facts.find((f) => f.key === across.value) ?? first;
  const y = facts.find((f) => f.key === up.value) ?? second;
  if (!x || !y) {
    return <p>These builds have no two figures in common yet. Weigh, measure or rate them first.</p>;
  }
  const options = facts.map((f) => ({ value: f.key, label: f.label }));
  return (
    <>
      <SelectField label="Up" value={y.key} options={options} onChange={(key) => (up.value = key)} />
      <Scatter made={made} x={x} y={y} by={by.value} picked={picked} />
      <Legend made={made} />
      <SelectField label="Across" value={x.key} options={options} onChange={(key) => (across.value = key)} />
      <Choice label="Shapes by" value={by.value} options={byOptions} onChange={(kind) => (by.value = kind)} />
      <Picked made={made} x={x} y={y} />
    </>
  );
}

/** Do two figures go together? */
export function TwoScreen() {
  const all = useAllSummaries();
  useEffect(() => {
    loadChosen();
  }, []);
  const choice = chosen.value;
  const made = useMemo(() => all && chosenOf(all), [all, choice]);
  if (!made) return null;
  return (
    <Screen
      kicker={`${made.length} builds`}
      title="Two figures"
      back={{ to: '/compare', label: 'Side by side' }}
    >
      <Picture made={made} />
      <LinkButton to="/compare/choose">Other builds</LinkButton>
    </Screen>
  );
}
