import { LinkButton } from '#app/parts/action.tsx';
import { Ask } from '#app/parts/ask.tsx';
import { Empty, Row, Rows } from '#app/parts/rows.tsx';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import type { LoadCase, LoadPlan, LoadRecord } from '#shared/record/load-plan.ts';
import { compressionKept } from '#shared/reference/strengths.ts';
import {
  caseFactor,
  factorWords,
  fittingWords,
  holdsWords,
  loadFigure,
  loadTitle,
  place,
  sameWords,
  supportWords,
} from './load-words.ts';
import type { LoadedPlan } from './use-plan.ts';

export function SupportRows({ of: { loads, home } }: { of: LoadedPlan }) {
  return (
    <>
      <h2>Held</h2>
      {loads.supports.length === 0 ? (
        <Empty>Nowhere yet.</Empty>
      ) : (
        <Rows label="Held">
          {loads.supports.map((s) => (
            <Row key={s.id} to={`${home}/support/${s.id}`} title={supportWords(s)} about={holdsWords(s)} />
          ))}
        </Rows>
      )}
      <LinkButton to={`${home}/support/new`}>Add a support</LinkButton>
    </>
  );
}

/** As it was written, where that is not what stands beside it: a unit taken for another is then seen. */
function writtenAs(load: LoadRecord): string | undefined {
  if (!load.typed || sameWords(load.typed, loadFigure(load))) return undefined;
  return `written as ${load.typed}`;
}

export function LoadRows({ of: { loads, home }, one }: { of: LoadedPlan; one: LoadCase | undefined }) {
  // Figures follow the units on show.
  settings.value.units;
  return (
    <>
      <h2>{one && loads.cases.length > 1 ? `Loads of ${one.name}` : 'Loads'}</h2>
      {one ? (
        <Rows label="Loads">
          {one.loads.map((l) => (
            <Row
              key={l.id}
              to={`${home}/case/${one.id}/${l.id}`}
              title={loadTitle(l)}
              about={writtenAs(l)}
              value={loadFigure(l)}
            />
          ))}
          <Row
            to={`${home}/case/${one.id}`}
            title={one.name}
            about="its name, and how many times as hard it may come"
            value={caseFactor(one)}
          />
        </Rows>
      ) : (
        <Empty>Nothing pulls on it yet.</Empty>
      )}
      <div class="beside">
        <LinkButton to={`${home}/case/${one?.id ?? 'first'}/new`}>Add a load</LinkButton>
        {one && <LinkButton to={`${home}/case/new`}>Add a load case</LinkButton>}
      </div>
    </>
  );
}

function askedLines(loads: LoadPlan, length: number): [title: string, value: string][] {
  const { safetyFactor, mostDeflection, freeLength, compressionKept: kept, dropTaper } = loads;
  return [
    ['Safety factor', safetyFactor === undefined ? 'not set yet' : factorWords(safetyFactor)],
    ['Most it may go aside', mostDeflection === undefined ? 'no limit' : place(mostDeflection)],
    ['Nothing keeps it round over', place(freeLength ?? length)],
    ['Strength left when pressed', show(kept ?? compressionKept, 'fraction', 0)],
    ...(dropTaper === undefined
      ? []
      : [['A ply ends over', `${factorWords(dropTaper)} times its thickness`] as [string, string]]),
  ];
}

export function AskedRows({ of: { found, loads, length, home } }: { of: LoadedPlan }) {
  const { stiffness } = found.body;
  return (
    <>
      <div class="ask-head">
        <h2>What you ask of it</h2>
        <Ask term="margin" asks="What is a margin?" />
      </div>
      <Rows label="What you ask of it">
        {askedLines(loads, length).map(([title, value]) => (
          <Row key={title} to={`${home}/asked`} title={title} value={value} />
        ))}
        <Row
          to={`${home}/stiffness`}
          title="As stiff as"
          value={stiffness ? `shop’s ${show(stiffness.factor, 'fraction', 0)}` : 'its cloths’ figures'}
        />
      </Rows>
    </>
  );
}

export function FittingRows({ of: { loads, home } }: { of: LoadedPlan }) {
  const fittings = loads.fittings ?? [];
  return (
    <>
      <h2>Fittings</h2>
      {fittings.length > 0 && (
        <Rows label="Fittings">
          {fittings.map((f) => (
            <Row
              key={f.id}
              to={`${home}/fitting/${f.id}`}
              title={f.name}
              about={fittingWords(f)}
              value={show(f.force, 'force')}
            />
          ))}
        </Rows>
      )}
      <LinkButton to={`${home}/fitting/new`}>Add a clamp or a bond</LinkButton>
    </>
  );
}
